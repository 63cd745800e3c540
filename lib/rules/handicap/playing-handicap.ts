// Rules of Handicapping 2024, 6.2a: playing handicap = course handicap × allowance, rounded once, here. Under an edition
// that rounds the course handicap first, the allowance is applied to the rounded figure.

import { editionOf } from '../editions/editions'
import { type Fraction, fraction, rounded, times } from '../exact/fraction'
import type { CourseHandicap } from './course-handicap'

/** Course handicap as the allowance meets it: in full, or rounded first where the edition says so. */
export function beforeAllowance(course: CourseHandicap, editionId: string): Fraction {
  return editionOf(editionId).beforeAllowance === 'rounded' ? fraction(course.rounded) : course
}

/** Course handicap with the allowance applied and nothing rounded yet. */
export function afterAllowance(course: CourseHandicap, allowancePercent: number, editionId: string): Fraction {
  return times(beforeAllowance(course, editionId), allowancePercent, 100)
}

export function playingHandicap(course: CourseHandicap, allowancePercent: number, editionId: string): number {
  return rounded(afterAllowance(course, allowancePercent, editionId))
}
