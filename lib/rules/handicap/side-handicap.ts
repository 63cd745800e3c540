// Rules of Handicapping 2024, Appendix C: handicap of a side that plays one ball. Shares of the course handicaps, ranked
// low to high, are added and rounded once at the end.

import { compare, type Fraction, fraction, plus, rounded, times } from '../exact/fraction'
import type { CourseHandicap } from './course-handicap'
import { beforeAllowance } from './playing-handicap'

/** One percentage stands for the same share of every player: 50 is half of the combined handicaps. */
export function weightsFor(allowance: number | readonly number[], players: number): readonly number[] {
  return typeof allowance === 'number' ? new Array<number>(players).fill(allowance) : allowance
}

/** The side's handicap before it is rounded. A side short of players uses the first of the weights. */
export function sideHandicapInFull(
  courses: readonly CourseHandicap[],
  allowance: number | readonly number[],
  editionId: string,
): Fraction {
  const low = courses.map((one) => beforeAllowance(one, editionId)).sort(compare)
  const weights = weightsFor(allowance, low.length)
  return low.reduce<Fraction>((sum, one, i) => plus(sum, times(one, weights[i] ?? 0, 100)), fraction(0, 1))
}

/** House variant: the combined course handicaps divided by a number the society states. */
export function dividedHandicapInFull(courses: readonly CourseHandicap[], by: number, editionId: string): Fraction {
  const sum = courses.reduce<Fraction>((all, one) => plus(all, beforeAllowance(one, editionId)), fraction(0, 1))
  return times(sum, 1, by)
}

export function sideHandicap(
  courses: readonly CourseHandicap[],
  allowance: number | readonly number[],
  editionId: string,
): number {
  return rounded(sideHandicapInFull(courses, allowance, editionId))
}
