// A match as a phone is given it, so that it counts by itself what the board counts.

import type { Match } from '../day'
import { ballValueOf } from '../formats/format'
import { isStruckOut } from '../score/balls'
import type { DayIndex } from '../score/day-index'
import { entrantOf } from '../score/entrants'
import type { TermsInForce } from '../score/terms-in-force'
import { matchBalls, settingsOf } from './match'
import { endedByOutcome, extraHoles, givenEnding } from './match-endings'
import type { BallToCount, MatchToCount } from './match-now'

/** Null for a match that cannot be played: somebody in it has no ball, and it was not given either. */
export function matchToCount(match: Match, terms: TermsInForce, index: DayIndex): MatchToCount | null {
  const { format, maximum } = terms
  const entrants = [entrantOf(match.a, index), entrantOf(match.b, index)] as const
  const [a, b] = entrants
  const balls = a === null || b === null ? { a: [], b: [] } : matchBalls(a, b, terms, index)
  const isWhole = balls.a.length > 0 && balls.b.length > 0
  const given = givenEnding(match)
  if (!isWhole && given === null) return null
  const settings = isWhole ? settingsOf(match, balls, terms, index.day.closed) : null
  const off = given ?? (isWhole ? endedByOutcome(balls) : null)
  const extra =
    off === null && settings !== null && match.extraHoles !== undefined
      ? extraHoles(match.extraHoles, balls, settings, terms)
      : null
  const ended = off === null ? extra : { takes: 'undecided' as const, ...off, finished: true }
  const sideOf = (which: 'a' | 'b') => {
    const players = entrants[which === 'a' ? 0 : 1]?.players ?? []
    // Who has no ball is named all the same: the match decides about the other's card.
    if (balls[which].length === 0) return players.map((id) => ({ players: [id], gross: [], strokes: [], pars: [] }))
    return balls[which].map((ball): BallToCount => {
      const penalties = ball.card?.penaltyStrokes
      return {
        players: format.ball === 'one' ? players : [ball.id],
        gross: ball.gross,
        strokes: ball.strokes,
        pars: ball.holes.map(({ par }) => par),
        ...(format.ball === 'one' && ball.card?.outcome !== undefined ? { isFixed: true as const } : {}),
        ...(penalties === undefined ? {} : { penalties }),
        ...(isStruckOut(ball.card, format) || ball.card?.missed === true ? { isStruckOut: true as const } : {}),
      }
    })
  }
  const parts = format.value.kind === 'against-opponent' ? format.value.parts : undefined
  return {
    id: match.id,
    a: sideOf('a'),
    b: sideOf('b'),
    holes: (balls.a[0]?.holes ?? index.day.tees[0]?.holes ?? []).map(({ hole }) => hole),
    count: format.count,
    on: ballValueOf(format.value),
    maximum,
    startHole: settings?.startHole ?? 1,
    over: index.day.closed,
    conceded: (match.concededHoles ?? []).map(({ hole, to }) => [hole, to === 'a' ? 1 : -1] as const),
    ...(parts === undefined ? {} : { parts }),
    ...(ended === null ? {} : { ended }),
    ...(match.abandoned === true ? { abandoned: true as const } : {}),
    ...(match.concededBy === undefined ? {} : { concededBy: match.concededBy }),
  }
}
