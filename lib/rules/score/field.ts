// The whole field of a competition with everything needed to count it: entrants, their balls and the footing on which
// they are compared. The par difference of RoH 6.2b is measured from the lowest par in this field.

import { countsOf } from '../count/count-on-hole'
import type { Format } from '../formats/format'
import { type Ball, type BallSeed, ballOf, handicapInFull, levelPars, lowestParOf, ownHandicap, seedsOf } from './balls'
import type { DayIndex, TeeSheet } from './day-index'
import { type Entrant, entrantsOf } from './entrants'
import type { Reading } from './entry-lines'
import type { TermsInForce } from './terms-in-force'

export interface Field {
  readonly entrants: readonly Entrant[]
  /** Balls of each entrant, in the same order. */
  readonly seeds: readonly (readonly BallSeed[])[]
  readonly lowestPar: number
  readonly reading: Reading
}

export function fieldOf(terms: TermsInForce, index: DayIndex): Field {
  const { format } = terms
  const entrants = entrantsOf(terms, index)
  const seeds = entrants.map((entrant) => seedsOf(entrant.id, entrant.players, format.ball === 'one', index))
  const all = seeds.flat()
  const lowestPar = lowestParOf(all)
  return { entrants, seeds, lowestPar, reading: readingOf(format, all, lowestPar) }
}

export function ballsOf(field: Field, at: number, terms: TermsInForce, index: DayIndex): Ball[] {
  const { edition, closed } = index.day
  return field.seeds[at]!.map((seed) => {
    const handicap = ownHandicap(handicapInFull(seed, terms, field.lowestPar, edition))
    return ballOf(seed, handicap, terms, closed)
  })
}

function readingOf(format: Format, all: readonly BallSeed[], lowestPar: number): Reading {
  const first = all[0]
  if (first === undefined) return { format, counts: [], holeTimes: [], levelsOf: () => [] }
  const numbers = first.sheet.tee.holes.map(({ hole }) => hole)
  const lowest = lowestSheet(all, lowestPar)
  const levels = new Map<TeeSheet, readonly number[]>()
  return {
    format,
    counts: countsOf(format.count, numbers),
    holeTimes: numbers.map(() => 1),
    levelsOf: (ball) => {
      let own = levels.get(ball.sheet)
      if (own === undefined) {
        own = levelPars(ball.sheet, lowest)
        levels.set(ball.sheet, own)
      }
      return own
    },
  }
}

/** Of several tees with the lowest par the first by id, so that the order of the entries changes nothing. */
function lowestSheet(all: readonly BallSeed[], lowestPar: number): TeeSheet {
  let lowest: TeeSheet | null = null
  for (const { sheet } of all) {
    if (sheet.par === lowestPar && (lowest === null || sheet.tee.id < lowest.tee.id)) lowest = sheet
  }
  return lowest!
}
