// Rules of Golf 2023, 3.1c, 21.1b, 21.2b, 21.3b: what one ball is worth on one hole. Net is gross less strokes received.
// 'x' stands for no score that counts, null for a hole not played yet.

import type { HoleScore, MaximumScore } from '../day'
import type { BallValue, PointsTable } from '../formats/format'

export function pointsFor(overPar: number, table: PointsTable): number {
  const { best, points } = table
  const at = overPar - best
  if (at < 0) return points[0]! - at * table.beyond
  return points[at < points.length ? at : points.length - 1]!
}

/** The most a hole can count, in gross strokes. Rules of Golf 21.2a: set by the committee. */
export function maximumOn(maximum: MaximumScore, par: number, strokes: number): number {
  switch (maximum.kind) {
    case 'net-double-bogey':
      return par + 2 + strokes
    case 'double-par':
      return par + par
    case 'fixed':
      return maximum.strokes
  }
}

export function valueOnHole(
  value: BallValue,
  gross: HoleScore,
  strokes: number,
  par: number,
  maximum: MaximumScore,
): HoleScore {
  if (gross === null) return null
  switch (value.kind) {
    case 'strokes':
      return gross === 'x' ? 'x' : gross - strokes
    case 'maximum': {
      const most = maximumOn(maximum, par, strokes)
      return (gross === 'x' || gross > most ? most : gross) - strokes
    }
    case 'points':
      return gross === 'x' ? value.table.noScore : pointsFor(gross - strokes - par, value.table)
    case 'against-par': {
      if (gross === 'x') return -1
      const over = gross - strokes - par
      return over < 0 ? 1 : over > 0 ? -1 : 0
    }
  }
}

/** What a hole is worth to whoever plays it exactly to handicap. */
export function levelOnHole(value: BallValue, par: number): number {
  switch (value.kind) {
    case 'strokes':
    case 'maximum':
      return par
    case 'points':
      return pointsFor(0, value.table)
    case 'against-par':
      return 0
  }
}
