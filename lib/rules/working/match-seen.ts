// A match looked at again for its working, on the terms of the competition it was played in (Rules of Golf 3.2, RoH
// Appendix C), so that the steps end on the figures of the board.

import type { Competition, Day, Match } from '../day'
import type { Format } from '../formats/format'
import { ballsOn, footingOf, type MatchFooting } from '../matches/match'
import type { MatchBalls } from '../matches/play-match'
import type { Ball } from '../score/balls'
import { type DayIndex, indexOf } from '../score/day-index'
import { type Entrant, entrantOf } from '../score/entrants'
import { type TermsInForce, termsInForce } from '../score/terms-in-force'
import type { MatchResult } from '../standings'

export interface MatchSeen {
  readonly day: Day
  /** As arranged, with what the desk wrote of its end. */
  readonly match: Match
  readonly result: MatchResult
  readonly terms: TermsInForce
  readonly footing: MatchFooting
  readonly balls: MatchBalls
}

/** Null where the format is not known or somebody is not in the day. */
export function matchSeen(
  day: Day,
  result: MatchResult,
  competition: Competition,
  formats: readonly Format[],
): MatchSeen | null {
  const terms = termsInForce(competition, day, formats)
  if (terms === null) return null
  const rounds = competition.rounds ?? [1]
  const index = indexOf(day, rounds[rounds.length - 1] ?? 1)
  const footing = footingOf(endOf(result.a, index), endOf(result.b, index), terms, index)
  const balls = ballsOn(footing, terms)
  if (balls.a.length === 0 || balls.b.length === 0) return null
  const { id, a, b } = result
  return {
    day,
    match: competition.matches?.find((one) => one.id === id) ?? { id, a, b },
    result,
    terms,
    footing,
    balls,
  }
}

/** Players put together for the occasion are named by their ids, joined. */
function endOf(id: string, index: DayIndex): Entrant {
  return entrantOf(id, index) ?? { id, players: id.split(' and ') }
}

export const ballsIn = ({ balls }: MatchSeen): readonly Ball[] => [...balls.a, ...balls.b]

/** A player, a side by its name or its players, or players put together for the occasion. */
export function nameIn(day: Day, id: string): string {
  const nameOf = (player: string) => day.players.find((one) => one.id === player)?.name
  const side = day.sides.find((one) => one.id === id)
  if (side?.name !== undefined) return side.name
  const players = side?.players ?? id.split(' and ')
  return nameOf(id) ?? players.map((player) => nameOf(player) ?? player).join(' and ')
}
