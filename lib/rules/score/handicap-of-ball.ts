// The handicap of a ball: RoH 2024, 6.2 with the allowance of Appendix C, the par difference of 6.2b, and whatever the
// terms say on top: a limit (7.2, a committee may set a lower maximum), a figure set by hand, a divided total.

import { editionOf } from '../editions/editions'
import { compare, fraction, rounded } from '../exact/fraction'
import { comparesStrokes } from '../formats/format'
import { type CourseHandicap, wholeCourse } from '../handicap/course-handicap'
import type { MatchHandicap } from '../handicap/match-strokes'
import { parDifference } from '../handicap/par-difference'
import { afterAllowance } from '../handicap/playing-handicap'
import { dividedHandicapInFull, sideHandicapInFull } from '../handicap/side-handicap'
import type { BallSeed } from './balls'
import { type PlayerLine, setByHand } from './day-index'
import { HOUSE_CHOICE, type TermsInForce } from './terms-in-force'

/** Handicap of a ball with the allowance applied and nothing rounded, and the strokes for the par of its tee. */
export function handicapInFull(
  seed: BallSeed,
  terms: TermsInForce,
  lowestPar: number,
  editionId: string,
): MatchHandicap {
  const { format, competition } = terms
  if (format.strokes.kind === 'none') return { full: fraction(0), parDifference: 0 }
  const byHand = handicapByHand(seed, terms)
  if (byHand !== null) return { full: fraction(byHand), parDifference: 0 }
  const due = comparesStrokes(format) ? parDifference(seed.sheet.par, lowestPar) : 0
  if (format.strokes.kind === 'for-the-side') {
    const courses = courseHandicapsOf(seed, terms)
    const by = competition.dividedBy
    const allowance = allowanceOfSide(courses.length, terms, editionId)
    const full =
      by === undefined
        ? sideHandicapInFull(courses, allowance, editionId)
        : dividedHandicapInFull(courses, by, editionId)
    return { full, parDifference: due }
  }
  const { allowance } = terms
  const percent = typeof allowance === 'number' ? allowance : (allowance[0] ?? 100)
  const line = seed.lines[0]!
  const full = afterAllowance(line.course, percent, editionId)
  const limit = limitOf(line, terms)
  const limited = limit !== null && compare(full, fraction(limit)) > 0 ? fraction(limit) : full
  return { full: limited, parDifference: due }
}

/**
 * What a player brings to the one ball of a side: the course handicap in full, cut to the limit before it is combined, so
 * that a higher handicap never gets fewer strokes; or the playing handicap that was set by hand, as it is.
 */
export function courseForSide(line: PlayerLine, terms: TermsInForce): CourseHandicap {
  const byHand = setByHand(line, terms.competition.id)
  if (byHand !== null) return wholeCourse(byHand)
  const limit = limitOf(line, terms)
  return limit !== null && compare(line.course, fraction(limit)) > 0 ? wholeCourse(limit) : line.course
}

/** Course handicaps that make a side's own, a missing player's included where the terms say how. */
export function courseHandicapsOf(seed: BallSeed, terms: TermsInForce): CourseHandicap[] {
  const courses = seed.lines.map((line) => courseForSide(line, terms))
  const { missing } = terms.competition
  if (missing === undefined) return courses
  for (let short = terms.format.side.to - courses.length; short > 0; short--) {
    if (missing.kind === 'ghost') courses.push(wholeCourse(missing.courseHandicap))
    else if (missing.kind === 'lowest-again')
      courses.push(courses.reduce((low, one) => (compare(one, low) < 0 ? one : low)))
  }
  return courses
}

/**
 * The weights of a side of so many handicaps. Where the published figure of a full side is in force, a shorter side takes
 * the published one of its own size, if there is one; any other weights are used from the first on.
 */
export function allowanceOfSide(
  players: number,
  { allowance, allowanceFrom, format }: TermsInForce,
  editionId: string,
): number | readonly number[] {
  const row = allowanceFrom === HOUSE_CHOICE ? undefined : format.shortSides?.[players]
  return row === undefined ? allowance : editionOf(editionId).allowances[row]
}

/** A playing handicap set by a ruling: final, whatever the allowance, the tee and the limit. */
export function handicapByHand(seed: BallSeed, { competition, format }: TermsInForce): number | null {
  // A side's ball has a figure of its own only on the side's own card.
  if (seed.card?.playingHandicap !== undefined && seed.card.player === seed.id) return seed.card.playingHandicap
  return format.ball === 'one' ? null : setByHand(seed.lines[0]!, competition.id)
}

export function limitOf(line: PlayerLine, terms: TermsInForce): number | null {
  return terms.competition.handicapLimit?.[line.sheet.tee.gender] ?? null
}

export function ownHandicap({ full, parDifference }: MatchHandicap): number {
  return rounded(full) + parDifference
}
