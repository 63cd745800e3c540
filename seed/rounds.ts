// A plausible round: a little worse than the figure on most days, harder holes dearer, a pick-up when a hole is lost.

import type { RoundTeeRecord } from '@/lib/facts/day-record'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { diceFrom, seedOf, swing } from './dice'

/** Strokes above the figure on an ordinary day. */
const ORDINARY = 4.2

/** The throws of each day: chosen so that nobody beats the two who tied on day 2, and nobody is cut after day 1. */
export const CHANCE: Readonly<Record<string, string>> = {
  'day-1': 'Opening Day 9',
  'day-2': 'Spring Cup 59',
  'day-3': 'Downland Day 6',
}

export function roundOf(
  name: string,
  day: string,
  tee: Pick<RoundTeeRecord, 'courseRatingTenths' | 'slopeRating' | 'holes'>,
  indexTenths: number,
  truth: number,
): readonly WrittenScore[] {
  const dice = diceFrom(seedOf(`${day} ${name}`))
  const par = tee.holes.reduce((sum, hole) => sum + hole.par, 0)
  const course = (indexTenths / 10) * (tee.slopeRating / 113) + (tee.courseRatingTenths / 10 - par)
  const over = course + ORDINARY + truth + swing(dice) * 2.4
  return tee.holes.map((hole) => {
    const share = 0.5 / 18 + (0.5 * (19 - hole.strokeIndex)) / 171
    const strokes = Math.round(over * share + swing(dice) * 0.8)
    const lost = Math.ceil(course / 18) + 3
    if (strokes > lost) return 'x'
    return hole.par + Math.max(strokes, dice() < 0.04 ? -2 : -1)
  })
}

/** Cards of day 2 that the society still talks about, by family name: Trevennor and Holmgarth level on 38. */
export const REMEMBERED: Readonly<Record<string, readonly number[]>> = {
  Haldane: [4, 5, 4, 5, 4, 5, 4, 3, 4, 4, 5, 3, 4, 5, 5, 3, 5, 5],
  Coldbrook: [5, 6, 3, 6, 5, 6, 4, 4, 6, 5, 5, 4, 6, 6, 4, 3, 5, 7],
  Trevennor: [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6],
  Tarrablane: [5, 6, 5, 7, 4, 7, 5, 5, 6, 6, 5, 4, 7, 6, 5, 4, 6, 6],
  Holmgarth: [5, 5, 4, 5, 4, 7, 4, 5, 5, 4, 5, 3, 7, 6, 6, 4, 5, 6],
}
