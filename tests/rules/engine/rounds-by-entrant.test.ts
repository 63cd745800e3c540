// Promise: rounds are added up entrant by entrant, although the engine pairs them by their place in the list: every round
// lists the same entrants in the same order, whatever cards it has and in whatever order they came.
import { describe, expect, it } from 'vitest'
import type { Day } from '@/lib/rules/day'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { indexOf } from '@/lib/rules/score/day-index'
import { entriesOf } from '@/lib/rules/score/field'
import { sharedEntries } from '@/lib/rules/score/shared-holes'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { scoreDay } from '@/lib/rules/score-day'
import { chanceFrom } from '../reference/chance'
import { randomDay } from '../reference/random-day'

/** A second round for some of the field, and a third for others, each from its own end of the list. */
function ofThreeRounds(seed: number, sideSize: number): Day {
  const chance = chanceFrom(seed)
  const format = sideSize === 1 ? 'stableford' : 'four-ball-stableford'
  const day = randomDay(seed, { competitions: [{ id: 'sum', format }], sideSize })
  const first = day.cards.filter((card) => (card.round ?? 1) === 1)
  const some = (round: number) =>
    chance.shuffled(first.filter(() => !chance.oneIn(3))).map((card) => ({ ...card, round }))
  const games = sideSize === 1 ? [{ id: 'skins', format: 'skins' as const, rounds: [2, 3, 1] }] : []
  return {
    ...day,
    cards: [...some(3), ...first, ...some(2)],
    competitions: [{ id: 'sum', format, rounds: [2, 3, 1] }, ...games],
  }
}

describe('rounds of several', () => {
  it.each([1, 2])('list the same entrants in the same order, sides of %i', (sideSize) => {
    for (let seed = 1; seed <= 150; seed++) {
      const day = ofThreeRounds(seed, sideSize)
      for (const competition of day.competitions) {
        const terms = termsInForce(competition, day, FORMATS)!
        const { value } = terms.format
        const orders = [1, 2, 3].map((round) => {
          const index = indexOf(day, round)
          const entries = value.kind === 'shared' ? sharedEntries(terms, value, index) : entriesOf(terms, index)
          return entries.map((entry) => entry.entrant.id)
        })
        expect(orders[1]).toEqual(orders[0])
        expect(orders[2]).toEqual(orders[0])
      }
    }
  })

  it('give everybody the points of the own cards, and of nobody else’s', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const day = ofThreeRounds(seed, 1)
      const alone = (round: number) =>
        new Map(
          scoreDay({ ...day, competitions: [{ id: 'sum', format: 'stableford', rounds: [round] }] })[0]!.standings.map(
            (one) => [one.entrant, one.score] as const,
          ),
        )
      const each = new Map([1, 2, 3].map((round) => [round, alone(round)]))
      for (const { entrant, rounds } of scoreDay(day)[0]!.standings)
        for (const { round, score } of rounds!) expect(score).toBe(each.get(round)!.get(entrant) ?? null)
    }
  })
})
