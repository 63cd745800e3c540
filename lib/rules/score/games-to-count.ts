// The games inside the groups of a day as the phones are given them, so that they count by themselves what the board counts.

import type { BallToCount } from '../matches/match-now'
import type { DayIndex } from './day-index'
import { entrantsOf } from './entrants'
import type { GameToCount } from './game-now'
import { startPlace } from './order-of-play'
import { groupBalls } from './shared-holes'
import type { TermsInForce } from './terms-in-force'

/** One for each group of the draw that shares the game. */
export function gamesToCount(terms: TermsInForce, index: DayIndex): readonly GameToCount[] {
  const { format, competition, maximum } = terms
  const { value } = format
  if (value.kind !== 'shared') return []
  const entrants = entrantsOf(terms, index)
  return (competition.groups ?? []).flatMap((ids): GameToCount[] => {
    const group = entrants.filter(({ id }) => ids.includes(id))
    const { balls, reading } = groupBalls(group, terms, index)
    const [first] = balls
    if (first === undefined) return []
    return [
      {
        balls: balls.map((ball): BallToCount => {
          const penalties = ball.card?.penaltyStrokes
          const isOver = index.day.closed || ball.card?.outcome !== undefined || ball.card?.missed === true
          return {
            players: [ball.id],
            gross: ball.gross,
            strokes: ball.strokes,
            pars: ball.holes.map(({ par }) => par),
            ...(isOver ? { isFixed: true as const } : {}),
            ...(penalties === undefined ? {} : { penalties }),
          }
        }),
        holes: first.holes.map(({ hole }) => hole),
        on: value.on,
        maximum,
        shares: value.shares,
        start: startPlace(balls, first.holes),
        times: reading.counts.map(({ weight }, at) => (reading.counted[at] ? weight * reading.holeTimes[at]! : 0)),
      },
    ]
  })
}
