// A full Saturday on one server process of the built application: phones deliver, everybody else watches.
//   LOAD_SCALES=1,2,4   how many times 200 phones and 1,000 watchers
//   LOAD_SECONDS=60     how long the day is watched at its own pace (each phone four scores a hole, a hole in 12 minutes)
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { book } from '../../lib/store/client'
import { migrate } from '../../lib/store/migrate'
import type { Figure, Figures } from '../bench-figures'
import { type LoadDay, loadBook, SOCIETY } from '../bench-load-book'
import { type Crowd, crowdOf, type Delivered, delays } from '../bench-load-crowd'
import { benchServer } from '../bench-server'

const SCALES = (process.env.LOAD_SCALES ?? '1,2,4').split(',').map(Number)
const SECONDS = Number(process.env.LOAD_SECONDS ?? 60)
const DAYS = 2
const WATCHERS_A_DAY = 500
const HOLE_SECONDS = 12 * 60
const SCORES_A_HOLE = 4
/** After a dead spot so many of each 200 phones deliver so many scores at once. */
const OUT_OF_THE_VALLEY = { phones: 50, scores: 40 }
/** What is on its way to the watchers when the last delivery is answered. */
const SETTLE_MS = 3_000

const ms = (figure: number) => (Number.isFinite(figure) ? `${Math.round(figure)} ms` : 'never')
const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time))

function part(figures: readonly number[], of: number): number {
  const sorted = [...figures].sort((a, b) => a - b)
  return sorted[Math.max(0, Math.ceil(sorted.length * of) - 1)] ?? Number.NaN
}

/** The same crowd every time. */
function chances(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return state / 2_147_483_648
  }
}

/** Each phone at its own moments; `pace` times as fast as on the day. */
async function atPace(crowd: Crowd, seconds: number, pace: number, chance: () => number): Promise<Delivered[]> {
  const sent: Promise<Delivered>[] = []
  const all = Math.round((crowd.phones.length * SCORES_A_HOLE * seconds * pace) / HOLE_SECONDS)
  const moments = Array.from({ length: all }, () => chance() * seconds * 1000).sort((a, b) => a - b)
  const began = performance.now()
  for (const moment of moments) {
    await wait(Math.max(0, began + moment - performance.now()))
    sent.push(crowd.phones[Math.floor(chance() * crowd.phones.length)]!.deliver(1, chance))
  }
  return Promise.all(sent)
}

function outOfTheValley(crowd: Crowd, scale: number, chance: () => number): Promise<Delivered[]> {
  const { phones, scores } = OUT_OF_THE_VALLEY
  const step = Math.floor(crowd.phones.length / (phones * scale))
  const out = crowd.phones.filter((_, at) => at % step === 0).slice(0, phones * scale)
  return Promise.all(out.map((phone) => phone.deliver(scores, chance)))
}

async function atScale(scale: number, prepared: string, days: readonly LoadDay[]): Promise<Figure[]> {
  const file = prepared.replace('.db', `-${scale}.db`)
  copyFileSync(prepared, file)
  const server = await benchServer(file)
  const crowd = crowdOf(server.base, SOCIETY, days.slice(0, DAYS * scale), WATCHERS_A_DAY)
  const chance = chances(scale)
  const figures: Figure[] = []
  const say = (what: string, measured: string, most: number | null, figure: number) =>
    figures.push({
      what: `${scale * 200} phones, ${scale * 1000} watchers: ${what}`,
      measured,
      target: most === null ? '-' : `under ${most} ms`,
      held: most === null ? null : figure < most,
    })
  try {
    await arrive(crowd)
    await atPace(crowd, 8, 4, chance)
    const phases = [
      ['at the pace of the day', () => atPace(crowd, SECONDS, 1, chance), scale === 1],
      ['ten times as fast', () => atPace(crowd, SECONDS / 2, 10, chance), false],
      [
        `${OUT_OF_THE_VALLEY.phones * scale} phones out of the valley`,
        () => outOfTheValley(crowd, scale, chance),
        false,
      ],
    ] as const
    for (const [name, play, promised] of phases) {
      const before = crowd.watchers.reduce((sum, one) => sum + one.asked, 0)
      const delivered = await play()
      await wait(SETTLE_MS)
      const answers = delivered.map((one) => one.answeredAt - one.sentAt)
      const seen = delays(delivered, crowd.watchers)
      const load = loadavg()[0]!.toFixed(1)
      const asked = crowd.watchers.reduce((sum, one) => sum + one.asked, 0) - before
      const answered = part(answers, 0.99)
      const watched = part(seen, 0.99)
      say(
        `${name}, ${answers.length} deliveries, answered p50 ${ms(part(answers, 0.5))}, p99 (load ${load})`,
        ms(answered),
        promised ? 150 : null,
        answered,
      )
      say(
        `${name}, on the boards p50 ${ms(part(seen, 0.5))}, ${asked} asked, p99`,
        ms(watched),
        promised ? 500 : null,
        watched,
      )
    }
    const lost = crowd.phones.reduce((sum, one) => sum + one.delivered, 0) - scoresIn(file)
    figures.push({ what: `scores lost at ${scale} ×`, measured: String(lost), target: '0', held: lost === 0 })
    return figures
  } finally {
    for (const watcher of crowd.watchers) watcher.end()
    await server.stop()
  }
}

/** Pages are opened one after another, not in one moment. */
async function arrive(crowd: Crowd): Promise<void> {
  for (let from = 0; from < crowd.watchers.length; from += 20) {
    const some = crowd.watchers.slice(from, from + 20)
    await Promise.all(some.map((watcher) => watcher.watch()))
    await Promise.all(some.map((watcher) => watcher.begin()))
  }
}

function scoresIn(file: string): number {
  const db = new Database(file, { readonly: true })
  const { count } = db.prepare('SELECT count(*) AS count FROM "ScoreFact"').get() as { count: number }
  db.close()
  return count
}

export async function measure(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'daybook-load-'))
  const file = join(folder, 'book.db')
  const before = process.env.DATABASE_URL
  try {
    migrate(file)
    process.env.DATABASE_URL = `file:${file}`
    const days = await loadBook(DAYS * Math.max(...SCALES))
    await book().$disconnect()
    const db = new Database(file)
    db.pragma('wal_checkpoint(TRUNCATE)')
    db.close()
    const figures: Figure[] = []
    for (const scale of SCALES) figures.push(...(await atScale(scale, file, days)))
    return figures
  } finally {
    if (before === undefined) delete process.env.DATABASE_URL
    else process.env.DATABASE_URL = before
    rmSync(folder, { recursive: true, force: true })
  }
}
