// The screen in the bar: six rows a page, because a name has to be read from eight metres. Competition after competition,
// each with its divisions, then where the groups are.

import { clockInWords } from '@/lib/boards/dates-in-words'
import { inWords, ordinal } from '@/lib/boards/in-words'
import { wonHow } from '@/lib/boards/match-ending-words'
import { inDivision, type ScreenBoard, type ScreenRow } from './screen-board'

export const ROWS_A_PAGE = 6
export const PAGE_SECONDS = 15
/** A large field turns faster, so that nobody waits five minutes for a name. */
export const MANY_PAGES = 10
export const QUICK_PAGE_SECONDS = 10

export interface BarPage {
  readonly rows: readonly ScreenRow[]
  /** The sentence at the foot. */
  readonly foot: string
}

export interface BarLine {
  readonly key: string
  readonly lead: string
  readonly name: string
  /** The other side of a match, on a line of its own: two sides of two do not fit one. */
  readonly below?: string
  readonly figure: string
}

/** One screenful. */
export interface BarTurn {
  /** "Singles", "Singles, Division 1", "Where everybody is". */
  readonly title: string
  readonly board: ScreenBoard
  readonly foot: string
  readonly shown:
    | { readonly kind: 'rows'; readonly rows: readonly ScreenRow[] }
    | {
        readonly kind: 'lines'
        readonly headings: readonly [string, string, string]
        readonly lines: readonly BarLine[]
      }
}

/** The tie that touches this page, else the lead sentence on the first, else how many are still out. */
function footOf(board: ScreenBoard, rows: readonly ScreenRow[], page: number): string {
  const tie = rows.find((row) => row.tieSentence)?.tieSentence
  if (tie && page > 0) return tie
  if (page === 0) return tie ?? board.sentence
  return stillOut(board)
}

function stillOut(board: ScreenBoard): string {
  const out = board.players - board.cardsIn
  if (out === 0) return board.head.published ? `Sheet ${board.head.published} is published.` : 'Every card is in.'
  return out === 1
    ? 'One card is still out.'
    : `${inWords(out).replace(/^./, (c) => c.toUpperCase())} cards are still out.`
}

function cut<T>(all: readonly T[]): T[][] {
  const pages: T[][] = []
  for (let from = 0; from === 0 || from < all.length; from += ROWS_A_PAGE)
    pages.push(all.slice(from, from + ROWS_A_PAGE))
  return pages
}

export function barPages(board: ScreenBoard): BarPage[] {
  return cut(board.rows.filter((row) => row.noPlace !== 'withdrawn')).map((rows, page) => ({
    rows,
    foot: footOf(board, rows, page),
  }))
}

/** Everything the screen goes through, once round. */
export function barTurns(screens: readonly ScreenBoard[]): BarTurn[] {
  const turns = screens.flatMap((board) => {
    const { name, divisions = [] } = board.competition
    if (board.matches.length > 0) return matchTurns(board)
    return [
      ...rowTurns(board, name, board.sentence),
      ...divisions.flatMap(({ id, name: division, sentence }) =>
        rowTurns(inDivision(board, id), `${name}, ${division}`, sentence),
      ),
    ]
  })
  const [main] = screens
  return main?.head.status === 'in-play' ? [...turns, ...groupTurns(main)] : turns
}

function rowTurns(board: ScreenBoard, title: string, sentence: string): BarTurn[] {
  return barPages({ ...board, sentence }).map(({ rows, foot }) => ({
    title,
    board,
    foot,
    shown: { kind: 'rows', rows },
  }))
}

function matchTurns(board: ScreenBoard): BarTurn[] {
  const { name, names } = board.competition
  const lines = board.matches.map(({ id, a, b, winner, finished, result }, at): BarLine => {
    const won = finished && winner !== null
    const [first, second] = won && winner === b ? [b, a] : [a, b]
    return {
      key: id,
      lead: String(at + 1),
      name: names[first] ?? first,
      below: `${won ? 'beat' : 'against'} ${names[second] ?? second}`,
      figure: won ? wonHow(result) : result,
    }
  })
  return cut(lines).map((page) => ({
    title: name,
    board,
    foot: board.sentence,
    shown: { kind: 'lines', headings: ['Match', 'Players', 'How it stands'], lines: page },
  }))
}

function groupTurns(board: ScreenBoard): BarTurn[] {
  const family = (id: string) => {
    const row = board.rows.find(({ entryIds }) => entryIds.length === 1 && entryIds[0] === id)
    return row?.name.split(' ').at(-1) ?? null
  }
  const lines = board.groups.map(
    ({ number, startTime, onHole, through, entryIds }): BarLine => ({
      key: String(number),
      lead: clockInWords(startTime),
      name: entryIds.flatMap((id) => family(id) ?? []).join(', ') || `Group ${number}`,
      figure: onHole !== null ? `on the ${ordinal(onHole)}` : through >= board.course.length ? 'in' : 'to start',
    }),
  )
  if (lines.length === 0) return []
  return cut(lines).map((page) => ({
    title: 'Where everybody is',
    board,
    foot: stillOut(board),
    shown: { kind: 'lines', headings: ['Start', 'Group', 'Where'], lines: page },
  }))
}
