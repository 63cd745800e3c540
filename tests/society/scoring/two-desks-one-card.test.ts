// Promise: two desks on one card never write over each other unseen: the later one is told which holes have changed, and
// nothing is accepted that was not on its screen. What the paper adds up to stays with the card. Cards handed in with
// nothing open are accepted together, each with its line in the record, and no other card is.

import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { CardId } from '@/lib/facts/ids'
import { keyCard } from '@/lib/society/enter-score'
import { readRecord } from '@/lib/society/read-record'
import { reopenCard } from '@/lib/society/reopen-card'
import { returns } from '@/lib/society/returns'
import { takeCardIn } from '@/lib/society/take-card-in'
import { takeCardsIn } from '@/lib/society/take-cards-in'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, over } from './day-in-play'

let day: DayInPlay
let cardId: CardId

beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())
/** Every test has a card of its own: the first that nothing is written on. */
beforeEach(async () => {
  const cards = got(await returns(day.w.actor, day.dayId)).groups.flatMap((group) => group.cards)
  cardId = cards.find((card) => card.missing.length === 18)!.cardId
})

const signed = { player: true, marker: true }
const EMPTY = Array.from({ length: 18 }, () => null)
const enter = (scores: (number | 'x' | null)[], more: object = {}) =>
  keyCard(day.w.actor, { dayId: day.dayId, cardId, scores, ...more })
const shown = async (which = cardId) =>
  got(await returns(day.w.actor, day.dayId))
    .groups.flatMap((group) => group.cards)
    .find((card) => card.cardId === which)!
const scoresNow = async () => (await shown()).holes.map((hole) => hole.score)

describe('two desks on one card', () => {
  it('the later one is told the holes, nothing is written, and its own choice is taken after that', async () => {
    const first = over(20)
    const wide: (number | 'x')[] = first
    const second = wide.with(2, 7).with(10, 'x')
    got(await enter(first, { was: EMPTY }))
    const answer = await enter(second, { was: EMPTY, signed })
    expect(answer).toMatchObject({
      ok: false,
      code: 'card-moved-on',
      sentence:
        'Since you opened this card, holes 3 and 11 were changed by somebody else. Look at the card as it is now, then press again.',
      faults: [
        { place: 'hole 3', sentence: `Hole 3: 7 from you, ${first[2]} from another desk.` },
        { place: 'hole 11', sentence: `Hole 11: no score from you, ${first[10]} from another desk.` },
      ],
    })
    expect(await scoresNow()).toEqual(first)
    got(await enter(second, { was: first, signed }))
    expect(await scoresNow()).toEqual(second)
  })

  it('both are kept where they wrote on different holes and have seen each other, or wrote the same', async () => {
    const first = over(20)
    got(await enter(first, { was: EMPTY }))
    got(await enter(first, { was: EMPTY, signed }))
    expect(await scoresNow()).toEqual(first)
  })

  it('a card is accepted as it was on the screen or not at all', async () => {
    got(await enter(over(20), { signed }))
    const accept = (seen: (number | 'x' | null)[]) => takeCardIn(day.w.actor, { dayId: day.dayId, cardId, seen })
    expect(await accept(over(21))).toMatchObject({ code: 'card-moved-on' })
    expect((await shown()).state).toBe('handed-in')
    got(await accept(over(20)))
    got(await accept(over(20)))
    const late = await accept(over(21))
    expect(late.ok ? '' : late.sentence).toMatch(/^Another desk has accepted this card since you opened it, with/)
  })
})

describe('the totals of the paper', () => {
  it('stay with the card through accepting and opening again, and are in the record', async () => {
    const paper = { out: null, in: null, total: 90 }
    got(await enter(over(20), { paper }))
    expect(await shown()).toMatchObject({ paper, isReady: false })
    got(await enter(over(20), { signed, paper }))
    expect(await shown()).toMatchObject({ state: 'handed-in', paper, isReady: false })
    got(await takeCardIn(day.w.actor, { dayId: day.dayId, cardId }))
    got(await reopenCard(day.w.actor, { dayId: day.dayId, cardId, reason: '' }))
    expect((await shown()).paper).toEqual(paper)
    const { lines } = got(await readRecord(day.w.actor, { act: 'enter-score' }))
    expect(JSON.stringify(lines)).toContain('total 90')

    const sum = over(20).reduce<number>((all, one) => all + Number(one), 0)
    got(await enter(over(20), { signed, paper: { ...paper, total: sum } }))
    expect(await shown()).toMatchObject({ isReady: true })
  })
})

describe('cards that are handed in', () => {
  it('are accepted together; one that has changed or is not ready is left and named', async () => {
    const blank = got(await returns(day.w.actor, day.dayId)).groups.flatMap((group) => group.cards)
    const cards = blank.filter((card) => card.missing.length === 18).map((card) => card.cardId)
    const [one, two, three] = cards as [CardId, CardId, CardId]
    for (const which of [one, two])
      got(await keyCard(day.w.actor, { dayId: day.dayId, cardId: which, scores: over(20), signed }))
    got(await keyCard(day.w.actor, { dayId: day.dayId, cardId: three, scores: over(20) }))
    const seen = over(20)
    const asked = [
      { cardId: one, seen },
      { cardId: two, seen: over(19) },
      { cardId: three, seen },
    ]
    const strange = { ...asked[0]!, cardId: asId<CardId>('no-such-card') }
    expect(await takeCardsIn(day.w.actor, { dayId: day.dayId, cards: [...asked, strange] })).toMatchObject({
      code: 'not-found',
    })
    // Refused whole: nothing was accepted before the card that is none was met.
    expect((await shown(one)).state).toBe('handed-in')
    const answer = got(await takeCardsIn(day.w.actor, { dayId: day.dayId, cards: asked }))
    expect(answer).toMatchObject({ accepted: 1, left: [expect.any(String), expect.any(String)] })
    expect([(await shown(one)).state, (await shown(two)).state, (await shown(three)).state]).toEqual([
      'taken-in',
      'handed-in',
      'out',
    ])
    got(await takeCardsIn(day.w.actor, { dayId: day.dayId, cards: [{ cardId: two, seen }] }))
    const { lines } = got(await readRecord(day.w.actor, { act: 'take-card-in' }))
    expect(lines.filter((line) => JSON.stringify(line).includes('handed in'))).toHaveLength(4)
  })
})
