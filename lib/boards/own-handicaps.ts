// What each player receives in the main competition: the dots on the card and on the desk's returns.

import type { DayRecord } from '@/lib/facts/day-record'
import type { Day } from '@/lib/rules/day'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { ballValueOf } from '@/lib/rules/formats/format'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult, HoleLine } from '@/lib/rules/standings'

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

/** Every player's own card read in the first competition; a competition of sides or of matches is read player by player. */
export function mainReading(record: DayRecord, day: Day, results?: readonly CompetitionResult[]): MainReading {
  const main = record.competitions[0]
  const format = main && formatOf(main.format)
  const alone = format && format.sideSize === 1 && !format.isMatch
  const result = alone
    ? (results ?? scoreDay({ ...day, competitions: day.competitions.filter((one) => one.id === main.id) })).find(
        (one) => one.competition === main.id,
      )
    : scoreDay({ ...day, competitions: [eachAlone(main)] })[0]
  const on = format ? ballValueOf(format.value).kind : 'points'
  return {
    unit: result?.unit ?? 'points',
    reading:
      on === 'points' ? 'points' : on === 'against-par' ? 'par' : format?.strokes.kind === 'none' ? 'gross' : 'net',
    name: main?.name ?? record.name,
    lines: new Map(
      (result?.standings ?? []).map((one) => [
        one.entrant,
        {
          playingHandicap: one.playingHandicap ?? 0,
          holes: one.holes,
          out: one.out,
          in: one.in,
          gross: one.gross,
          score: one.score,
        },
      ]),
    ),
  }
}

/** The same allowance and the same value of a hole, everybody for himself. */
function eachAlone(main: DayRecord['competitions'][number] | undefined): Day['competitions'][number] {
  const format = main && formatOf(main.format)
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
