// From index to strokes, written straight from Rules of Handicapping 2024, Rule 6 and Appendices C and E. Slow on purpose.
import type { Hole, Tee } from '@/lib/rules/day'
import { compare, type Fraction, fraction, halfUp, minus, plus, times } from './exact'

/** Rule 6.1: index × slope ÷ 113 + (course rating − par); a nine takes half the index, to one decimal, first. */
export function courseHandicapOf(indexTenths: number, tee: Tee, edition: string): Fraction {
  const index = tee.holes.length === 9 ? fraction(halfUp(fraction(indexTenths, 2)), 10) : fraction(indexTenths, 10)
  const byDifficulty = times(index, fraction(tee.slopeRating, 113))
  // Great Britain and Ireland left the second term out until 31 March 2024, and rounded at once.
  if (edition === '2020-gbi') return fraction(halfUp(byDifficulty))
  const par = tee.holes.reduce((sum, hole) => sum + hole.par, 0)
  return plus(byDifficulty, minus(fraction(tee.courseRatingTenths, 10), fraction(par)))
}

/** Rule 6.2a: the allowance is taken of the course handicap as it stands, then rounded once. */
export function playingHandicapOf(course: Fraction, percent: number): number {
  return halfUp(times(course, fraction(percent, 100)))
}

/** Appendix C, one ball of a side: the shares of the players, lowest first, added up and rounded once. */
export function sideHandicapOf(courses: readonly Fraction[], weights: readonly number[]): number {
  const lowFirst = [...courses].sort(compare)
  const shares = lowFirst.map((course, at) => times(course, fraction(weights[at] ?? 0, 100)))
  return halfUp(shares.reduce(plus, fraction(0)))
}

/**
 * Appendix E, dealt like cards: a stroke at a time to the hole with the lowest stroke index, then the next, and round
 * again; a plus player gives back a stroke at a time from the highest index. Counts the holes of this tee in the order
 * of their indexes, so that nine holes of an eighteen-hole card work the same way.
 */
export function strokesDealt(handicap: number, holes: readonly Hole[]): number[] {
  const hardestFirst = [...holes.keys()].sort((a, b) => holes[a]!.strokeIndex - holes[b]!.strokeIndex)
  const order = handicap < 0 ? hardestFirst.reverse() : hardestFirst
  const strokes = holes.map(() => 0)
  for (let dealt = 0; dealt < Math.abs(handicap); dealt += 1) {
    strokes[order[dealt % order.length]!]! += handicap < 0 ? -1 : 1
  }
  return strokes
}
