// The screen in the bar: eight rows a page, because a name has to be read from six metres.

import { inWords } from '@/lib/boards/in-words'
import type { ScreenBoard, ScreenRow } from './screen-board'

export const ROWS_A_PAGE = 8
export const PAGE_SECONDS = 15

export interface BarPage {
  readonly rows: readonly ScreenRow[]
  /** The sentence at the foot. */
  readonly foot: string
}

/** The tie that touches this page, else the lead sentence on the first, else how many are still out. */
function footOf(board: ScreenBoard, rows: readonly ScreenRow[], page: number): string {
  const tie = rows.find((row) => row.tieSentence)?.tieSentence
  if (tie && page > 0) return tie
  if (page === 0) return tie ?? board.sentence
  const out = board.players - board.cardsIn
  if (out === 0) return board.head.published ? `Sheet ${board.head.published} is published.` : 'Every card is in.'
  return out === 1
    ? 'One card is still out.'
    : `${inWords(out).replace(/^./, (c) => c.toUpperCase())} cards are still out.`
}

export function barPages(board: ScreenBoard): BarPage[] {
  const shown = board.rows.filter((row) => row.noPlace !== 'withdrawn')
  const pages: BarPage[] = []
  for (let from = 0; from === 0 || from < shown.length; from += ROWS_A_PAGE) {
    const rows = shown.slice(from, from + ROWS_A_PAGE)
    pages.push({ rows, foot: footOf(board, rows, pages.length) })
  }
  return pages
}
