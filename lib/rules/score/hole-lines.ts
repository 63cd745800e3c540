// A hole of an entrant as the sheet shows it: of a single ball, or of the balls of a side that count. Rules of Golf 23.2b:
// the score of a side is identified to the player who made it.

import type { HoleScore } from '../day'
import type { HoleLine } from '../standings'
import type { Ball } from './balls'

export function ownLine(ball: Ball, i: number, worth: HoleScore): HoleLine {
  const hole = ball.holes[i]!
  const gross = ball.gross[i]!
  const strokes = ball.strokes[i]!
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    strokes,
    gross,
    net: typeof gross === 'number' ? gross - strokes : null,
    value: typeof worth === 'number' ? worth : null,
  }
}

export function sideLine(balls: readonly Ball[], chosen: readonly number[], i: number, worth: HoleScore): HoleLine {
  const shown = balls[chosen[0] ?? 0]!
  const hole = shown.holes[i]!
  let gross = 0
  let strokes = 0
  for (const b of chosen) {
    gross += balls[b]!.gross[i] as number
    strokes += balls[b]!.strokes[i]!
  }
  const counted = worth !== null && chosen.length > 0
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    strokes: counted ? strokes : shown.strokes[i]!,
    gross: counted ? gross : worth === null ? null : 'x',
    net: counted ? gross - strokes : null,
    value: typeof worth === 'number' ? worth : null,
    by: counted ? chosen.map((b) => balls[b]!.id) : [],
  }
}
