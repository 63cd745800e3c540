// Installs the project's packages when they are missing, older than the lock file, or made for another Node, so that one
// command is enough on a fresh copy. A native package may have to be compiled: where Node's own headers lie beside Node,
// they are used, and nothing has to be fetched for it.
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** Ends the process with a sentence on a Node the packages do not run on; package.json says the same under "engines". */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major >= 24
  if (fits) return
  console.error(`Daybook needs Node 20.19 or later of 20, 22.12 or later of 22, or 24; this is ${process.version}.`)
  process.exit(1)
}

export function ensureInstalled() {
  const done = 'node_modules/.package-lock.json'
  const isThere = existsSync(done) && statSync(done).mtimeMs >= statSync('package-lock.json').mtimeMs
  if (isThere && fault() === null) return
  if (isThere) console.log(`The packages do not work with this Node (${fault()}): they are installed again.`)
  const prefix = dirname(dirname(process.execPath))
  const env = { ...process.env }
  if (!env.npm_config_nodedir && existsSync(join(prefix, 'include', 'node', 'node.h'))) env.npm_config_nodedir = prefix
  const npm = process.env.npm_execpath
  console.log('Installing the packages; this takes a minute or two the first time.')
  const run = npm
    ? spawnSync(process.execPath, [npm, 'ci', '--no-audit', '--no-fund'], { stdio: 'inherit', env })
    : spawnSync('npm', ['ci', '--no-audit', '--no-fund'], { stdio: 'inherit', env })
  if (run.status !== 0) {
    console.error('The packages could not be installed (see above).')
    process.exit(1)
  }
}

/** Packages of which one is missing or made for another Node are found before a server stands on them. */
const LOOK = `
  const Database = require('better-sqlite3')
  new Database(':memory:').close()
  for (const name of ['next/package.json', 'react', '@prisma/client', 'better-auth', 'zod', 'pino']) require.resolve(name)
`

let found
function fault() {
  if (found === undefined) {
    const run = spawnSync(process.execPath, ['-e', LOOK], { encoding: 'utf8' })
    found = run.status === 0 ? null : (/code: '(\w+)'/.exec(run.stderr)?.[1] ?? 'not whole')
  }
  return found
}
