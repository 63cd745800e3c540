// What each player receives in the main competition: the dots on the card and on the desk's returns.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Competition, Day } from '@/lib/rules/day'
import { ballValueOf } from '@/lib/rules/formats/format'
import { scoreDay } from '@/lib/rules/score-day'
import type { HoleLine } from '@/lib/rules/standings'
import { formatIn } from './format-of-competition'

export interface MainReading {
  readonly unit: 'points' | 'strokes' | 'holes'
  readonly reading: 'points' | 'net' | 'gross' | 'par'
  readonly name: string
  /** Each player's own holes, by entry. */
  readonly lines: ReadonlyMap<string, OwnLine>
}

export interface OwnLine {
  readonly playingHandicap: number
  readonly holes: readonly HoleLine[]
  readonly out: number | null
  readonly in: number | null
  readonly gross: number | null
  readonly score: number | null
}

/** Every player's own card read in the first competition. */
export function mainReading(record: DayRecord, day: Day): MainReading {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  const on = format ? ballValueOf(format.value).kind : 'points'
  const { unit, lines } = ownReading(main, day)
  return {
    unit,
    reading:
      on === 'points' ? 'points' : on === 'against-par' ? 'par' : format?.strokes.kind === 'none' ? 'gross' : 'net',
    name: main?.name ?? record.name,
    lines,
  }
}

/** A competition of sides or of matches is read player by player. */
export function ownReading(
  competition: CompetitionRecord | undefined,
  day: Day,
): { readonly unit: MainReading['unit']; readonly lines: MainReading['lines'] } {
  const format = competition && formatIn(competition)
  const isOwn = format && format.sideSize === 1 && !format.isMatch
  const competitions = isOwn ? day.competitions.filter((one) => one.id === competition.id) : [eachAlone(competition)]
  const result = scoreDay({ ...day, competitions })[0]
  const lines = (result?.standings ?? []).map(
    ({ entrant, playingHandicap, holes, out, in: back, gross, score }): [string, OwnLine] => [
      entrant,
      { playingHandicap: playingHandicap ?? 0, holes, out, in: back, gross, score },
    ],
  )
  return { unit: result?.unit ?? 'points', lines: new Map(lines) }
}

/** The same allowance and the same value of a hole, everybody for himself. */
function eachAlone(main: CompetitionRecord | undefined): Competition {
  const format = main && formatIn(main)
  const on = format ? ballValueOf(format.value).kind : 'points'
  const single =
    on === 'points' ? 'stableford' : on === 'against-par' ? 'par' : on === 'maximum' ? 'maximum-score' : 'medal'
  const allowance = main?.terms.allowance
  return {
    id: main?.id ?? 'own',
    format: single,
    allowance: typeof allowance === 'number' ? allowance : 100,
    ...(main?.terms.maximum ? { maximum: main.terms.maximum } : {}),
  }
}
