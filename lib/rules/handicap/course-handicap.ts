// Rules of Handicapping 2024, 6.1a and 6.1b: course handicap = index × slope ÷ 113 + (course rating − par). Kept as a
// fraction; the rounded figure is only for showing it and for net double bogey (6.1, Note). Over nine holes the index is
// first halved to one decimal and the ratings are those of the nine (6.1b).

import type { Tee } from '../day'
import { editionOf } from '../editions/editions'
import { halfUp, halvedTenths } from '../exact/fraction'

export interface CourseHandicap {
  readonly numerator: number
  readonly denominator: number
  readonly rounded: number
}

/** What the calculation needs of a tee; its ratings are those of the holes played. */
export type RatedTee = Pick<Tee, 'courseRatingTenths' | 'slopeRating' | 'holes'>

/** Slope of a course of standard difficulty. */
export const STANDARD_SLOPE = 113

export function parOf(tee: Pick<Tee, 'holes'>): number {
  let par = 0
  for (const hole of tee.holes) par += hole.par
  return par
}

export function courseHandicap(
  indexTenths: number,
  tee: RatedTee,
  editionId: string,
  holesPlayed: number = tee.holes.length,
): CourseHandicap {
  const index = holesPlayed === 9 ? halvedTenths(indexTenths) : indexTenths
  const ratingLessPar = editionOf(editionId).ratingMinusPar ? tee.courseRatingTenths - 10 * parOf(tee) : 0
  const numerator = index * tee.slopeRating + ratingLessPar * STANDARD_SLOPE + 0
  const denominator = 10 * STANDARD_SLOPE
  return { numerator, denominator, rounded: halfUp(numerator, denominator) }
}

/** A course handicap given as a whole number: a limit, a ghost's, or one set by a ruling. */
export function wholeCourse(n: number): CourseHandicap {
  return { numerator: n, denominator: 1, rounded: n }
}
