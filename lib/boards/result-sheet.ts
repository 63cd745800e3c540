// The numbered sheet, made once when the result is published and never counted again.

import type { DayRecord } from '@/lib/facts/day-record'
import type { CardId } from '@/lib/facts/ids'
import { decimal, fraction } from '@/lib/rules/exact/fraction'
import { holesOfRound } from '@/lib/rules/hole-numbers'
import { boardOf } from './board'
import { rulingsInForce } from './current-card'
import { dayOfRecord } from './day-of-record'
import { dayRulingLines } from './day-rulings'
import { rowsOfDivision } from './divisions'
import { type Names, namesOf } from './entrant-names'
import { gamesOf } from './games-of-groups'
import { asSentence, listed, ordinal, scoreShort } from './in-words'
import { mainReading } from './own-handicaps'
import { prizesInTurn } from './prize-rule'
import { prizesOf } from './prizes'
import { rulingLines } from './returns'
import type { BoardRow, CompetitionBoard, ResultSheet } from './views'

export interface Publishing {
  readonly number: number
  readonly reason: string | null
  readonly without?: string | null
  readonly by: string
  readonly at: Date
}

export function resultSheetOf(record: DayRecord, { number, reason, without, by, at }: Publishing): ResultSheet {
  const board = { ...boardOf(record, at), published: number }
  const everybody = [record, ...record.earlier].flatMap((day) => day.entries)
  const guests = new Set(everybody.filter((entry) => entry.kind === 'guest').map((entry) => entry.id))
  const names = namesOf(record)
  return {
    sheetVersion: 1,
    number,
    reason,
    ...(without ? { without } : {}),
    publishedAt: at.toISOString(),
    by,
    board,
    ties: board.competitions.flatMap((one) => tiesOf(one, board.competitions.length > 1, names)),
    prizeRule: prizesInTurn(record.competitions),
    prizes: prizesOf(record.competitions, board.competitions, (id) => guests.has(id), names.short),
    course: courseOf(record),
    rulings: [...dayRulingLines(record, names), ...publicRulings(record, names)],
    frozenAt: record.frozenAt?.toISOString() ?? null,
    edition: record.edition,
  }
}

/** Every tie in words: those that were broken, and those that stand; of the whole field, then of each division. */
export function tiesOf(board: CompetitionBoard, several: boolean, names: Names): string[] {
  const lead = several ? `${board.name}, ` : ''
  return [
    ...gamesOf(board, board.rows).flatMap(({ groupNumber, rows }) =>
      tiesAmong(rows, groupNumber === null ? lead : `${lead}group ${groupNumber}, `, board.unit, names),
    ),
    ...(board.divisions ?? []).flatMap(({ id, name }) =>
      tiesAmong(rowsOfDivision(board, id), `${lead}${name}, `, board.unit, names),
    ),
  ]
}

function tiesAmong(rows: readonly BoardRow[], lead: string, unit: CompetitionBoard['unit'], names: Names): string[] {
  const standing = new Set<number>()
  return rows.flatMap((row) => {
    const { place } = row
    if (place === null) return []
    const sentences: string[] = []
    if (row.tied && !standing.has(place)) {
      standing.add(place)
      const level = rows.filter((one) => one.place === place)
      const all = level.length === 2 ? 'both' : 'all'
      sentences.push(
        `${lead}${ordinal(place)} shared: ${listed(level.map((one) => names.entrantShort(one.entrant)))}, ${all} ${scoreShort(row.score ?? 0, unit)}.`,
      )
    }
    if (row.tieSentence) sentences.push(`${lead}${ordinal(place)}: ${row.tieSentence}`)
    return sentences
  })
}

/** To two places, by the engine's own rounding: a published sheet keeps it for ever, also where values are negative. */
export function averageOf(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const sum = values.reduce((total, value) => total + value, 0)
  // The engine rounds half up; below nothing that is towards nothing, so the size is rounded and the sign put back.
  const size = Number(decimal(fraction(Math.abs(sum), values.length), 2))
  return sum < 0 && size > 0 ? -size : size
}

/** How each hole played: the average value of the cards that have a figure on it, to two places. */
function courseOf(record: DayRecord): ResultSheet['course'] {
  const lines = [...mainReading(record, dayOfRecord(record)).lines.values()]
  return holesOfRound(record.round).map((hole, at) => {
    const values = lines
      .filter((line) => line.holes.some(({ gross }) => gross !== null && gross !== 'x'))
      .flatMap((line) => line.holes[at]?.value ?? [])
    return { hole, average: averageOf(values) }
  })
}

export function publicRulings(record: DayRecord, names: Names, cardId?: CardId): ResultSheet['rulings'] {
  const inForce = new Set(rulingsInForce(record.rulings).map((one) => one.number))
  return rulingLines({ record, called: names.full })
    .filter((line) => inForce.has(line.number) && (cardId === undefined || line.cardId === cardId))
    .map((line) => ({
      number: line.number,
      name: line.name,
      sentence: `${line.sentence} ${asSentence(line.reason)}`,
      clause: line.clause,
      by: line.by,
      at: line.at,
    }))
}
