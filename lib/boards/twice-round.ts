// Nine holes played twice as eighteen: the second time round the same nine flags count as the holes 10 to 18. House rule,
// common practice, no source: the course rating of the nine is doubled and its slope kept; printed odd (or even) stroke
// indexes stay where they are printed and the other time round takes the numbers between; indexes printed 1 to 9 become
// the odd numbers the first time round and the even ones the second. A rating printed for eighteen holes goes before.

import { ratingOf } from './figure'

export interface HoleOfNine {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards: number | null
}

export interface NineToRepeat {
  readonly courseRatingTenths: number
  readonly slopeRating: number
  readonly holes: readonly HoleOfNine[]
}

/** The two indexes of each hole: the first time round and the second. Together they are every number from 1 to 18. */
export function indexesTwice(nine: readonly number[]): readonly (readonly [number, number])[] {
  if (nine.every((index) => index % 2 === 1)) return nine.map((index) => [index, index + 1])
  if (nine.every((index) => index % 2 === 0)) return nine.map((index) => [index, index - 1])
  // Only their order says something: the hardest hole first, whatever the numbers are.
  const order = nine.map((index) => nine.filter((other) => other < index).length + 1)
  return order.map((place) => [2 * place - 1, 2 * place])
}

/** The set of tees for the day of eighteen holes, the flags 10 to 18 being the nine once more. */
export function twiceRound<Tee extends NineToRepeat>(tee: Tee): Tee {
  const indexes = indexesTwice(tee.holes.map((hole) => hole.strokeIndex))
  const round = (time: 0 | 1) =>
    tee.holes.map((hole, at) => ({ ...hole, hole: at + 1 + 9 * time, strokeIndex: indexes[at]![time] }))
  return { ...tee, courseRatingTenths: 2 * tee.courseRatingTenths, holes: [...round(0), ...round(1)] }
}

/** Which way the indexes were made, for whoever keeps the card. */
function indexesInWords(nine: readonly number[]): string {
  if (nine.every((index) => index % 2 === 1))
    return 'the printed odd stroke indexes the first time round, the even ones the second'
  if (nine.every((index) => index % 2 === 0))
    return 'the printed even stroke indexes the first time round, the odd ones the second'
  return 'stroke indexes made from those of the nine, odd the first time round and even the second'
}

/** "Nine holes played twice: course rating 67.8, twice 33.9 …": where every number comes from. */
export function twiceRoundInWords(tee: NineToRepeat): string {
  return `Nine holes played twice: course rating ${ratingOf(2 * tee.courseRatingTenths)}, twice ${ratingOf(tee.courseRatingTenths)}; slope ${tee.slopeRating} as for the nine; ${indexesInWords(tee.holes.map((hole) => hole.strokeIndex))}. House rule, common practice.`
}
