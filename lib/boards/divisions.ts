// The divisions of a competition for the board and the sheet. A division holds only places: the figures of a card are the
// same in every part of the field, and stand once, with the main standings.

import type { CompetitionTerms } from '@/lib/facts/terms'
import type { Division } from '@/lib/rules/day'
import type { Format } from '@/lib/rules/formats/format'
import type { CompetitionResult, Standing } from '@/lib/rules/standings'
import type { Names } from './entrant-names'
import { capital } from './in-words'
import { tieSentence } from './tie-sentences'
import type { BoardRow, CompetitionBoard, DivisionBoard } from './views'

/** Which handicap says who is in a division. */
export const decidingHandicap = (format: Pick<Format, 'strokes'> | null) =>
  format?.strokes.kind === 'none' ? 'course' : 'playing'

export function divisionBoards(
  terms: Pick<CompetitionTerms, 'divisions'>,
  result: CompetitionResult,
  names: Names,
  format: Format | null,
): readonly DivisionBoard[] {
  return (result.divisions ?? []).map(({ id, name, standings }) => {
    const division = terms.divisions?.find((one) => one.id === id)
    return {
      id,
      name,
      sentence: division ? divisionInWords(division, decidingHandicap(format)) : '',
      rows: standings.map((standing) => placed(standing, result.unit, names)),
    }
  })
}

function placed(
  { place, tied, entrant, tieBroken, score }: Standing,
  unit: CompetitionBoard['unit'],
  names: Names,
): DivisionBoard['rows'][number] {
  return {
    entrant,
    place,
    tied,
    tieBroken: tieBroken ?? null,
    tieSentence: tieBroken ? tieSentence(tieBroken, entrant, score ?? 0, unit, names) : null,
  }
}

type Placed = Pick<BoardRow, 'entrant' | 'place' | 'tied' | 'tieSentence'>

/** The rows of one division, in its own order and with its own places. */
export function rowsOfDivision<Row extends Placed>(
  board: { readonly rows: readonly Row[]; readonly divisions?: readonly DivisionBoard[] | undefined },
  divisionId: string,
): readonly Row[] {
  const division = board.divisions?.find((one) => one.id === divisionId)
  if (!division) return board.rows
  const rows = new Map(board.rows.map((row) => [row.entrant, row]))
  return division.rows.flatMap(({ entrant, ...own }) => {
    const row = rows.get(entrant)
    return row ? [{ ...row, ...own }] : []
  })
}

/**
 * "Women with a playing handicap from 0 to 18, without guests; only those marked “senior”." `handicap`: which one decides,
 * the course handicap where none counts.
 */
export function divisionInWords(
  division: Omit<Division, 'id' | 'name'>,
  handicap: 'playing' | 'course' = 'playing',
): string {
  const { handicapFrom: from, handicapTo: to, gender, guests, group } = division
  const who = guests === 'only' ? 'guests' : guests === 'none' ? 'members' : gender ? '' : 'everybody'
  const people = gender ? `${gender}${who ? `, ${who} only` : ''}` : who
  const figure = (one: number) => (one < 0 ? `+${-one}` : String(one))
  const band =
    from !== undefined && to !== undefined
      ? `with a ${handicap} handicap from ${figure(from)} to ${figure(to)}`
      : from !== undefined
        ? `with a ${handicap} handicap of ${figure(from)} or more`
        : to !== undefined
          ? `with a ${handicap} handicap of ${figure(to)} or less`
          : ''
  const marked = group ? `marked “${group}”` : ''
  return `${capital([people, band, marked].filter((part) => part !== '').join(' '))}.`
}
