// How the board says numbers and places. Pure, so that server and browser write the same letters.

import { progressInWords } from '@/lib/boards/card-progress'
import { ordinal, scoreLong, type Unit } from '@/lib/boards/in-words'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import type { NoPlace } from '@/lib/rules/standings'

/** True minus sign, and a plus in front of what is above nought. */
export function signed(n: number): string {
  if (n === 0) return '0'
  return n > 0 ? `+${n}` : `−${-n}`
}

/** "11=" while level, "" without a place. */
export function placeFigure(row: Pick<BoardRow, 'place' | 'tied'>): string {
  if (row.place === null) return ''
  return row.tied ? `${row.place}=` : String(row.place)
}

export const NO_PLACE: Record<NoPlace, string> = {
  'one-round-only': 'one round only',
  'rounds-missing': 'not every round',
  'no-return': 'no return',
  disqualified: 'disqualified',
  withdrawn: 'withdrawn',
  'not-started': 'not started',
}

/** Where a row is, in the words of every screen; what the committee ruled goes before. */
export function whereInWords({ noPlace, progress }: Pick<BoardRow, 'noPlace' | 'progress'>): string {
  if (noPlace && noPlace !== 'not-started') return NO_PLACE[noPlace]
  return progress ? progressInWords(progress) : ''
}

/** The figure beside the margin: points and strokes plain, holes against par with their sign. */
export function scoreFigure(score: number | null, unit: Unit): string {
  if (score === null) return '–'
  return unit === 'holes' ? signed(score) : score < 0 ? signed(score) : String(score)
}

/** "38 points", "net 69", "3 up", "level". */
export function scoreWords(score: number | null, unit: Unit, net = true): string {
  return score === null ? 'no score' : scoreLong(score, unit, net)
}

/** Heading of the figure column. */
export function unitHeading(competition: Pick<CompetitionBoard, 'unit' | 'format'>): string {
  if (competition.unit === 'points') return 'Points'
  if (competition.unit === 'holes') return 'Against par'
  if (competition.unit === 'skins') return 'Skins'
  return competition.format === 'gross' ? 'Gross' : 'Net'
}

/** Playing handicap as printed: a plus handicap, kept negative, carries its plus. */
export function handicapFigure(playingHandicap: number | null): string {
  if (playingHandicap === null) return '–'
  return playingHandicap < 0 ? `+${-playingHandicap}` : String(playingHandicap)
}

/** The last hole in words: "18th: 6 for 2", "17th: no score". */
export function lastHole(
  last: BoardRow['last'],
  unit: Unit,
): { hole: string; gross: string | null; value: string | null } {
  if (last === null) return { hole: '', gross: null, value: null }
  if (last.gross === 'x') return { hole: ordinal(last.hole), gross: null, value: null }
  return {
    hole: ordinal(last.hole),
    gross: String(last.gross),
    value: scoreFigure(last.value, unit),
  }
}

/** The family name as a board says it; a side keeps its own. */
export function shortName(name: string): string {
  if (name.includes(' and ') || name.includes(' & ')) return name
  return (
    name
      .replace(/ \(.*\)$/, '')
      .split(' ')
      .at(-1) ?? name
  )
}

/** A note where room is short: whose guest somebody is stands on the card. */
export const shortNote = (note: string): string => note.replace(/^guest of [^,]+/, 'guest')

/** What a note says beyond who is whose guest; null where that is all. */
export function noteBesideGuest(note: string | null): string | null {
  const rest = note?.replace(/^guest(?: of [^,]+)?(?:, )?/, '') ?? ''
  return rest === '' ? null : rest
}

/** Teams of own balls have no handicap of their own, and on gross nobody has one: a column of it tells nothing. */
export const hasHandicaps = ({
  format,
  rows,
}: Pick<CompetitionBoard, 'format'> & { readonly rows: readonly Pick<BoardRow, 'playingHandicap'>[] }): boolean =>
  format !== 'gross' && rows.some((row) => row.playingHandicap !== null)
