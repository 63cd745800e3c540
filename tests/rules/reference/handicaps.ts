// From index to strokes, written straight from Rules of Handicapping 2024, Rule 6 and Appendices C and E. Slow on purpose;
// what was worked out once for a tee is only remembered.
import type { Hole, Tee } from '@/lib/rules/day'
import { compare, type Fraction, fraction, halfUp, minus, plus, times } from './exact'

/** Rule 6.1: index × slope ÷ 113 + (course rating − par); a nine takes half the index, to one decimal, first. */
function courseHandicap(indexTenths: number, tee: Tee, edition: string): Fraction {
  const index = tee.holes.length === 9 ? fraction(halfUp(fraction(indexTenths, 2)), 10) : fraction(indexTenths, 10)
  const byDifficulty = times(index, fraction(tee.slopeRating, 113))
  // Great Britain and Ireland left the second term out until 31 March 2024, and rounded at once.
  if (edition === '2020-gbi') return fraction(halfUp(byDifficulty))
  return plus(byDifficulty, minus(fraction(tee.courseRatingTenths, 10), fraction(parOf(tee))))
}

const known = new WeakMap<Tee, Map<string, Fraction>>()

export function courseHandicapOf(indexTenths: number, tee: Tee, edition: string): Fraction {
  const ofTee = known.get(tee) ?? new Map<string, Fraction>()
  known.set(tee, ofTee)
  const key = `${indexTenths} ${edition}`
  const found = ofTee.get(key) ?? courseHandicap(indexTenths, tee, edition)
  ofTee.set(key, found)
  return found
}

export function parOf(tee: Tee): number {
  return tee.holes.reduce((sum, hole) => sum + hole.par, 0)
}

/** Appendix C, one ball of a side: the shares of the players, lowest first, added up; rounded once by whoever asks. */
export function sideHandicapOf(courses: readonly Fraction[], weights: readonly number[]): Fraction {
  const lowFirst = [...courses].sort(compare)
  return lowFirst.reduce((sum, course, at) => plus(sum, times(course, fraction(weights[at] ?? 0, 100))), fraction(0))
}

const dealt = new WeakMap<readonly Hole[], Map<number, readonly number[]>>()

/** Appendix E, remembered for the holes of a tee. */
export function strokesDealt(handicap: number, holes: readonly Hole[]): readonly number[] {
  const ofHoles = dealt.get(holes) ?? new Map<number, readonly number[]>()
  dealt.set(holes, ofHoles)
  const strokes = ofHoles.get(handicap) ?? deal(handicap, holes)
  ofHoles.set(handicap, strokes)
  return strokes
}

/**
 * Dealt like cards: a stroke at a time to the hole with the lowest stroke index, then the next, and round again; a plus
 * player gives back a stroke at a time from the highest index. Counts the holes of this tee in the order of their
 * indexes, so that nine holes of an eighteen-hole card work the same way.
 */
function deal(handicap: number, holes: readonly Hole[]): number[] {
  const hardestFirst = [...holes.keys()].sort((a, b) => holes[a]!.strokeIndex - holes[b]!.strokeIndex)
  const order = handicap < 0 ? hardestFirst.reverse() : hardestFirst
  const strokes = holes.map(() => 0)
  for (let given = 0; given < Math.abs(handicap); given += 1) {
    strokes[order[given % order.length]!]! += handicap < 0 ? -1 : 1
  }
  return strokes
}
