// Rules of Handicapping 2024, Appendix C: in a match the lowest handicap plays off nought and the others get the
// difference, a plus handicap included. Between players the difference is of rounded playing handicaps; between sides,
// since 2024, of full course handicaps, then the allowance, then rounded once. The order is data of the edition and may
// be set by the terms of the competition.

import { compare, type Fraction, fraction, minus, plus, rounded } from '../exact/fraction'

export type DifferenceOf = 'rounded' | 'unrounded'

export interface MatchHandicap {
  /** With the allowance applied, in full. */
  readonly full: Fraction
  /** Strokes for the par of the tee, 6.2b. */
  readonly parDifference: number
}

/** Strokes each receives from the lowest, in the order given. */
export function matchStrokes(handicaps: readonly MatchHandicap[], difference: DifferenceOf): number[] {
  const figures = handicaps.map(({ full, parDifference }) =>
    plus(difference === 'rounded' ? fraction(rounded(full)) : full, fraction(parDifference)),
  )
  const lowest = figures.reduce((low, one) => (compare(one, low) < 0 ? one : low), figures[0] ?? fraction(0))
  return figures.map((one) => rounded(minus(one, lowest)))
}
