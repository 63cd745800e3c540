// Promise: a book of the first version is brought up to this one with every row, and every board and every published
// sheet reads as it did.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { dayBoard, resultSheet } from '@/lib/society/read-board'
import { copyList, faultOf } from '@/lib/store/copies'
import { knownMigrations } from '@/lib/store/migrate'
import { migrateSafely } from '@/lib/store/migrate-safely'
import { got } from '../society/setup/world'
import { openAsBook, unpackFirstBook } from './first-book'

interface Before {
  readonly status: string
  readonly date: string
  readonly course: string
  readonly competitions: readonly {
    readonly name: string
    readonly unit: string
    readonly rows: readonly unknown[][]
  }[]
}

const before = JSON.parse(readFileSync(join(import.meta.dirname, 'fixtures/first-book.boards.json'), 'utf8')) as Record<
  string,
  Before
>

const rowsOf = (file: string) => {
  const db = new Database(file, { readonly: true })
  const tables = db
    .prepare(
      `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '_prisma%'`,
    )
    .pluck()
    .all() as string[]
  const rows = Object.fromEntries(
    tables.map((name) => [name, db.prepare(`SELECT count(*) FROM "${name}"`).pluck().get()]),
  )
  db.close()
  return rows
}

let file: string
let close: () => Promise<void>
let rowsBefore: Record<string, unknown>
let applied: readonly string[]

beforeAll(async () => {
  file = unpackFirstBook('older-book')
  rowsBefore = rowsOf(file)
  close = await openAsBook(file)
  applied = (await migrateSafely(new Date('2026-11-25T12:00:00Z'))).applied
})
afterAll(() => close())

describe('a book of the first version', () => {
  it('is brought up with every row, after a copy', () => {
    expect(applied).toEqual(
      knownMigrations()
        .slice(1)
        .map((one) => one.name),
    )
    expect(faultOf(file)).toBeNull()
    expect(rowsOf(file)).toMatchObject(rowsBefore)
    expect(copyList().some((copy) => copy.kind === 'before-migration')).toBe(true)
  })

  it.each(Object.keys(before))('shows the board of %s as before', async (day) => {
    const board = got(await dayBoard('fernbrake', day))
    expect({
      status: board.status,
      date: board.date,
      course: board.courseName,
      competitions: board.competitions.map(({ name, unit, rows }) => ({
        name,
        unit,
        rows: rows.map((row) => [row.place, row.name, row.score, row.holesPlayed, row.tied, row.tieSentence]),
      })),
    }).toEqual(before[day])
  })

  it('shows every published sheet as it was frozen', async () => {
    const db = new Database(file, { readonly: true })
    const sheets = db
      .prepare(
        `SELECT d.slug AS day, p.number AS number, p.sheet AS sheet FROM "Publication" p JOIN "Day" d ON d.id = p.dayId`,
      )
      .all() as { day: string; number: number; sheet: string }[]
    db.close()
    expect(sheets.length).toBeGreaterThan(2)
    for (const { day, number, sheet } of sheets)
      expect(got(await resultSheet('fernbrake', day, number)).sheet).toEqual(JSON.parse(sheet))
  })
})
