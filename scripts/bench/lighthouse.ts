// Lighthouse (a simulated mid-range phone on slow 4G) on the card, the board and the result page of the built application,
// and what the card weighs and how fast it opens from the phone's own copy. Lighthouse is heavy and is not among the
// project's packages: LIGHTHOUSE_FOLDER names a folder in which it was installed (npm i --prefix FOLDER lighthouse@12.8.2);
// the whole reports are left there.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import Database from 'better-sqlite3'
import { type BrowserContext, chromium } from 'playwright'
import { bookFile } from '../../lib/store/client'
import type { Figure, Figures } from '../bench-figures'
import { benchServer } from '../bench-server'

const CHROME = process.env.CHROME_PATH ?? '/usr/bin/chromium'
const FLAGS = [
  '--headless=new',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
]
/** Compressed script over the framework's own smallest page of the same build. */
const CARD_SCRIPT_KB = 60
const OPENS_WITHIN_MS = 1000
/** Odd, so that there is a middle one. */
const RUNS = 3

interface Pages {
  readonly card: string
  readonly board: string
  readonly result: string
}

/** The day in play and the newest result of the demonstration society. */
function pagesOf(file: string): Pages | null {
  const db = new Database(file, { readonly: true })
  try {
    const live = db
      .prepare(
        `SELECT s."slug" AS society, d."slug" AS day, g."linkKey" AS link FROM "Day" d
           JOIN "Society" s ON s."id" = d."societyId" JOIN "Round" r ON r."dayId" = d."id"
           JOIN "Group" g ON g."roundId" = r."id"
          WHERE d."status" = 'in-play' ORDER BY g."number" DESC LIMIT 1`,
      )
      .get() as { society: string; day: string; link: string } | undefined
    const published = db
      .prepare(
        `SELECT d."slug" AS day FROM "Publication" p JOIN "Day" d ON d."id" = p."dayId" ORDER BY p."publishedAt" DESC`,
      )
      .get() as { day: string } | undefined
    if (!live || !published) return null
    return {
      card: `/card/${live.link}`,
      board: `/${live.society}/days/${live.day}`,
      result: `/${live.society}/days/${published.day}/result`,
    }
  } finally {
    db.close()
  }
}

interface Report {
  readonly categories: Readonly<Record<string, { readonly score: number | null }>>
  readonly audits: Readonly<
    Record<string, { readonly numericValue?: number; readonly score: number | null; readonly title: string }>
  >
  readonly environment: { readonly benchmarkIndex: number }
  readonly runtimeError?: { readonly code: string }
}

const audit = (report: Report, of: string) => report.audits[of]?.numericValue ?? Number.NaN
const score = (report: Report, of: string) => Math.round((report.categories[of]?.score ?? 0) * 100)

function lighthouse(folder: string, address: string, out: string, how: readonly string[] = []): Report {
  const cli = join(folder, 'node_modules', 'lighthouse', 'cli', 'index.js')
  const run = spawnSync(
    process.execPath,
    [
      cli,
      address,
      '--quiet',
      '--output=json',
      `--output-path=${out}`,
      '--only-categories=performance,accessibility',
      `--chrome-flags=${FLAGS.join(' ')}`,
      ...how,
    ],
    { encoding: 'utf8', env: { ...process.env, CHROME_PATH: CHROME }, timeout: 240_000 },
  )
  const report = existsSync(out) ? (JSON.parse(readFileSync(out, 'utf8')) as Report) : null
  if (run.status === 0 && report && !report.runtimeError) return report
  throw new Error(`Lighthouse: ${report?.runtimeError?.code ?? run.stderr.slice(-800)}`)
}

/** Now and then Lighthouse misses the start of the page and says so: such a run is made again, a bad figure never is. */
function patiently(folder: string, address: string, out: string, how: readonly string[] = []): Report {
  try {
    return lighthouse(folder, address, out, how)
  } catch (fault) {
    if (!(fault instanceof Error) || !fault.message.includes('NO_NAVSTART')) throw fault
    console.log(`  ${fault.message}: made again`)
    return lighthouse(folder, address, out, how)
  }
}

/** The middle one of several runs by the score of performance, as Lighthouse's own guide advises, and all their scores. */
function middleRun(folder: string, name: string, address: string): { report: Report; all: readonly number[] } {
  const runs = Array.from({ length: RUNS }, (_, at) =>
    patiently(folder, address, join(folder, `${name}-${at + 1}.json`)),
  )
  runs.sort((a, b) => score(a, 'performance') - score(b, 'performance'))
  return { report: runs[Math.floor(RUNS / 2)]!, all: runs.map((run) => score(run, 'performance')) }
}

function figuresOf(folder: string, name: string, address: string): Figure[] {
  const { report, all } = middleRun(folder, name, address)
  // The model above reckons from an unslowed load; here the line and the processor are slowed for real.
  const slowed = patiently(folder, address, join(folder, `${name}-slowed.json`), ['--throttling-method=devtools'])
  const failing = Object.entries(report.audits).filter(([, one]) => one.score !== null && one.score < 0.5)
  console.log(
    `  ${name}: runs ${all.join(', ')}; machine ${Math.round(report.environment.benchmarkIndex)}; below half: ${failing.map(([id]) => id).join(', ') || 'nothing'}`,
  )
  const figure = (what: string, measured: string, target: string, held: boolean): Figure => ({
    what: `${name}: ${what}`,
    measured,
    target,
    held,
  })
  const [performance, accessibility] = [score(report, 'performance'), score(report, 'accessibility')]
  const [lcp, cls, blocked] = [
    audit(report, 'largest-contentful-paint'),
    audit(report, 'cumulative-layout-shift'),
    audit(report, 'total-blocking-time'),
  ]
  const [seen, slowedScore] = [audit(slowed, 'largest-contentful-paint'), score(slowed, 'performance')]
  return [
    figure(`performance, middle of ${RUNS}`, String(performance), 'at least 95', performance >= 95),
    figure('performance, line and processor slowed for real', String(slowedScore), 'at least 95', slowedScore >= 95),
    figure('accessibility', String(accessibility), '100', accessibility === 100),
    figure('largest paint on slow 4G, reckoned', `${Math.round(lcp)} ms`, 'under 1500 ms', lcp < 1500),
    figure('largest paint on slow 4G, seen', `${Math.round(seen)} ms`, 'under 1500 ms', seen < 1500),
    figure('layout shift', cls.toFixed(3), 'under 0.02', cls < 0.02),
    figure('longest wait of a touch (blocking time)', `${Math.round(blocked)} ms`, 'under 100 ms', blocked < 100),
  ]
}

/** Compressed bytes of the scripts that a page names. */
async function scriptOf(base: string, page: string): Promise<number> {
  const html = await (await fetch(base + page)).text()
  const names = new Set([...html.matchAll(/\/_next\/static\/[^"'\\\s<>]+?\.js/g)].map(([name]) => name))
  const sizes = await Promise.all(
    [...names].map(async (name) => gzipSync(Buffer.from(await (await fetch(base + name)).arrayBuffer())).length),
  )
  return sizes.reduce((sum, size) => sum + size, 0)
}

async function weight(base: string, card: string): Promise<Figure> {
  // A page that does not exist is made of the framework and our frame alone.
  const [with_, least] = await Promise.all([scriptOf(base, card), scriptOf(base, '/nothing-here/at-all')])
  const kb = (with_ - least) / 1024
  return {
    what: `card: script over the smallest page (${Math.round(least / 1024)} kB)`,
    measured: `${kb.toFixed(1)} kB`,
    target: `at most ${CARD_SCRIPT_KB} kB`,
    held: kb <= CARD_SCRIPT_KB,
  }
}

async function opensWithout(context: BrowserContext, base: string, card: string): Promise<Figure> {
  const page = await context.newPage()
  await page.goto(base + card)
  await page.getByText('The card is whole on this phone').waitFor()
  await page.getByRole('button').first().waitFor()
  await page.close()
  await context.setOffline(true)
  const took: number[] = []
  for (let at = 0; at < 7; at++) {
    const again = await context.newPage()
    const began = performance.now()
    await again.goto(base + card, { waitUntil: 'commit' })
    await again.getByRole('button').first().waitFor()
    took.push(performance.now() - began)
    await again.close()
  }
  const median = took.sort((a, b) => a - b)[3]!
  return {
    what: 'card: opens from the phone’s own copy without a network, median of 7',
    measured: `${Math.round(median)} ms`,
    target: `under ${OPENS_WITHIN_MS} ms`,
    held: median < OPENS_WITHIN_MS,
  }
}

export async function measure(): Promise<Figures> {
  if (!existsSync(CHROME)) return { leftOut: `no Chromium at ${CHROME}: set CHROME_PATH` }
  const from = bookFile()
  if (!existsSync(from)) return { leftOut: `no book at ${from}: run npm run migrate and npm run seed first` }
  const folder = mkdtempSync(join(tmpdir(), 'daybook-lighthouse-'))
  const file = join(folder, 'book.db')
  const book = new Database(from)
  book.exec(`VACUUM INTO '${file}'`)
  book.close()
  const pages = pagesOf(file)
  if (!pages) return { leftOut: 'the demonstration society with its day in play is not in this book' }
  const server = await benchServer(file)
  try {
    const browser = await chromium.launch({ executablePath: CHROME, args: FLAGS })
    const context = await browser.newContext({ viewport: { width: 360, height: 780 }, isMobile: true, hasTouch: true })
    const figures = [await weight(server.base, pages.card), await opensWithout(context, server.base, pages.card)]
    await browser.close()
    const installed = process.env.LIGHTHOUSE_FOLDER
    if (!installed || !existsSync(join(installed, 'node_modules', 'lighthouse'))) {
      const missing = installed ? `it is not in ${installed}` : 'LIGHTHOUSE_FOLDER is not set'
      return [...figures, { what: `Lighthouse left out: ${missing}`, measured: '-', target: '-', held: null }]
    }
    for (const [name, page] of Object.entries(pages)) figures.push(...figuresOf(installed, name, server.base + page))
    return figures
  } finally {
    await server.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
