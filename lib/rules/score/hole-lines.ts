// A hole of an entrant as the sheet shows it: of a single ball, or of the balls of a side that count. Rules of Golf 23.2b:
// the score of a side is identified to the player who made it.

import type { HoleScore } from '../day'
import type { HoleLine } from '../standings'
import type { Ball } from './balls'

/** Was anything written for this hole, or did it only get what the closing of the day gave it? */
export function wasPlayed(balls: readonly Ball[], i: number): boolean {
  for (let b = 0; b < balls.length; b++) {
    const { filled, card } = balls[b]!
    const score = filled ? null : card?.scores[i]
    if (score !== null && score !== undefined) return true
  }
  return false
}

export function ownLine(ball: Ball, i: number, worth: HoleScore, played: boolean): HoleLine {
  const hole = ball.holes[i]!
  const gross = played ? ball.gross[i]! : null
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

export function sideLine(
  balls: readonly Ball[],
  chosen: readonly number[],
  i: number,
  worth: HoleScore,
  played: boolean,
): HoleLine {
  const shown = balls[chosen[0] ?? 0]!
  const hole = shown.holes[i]!
  let gross = 0
  let strokes = 0
  for (const b of chosen) {
    gross += balls[b]!.gross[i] as number
    strokes += balls[b]!.strokes[i]!
  }
  const counted = played && worth !== null && chosen.length > 0
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    strokes: counted ? strokes : shown.strokes[i]!,
    gross: counted ? gross : worth === null || !played ? null : 'x',
    net: counted ? gross - strokes : null,
    value: typeof worth === 'number' ? worth : null,
    by: counted ? chosen.map((b) => balls[b]!.id) : [],
  }
}
