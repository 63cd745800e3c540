// Promise: whoever runs the server may lose power in the middle of a restore, a migration, or the reading-in of a society,
// and an officer in the middle of an import: afterwards the book is the one of before or the one of after, whole; a start
// brings it up to date; and the same act done again ends as if nothing had been.
//
// The process kills itself (SIGKILL) before a step that is rolled, or is killed by the clock, which also reaches inside a
// step of SQLite. ACT_KILLS says how often each act dies.
import { randomUUID } from 'node:crypto'
import { cpSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import type { Actor } from '@/lib/facts/actor'
import { societyFiles } from '@/lib/society/export-society'
import { copiesFolder, faultOf, makeCopy } from '@/lib/store/copies'
import { migrate } from '@/lib/store/migrate'
import { migrateSafely } from '@/lib/store/migrate-safely'
import { openAsBook, unpackFirstBook } from '../safety/first-book'
import { FOLDER } from '../setup/book'
import { ownBook } from '../setup/copy'
import { world } from '../society/setup/world'
import { dice } from './dice'
import { actThatDies } from './dying-process'
import { bundled } from './server-process'

const KILLS = Number(process.env.ACT_KILLS ?? 1)
// Nothing here is about time; a busy machine starts a process in ten seconds instead of half a second.
vi.setConfig({ testTimeout: 3_600_000, hookTimeout: 600_000 })

let bundle: string
let folder: string
let first: string
let present: string
let desk: { readonly file: string; readonly actor: Actor }

/** Everything in a book but the ledger of its migrations, which is dated. Written rows that are dated are dated alike. */
function contents(file: string): string {
  const db = new Database(file, { readonly: true })
  try {
    const tables = db
      .prepare(
        `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '\\_%' ESCAPE '\\' ORDER BY name`,
      )
      .pluck()
      .all() as string[]
    const all = tables.map((name) => [
      name,
      db
        .prepare(`SELECT * FROM "${name}"`)
        .raw()
        .all()
        .map((row) => JSON.stringify(row))
        .sort(),
    ])
    return JSON.stringify(all, null, 1)
  } finally {
    db.close()
  }
}

/** How many rows each table has: what is drawn anew at each reading-in, such as links, is not compared. */
function sizes(file: string): string {
  const all = JSON.parse(contents(file)) as [string, unknown[]][]
  return JSON.stringify(all.map(([name, rows]) => [name, rows.length]))
}

/** The files of a book in a folder of its own, as a killed server leaves them: with a journal that is not written back. */
function asKilledServerLeftIt(from: string): string {
  const to = join(folder, randomUUID(), 'daybook.db')
  mkdirSync(dirname(to))
  cpSync(from, to)
  const db = new Database(to)
  db.pragma('journal_mode = WAL')
  db.pragma('wal_autocheckpoint = 0')
  db.exec(`CREATE TABLE IF NOT EXISTS "Last" (word TEXT); INSERT INTO "Last" VALUES ('in the journal only')`)
  const left = join(folder, randomUUID(), 'daybook.db')
  mkdirSync(dirname(left))
  for (const part of ['', '-wal']) cpSync(to + part, left + part)
  db.close()
  return left
}

function copyOfBook(from: string): string {
  const to = join(folder, randomUUID(), 'daybook.db')
  mkdirSync(dirname(to))
  cpSync(from, to)
  return to
}

interface Tried {
  readonly fresh: () => string
  readonly act: readonly string[]
  readonly reads: (file: string) => string
  /** May more than the two states be there? For migrations, which are done one by one. */
  readonly between?: (file: string) => void
  readonly seed: number
}

/** Dies, is looked at, is started, is done again. */
async function killed({ fresh, act, reads, between, seed }: Tried): Promise<void> {
  const roll = dice(seed)
  const undisturbed = fresh()
  const before = reads(undisturbed)
  const whole = await actThatDies(bundle, undisturbed, act)
  const after = reads(undisturbed)
  expect(after).not.toBe(before)
  expect(whole.steps).toBeGreaterThan(1)
  let deaths = 0
  for (let n = 0; n < KILLS; n++) {
    const file = fresh()
    const death =
      n % 2 === 0 || whole.took < 2 ? { step: 1 + roll(whole.steps) } : { after: roll(Math.ceil(whole.took)) }
    const told = `${act[0]}, ${JSON.stringify(death)}`
    const ending = await actThatDies(bundle, file, act, death)
    if (ending.died) deaths++
    expect(existsSync(file), told).toBe(true)
    expect(faultOf(file), told).toBeNull()
    const now = reads(file)
    if (between) between(file)
    else expect([before, after].includes(now), `${told}: neither the old nor the new book`).toBe(true)
    if (!ending.died) expect(now, told).toBe(after)
    await migrateSafely(new Date('2031-06-02T12:00:00Z'), file)
    expect(faultOf(file), told).toBeNull()
    if (now !== after) await actThatDies(bundle, file, act)
    expect(reads(file), `${told}, and done again`).toBe(after)
    expect(faultOf(file), told).toBeNull()
  }
  if (KILLS >= 20) expect(deaths).toBeGreaterThan(KILLS / 2)
  process.stdout.write(`${act[0]}: ${deaths} of ${KILLS} ends by SIGKILL, ${whole.steps} steps\n`)
}

beforeAll(async () => {
  folder = join(process.env[FOLDER]!, 'killed-acts')
  mkdirSync(folder)
  bundle = await bundled('dying-act.ts', 'dying-act')
  first = unpackFirstBook('killed-acts-first')
  present = copyOfBook(first)
  migrate(present)
  const own = await ownBook()
  const { actor } = await world('killed')
  await own.close()
  desk = { file: own.file, actor }
})

describe('killed in the middle', () => {
  it('of putting a copy back: the old book with its journal, or the copy of this version', async () => {
    const store = copyOfBook(first)
    const made = await makeCopy('asked', new Date('2031-05-01T12:00:00Z'), store, copiesFolder(store))
    const copy = join(copiesFolder(store), made.fileName)
    let last = ''
    await killed({
      fresh: () => (last = asKilledServerLeftIt(present)),
      act: ['restore', copy],
      reads: contents,
      seed: 41,
    })
    // The book as it was is beside it, with what stood in its journal.
    const asides = readdirSync(dirname(last)).filter((name) => /^aside-.*\.db$/.test(name))
    expect(asides.some((name) => contents(join(dirname(last), name)).includes('in the journal only'))).toBe(true)
  })

  it('of bringing a book of the first version up to date: every row of it, and the next start finishes', async () => {
    const db = new Database(first, { readonly: true })
    const rows = (table: string) => db.prepare(`SELECT count(*) FROM "${table}"`).pluck().get()
    const was = Object.fromEntries(['Person', 'Entry', 'ScoreFact', 'Publication'].map((name) => [name, rows(name)]))
    db.close()
    await killed({
      fresh: () => copyOfBook(first),
      act: ['migrate'],
      reads: contents,
      between: (file) => {
        const there = Object.fromEntries(JSON.parse(sizes(file)) as [string, number][])
        expect(there).toMatchObject(was)
      },
      seed: 43,
    })
  })

  it('of reading a society in: it is there to the last row, or not at all', async () => {
    const close = await openAsBook(present)
    const files = (await societyFiles({ slug: 'fernbrake' }))!.files
    await close()
    const from = join(folder, 'society.json')
    writeFileSync(from, JSON.stringify([...files]))
    await killed({ fresh: () => copyOfBook(desk.file), act: ['society', from], reads: sizes, seed: 47 })
  })

  it('of importing a member list: everybody on it, or nobody', async () => {
    const from = join(folder, 'members.csv')
    const names = Array.from(
      { length: 40 },
      (_, at) => `Wren ${'ABCDEFGH'[at % 8]}ldmere${'abcdefgh'[at >> 3]},${at}.${at % 10},M`,
    )
    writeFileSync(from, ['Name,Index,Sex', ...names].join('\n'))
    await killed({
      fresh: () => copyOfBook(desk.file),
      act: ['members', from, JSON.stringify(desk.actor)],
      reads: sizes,
      seed: 53,
    })
  })

  it('of importing a course card: all its tees and holes, or none', async () => {
    const from = join(folder, 'card.csv')
    const holes = Array.from({ length: 18 }, (_, at) => `${at + 1},4,${at + 1},${300 + at}`)
    const ratings = ['Course rating men,,,69.2', 'Slope men,,,125']
    writeFileSync(from, ['Course,Gorse Hill', 'Hole,Par,S.I.,Yellow', ...holes, ...ratings].join('\n'))
    await killed({
      fresh: () => copyOfBook(desk.file),
      act: ['course', from, JSON.stringify(desk.actor)],
      reads: sizes,
      seed: 59,
    })
  })
})
