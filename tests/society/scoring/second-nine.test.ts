// Promise: a day on the second nine of its course speaks of the holes 10 to 18 in every room, from the start sheet to the
// rulings, and takes those numbers from phone and desk. Common practice, no source; the day is invented, ours.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { groupPack } from '@/lib/boards/group-pack'
import { onTheCourse } from '@/lib/boards/on-the-course'
import { printedCards } from '@/lib/boards/printed-cards'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { returnsOf } from '@/lib/boards/returns'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { CardPack } from '@/lib/facts/card-pack'
import { cardsNow, holesInPlay, roundOfPack } from '@/lib/outbox/card-now'
import { mayNotSign } from '@/lib/outbox/signing'
import { callDay } from '@/lib/society/call-day'
import { changeDay } from '@/lib/society/change-day'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { ruleOnDay } from '@/lib/society/rule-on-day'
import { actsOf } from '@/lib/store/acts'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, course, formOf, got, type World, world } from '../setup/world'
import { type DayInPlay, Phone, published } from './day-in-play'

const ZONE = 'Europe/London'
const AT = new Date('2031-06-14T15:00:00Z')
let close: () => Promise<void>
let w: World
let evening: { holes: 9; startKind: 'shotgun'; teeMen: string; teeWomen: string; competitions: object[] }
let day: Omit<DayInPlay, 'close'>

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  const { tees, ...card } = course()
  const nine = (from: number) =>
    tees.map((tee) => ({
      ...tee,
      name: `${tee.name}, ${from === 1 ? 'front' : 'back'} nine`,
      courseRatingTenths: 350,
      holes: tee.holes.filter(({ hole }) => hole >= from && hole < from + 9),
    }))
  const kept = { ...card, courseId: w.courseId, version: 1, tees: [...tees, ...nine(1), ...nine(10)] }
  got(await keepCourse(w.actor, kept))
  const ids = got(await courseById(w.actor, w.courseId)).tees
  const tee = (name: string) => ids.find((one) => one.name === name)!.teeId
  const singles = {
    name: 'Evening Stableford',
    format: 'stableford',
    terms: {
      allowance: 95,
      allowanceFrom: 'published',
      ties: {
        steps: [
          { kind: 'last', holes: 6 },
          { kind: 'holes', from: 16, to: 17 },
        ],
        holesCount: 'by-number',
        fractions: 'kept',
      },
      guests: 'guest-prize-only',
      countedHoles: [11, 12, 13, 14, 15, 16, 17, 18],
    },
    prizes: [],
  }
  evening = {
    holes: 9,
    startKind: 'shotgun',
    teeMen: tee('Yellow, back nine'),
    teeWomen: tee('Red, back nine'),
    competitions: [singles],
  }
  day = await published(w, 'fernbrake', evening)
})
afterAll(() => close())

const board = async () => boardOf(await day.record(), AT)

describe('before the start', () => {
  it('the groups stand on the tenth and the eleventh, on the sheet, the printed cards and the phones', async () => {
    const record = await day.record()
    expect(startSheetOf(record, { withCodes: false }).groups.map((one) => one.startHole)).toEqual([10, 11])
    const { cards } = printedCards(record)
    expect([cards[0]!.startHole, cards.at(-1)!.startHole]).toEqual([10, 11])
    expect(cards[0]!.holes.map((one) => one.hole)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18])
    const pack = groupPack(record, record.groups[1]!)
    expect([pack.group.startHole, holesInPlay(pack)]).toEqual([11, [11, 12, 13, 14, 15, 16, 17, 18, 10]])
    expect(roundOfPack(pack)).toEqual({ holes: 9, firstHole: 10 })
  })

  it('the terms and the tie rule name the flags', async () => {
    const shown = (await board()).competitions[0]!
    expect(shown.moreTerms).toContain('Only holes 11 to 18 count for the result.')
    expect(shown.tieRule).toBe('Last six, holes 16 to 17, then shared; holes by their number.')
  })

  it('a hole of the other nine is refused, in the terms and in the draw', async () => {
    const record = await day.record()
    const groups = record.groups.map(({ entryIds }) => ({ entryIds: [...entryIds], startHole: 3 }))
    const drawn = await arrangeGroups(w.actor, { dayId: day.dayId, version: record.version, groups })
    expect(drawn).toMatchObject({ ok: false, faults: [{ place: 'groups[0].startHole' }] })
    expect(drawn.ok ? '' : drawn.sentence + JSON.stringify(drawn.faults)).toContain(
      'This round has holes 10 to 18: group 1 cannot start on hole 3.',
    )
    const other = await published(w, 'fernbrake', { ...evening, name: 'Second evening' })
    const form = await formOf(w, await other.record(), evening)
    const [one] = form.competitions
    const asked = { ...form, competitions: [{ ...one!, terms: { ...one!.terms, countedHoles: [3, 12] } }] }
    // On a day whose handicaps are not frozen yet: on this one the terms stand.
    expect(JSON.stringify(await callDay(w.actor, { ...asked, name: 'Third evening' }))).toContain(
      'The day has no hole 3: it is played on holes 10 to 18.',
    )
  })
})

describe('a day changed from one nine to the other', () => {
  it('takes the flags of the other, and its groups start there', async () => {
    const ids = got(await courseById(w.actor, w.courseId)).tees
    const tee = (name: string) => ids.find((one) => one.name === name)!.teeId
    const [singles] = evening.competitions as { terms: object }[]
    const { countedHoles: _, ties: __, ...terms } = singles!.terms as Record<string, unknown>
    const ties = { steps: [], holesCount: 'by-number', fractions: 'kept' }
    const front = {
      ...evening,
      name: 'Third evening',
      teeMen: tee('Yellow, front nine'),
      teeWomen: tee('Red, front nine'),
      competitions: [{ ...singles, terms: { ...terms, ties } }],
    }
    const { dayId } = await aDay(w, front)
    const read = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
    const enter = w.people.map((personId) => ({ personId }))
    got(await enterPlayers(w.actor, { dayId, version: (await read()).version, enter }))
    const draw = { way: 'entry-order' as const, groupSize: 4, seed: 1 }
    got(await makeDraw(w.actor, { dayId, version: (await read()).version, ...draw }))
    const before = await read()
    expect(before.groups.map((one) => one.startHole)).toEqual([1, 2])
    const { teeMen, teeWomen } = evening
    const form = await formOf(w, before, { ...front, teeMen, teeWomen })
    got(await changeDay(w.actor, { dayId, version: before.version, day: form }))
    const after = await read()
    expect([after.round.firstHole, after.round.courseName]).toEqual([10, 'Aldermoss Park, holes 10 to 18'])
    expect(after.groups.map((one) => [one.startHole, one.entryIds])).toEqual([
      [10, before.groups[0]!.entryIds],
      [11, before.groups[1]!.entryIds],
    ])
  })
})

describe('on the course', () => {
  let phone: Phone
  const [first, second] = [() => day.players(1)[0]!, () => day.players(1)[1]!]
  beforeAll(async () => {
    phone = new Phone(day, 1, first())
    for (const id of day.players(1)) phone.score(asId(id), 10, 5).score(asId(id), 11, 4)
    phone.score(asId(first()), 12, 6)
    await phone.send()
  })

  it('a phone writes to the flags; a hole of the other nine is refused in those words', async () => {
    const [answer] = await phone.score(asId(first()), 3, 4).send()
    expect(answer).toMatchObject({
      code: 'no-such-hole',
      sentence: 'This round has holes 10 to 18; there is no hole 3.',
    })
    const record = await day.record()
    expect([...new Set(record.facts.map((one) => one.hole))].sort()).toEqual([10, 11, 12])
  })

  it('the board, the course and the returns say where everybody is', async () => {
    const shown = await board()
    expect(shown.groups.map((one) => [one.startHole, one.onHole, one.through])).toEqual([
      [10, 12, 2],
      [11, null, 0],
    ])
    expect(shown.course.map((one) => one.hole)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18])
    const row = shown.competitions[0]!.rows.find((one) => one.entrant === first())!
    expect(row.last).toMatchObject({ hole: 12, gross: 6 })
    const record = await day.record()
    const where = onTheCourse(record, [], AT, ZONE).groups[0]!
    expect([where.startHole, where.onHole]).toEqual([10, 12])
    const cards = returnsOf(record, ZONE).groups[0]!.cards
    expect(cards[1]!.line).toBe('on the 12th')
    expect(cards[1]!.missing).toEqual([12, 13, 14, 15, 16, 17, 18])
    expect(returnsOf(record, ZONE).inTheWay[1]!.sentence).toContain('Holes 12 to 18 have no score.')
  })

  it('the working opens the hole by its flag', async () => {
    const record = await day.record()
    const working = cardWorkingOf(record, asId(first()), { competition: 1, hole: 12 }, ZONE)!
    expect(working.steps.map((one) => one.label)).toContain('Strokes on hole 12')
    expect(working.steps.find((one) => one.label === 'Gross')).toMatchObject({ figure: '6' })
    expect(working.steps.find((one) => one.label === 'Gross')!.sentence).toMatch(/^Written by/)
    expect(working.strokesAt).not.toBeNull()
    expect(cardWorkingOf(record, asId(first()), { competition: 1, hole: 3 }, ZONE)).toBeNull()
    const total = cardWorkingOf(record, asId(first()), { competition: 1, hole: null }, ZONE)!.steps
    expect(total.map((one) => one.label)).toEqual(['In', 'Total'])
    expect(total[1]!.sentence).toBe('The nine holes together.')
  })

  it('a card that is not whole is not signed, and the phone says which holes it wants', async () => {
    const record = await day.record()
    const pack: CardPack = groupPack(record, record.groups[0]!)
    const card = cardsNow(pack, [], 'this-phone').find((one) => one.card.entryId === first())!
    expect(card.missing).toEqual([13, 14, 15, 16, 17, 18])
    const stops = mayNotSign(card, 'player', asId(first()))
    expect(stops?.sentence).toContain('has no score yet on holes 13, 14, 15, 16, 17 and 18')
    const scores = [5, 4, 6, null, null, null, null, null, null]
    const [answer] = await phone.sign(asId(first()), 'player', scores).send()
    expect(answer).toMatchObject({ sentence: expect.stringContaining('Holes 13, 14, 15, 16, 17 and 18 without') })
  })

  it('the desk keys the paper and rules on a hole by the same numbers', async () => {
    const cardId = day.cardOf(asId(second()))
    const scores = [5, 4, 3, 5, 6, 4, 3, 4, 5]
    got(
      await keyCard(w.actor, {
        dayId: day.dayId,
        cardId: asId(cardId),
        scores,
        signed: { player: true, marker: true },
      }),
    )
    const [act] = await actsOf(w.actor.societyId, {}, 1)
    expect(JSON.stringify(act)).toContain('Hole 18')
    const record = await day.record()
    const keyed = record.facts.filter((one) => one.cardId === cardId && one.writer === 'desk')
    expect(keyed.map((one) => [one.hole, one.score])).toEqual(scores.map((score, at) => [10 + at, score]))
    const reason = 'Played from the wrong place'
    got(
      await ruleOnCard(w.actor, {
        dayId: day.dayId,
        cardId: asId(cardId),
        kind: 'penalty-strokes',
        hole: 14,
        value: 2,
        reason,
      }),
    )
    const after = await day.record()
    expect(returnsOf(after, ZONE).rulings[0]!.sentence).toBe('2 penalty strokes on hole 14.')
    const row = boardOf(after, AT).competitions[0]!.rows.find((one) => one.entrant === second())!
    expect(row.holes.map((one) => [one.hole, one.gross])).toEqual(
      scores.map((score, at) => [10 + at, at === 4 ? score + 2 : score]),
    )
  })

  it('a round is abandoned after a hole of this nine', async () => {
    const ask = async (afterHole: number) =>
      ruleOnDay(w.actor, {
        dayId: day.dayId,
        version: await day.version(),
        ruling: { kind: 'abandoned', afterHole, counts: 'first-holes' },
        reason: 'Fog at eight o’clock',
      })
    expect(JSON.stringify(await ask(9))).toContain('The round has holes 10 to 18.')
    got(await ask(11))
    const record = await day.record()
    const said = 'The round was abandoned after hole 11: only holes 10 to 11 count, for everybody.'
    expect(boardOf(record, AT).competitions[0]!.moreTerms).toContain(said)
    const sheet = resultSheetOf(record, { number: 1, reason: null, by: 'P', at: AT })
    expect(sheet.course.map((one) => one.hole)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18])
    expect(sheet.rulings.map((one) => one.sentence).join(' ')).toContain(said)
  })
})
