// Every check there is: style, types, unit and property tests, then the built application in a real browser.
// Ends with one plain line: "N passed, N failed".
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { ensureInstalled } from './install.mjs'

ensureInstalled()
const { chromium } = await import('playwright')

const reports = 'data/reports'
rmSync(reports, { recursive: true, force: true })
mkdirSync(reports, { recursive: true })
const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1', CI: process.env.CI ?? '' }
let passed = 0
let failed = 0

function check(name, args, extra = {}) {
  console.log(`\n=== ${name}`)
  const began = Date.now()
  const run = spawnSync(process.execPath, args, { stdio: 'inherit', env: { ...env, ...extra } })
  console.log(`=== ${name}: ${run.status === 0 ? 'good' : 'FAILED'} in ${Math.round((Date.now() - began) / 1000)} s`)
  return run.status === 0
}

function simple(name, args, extra) {
  if (check(name, args, extra)) passed += 1
  else failed += 1
}

/** A browser to test in: one that is here, or the test library's own, fetched now. */
function browser() {
  const here = [
    process.env.CHROME_PATH,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    chromium.executablePath(),
  ]
  const found = here.find((path) => path && existsSync(path))
  if (found) return found
  console.log('No Chromium here: installing the one that belongs to the test library.')
  spawnSync(process.execPath, ['node_modules/playwright/cli.js', 'install', 'chromium'], { stdio: 'inherit' })
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : null
}

simple('database client', ['scripts/generate.mjs'])
simple('style', ['node_modules/@biomejs/biome/bin/biome', 'check', '.'])
// The compiler uses one processor: the unit tests begin beside it.
const types = spawn(process.execPath, ['node_modules/typescript/bin/tsc', '--noEmit'], { env })
let said = ''
for (const stream of [types.stdout, types.stderr])
  stream.on('data', (piece) => {
    said += piece
  })
const typed = new Promise((resolve) => types.on('close', resolve))

const unit = check('unit and property tests', [
  'node_modules/vitest/vitest.mjs',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${reports}/unit.json`,
])
if (existsSync(`${reports}/unit.json`)) {
  const report = JSON.parse(readFileSync(`${reports}/unit.json`, 'utf8'))
  passed += report.numPassedTests
  failed += report.numFailedTests
  if (!unit && report.numFailedTests === 0) failed += 1
} else failed += 1

const code = await typed
console.log(`\n=== types\n${said}=== types: ${code === 0 ? 'good' : 'FAILED'}`)
if (code === 0) passed += 1
else failed += 1

const chrome = browser()
if (!chrome) {
  console.error('No Chromium could be found or installed: set CHROME_PATH, or install the package "chromium".')
  failed += 1
} else {
  simple('build', ['scripts/build.mjs'])
  const walked = check('browser', ['node_modules/@playwright/test/cli.js', 'test'], {
    CHROME_PATH: chrome,
    PLAYWRIGHT_JSON_OUTPUT_NAME: `${reports}/browser.json`,
  })
  if (existsSync(`${reports}/browser.json`)) {
    const { stats } = JSON.parse(readFileSync(`${reports}/browser.json`, 'utf8'))
    passed += stats.expected + stats.flaky
    failed += stats.unexpected
    if (!walked && stats.unexpected === 0) failed += 1
  } else failed += 1
}

console.log(`\n${passed} passed, ${failed} failed`)
process.exit(failed === 0 ? 0 : 1)
