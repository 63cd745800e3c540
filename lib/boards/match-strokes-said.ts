// The lines of a printed card that say where strokes fall in each match of the player's.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { namesOf } from './entrant-names'
import type { MatchOfDay } from './match-cards'
import { differsFromDots, type Strokes, strokesInWords, strokesOf } from './match-strokes'

/** One line a match of the player's; none where the dots of the card say it already, for every match there is. */
export function matchStrokesSaid(
  record: DayRecord,
  matches: readonly MatchOfDay[],
  player: EntryId,
  dots: Strokes,
): readonly string[] {
  const own = matches.flatMap(({ competition, ends, match }) => {
    const strokes = strokesOf(match, player)
    return strokes ? [{ competition, ends, match, strokes }] : []
  })
  if (!own.some(({ strokes }) => differsFromDots(strokes, dots))) return []
  const names = namesOf(record)
  return own.map(({ competition, ends, match, strokes }) => {
    const other = match.a.some((ball) => ball.players.includes(player)) ? ends.b : ends.a
    return `${competition.name}, against ${names.entrantShort(other)}: ${differsFromDots(strokes, dots) ? strokesInWords(strokes, match.holes) : 'the dots'}.`
  })
}
