// Promise: a play-off played after the day parts whom the terms let it part, and an abandoned round counts what the committee
// says; the terms themselves stay frozen, and what is taken back stays in the list.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import type { CompetitionInput, RuleOnDay } from '@/lib/facts/commands'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import { closeDay } from '@/lib/society/close-day'
import { keyCard } from '@/lib/society/enter-score'
import { ruleOnDay } from '@/lib/society/rule-on-day'
import { takeCardIn } from '@/lib/society/take-card-in'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got } from './day-in-play'

const of = (name: string, steps: CompetitionInput['terms']['ties']['steps']): CompetitionInput => ({
  name,
  format: 'gross',
  terms: {
    allowance: 0,
    allowanceFrom: 'house-choice',
    ties: { steps, holesCount: 'by-number', fractions: 'kept' },
    guests: 'for-every-prize',
  },
  prizes: [],
})

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay({ competitions: [of('Cup', [{ kind: 'play-off', order: [] }]), of('Jug', [])] })
  // Everybody is level after nine holes of fives; the first group went on to the twelfth, in fours.
  for (const group of [1, 2])
    for (const entryId of day.players(group)) {
      const scores = Array.from({ length: 18 }, (_, at) => (at < 9 ? 5 : group === 1 && at < 12 ? 4 : null))
      const card = {
        dayId: day.dayId,
        cardId: day.cardOf(asId(entryId)),
        scores,
        signed: { player: true, marker: true },
      }
      got(await keyCard(day.w.actor, card))
    }
})
afterAll(() => day.close())

const at = new Date('2031-06-14T15:00:00Z')
const rule = async (ruling: RuleOnDay['ruling'], reason = 'Lightning at two o’clock') =>
  ruleOnDay(day.w.actor, { dayId: day.dayId, version: await day.version(), ruling, reason }, at)
const board = async (which = 0) => boardOf(await day.record(), at).competitions[which]!
const cupId = async () => asId<CompetitionId>((await board()).id)

describe('an abandoned round', () => {
  it('after the ninth, the first nine counting: every card can come in, and all are level', async () => {
    const cardId = day.cardOf(asId(day.players(1)[0]!))
    expect(await takeCardIn(day.w.actor, { dayId: day.dayId, cardId: asId(cardId) })).toMatchObject({
      code: 'card-not-ready',
    })
    got(await rule({ kind: 'abandoned', afterHole: 9, counts: 'first-holes' }))
    for (const group of [1, 2])
      for (const entryId of day.players(group))
        got(await takeCardIn(day.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(entryId))) }))
    got(await closeDay(day.w.actor, { dayId: day.dayId, version: await day.version() }))
    const cup = await board()
    expect(cup.rows.map((row) => [row.place, row.score])).toEqual(cup.rows.map(() => [1, 45]))
    expect(cup.moreTerms).toContain('The round was abandoned after hole 9: only holes 1 to 9 count, for everybody.')
  })

  it('of which nothing counts leaves nobody with a place; taken back, the earlier word stands again', async () => {
    const { number } = got(await rule({ kind: 'abandoned', afterHole: 12, counts: 'nothing' }))
    expect((await board()).rows.map((row) => [row.place, row.noPlace])).toEqual(
      Array.from({ length: 8 }, () => [null, 'no-return']),
    )
    got(await rule({ kind: 'taken-back', replaces: number }, 'Nobody wanted that'))
    expect((await board()).rows.every((row) => row.place === 1)).toBe(true)
    expect((await day.record()).dayRulings).toHaveLength(3)
    expect(await rule({ kind: 'taken-back', replaces: number })).toMatchObject({ code: 'no-such-ruling' })
  })
})

describe('a play-off', () => {
  it('parts those who were in it, by their order, and is told on the sheet', async () => {
    const [winner, second] = [day.players(2)[2]!, day.players(1)[3]!]
    got(
      await rule(
        { kind: 'play-off', competitionId: asId(await cupId()), order: [winner, second] },
        'Sudden death, hole 18',
      ),
    )
    const cup = await board()
    expect(cup.rows.slice(0, 2).map((row) => [row.entrant, row.place])).toEqual([
      [winner, 1],
      [second, 2],
    ])
    expect(cup.rows.slice(2).every((row) => row.place === 3 && row.tied)).toBe(true)
    expect(cup.rows[0]?.tieSentence).toContain('by play-off')
    const sheet = resultSheetOf(await day.record(), { number: 1, reason: null, by: 'Petra Ashgill', at })
    expect(sheet.rulings.map((one) => [one.name, one.clause])).toEqual([
      ['The day', 'Committee Procedures 6E, terms of the competition'],
      ['Cup', 'Committee Procedures 5A(6)'],
    ])
  })

  it('is refused where the terms have none, between players who are not level, and for somebody twice', async () => {
    const order = day.players(1).slice(0, 2)
    const jug = asId<CompetitionId>((await board(1)).id)
    const again = [order[0]!, order[0]!]
    for (const ruling of [
      { kind: 'play-off' as const, competitionId: jug, order: [...order] },
      { kind: 'play-off' as const, competitionId: await cupId(), order: again },
      { kind: 'play-off' as const, competitionId: await cupId(), order: [order[0]!, asId<EntryId>('nobody')] },
    ])
      expect(await rule(ruling)).toMatchObject({ ok: false, code: 'not-understood' })
  })

  it('is for officers, and for the day as they have seen it', async () => {
    const ruling = { kind: 'taken-back' as const, replaces: 1 }
    const treasurer = { ...day.w.actor, duties: ['treasurer' as const] }
    const version = await day.version()
    const asked = { dayId: day.dayId, ruling, reason: 'No reason' }
    expect(await ruleOnDay(treasurer, { ...asked, version })).toMatchObject({ code: 'not-allowed' })
    expect(await ruleOnDay(day.w.actor, { ...asked, version: version - 1 })).toMatchObject({ code: 'day-moved-on' })
  })
})
