// Rules of Handicapping 2024, 3.1: the most a hole counts in a score for handicapping. Par and two and the strokes
// received on the rounded course handicap, not a playing handicap; par and five without an index, or above 54 with four
// strokes on the hole.

import type { Hole, HoleScore } from '../day'
import { strokesOnHoles } from '../strokes/strokes-on-holes'

export function netDoubleBogey(hole: Pick<Hole, 'par'>, strokes: number, courseHandicap: number | null): number {
  if (courseHandicap === null) return hole.par + 5
  return courseHandicap > 54 && strokes >= 4 ? hole.par + 5 : hole.par + 2 + strokes
}

/** Gross scores with every hole held to the maximum. A hole not played stays null: the edition says what it counts as. */
export function adjustedScores(
  scores: readonly HoleScore[],
  holes: readonly Hole[],
  courseHandicap: number | null,
): (number | null)[] {
  const strokes = strokesOnHoles(courseHandicap ?? 0, holes)
  return holes.map((hole, i) => {
    const score = scores[i] ?? null
    if (score === null) return null
    const most = netDoubleBogey(hole, strokes[i]!, courseHandicap)
    return score === 'x' ? most : Math.min(score, most)
  })
}
