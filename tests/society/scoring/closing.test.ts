// Promise: a day is closed only when every card is in or ruled upon; its sheet is made once, frozen and numbered; a
// request sent twice is one act; a score that comes while the day is being closed counts or is late, never both.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import type { DayBoard } from '@/lib/boards/views'
import { parseDayFile } from '@/lib/facts/day-file'
import { scoreDay } from '@/lib/rules/score-day'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { closeDay } from '@/lib/society/close-day'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { nextSheet } from '@/lib/society/next-sheet'
import { publishResult } from '@/lib/society/publish-result'
import { dayBoard, fixtures, resultSheet } from '@/lib/society/read-board'
import { reopenDay } from '@/lib/society/reopen-day'
import { returns } from '@/lib/society/returns'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { takeCardIn } from '@/lib/society/take-card-in'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, over, Phone, playEverything } from './day-in-play'

let day: DayInPlay

beforeEach(async () => {
  day = await dayInPlay()
})
afterEach(() => day.close())

const desk = () => day.w.actor
const board = async (): Promise<DayBoard> => got(await dayBoard(day.slug, day.daySlug))

async function takeAllIn() {
  for (const card of (await day.record()).cards) got(await takeCardIn(desk(), { dayId: day.dayId, cardId: card.id }))
}
async function closed() {
  await playEverything(day, (at) => over(18 + (at % 5)))
  await takeAllIn()
  return got(await closeDay(desk(), { dayId: day.dayId, version: await day.version() }))
}

/** The score command reads the exported file; the board must say the same. */
async function boardAgreesWithDayFile() {
  const record = await day.record()
  const { dayFile } = got(await dayFileOf(desk(), day.dayId))
  const read = got(parseDayFile(JSON.parse(JSON.stringify(dayFile))))
  expect(read).toEqual(dayOfRecord(record))
  const now = await board()
  for (const result of scoreDay(read)) {
    const shown = now.competitions.find((one) => one.id === result.competition)!
    expect(shown.rows.map((row) => [row.entrant, row.place, row.tied, row.score, row.gross])).toEqual(
      result.standings.map((one) => [one.entrant, one.place, one.tied, one.score, one.gross]),
    )
  }
}

describe('closing', () => {
  it('refuses while a card is out, and names each with what it wants', async () => {
    await playEverything(day, () => over(18))
    const refused = await closeDay(desk(), { dayId: day.dayId, version: await day.version() })
    if (refused.ok) throw new Error('closed')
    expect(refused.code).toBe('cards-still-out')
    expect(refused.faults).toHaveLength(8)
    expect(refused.faults[0]?.sentence).toContain('accept it')
    await boardAgreesWithDayFile()
  })

  it('goes through once every card is in or ruled out, once, and then is not open to scores', async () => {
    const [first] = day.players(1)
    await playEverything(day, (at) => (at === 0 ? over(18).map((score, hole) => (hole > 14 ? null : score)) : over(20)))
    for (const card of (await day.record()).cards)
      if (card.entryId !== first) got(await takeCardIn(desk(), { dayId: day.dayId, cardId: card.id }))
    const cardId = day.cardOf(asId(first!))
    const notYet = await takeCardIn(desk(), { dayId: day.dayId, cardId: asId(cardId) })
    if (notYet.ok) throw new Error('taken in')
    expect(notYet.faults.map((fault) => fault.place)).toEqual(['hole 16', 'hole 17', 'hole 18', 'player', 'marker'])
    got(
      await ruleOnCard(desk(), {
        dayId: day.dayId,
        cardId: asId(cardId),
        kind: 'no-return',
        reason: 'Went home with a bad back.',
      }),
    )
    const version = await day.version()
    const [one, two] = await Promise.all([
      closeDay(desk(), { dayId: day.dayId, version }),
      closeDay(desk(), { dayId: day.dayId, version }),
    ])
    expect([got(one), got(two)]).toEqual([{ version: version + 1 }, { version: version + 1 }])
    const late = await new Phone(day, 1, first!).score(asId(first!), 16, 4).send()
    expect(late).toMatchObject([{ answer: 'late' }])
    const row = (await board()).competitions[0]!.rows.find((one) => one.entrant === first)
    expect(row).toMatchObject({ place: null, noPlace: 'no-return' })
    await boardAgreesWithDayFile()
  })

  it('while scores arrive leaves every score counted or late, and the closed board counts no late one', async () => {
    await playEverything(day, () => over(18))
    await takeAllIn()
    // One card comes out again: the committee rules it out, so that scores may still arrive while the day closes.
    const [first] = day.players(1)
    await book().card.updateMany({
      where: { entryId: first! },
      data: { state: 'out', takenInAt: null, takenInBy: null },
    })
    got(
      await ruleOnCard(desk(), {
        dayId: day.dayId,
        cardId: asId(day.cardOf(asId(first!))),
        kind: 'withdrawn',
        reason: 'Went home.',
      }),
    )
    const version = await day.version()
    const phone = new Phone(day, 1, first!)
    for (let hole = 1; hole <= 18; hole++) phone.score(asId(first!), hole, 9)
    const one = phone.outbox.splice(0, 9)
    const [answered] = await Promise.all([
      (async () => {
        const rest = phone.outbox
        phone.outbox = one
        const before = await phone.send()
        phone.outbox = rest
        return [...before, ...(await phone.send())]
      })(),
      closeDay(desk(), { dayId: day.dayId, version }),
    ])
    const record = await day.record()
    expect(record.status).toBe('closed')
    const mine = record.facts.filter((fact) => fact.deviceId.endsWith(phone.deviceId))
    expect(mine.map((fact) => (fact.late ? 'late' : 'received'))).toEqual(answered.map((one) => one.answer))
  })

  it('with an old version is refused as moved on, by a stranger as not theirs', async () => {
    await playEverything(day, () => over(18))
    await takeAllIn()
    const version = await day.version()
    expect(await closeDay(desk(), { dayId: day.dayId, version: version - 1 })).toMatchObject({ code: 'day-moved-on' })
    const treasurer = { ...desk(), duties: ['treasurer'] as const }
    expect(await closeDay(treasurer, { dayId: day.dayId, version })).toMatchObject({ code: 'not-allowed' })
    expect(await closeDay({ ...desk(), societyId: asId('another') }, { dayId: day.dayId, version })).toMatchObject({
      code: 'not-found',
    })
  })
})

describe('publishing', () => {
  it('makes one sheet of a doubled request, frozen, with prizes, ties and the field', async () => {
    const { version } = await closed()
    const [one, two] = await Promise.all([
      publishResult(desk(), { dayId: day.dayId, version }),
      publishResult(desk(), { dayId: day.dayId, version }),
    ])
    expect([got(one).number, got(two).number]).toEqual([1, 1])
    expect(await book().publication.count()).toBe(1)
    const { sheet, sheets } = got(await resultSheet(day.slug, day.daySlug))
    expect(sheets).toHaveLength(1)
    expect(sheet).toMatchObject({ number: 1, by: 'Petra Ashgill', reason: null, edition: '2024' })
    expect(sheet.board.competitions[0]!.rows).toHaveLength(8)
    expect(sheet.course).toHaveLength(18)
    expect(sheet.board.status).toBe('closed')
    await expect(book().publication.updateMany({ data: { number: 9 } })).rejects.toThrow()
    expect(got(await fixtures(day.slug)).days[0]).toMatchObject({ published: 1, winner: { name: expect.any(String) } })
  })

  it('needs a reason for sheet 2, and leaves sheet 1 as it was', async () => {
    const { version } = await closed()
    got(await publishResult(desk(), { dayId: day.dayId, version }))
    const first = got(await resultSheet(day.slug, day.daySlug, 1)).sheet
    const reopened = got(
      await reopenDay(desk(), { dayId: day.dayId, version: await day.version(), reason: 'A wrong 4.' }),
    )
    const [player] = day.players(1)
    got(
      await ruleOnCard(desk(), {
        dayId: day.dayId,
        cardId: asId(day.cardOf(asId(player!))),
        kind: 'hole-score',
        hole: 1,
        value: 9,
        reason: 'Both remember nine',
      }),
    )
    const again = got(await closeDay(desk(), { dayId: day.dayId, version: reopened.version }))
    expect(await publishResult(desk(), { dayId: day.dayId, version: again.version })).toMatchObject({
      code: 'reason-needed',
    })
    const second = got(
      await publishResult(desk(), { dayId: day.dayId, version: again.version, reason: 'Hole 1 was a nine.' }),
    )
    expect(second.number).toBe(2)
    const sheet2 = got(await resultSheet(day.slug, day.daySlug)).sheet
    expect(sheet2).toMatchObject({ number: 2, reason: 'Hole 1 was a nine.' })
    expect(sheet2.rulings).toMatchObject([{ number: 1, sentence: 'Hole 1 counts as 9. Both remember nine.' }])
    expect(got(await resultSheet(day.slug, day.daySlug, 1)).sheet).toEqual(first)
    expect(await resultSheet(day.slug, day.daySlug, 3)).toMatchObject({ code: 'no-such-sheet' })
    await boardAgreesWithDayFile()
  })

  it('makes no second sheet while nothing differs from the first, whatever reason is given', async () => {
    const { version } = await closed()
    got(await publishResult(desk(), { dayId: day.dayId, version }))
    const publish = async () =>
      publishResult(desk(), { dayId: day.dayId, version: await day.version(), reason: 'Signed for the wrong score' })
    expect(got(await nextSheet(desk(), day.dayId))).toMatchObject({ last: 1, differs: [] })
    expect(await publish()).toMatchObject({ code: 'nothing-changed' })
    // Another day of the season is not this one's affair.
    const proposal = got(await proposeDay(day.w.actor, day.w.seasonId))
    got(await callDay(day.w.actor, { ...proposal, name: 'Another Plate', entriesCloseOn: null }))
    expect(got(await nextSheet(desk(), day.dayId))).toMatchObject({ last: 1, differs: [] })
    const at = async () => ({ dayId: day.dayId, version: await day.version() })
    got(await reopenDay(desk(), { ...(await at()), reason: 'To look again' }))
    got(await closeDay(desk(), await at()))
    expect(await publish()).toMatchObject({ code: 'nothing-changed' })
    expect(await book().publication.count()).toBe(1)

    got(await reopenDay(desk(), { ...(await at()), reason: 'A wrong card' }))
    const card = (await day.record()).cards[0]!
    const name = got(await resultSheet(day.slug, day.daySlug)).sheet.board.competitions[0]!.rows.find((row) =>
      row.entryIds.includes(card.entryId),
    )!.name
    got(
      await ruleOnCard(desk(), {
        dayId: day.dayId,
        cardId: card.id,
        kind: 'disqualified',
        clause: 'Rule 3.3b(3)',
        reason: 'Signed for the wrong score',
      }),
    )
    got(await closeDay(desk(), await at()))
    const { differs } = got(await nextSheet(desk(), day.dayId))
    expect(differs.some((line) => line.includes(`${name} disqualified, was `))).toBe(true)
    expect(differs.some((line) => line.startsWith('New. Ruling 1, '))).toBe(true)
    expect(got(await publish()).number).toBe(2)
    expect(got(await nextSheet(desk(), day.dayId))).toMatchObject({ last: 2, differs: [] })
  })

  it('shows its prizes at the desk before it is published, as they will stand on it', async () => {
    const { version } = await closed()
    const before = got(await nextSheet(desk(), day.dayId)).sheet
    expect(await resultSheet(day.slug, day.daySlug)).toMatchObject({ code: 'not-published' })
    got(await publishResult(desk(), { dayId: day.dayId, version }))
    const { sheet } = got(await resultSheet(day.slug, day.daySlug))
    expect(before.prizes.length).toBeGreaterThan(0)
    expect(sheet.prizes).toEqual(before.prizes)
    expect(sheet.prizeRule).toBe(before.prizeRule)
  })

  it('of an open day, and of a day without a sheet, is refused', async () => {
    expect(await publishResult(desk(), { dayId: day.dayId, version: await day.version() })).toMatchObject({
      code: 'day-not-closed',
    })
    expect(await resultSheet(day.slug, day.daySlug)).toMatchObject({ code: 'not-published' })
    expect(await resultSheet(day.slug, 'nowhere')).toMatchObject({ code: 'no-such-day' })
  })
})

describe('rulings and paper', () => {
  it('settle a hole, add and take off, and are taken back; the same form sent twice is one', async () => {
    const [first] = day.players(1)
    const cardId = day.cardOf(asId(first!))
    const rule = async (input: object) =>
      ruleOnCard(desk(), { dayId: day.dayId, cardId: asId(cardId), kind: 'hole-score', reason: 'As told.', ...input })
    await new Phone(day, 1, first!).round(asId(first!), over(18)).send()
    await new Phone(day, 1, day.players(1)[1]!).score(asId(first!), 5, 9).send()
    expect((await board()).competitions[0]!.rows.find((row) => row.entrant === first)!.notAgreed).toEqual([5])
    const [one, two] = await Promise.all([rule({ hole: 5, value: 6 }), rule({ hole: 5, value: 6 })])
    expect([got(one).number, got(two).number]).toEqual([1, 1])
    const view = got(await returns(desk(), day.dayId))
    const card = view.groups[0]!.cards[0]!
    expect(card.holes[4]).toMatchObject({ score: 6, ruled: true, notAgreed: false })
    expect(card.holes[4]!.written.map((one) => one.score)).toEqual([9, over(18)[4]])
    expect(card.rulings[0]).toMatchObject({ clause: 'Rules of Golf 2023, 3.3b(3)', by: 'Petra Ashgill' })
    got(await rule({ kind: 'penalty-strokes', hole: 6, value: 2 }))
    got(await rule({ kind: 'playing-handicap', value: 0 }))
    const row = (await board()).competitions[0]!.rows.find((one) => one.entrant === first)!
    expect(row.playingHandicap).toBe(0)
    expect(row.gross).toBe(over(18).reduce((sum, one) => sum + one, 0) + 2 + (6 - over(18)[4]!))
    got(await rule({ kind: 'withdrawn-ruling', replaces: 2 }))
    expect((await board()).competitions[0]!.rows.find((one) => one.entrant === first)!.gross).toBe(row.gross! - 2)
    expect(await rule({ kind: 'withdrawn-ruling', replaces: 2 })).toMatchObject({ ok: true })
    expect(await rule({ kind: 'hole-score', hole: null, value: 4 })).toMatchObject({ code: 'not-understood' })
    await expect(book().ruling.updateMany({ data: { value: 1 } })).rejects.toThrow()
    await boardAgreesWithDayFile()
  })

  it('a paper card is keyed with its signatures, only what differs is written, and is taken in', async () => {
    const [first] = day.players(1)
    const cardId = day.cardOf(asId(first!))
    const scores = over(25)
    const key = (signed = true) =>
      keyCard(desk(), { dayId: day.dayId, cardId: asId(cardId), scores, signed: { player: signed, marker: signed } })
    expect(got(await key(false)).ready).toBe(false)
    const rows = (await day.record()).facts.length
    expect(rows).toBe(18)
    expect(got(await key()).ready).toBe(true)
    expect((await day.record()).facts.length).toBe(rows)
    got(await takeCardIn(desk(), { dayId: day.dayId, cardId: asId(cardId) }))
    got(await takeCardIn(desk(), { dayId: day.dayId, cardId: asId(cardId) }))
    expect(await key()).toMatchObject({ code: 'card-closed' })
    expect(got(await returns(desk(), day.dayId))).toMatchObject({ takenIn: 1, cards: 8 })
  })
})
