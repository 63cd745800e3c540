// Promise: to whom a tie would go is what comes of spreading the total over the open holes in every possible way.
import { expect, it } from 'vitest'
import type { TieStep } from '@/lib/rules/day'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'
import { type Countback, countbackOf, type OpenHole } from '@/lib/rules/insight/countback-outcomes'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { type Contender, inOrder } from '@/lib/rules/ties/break-ties'
import { PUBLISHED_COUNTBACK } from '@/lib/rules/ties/published-countback'
import { diceFrom, smallDay } from './small-days'

const MORE: readonly TieStep[][] = [
  [],
  [{ kind: 'holes', from: 4, to: 11 }],
  [{ kind: 'lower-handicap' }],
  [{ kind: 'lot', seed: 3 }],
]

function* spreads(open: readonly OpenHole[]): Generator<readonly number[]> {
  if (open.length === 0) {
    yield []
    return
  }
  for (const value of open[0]!.values) for (const rest of spreads(open.slice(1))) yield [value, ...rest]
}

it.each(['stableford', 'medal'] as const)('%s', (id) => {
  const found = new Set<Countback>()
  for (let seed = 1; seed <= 250; seed++) {
    const dice = diceFrom(seed)
    const steps = [...(dice.oneIn(4) ? [] : PUBLISHED_COUNTBACK.steps), ...dice.pick(MORE)]
    const ties = { steps, holesCount: 'by-number', fractions: 'kept' } as const
    const terms = termsInForce({ id: 'c', format: id, ties }, smallDay(1, { id: 'c', format: id }, 1, 1), FORMATS)!
    const low = formatOf(id)!.better === 'low'
    const values = Array.from({ length: 18 }, () => dice.between(1, 3))
    const handicaps = dice.oneIn(2) ? [9, 9] : [7, 12]
    const strokes = values.map((_, at) => (at < 9 ? 1 : 0))
    const contender = (entrant: string, of: readonly number[], handicap: number): Contender => ({
      entrant,
      values: of,
      gross: low ? of.map((value, at) => value + strokes[at]!) : null,
      handicap,
      has: handicap,
      handicapHoles: 18,
      startsAt: 0,
      lastRound: null,
    })
    const theirs = values.map((value, at) => (dice.oneIn(5) ? value : values[(at + 1) % 18]!))
    const places = new Set(
      Array.from({ length: 4 }, () => (dice.oneIn(2) ? dice.between(13, 17) : dice.between(0, 17))),
    )
    const open = [...places].map(
      (at): OpenHole => ({
        at,
        values: dice.oneIn(4) ? [0, 2, 5] : [0, 1, 2, 3],
        strokes: strokes[at]!,
      }),
    )
    const all = [...spreads(open)].map((spread) => ({ spread, total: spread.reduce((sum, one) => sum + one, 0) }))
    const { total } = dice.pick(all)
    const cards = {
      mine: contender('a', values, handicaps[0]!),
      theirs: contender('b', theirs, handicaps[1]!),
      open,
      total,
    }
    const ways = new Set<Countback>()
    for (const { spread } of all.filter((one) => one.total === total)) {
      const mine = values.map((value, at) => {
        const place = open.findIndex((one) => one.at === at)
        return place < 0 ? value : spread[place]!
      })
      const order = inOrder([contender('a', mine, handicaps[0]!), cards.theirs], {
        rule: ties,
        better: terms.format.better,
        unit: terms.format.unit,
      })
      ways.add(order.length === 1 ? 'level' : order[0]![0]!.entrant === 'a' ? 'mine' : 'theirs')
    }
    const all1 = ways.size === 1 ? [...ways][0] : 'depends'
    expect({ seed, countback: countbackOf(cards, terms) }).toEqual({ seed, countback: all1 })
    found.add(countbackOf(cards, terms))
  }
  expect(found.size).toBeGreaterThan(2)
})
