// Promise: what is exported and read in again is the same book, to the byte of a second export; a file with a fault is
// refused by file, row and column, and nothing of it gets in; no secret and no other society is ever in it.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import fc from 'fast-check'
import Papa from 'papaparse'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type CellKind, cellOf, valueOfCell } from '@/lib/facts/export-cells'
import { EXPORT_KINDS, NOT_EXPORTED } from '@/lib/facts/export-kinds'
import type { SocietyId, UserId } from '@/lib/facts/ids'
import { csvOf, exportSociety, type PlainFiles, packed, societyFiles } from '@/lib/society/export-society'
import { importSociety } from '@/lib/society/import-society'
import { dayBoard, fixtures, resultSheet } from '@/lib/society/read-board'
import { migrate } from '@/lib/store/migrate'
import { columnsOf } from '@/lib/store/society-rows'
import { FOLDER } from '../setup/book'
import { asId } from '../setup/ids'
import { got } from '../society/setup/world'
import { migratedFirstBook, openAsBook } from './first-book'

let close: () => Promise<void>
let file: string
let files: PlainFiles
let boards: unknown

/** The boards and sheets as a reader sees them, but for when they were counted and by which number of change. */
async function everythingShown() {
  const { days } = got(await fixtures('fernbrake'))
  return Promise.all(
    days.map(async (day) => {
      const { countedAt: _, ...board } = got(await dayBoard('fernbrake', day.daySlug))
      const sheet = await resultSheet('fernbrake', day.daySlug)
      return { day, board, sheet: sheet.ok ? sheet.value : sheet.code }
    }),
  )
}

async function emptyBook(name: string): Promise<string> {
  const empty = join(process.env[FOLDER]!, `${name}.db`)
  migrate(empty)
  await close()
  close = await openAsBook(empty)
  return empty
}

beforeAll(async () => {
  const first = await migratedFirstBook('export')
  file = first.file
  close = first.close
  fillTheRest(file)
  boards = await everythingShown()
  files = (await societyFiles({ slug: 'fernbrake' }))!.files
})
afterAll(() => close())

/** The kinds of rows the first version did not have, in one of each, so that none is left out of the round. */
function fillTheRest(book: string) {
  const db = new Database(book)
  const one = (sql: string) => db.prepare(sql).get() as Record<string, string>
  const day = one(`SELECT id, societyId FROM "Day" WHERE status = 'called' LIMIT 1`)
  const competition = one(`SELECT id FROM "Competition" WHERE dayId = '${day.id}' LIMIT 1`)
  const earlier = one(`SELECT id FROM "Day" WHERE status = 'closed' LIMIT 1`)
  const entries = db.prepare(`SELECT id FROM "Entry" WHERE dayId = ?`).pluck().all(day.id) as string[]
  const device = one(`SELECT id FROM "Device" LIMIT 1`)
  const s = day.societyId
  const t = '2026-06-13T10:00:00.000+00:00'
  db.pragma('foreign_keys = ON')
  db.prepare(
    `INSERT INTO "CountedDay" (societyId, competitionId, number, dayId, countedUnder) VALUES (?, ?, 1, ?, 'this-day')`,
  ).run(s, competition.id, earlier.id)
  db.prepare(`INSERT INTO "Team" (id, societyId, dayId, number, name) VALUES ('team', ?, ?, 1, '=SUM(A1)')`).run(
    s,
    day.id,
  )
  db.prepare(`INSERT INTO "TeamMember" VALUES (?, 'team', ?, 1)`).run(s, entries[0])
  db.prepare(
    `INSERT INTO "Pairing" (id, societyId, competitionId, number, entryAId, entryBId) VALUES ('pair', ?, ?, 1, ?, ?)`,
  ).run(s, competition.id, entries[0], entries[1])
  db.prepare(`INSERT INTO "Side" (id, societyId, competitionId, number, ballLostOn) VALUES ('side', ?, ?, 90, 7)`).run(
    s,
    competition.id,
  )
  db.prepare(
    `INSERT INTO "BallFact" (societyId, dayId, sideId, kind, hole, entryId, writer, userId, deviceId, seq, writtenAt, receivedAt) VALUES (?, ?, 'side', 'drive', 3, ?, 'desk', 'u', ?, 9001, ?, ?)`,
  ).run(s, day.id, entries[0], device.id, t, t)
  db.prepare(
    `INSERT INTO "Concession" (societyId, dayId, pairingId, hole, by, writerId, deviceId, seq, writtenAt, receivedAt) VALUES (?, ?, 'pair', 4, 'a', ?, ?, 9002, ?, ?)`,
  ).run(s, day.id, entries[0], device.id, t, t)
  db.prepare(
    `INSERT INTO "PlayStop" (societyId, dayId, kind, reason, byUserId, byName, toldAt) VALUES (?, ?, 'stop-at-once', 'Lightning', 'u', 'P. Ashgill', ?)`,
  ).run(s, day.id, t)
  db.prepare(`INSERT INTO "DayRuling" VALUES (?, ?, 1, 'abandoned', ?)`).run(
    s,
    day.id,
    JSON.stringify({
      kind: 'abandoned',
      number: 1,
      reason: 'Lightning',
      byUserId: 'u',
      byName: 'P. Ashgill',
      ruledAt: '2026-06-13T15:00:00.000Z',
      afterHole: 9,
      counts: 'level',
    }),
  )
  db.prepare(
    `INSERT INTO "ActRecord" (societyId, at, act, actorKind, actorName, area, subject, before) VALUES (?, ?, 'change-day', 'officer', 'P. Ashgill', 'day', '-1+1', '{"First tee":"10:00"}')`,
  ).run(s, t)
  db.prepare(`INSERT INTO "RefusedFact" VALUES (?, 9002, ?, '{"hole":1}', 'too-late', 'Too late.', ?)`).run(
    device.id,
    s,
    t,
  )
  db.prepare(`UPDATE "Society" SET settings = '{"leavers":"initials"}'`).run()
  db.close()
}

describe('a society as plain files', () => {
  it('leaves out no table and no column without saying why', () => {
    const db = new Database(file, { readonly: true })
    const tables = db
      .prepare(
        `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '_prisma%'`,
      )
      .pluck()
      .all() as string[]
    const said = new Set([...EXPORT_KINDS.map((kind) => kind.table), ...Object.keys(NOT_EXPORTED)])
    expect(tables.filter((table) => !said.has(table))).toEqual([])
    for (const kind of EXPORT_KINDS) {
      const all = (db.pragma(`table_info("${kind.table}")`) as { name: string }[]).map((column) => column.name)
      const left = all.filter((name) => !columnsOf(db, kind).some((column) => column.name === name))
      const why = ['societyId', ...(kind.renewed ?? []), ...(kind.counted ?? [])]
      const ofUser = kind.table === 'User' ? ['emailVerified', 'image', 'updatedAt'] : []
      expect(left.filter((name) => ![...why, ...ofUser].includes(name))).toEqual([])
    }
    db.close()
    for (const { name } of EXPORT_KINDS) expect(files.has(`${name}.csv`)).toBe(true)
    const { rows } = JSON.parse(files.get('export.json')!) as { rows: Record<string, number> }
    expect(Object.entries(rows).filter(([, n]) => n === 0)).toEqual([])
  })

  it('comes back as the same book, to the byte, with the same boards and sheets', async () => {
    await emptyBook('read-in')
    const done = got(await importSociety(files))
    expect(done.officers.map((officer) => officer.email)).toContain('secretary@example.org')
    const again = (await societyFiles({ slug: 'fernbrake' }))!.files
    expect([...again.keys()]).toEqual([...files.keys()])
    for (const [name, text] of files) expect(again.get(name), name).toBe(text)
    expect(Buffer.from(await packed(again)).equals(Buffer.from(await packed(files)))).toBe(true)
    expect(await everythingShown()).toEqual(boards)
    // A second time there is no room for it.
    expect(await importSociety(files)).toMatchObject({ ok: false, code: 'society-there' })
  })

  it('holds no password, no key, no link and no code', () => {
    const db = new Database(file, { readonly: true })
    const secrets = [
      `SELECT "password" FROM "Account"`,
      `SELECT "pageKey" FROM "Person"`,
      `SELECT "linkKey" FROM "Group"`,
      `SELECT "code" FROM "Group"`,
    ].flatMap((sql) => db.prepare(sql).pluck().all() as string[])
    db.close()
    expect(secrets.length).toBeGreaterThan(60)
    const all = [...files.values()].join('\n')
    expect(secrets.filter((secret) => all.includes(secret))).toEqual([])
  })

  it('holds nothing of another society', async () => {
    await close()
    close = await openAsBook(file)
    const db = new Database(file)
    db.prepare(
      `INSERT INTO "Society" (id, slug, name, createdAt) VALUES ('zz', 'zz', 'Zealous Zebras', '2026-01-01T00:00:00.000+00:00')`,
    ).run()
    db.prepare(`INSERT INTO "Season" VALUES ('zs', 'zz', 'Zebra season', '2026-01-01', '2026-12-31')`).run()
    db.close()
    const again = (await societyFiles({ slug: 'fernbrake' }))!.files
    expect([...again.values()].join('')).not.toMatch(/zebra/i)
    const theirs = (await societyFiles({ slug: 'zz' }))!.files
    expect([...theirs.values()].join('')).not.toMatch(/fernbrake|ashgill/i)
    expect(await societyFiles({ slug: 'nobody' })).toBeNull()
  })

  it('is for the secretary and the captain, is recorded, and not for a treasurer', async () => {
    const db = new Database(file, { readonly: true })
    const societyId = db.prepare(`SELECT id FROM "Society" WHERE slug = 'fernbrake'`).pluck().get() as SocietyId
    db.close()
    const officer = (duty: 'secretary' | 'treasurer') => ({
      kind: 'officer' as const,
      societyId,
      userId: asId<UserId>('u'),
      name: 'P. Ashgill',
      duties: [duty],
    })
    expect(await exportSociety(officer('treasurer'))).toMatchObject({ code: 'not-allowed' })
    expect(await exportSociety({ kind: 'anybody' })).toMatchObject({ code: 'not-allowed' })
    const made = got(await exportSociety(officer('secretary'), new Date('2026-11-25T10:00:00Z')))
    expect(made.fileName).toBe('fernbrake-2026-11-25.zip')
    const after = new Database(file, { readonly: true })
    expect(after.prepare(`SELECT count(*) FROM "ActRecord" WHERE act = 'take-export'`).pluck().get()).toBe(1)
    after.close()
  })
})

describe('a faulty file', () => {
  const spoilt: readonly [string, string, (text: string) => string, RegExp][] = [
    [
      'a word that is none',
      'people.csv',
      (text) => text.replace(',member,', ',memmber,'),
      /^people\.csv, row \d+, kind$/,
    ],
    ['a figure that is none', 'tees.csv', (text) => text.replace(/,(\d{3}),/, ',12a,'), /^tees\.csv, row 2, \w+$/],
    [
      'somebody who is not there',
      'entries.csv',
      (text) => text.replace(/\r\n([^,]+),([^,]+),([^,]+)/, '\r\n$1,$2,nobody'),
      /^entries\.csv, row 2, personId$/,
    ],
    ['a missing column', 'days.csv', (text) => text.replace(',status', ',stauts'), /^days\.csv, row 1$/],
    ['a cell too many', 'prizes.csv', (text) => text.replace(/\r\n$/, ',more\r\n'), /^prizes\.csv, row \d+$/],
    [
      'terms that are none',
      'competitions.csv',
      (text) => text.replace('""allowance""', '""alowance""'),
      /^competitions\.csv, row \d+, terms$/,
    ],
    [
      'a stroke index twice',
      'round-tee-holes.csv',
      (text) => text.replace(/^(.*\r\n)(.*\r\n)/, '$1$2$2'),
      /^round-tee-holes\.csv, row 3, /,
    ],
    ['a moment that is none', 'days.csv', (text) => text.replace(/T\d\d:/, ' at '), /^days\.csv, row \d+, \w+$/],
    ['a formula mark taken off by hand', 'society.csv', (text) => `${text}x`, /^society\.csv/],
    ['an ended quotation', 'rulings.csv', (text) => `${text}"`, /^rulings\.csv, row \d+$/],
  ]

  it.each(spoilt)('with %s is refused in %s by its place, and nothing gets in', async (_, name, spoil, place) => {
    const text = files.get(name)!
    expect(spoil(text)).not.toBe(text)
    const empty = await emptyBook(`faulty-${name}-${_.length}`)
    const answer = await importSociety(new Map(files).set(name, spoil(text)))
    if (answer.ok) throw new Error('it was read in')
    expect(answer.code).toBe('not-understood')
    expect(answer.faults[0]!.place).toMatch(place)
    const db = new Database(empty, { readonly: true })
    for (const table of ['Society', 'Person', 'User', 'Account', 'Day'])
      expect(db.prepare(`SELECT count(*) FROM "${table}"`).pluck().get()).toBe(0)
    db.close()
  })

  it('missing altogether, or no export at all, is said', async () => {
    await emptyBook('not-an-export')
    expect(await importSociety(new Map())).toMatchObject({ code: 'not-an-export' })
    expect(await importSociety(new Map([['export.json', '{"daybookExport":2}']]))).toMatchObject({
      code: 'not-an-export',
    })
    const without = new Map(files)
    without.delete('cards.csv')
    expect(await importSociety(without)).toMatchObject({ faults: [{ place: 'cards.csv' }] })
  })
})

describe('a cell', () => {
  const text = fc.string({ unit: 'binary', maxLength: 30 }).filter((value) => value.isWellFormed())
  const nasty = fc.oneof(
    text,
    fc.constantFrom('=1+1', '@x', '+44', '-', "'", '', '\t', '\r\n', '"', ',', '\uFEFF', "'=x", ' '),
  )

  it('is never a formula, and comes back as it was, whatever is in it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.option(nasty), { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 8 }),
        (rows) => {
          const cells = rows.map((row) => row.map((value) => cellOf(value, 'text')))
          for (const cell of cells.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r\n]/)
          const read = Papa.parse<string[]>(csvOf([['a', 'b', 'c'], ...cells]), { delimiter: ',' }).data.slice(1, -1)
          const back = read.map((row) =>
            row.map((cell) => {
              const value = valueOfCell(cell, 'text')
              if ('wrong' in value) throw new Error(value.wrong)
              return value.value
            }),
          )
          expect(back).toEqual(rows)
        },
      ),
    )
  })

  it('of a number, a yes and a moment comes back too', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e12, max: 1e12 }),
        fc.nat(1),
        fc.date({ noInvalidDate: true, min: new Date(0), max: new Date('2999-12-31') }),
        (n, yes, at) => {
          const stored = at.toISOString().replace('Z', '+00:00')
          const there: [number | string, CellKind][] = [
            [n, 'whole'],
            [yes, 'yes-no'],
            [stored, 'moment'],
          ]
          for (const [value, kind] of there) expect(valueOfCell(cellOf(value, kind), kind)).toEqual({ value })
        },
      ),
    )
  })
})

describe('random books', () => {
  it('come back to the byte, with any words in them', async () => {
    const words = fc.sample(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 25 }), { numRuns: 400, seed: 7 })
    const signs = ['=cmd()', "'", '-2', 'a,b', 'say "no"', 'two\r\nlines', 'Łódź', '😀']
    const pick = (n: number) => (n % 3 === 0 ? signs[n % signs.length]! : words[n % words.length]!)
    for (const seed of [1, 2]) {
      const { file: random, close: done } = await migratedFirstBook(`random-${seed}`)
      const db = new Database(random)
      const people = db.prepare(`SELECT id FROM "Person"`).pluck().all() as string[]
      people.forEach((id, n) => {
        db.prepare(`UPDATE "Person" SET firstName = ?, familyName = ?, phone = ?, labels = ? WHERE id = ?`).run(
          pick(n * seed),
          pick(n + seed),
          n % 4 ? pick(n + 7) : null,
          JSON.stringify([pick(n + 3)]),
          id,
        )
      })
      db.prepare(`UPDATE "Day" SET notes = ?`).run(pick(seed * 11))
      db.prepare(`UPDATE "Course" SET place = ''`).run()
      db.close()
      const before = (await societyFiles({ slug: 'fernbrake' }))!.files
      await done()
      await emptyBook(`random-in-${seed}`)
      got(await importSociety(before))
      const after = (await societyFiles({ slug: 'fernbrake' }))!.files
      for (const [name, text] of before) expect(after.get(name), name).toBe(text)
    }
  })
})

describe('docs/export.md', () => {
  it('names every file', () => {
    const page = readFileSync('docs/export.md', 'utf8')
    for (const { name } of EXPORT_KINDS) expect(page).toContain(`\`${name}.csv\``)
  })
})
