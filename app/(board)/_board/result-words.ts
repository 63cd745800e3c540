// The words of the result sheet: how each of the first three came to be there, prizes and their money, the course.

import { capital, ordinal } from '@/lib/boards/in-words'
import type { BoardRow, CompetitionBoard, ResultSheet } from '@/lib/boards/views'
import { handicapFigure, NO_PLACE } from './words'

const PLACE_WORDS = ['', 'First', 'Second', 'Third']

/** "First, playing handicap 19, 20 out and 18 in, gross 89." */
export function howItCame(row: BoardRow, competition: Pick<CompetitionBoard, 'unit' | 'format'>): string {
  const isGross = competition.format === 'gross'
  const place = row.place === null ? '' : (PLACE_WORDS[row.place] ?? capital(ordinal(row.place)))
  const parts = [
    row.tied ? `Level ${place.toLowerCase()}` : place,
    row.playingHandicap === null || isGross ? null : `playing handicap ${handicapFigure(row.playingHandicap)}`,
    halvesInWords(row, competition),
    row.gross === null || isGross ? null : `gross ${row.gross}`,
  ]
  return `${parts.filter((part) => part).join(', ')}.`
}

/** "20 out and 18 in"; what decides between level cards, where that is not the second nine as it stands on the card. */
function halvesInWords(
  { out, in: back, countback }: BoardRow,
  { unit }: Pick<CompetitionBoard, 'unit'>,
): string | null {
  if (out === null || back === null || unit === 'holes') return null
  return countback ? `${countback.window} ${countback.figure}` : `${out} out and ${back} in`
}

/** Whole pounds without pence: "£45", "£12.50"; nothing for a prize without a value. */
export function money(pence: number | null): string {
  if (pence === null) return ''
  const pounds = Math.trunc(pence / 100)
  const rest = pence % 100
  return rest === 0 ? `£${pounds}` : `£${pounds}.${String(rest).padStart(2, '0')}`
}

export interface CoursePlayed {
  readonly easiest: { readonly hole: number; readonly average: number }
  readonly hardest: { readonly hole: number; readonly average: number }
  readonly sentence: string
}

/** Null while no card has a hole on it. Averages of points: the easiest hole is the one with most. */
export function coursePlayed(sheet: ResultSheet): CoursePlayed | null {
  const played = sheet.course.flatMap(({ hole, average }) => (average === null ? [] : [{ hole, average }]))
  const main = sheet.board.competitions[0]
  const [first] = played
  // What a hole gave in a game that is shared inside groups says nothing of the hole.
  if (!first || !main || main.shared) return null
  // The averages of a day of matches are strokes, whatever decides the match: fewer are better.
  const better = main.better === 'high' && main.matches.length === 0 ? 1 : -1
  const easiest = played.reduce((best, one) => (better * (one.average - best.average) > 0 ? one : best), first)
  const hardest = played.reduce((worst, one) => (better * (one.average - worst.average) < 0 ? one : worst), first)
  const scores = main.rows.flatMap((row) => (row.place === null || row.score === null ? [] : [row.score]))
  const all = scores.reduce((total, score) => total + score, 0)
  const field =
    main.unit === 'points' && scores.length > 0 && main.rows.every((row) => row.entryIds.length === 1)
      ? ` The field made ${all} points, ${(Math.round((all * 10) / scores.length) / 10).toFixed(1)} a card.`
      : ''
  return {
    easiest,
    hardest,
    sentence: `Easiest the ${ordinal(easiest.hole)}, hardest the ${ordinal(hardest.hole)}.${field}`,
  }
}

/** Cards with no place, gathered: "No return: Thackerstone, Maddock." */
export function withoutPlace(rows: readonly BoardRow[]): string[] {
  const by = new Map<string, string[]>()
  for (const row of rows) {
    if (row.place !== null || !row.noPlace) continue
    const words = capital(NO_PLACE[row.noPlace])
    by.set(words, [...(by.get(words) ?? []), row.name])
  }
  return [...by].map(([words, names]) => `${words}: ${names.join(', ')}.`)
}

/** "Singles Stableford, 27 players." */
export function playedAs(sheet: ResultSheet): string {
  const names = sheet.board.competitions.map(({ formatName }) => formatName)
  const field = `${sheet.board.players} ${sheet.board.players === 1 ? 'player' : 'players'}`
  return `${names.join('; ')}, ${field}.`
}

/** Two halves of a list, the first one longer when it must be. */
export function halves<T>(list: readonly T[]): [readonly T[], readonly T[]] {
  const middle = Math.ceil(list.length / 2)
  return [list.slice(0, middle), list.slice(middle)]
}

/** "Allowance 95 %. Allowance from … Ties: last nine, last six." Parts may come with their own full stops. */
export function termsOf({ allowance, allowanceFrom, moreTerms, tieRule }: CompetitionBoard): string {
  const plain = (text: string) => text.replace(/\.+$/, '')
  const ties = plain(tieRule)
  return `Allowance ${allowance}. ${plain(allowanceFrom)}. Ties: ${ties.charAt(0).toLowerCase()}${ties.slice(1)}. ${(moreTerms ?? []).map((sentence) => `${sentence} `).join('')}`
}

const ON_LAST_NINE = /: last nine [^,]+\.$/
const FOR_A_PRIZE = /(^|, )(1st|2nd|3rd)\b/

/**
 * Ties worth a line: whatever took more than the last nine, and everything among the first three. The others were parted
 * by a figure that stands in the table beside the name.
 */
export function tiesTold(ties: readonly string[]): { told: readonly string[]; others: number } {
  const told = ties.filter((tie) => !ON_LAST_NINE.test(tie) || FOR_A_PRIZE.test(tie))
  return { told, others: ties.length - told.length }
}
