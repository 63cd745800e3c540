// Promise: whoever has no partner, opponent or group of the right size is named from the draw to the sheet, and a result
// sheet with a competition in which nobody has a result goes out only with a reason that stands on it. Groups of four, three
// and two for pairs, and of three for split sixes, are common practice, no source.
import { afterEach, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { faultsOf } from '@/lib/boards/current-card'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { namesOf } from '@/lib/boards/entrant-names'
import { groupPack } from '@/lib/boards/group-pack'
import { leftOut } from '@/lib/boards/left-out'
import { withNoPart } from '@/lib/boards/no-part'
import { printedCards } from '@/lib/boards/printed-cards'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { CompetitionInput } from '@/lib/facts/commands'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { cardsNow } from '@/lib/outbox/card-now'
import { closeDay } from '@/lib/society/close-day'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { nextSheet } from '@/lib/society/next-sheet'
import { publishResult } from '@/lib/society/publish-result'
import { publishStart } from '@/lib/society/publish-start'
import { resultSheet } from '@/lib/society/read-board'
import { takeCardIn } from '@/lib/society/take-card-in'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { type DayInPlay, dayInPlay, over, playEverything } from '../scoring/day-in-play'
import { aDay, DAY, got, world } from './world'

const one = (name: string, format: string, allowance: number): CompetitionInput => ({
  name,
  format,
  terms: {
    allowance,
    allowanceFrom: 'house-choice',
    allowanceReason: 'As always',
    ties: PUBLISHED_COUNTBACK,
    guests: 'guest-prize-only',
  },
  prizes: [],
})

let end: (() => Promise<void>) | undefined
afterEach(async () => {
  await end?.()
  end = undefined
})

async function drawn(competitions: readonly CompetitionInput[], players: number, evenSizes = false) {
  const own = await ownBook()
  end = own.close
  const w = await world()
  const { dayId } = await aDay(w, { competitions })
  const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
  const enter = w.people.slice(0, players).map((personId) => ({ personId }))
  got(await enterPlayers(w.actor, { dayId, version: (await record()).version, enter }))
  const draw = { way: 'entry-order' as const, groupSize: 4, seed: 1, evenSizes }
  got(await makeDraw(w.actor, { dayId, version: (await record()).version, ...draw }))
  return record()
}

describe('a draw for partners and opponents', () => {
  it('makes fours and a two of six, so that nobody is without a partner', async () => {
    const day = await drawn([one('Quaich', 'four-ball-medal', 85)], 6)
    expect(day.groups.map((group) => group.entryIds.length)).toEqual([4, 2])
    expect(day.competitions[0]!.sides.map((side) => side.entryIds.length)).toEqual([2, 2, 2])
    expect(leftOut(day)).toEqual([])
  })

  it('makes threes where the officer wants them, and names the two without a partner', async () => {
    const day = await drawn([one('Quaich', 'four-ball-medal', 85)], 6, true)
    expect(day.groups.map((group) => group.entryIds.length)).toEqual([3, 3])
    const [a, b] = day.groups.map((group) => namesOf(day).short(group.entryIds[2]!))
    expect(leftOut(day)).toEqual([`${a} and ${b} have no partner in Quaich and take no place in it.`])
  })

  it('names the odd one and the pair without opponents, on the start sheet and the board too', async () => {
    const day = await drawn([one('Shield', 'four-ball-match', 90)], 7)
    const [a, b, odd] = day.groups[1]!.entryIds.map((id) => namesOf(day).short(id))
    expect(leftOut(day)).toEqual([
      `${odd} has no partner in Shield and takes no place in it.`,
      `${a} and ${b} have no opponents in Shield.`,
    ])
    const sides = startSheetOf(day, { withCodes: false }).groups.map(({ players }) => players.map(({ side }) => side))
    expect(sides[1]).toEqual([
      `with ${b}, no opponent in Shield`,
      `with ${a}, no opponent in Shield`,
      'no partner in Shield',
    ])
    expect(boardOf(day, new Date()).competitions[0]!.moreTerms).toEqual(
      expect.arrayContaining([`No partner, and so no place: ${odd}.`, `No opponent, and so no match: ${a} and ${b}.`]),
    )
  })

  it('says on the start sheet whom everybody meets in each of two matches', async () => {
    const day = await drawn([one('Shield', 'four-ball-match', 90), one('Singles', 'match', 100)], 4)
    const [, a, b, c] = day.groups[0]!.entryIds.map((id) => namesOf(day).short(id))
    const [first] = startSheetOf(day, { withCodes: false }).groups
    // Not the partner, with whom the singles would be played on the same side of the other match.
    expect(first!.players[0]!.side).toBe(`with ${a}, against ${b} and ${c} in Shield, against ${b} in Singles`)
  })
})

describe('somebody whom the whole day leaves over', () => {
  it('has a card that nobody waits for: on the phone, on paper, and at the close', async () => {
    const own = await ownBook()
    end = own.close
    const w = await world()
    const { dayId } = await aDay(w, { competitions: [one('Foursomes', 'foursomes-medal', 50)] })
    const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
    const at = async () => ({ dayId, version: (await record()).version })
    const enter = w.people.slice(0, 5).map((personId) => ({ personId }))
    got(await enterPlayers(w.actor, { ...(await at()), enter }))
    got(await freezeHandicaps(w.actor, await at()))
    got(await makeDraw(w.actor, { ...(await at()), way: 'entry-order', groupSize: 4, seed: 1 }))
    got(await publishStart(w.actor, await at()))
    const drawn = await record()
    const [odd] = [...withNoPart(drawn)]
    const name = namesOf(drawn).entrant(odd!)
    const card = drawn.cards.find((each) => each.entryId === odd)!
    expect(faultsOf(cardsAsTheyStand(drawn).get(odd!)!)).toEqual([])
    const group = drawn.groups.find(({ entryIds }) => entryIds.includes(odd!))!
    const pack = groupPack(drawn, group)
    const onPhone = cardsNow(pack, [], 'a phone').find((each) => each.card.entryId === odd)!
    expect([onPhone.card.noPart, onPhone.missing, onPhone.notNeeded.length]).toEqual([true, [], 18])
    expect(printedCards(drawn)).toMatchObject({ without: [], noPart: [name] })

    for (const each of drawn.cards.filter(({ id }) => id !== card.id)) {
      const scores = drawn.round.holes === 18 ? Array.from({ length: 18 }, () => 5) : []
      got(await keyCard(w.actor, { dayId, cardId: each.id, scores, signed: { player: true, marker: true } }))
      got(await takeCardIn(w.actor, { dayId, cardId: each.id }))
    }
    got(await closeDay(w.actor, await at(), new Date(`${DAY}T20:00:00Z`)))
    const closed = await record()
    expect(closed.rulings).toEqual([])
    got(await publishResult(w.actor, await at()))
    const { sheet } = got(await resultSheet('fernbrake', closed.slug))
    expect(JSON.stringify(sheet)).not.toContain('No return')
    expect(sheet.board.competitions[0]!.moreTerms).toContain(
      `No partner, and so no place: ${namesOf(closed).short(odd!)}.`,
    )
  })
})

describe('a competition in which nobody has a result', () => {
  let day: DayInPlay
  const at = async () => ({ dayId: day.dayId, version: await day.version() })

  async function sixesInFours() {
    day = await dayInPlay({ competitions: [one('Medal', 'medal', 100), one('Sixes', 'split-sixes', 100)] })
    end = day.close
    await playEverything(day, (n) => over(18 + n))
    for (const card of (await day.record()).cards)
      got(await takeCardIn(day.w.actor, { dayId: day.dayId, cardId: card.id }))
    got(await closeDay(day.w.actor, await at()))
  }

  it('is told from the draw on, on the phone too, and is not published without a word', async () => {
    await sixesInFours()
    const record = await day.record()
    expect(leftOut(record)).toEqual([
      'Group 1 has four players: Sixes is for groups of three, so nothing counts there.',
      'Group 2 has four players: Sixes is for groups of three, so nothing counts there.',
    ])
    expect(groupPack(record, record.groups[0]!).cards[0]!.leftOut).toEqual([
      'Sixes is not counted in this group: it is for groups of three.',
    ])
    const sentence = 'Nobody has a result in Sixes: no group has the three players it is for.'
    expect(got(await nextSheet(day.w.actor, day.dayId)).empty).toEqual([{ name: 'Sixes', sentence }])
    const refusal = await publishResult(day.w.actor, await at())
    expect(refusal).toMatchObject({ ok: false, code: 'competition-empty', faults: [{ place: 'Sixes', sentence }] })
    expect((await day.record()).publications).toEqual([])
  })

  it('goes out with the reason, which stands on the sheet and in the record of acts', async () => {
    await sixesInFours()
    got(await publishResult(day.w.actor, { ...(await at()), without: 'Drawn in fours by mistake.' }))
    const { sheet } = got(await resultSheet(day.slug, day.daySlug))
    expect(sheet.without).toBe('Published without a result in Sixes, because: Drawn in fours by mistake.')
    expect(got(await nextSheet(day.w.actor, day.dayId)).differs).toEqual([])
  })
})
