// Promise: whatever the code above does wrong, the database itself refuses a row of one society that points into
// another, a second life for what is only ever added, and a change of what is frozen.

import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../setup/copy'
import { aDay, got, type World, world } from '../society/setup/world'

let close: () => Promise<void>
let db: Database.Database
let one: World
let two: World
let dayId: DayId
let otherDay: DayId

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  one = await world('one')
  two = await world('two')
  dayId = (await aDay(one)).dayId
  otherDay = (await aDay(two)).dayId
  for (const [w, id] of [
    [one, dayId],
    [two, otherDay],
  ] as const) {
    const at = { dayId: id, version: 1 }
    got(await enterPlayers(w.actor, { ...at, enter: w.people.map((personId) => ({ personId })) }))
    got(await freezeHandicaps(w.actor, { ...at, version: 2 }))
    got(await makeDraw(w.actor, { ...at, version: 3, way: 'entry-order', groupSize: 4, seed: 1 }))
    got(await publishStart(w.actor, { ...at, version: 4 }))
  }
  db = new Database(own.file)
  db.pragma('foreign_keys = ON')
})
afterAll(async () => {
  db.close()
  await close()
})

const run =
  (sql: string, ...values: unknown[]) =>
  () =>
    db.prepare(sql).run(...values)
const id = (sql: string, ...values: unknown[]) => (db.prepare(sql).get(...values) as { id: string }).id
const entry = (day: string) => id('SELECT id FROM "Entry" WHERE "dayId" = ? LIMIT 1', day)
const card = (day: string) =>
  id('SELECT c.id FROM "Card" c JOIN "Entry" e ON e.id = c."entryId" WHERE e."dayId" = ? LIMIT 1', day)
const competition = (day: string, number: number) =>
  id('SELECT id FROM "Competition" WHERE "dayId" = ? AND number = ?', day, number)

describe('a row of one society that points into another', () => {
  it.each([
    ['a day into another season', () => run('UPDATE "Day" SET "seasonId" = ? WHERE id = ?', two.seasonId, dayId)],
    [
      'a round on another course',
      () => run('UPDATE "Round" SET "courseId" = ? WHERE "dayId" = ?', two.courseId, dayId),
    ],
    [
      'an entry of another person',
      () => run('UPDATE "Entry" SET "personId" = ? WHERE id = ?', two.people[0], entry(dayId)),
    ],
    [
      'an entry on a tee of another day',
      () =>
        run(
          'UPDATE "Entry" SET "roundTeeId" = (SELECT "roundTeeId" FROM "Entry" WHERE id = ?) WHERE id = ?',
          entry(otherDay),
          entry(dayId),
        ),
    ],
    [
      'a card marked by a stranger',
      () => run('UPDATE "Card" SET "markerId" = ? WHERE id = ?', entry(otherDay), card(dayId)),
    ],
    [
      'a playing handicap in another day',
      () => run('INSERT INTO "PlayingHandicap" VALUES (?, ?, 10)', entry(dayId), competition(otherDay, 1)),
    ],
    [
      'a side with a stranger',
      () =>
        run(
          'INSERT INTO "SideMember" ("sideId","competitionId","entryId","position") SELECT "sideId","competitionId",?,4 FROM "SideMember" WHERE "competitionId" = ? LIMIT 1',
          entry(otherDay),
          competition(dayId, 2),
        ),
    ],
    [
      'a group with a stranger',
      () =>
        run(
          'INSERT INTO "GroupPlace" ("groupId","entryId","position") SELECT g.id, ?, 4 FROM "Group" g JOIN "Round" r ON r.id = g."roundId" WHERE r."dayId" = ? LIMIT 1',
          entry(otherDay),
          dayId,
        ),
    ],
    [
      'a figure of another person',
      () =>
        run(
          `INSERT INTO "HandicapRecord" ("id","societyId","personId","source","indexTenths","from","reason","recordedAt","sequence") VALUES ('x', ?, ?, 'society', 100, '2031-01-01', 'r', '2031-01-01', 99)`,
          one.actor.societyId,
          two.people[0],
        ),
    ],
    [
      'a match with a stranger',
      () =>
        run(
          `INSERT INTO "Pairing" ("id","societyId","competitionId","number","entryAId","entryBId") VALUES ('x', ?, ?, 1, ?, ?)`,
          one.actor.societyId,
          competition(dayId, 1),
          entry(dayId),
          entry(otherDay),
        ),
    ],
    [
      'a match of a player with himself',
      () =>
        run(
          `INSERT INTO "Pairing" ("id","societyId","competitionId","number","entryAId","entryBId") VALUES ('x', ?, ?, 1, ?, ?)`,
          one.actor.societyId,
          competition(dayId, 1),
          entry(dayId),
          entry(dayId),
        ),
    ],
    [
      'a day of another society added up',
      () =>
        run(
          'INSERT INTO "CountedDay" (societyId, competitionId, number, dayId) VALUES (?, ?, 1, ?)',
          one.actor.societyId,
          competition(dayId, 1),
          otherDay,
        ),
    ],
    [
      'a day added to itself',
      () =>
        run(
          'INSERT INTO "CountedDay" (societyId, competitionId, number, dayId) VALUES (?, ?, 1, ?)',
          one.actor.societyId,
          competition(dayId, 1),
          dayId,
        ),
    ],
    [
      'a ruling on a day of another society',
      () => run(`INSERT INTO "DayRuling" VALUES (?, ?, 1, 'abandoned', '{}')`, one.actor.societyId, otherDay),
    ],
  ])('%s is refused', (_, attempt) => {
    expect(attempt()).toThrow()
  })
})

describe('what is only ever added', () => {
  it.each([
    ['a handicap record is never edited', 'UPDATE "HandicapRecord" SET "indexTenths" = 1'],
    ['a handicap record is never deleted', 'DELETE FROM "HandicapRecord"'],
  ])('%s', (_, sql) => {
    expect(run(sql)).toThrow(/added, never/)
  })

  it('nor are facts, rulings and publications', () => {
    const cardId = card(dayId)
    const societyId = one.actor.societyId
    db.prepare(
      `INSERT INTO "Device" ("id","societyId","firstSeen","lastSeen") VALUES ('phone', ?, '2031-06-14', '2031-06-14')`,
    ).run(societyId)
    db.prepare(
      `INSERT INTO "ScoreFact" ("societyId","cardId","hole","strokes","outcome","writer","deviceId","seq","writtenAt","receivedAt") VALUES (?, ?, 1, 4, 'holed', 'desk', 'phone', 1, '2031-06-14', '2031-06-14')`,
    ).run(societyId, cardId)
    db.prepare(
      `INSERT INTO "Ruling" ("id","societyId","dayId","cardId","number","kind","clause","reason","byUserId","byName","ruledAt") VALUES ('r', ?, ?, ?, 1, 'card-stands', '', 'because', 'u', 'N', '2031-06-14')`,
    ).run(societyId, dayId, cardId)
    db.prepare(
      `INSERT INTO "Publication" ("id","societyId","dayId","number","sheet","edition","scoreVersion","byUserId","byName","publishedAt") VALUES ('p', ?, ?, 1, '{}', '2024', 0, 'u', 'N', '2031-06-14')`,
    ).run(societyId, dayId)
    db.prepare(
      `INSERT INTO "PlayStop" ("societyId","dayId","kind","reason","byUserId","byName","toldAt") VALUES (?, ?, 'resume', 'Dry again', 'u', 'N', '2031-06-14')`,
    ).run(societyId, dayId)
    db.prepare(
      `INSERT INTO "DayRuling" ("societyId","dayId","number","kind","ruling") VALUES (?, ?, 1, 'taken-back', '{"kind":"taken-back","number":1,"replaces":1,"reason":"r","byUserId":"u","byName":"N","ruledAt":"2031-06-14T10:00:00.000Z"}')`,
    ).run(societyId, dayId)
    db.prepare(
      `INSERT INTO "ActRecord" ("societyId","at","act","actorKind","actorName","area","subject") VALUES (?, '2031-06-14', 'close-day', 'officer', 'N', 'results', 'Spring Cup')`,
    ).run(societyId)
    for (const table of ['ScoreFact', 'Ruling', 'Publication', 'PlayStop', 'DayRuling', 'ActRecord']) {
      expect(run(`DELETE FROM "${table}"`)).toThrow(/never deleted/)
      expect(run(`UPDATE "${table}" SET "societyId" = "societyId"`)).toThrow(/never edited/)
    }
  })

  it('a second fact of the same number from the same phone, and a ruling on a card of another day, are refused', () => {
    expect(
      run(
        `INSERT INTO "ScoreFact" ("societyId","cardId","hole","strokes","outcome","writer","deviceId","seq","writtenAt","receivedAt") VALUES (?, ?, 2, 5, 'holed', 'desk', 'phone', 1, '2031-06-14', '2031-06-14')`,
        one.actor.societyId,
        card(dayId),
      ),
    ).toThrow(/UNIQUE/)
    expect(
      run(
        `INSERT INTO "Ruling" ("id","societyId","dayId","cardId","number","kind","clause","reason","byUserId","byName","ruledAt") VALUES ('s', ?, ?, ?, 2, 'card-stands', '', 'because', 'u', 'N', '2031-06-14')`,
        one.actor.societyId,
        dayId,
        card(otherDay),
      ),
    ).toThrow()
  })
})

describe('what is frozen', () => {
  it.each([
    ['a figure', () => run('UPDATE "Entry" SET "indexTenths" = 1 WHERE id = ?', entry(dayId))],
    ['a course handicap', () => run('UPDATE "Entry" SET "courseHandicap" = 77 WHERE id = ?', entry(dayId))],
    [
      'a playing handicap',
      () => run('UPDATE "PlayingHandicap" SET "playingHandicap" = 77 WHERE "entryId" = ?', entry(dayId)),
    ],
    ['the tees', () => run('UPDATE "RoundTee" SET "slopeRating" = 100')],
    ['the holes', () => run('UPDATE "RoundTeeHole" SET "par" = 5 WHERE "par" = 4')],
    ['the terms', () => run(`UPDATE "Competition" SET "terms" = '{}'`)],
    ['the form of play', () => run(`UPDATE "Competition" SET "format" = 'medal'`)],
  ])('%s stays', (_, attempt) => {
    expect(attempt()).toThrow(/frozen/)
  })
})

describe('a wrong state', () => {
  it.each([
    ['a day frozen without its moment', `UPDATE "Day" SET "frozenAt" = NULL`],
    ['a day closed without its moment', `UPDATE "Day" SET "status" = 'closed'`],
    ['a card taken in without its moment', `UPDATE "Card" SET "state" = 'taken-in'`],
    ['a card marked by its own player', `UPDATE "Card" SET "markerId" = "entryId"`],
    [
      'a player in two groups',
      `INSERT INTO "GroupPlace" SELECT "groupId", "entryId", "position" + 1 FROM "GroupPlace"`,
    ],
    ['a member with a host', `UPDATE "Entry" SET "hostId" = "personId"`],
    ['a stroke index twice', `UPDATE "TeeHole" SET "strokeIndex" = 1`],
    ['a slope beyond the scale', `UPDATE "Tee" SET "slopeRating" = 156`],
    ['an address part with a space', `UPDATE "Society" SET "slug" = 'two words'`],
    ['an unknown draw', `UPDATE "Round" SET "drawWay" = 'cards'`],
  ])('%s is refused', (_, sql) => {
    expect(run(sql)).toThrow()
  })

  it('and after all of this the book is whole', async () => {
    expect(db.pragma('foreign_key_check')).toEqual([])
    expect(db.pragma('integrity_check')).toEqual([{ integrity_check: 'ok' }])
    expect((await readDayRecord({ societyId: one.actor.societyId, dayId }))?.cards).toHaveLength(8)
  })
})
