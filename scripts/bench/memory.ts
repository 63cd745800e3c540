// What a day of 120 players needs of memory, on the built application whose heap is limited as on a machine of one gigabyte:
// every phone delivers its round in a minute instead of four hours, everybody else watches, and pages are opened meanwhile.
//   MEMORY_SECONDS=60   how long the round lasts
//   MEMORY_WATCHERS=300 boards that are watched
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { book } from '../../lib/store/client'
import { migrate } from '../../lib/store/migrate'
import type { Figures } from '../bench-figures'
import { loadBook, SOCIETY } from '../bench-load-book'
import { crowdOf } from '../bench-load-crowd'
import { benchServer } from '../bench-server'

const SECONDS = Number(process.env.MEMORY_SECONDS ?? 60)
const WATCHERS = Number(process.env.MEMORY_WATCHERS ?? 300)
const PLAYERS = 120
/** A phone sends what was written on a hole: four scores, eighteen times. */
const DELIVERIES = 18
const SCORES = 4
/** Of a gigabyte the system and what is not heap need the rest. */
const HEAP_MB = 640
const MOST_MB = 1024

const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time))

/** Memory that is really in use by a process and those it began, in MB. */
function residentMb(pid: number): number {
  const parents = new Map<number, number>()
  const sizes = new Map<number, number>()
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue
    const status = statusOf(name)
    if (status === null) continue
    parents.set(Number(name), Number(/^PPid:\s+(\d+)/m.exec(status)?.[1]))
    sizes.set(Number(name), Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? 0) / 1024)
  }
  const belongs = (one: number | undefined): boolean =>
    one === pid || (one !== undefined && one > 1 && belongs(parents.get(one)))
  return [...sizes].reduce((sum, [one, size]) => (belongs(one) ? sum + size : sum), 0)
}

/** Null for a process that has ended since it was listed. */
function statusOf(pid: string): string | null {
  try {
    return readFileSync(`/proc/${pid}/status`, 'utf8')
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause) return null
    throw cause
  }
}

export async function measure(): Promise<Figures> {
  if (!existsSync('/proc/self/status')) return { leftOut: 'this system does not tell the memory of a process in /proc' }
  const folder = mkdtempSync(join(tmpdir(), 'daybook-memory-'))
  const file = join(folder, 'book.db')
  const before = process.env.DATABASE_URL
  try {
    migrate(file)
    process.env.DATABASE_URL = `file:${file}`
    const days = await loadBook(1, PLAYERS)
    await book().$disconnect()
    const db = new Database(file)
    db.pragma('wal_checkpoint(TRUNCATE)')
    db.close()
    return await aDay(file, days)
  } finally {
    if (before === undefined) delete process.env.DATABASE_URL
    else process.env.DATABASE_URL = before
    rmSync(folder, { recursive: true, force: true })
  }
}

async function aDay(file: string, days: Awaited<ReturnType<typeof loadBook>>): Promise<Figures> {
  const server = await benchServer(file, undefined, { NODE_OPTIONS: `--max-old-space-size=${HEAP_MB}` })
  const { phones, watchers } = crowdOf(server.base, SOCIETY, days, WATCHERS)
  const atStart = residentMb(server.pid)
  let most = atStart
  const sampled = setInterval(() => {
    most = Math.max(most, residentMb(server.pid))
  }, 250)
  let over = false
  const pages = ['', '/start', '/bar', '/result'].map(
    (page) => `${server.base}/${SOCIETY}/days/${days[0]!.slug}${page}`,
  )
  let opened = 0
  const reader = async () => {
    for (; !over; opened++) {
      await (await fetch(pages[opened % pages.length]!)).text()
      await wait(200)
    }
  }
  let seed = 1
  const chance = () => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648
    return seed / 2_147_483_648
  }
  try {
    for (let from = 0; from < watchers.length; from += 20) {
      const some = watchers.slice(from, from + 20)
      await Promise.all(some.map((one) => one.watch()))
      await Promise.all(some.map((one) => one.begin()))
    }
    const reading = [reader(), reader()]
    await Promise.all(
      phones.map(async (phone) => {
        for (let turn = 0; turn < DELIVERIES; turn++) {
          await wait((chance() * 2 * SECONDS * 1000) / DELIVERIES)
          await phone.deliver(SCORES, chance)
        }
      }),
    )
    over = true
    await Promise.all(reading)
    await wait(5_000)
    const after = residentMb(server.pid)
    most = Math.max(most, after)
    const inBook = new Database(file, { readonly: true })
    const scores = inBook.prepare('SELECT count(*) FROM "ScoreFact"').pluck().get() as number
    inBook.close()
    const lost = phones.reduce((sum, one) => sum + one.delivered, 0) - scores
    const mb = (size: number) => `${Math.round(size)} MB`
    const what = `${PLAYERS} players, ${WATCHERS} boards watched, ${opened} pages`
    return [
      { what: 'resident memory once started', measured: mb(atStart), target: '-', held: null },
      { what: `${what}: at the most`, measured: mb(most), target: `under ${MOST_MB} MB`, held: most < MOST_MB },
      { what: 'five seconds after the last score', measured: mb(after), target: '-', held: null },
      { what: `of ${scores} scores lost`, measured: String(lost), target: '0', held: lost === 0 },
    ]
  } finally {
    clearInterval(sampled)
    over = true
    for (const watcher of watchers) watcher.end()
    await server.stop()
  }
}
