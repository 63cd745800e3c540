// The screen in the bar: six rows a page, because a name has to be read from eight metres. Competition after competition,
// each with its divisions, then where the groups are.

import { clockInWords } from '@/lib/boards/dates-in-words'
import { ordinal } from '@/lib/boards/in-words'
import { wonHow } from '@/lib/boards/match-ending-words'
import { byLastWord } from '@/lib/boards/order-of-names'
import { cardsInWords } from './groups-out'
import { isNotStarted } from './not-started'
import { inDivision, type ScreenBoard, type ScreenRow } from './screen-board'

export const ROWS_A_PAGE = 6
export const PAGE_SECONDS = 15
const NAMES_A_LINE = 3

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

/** The tie that touches this page, else the lead sentence on the first, else how many cards are in. */
function footOf(board: ScreenBoard, rows: readonly ScreenRow[], page: number): string {
  const tie = rows.find((row) => row.tieSentence)?.tieSentence
  if (tie && page > 0) return tie
  if (page === 0) return tie ?? board.sentence
  return stillOut(board)
}

function stillOut(board: ScreenBoard): string {
  const { published } = board.head
  return published && board.cardsIn === board.cards ? `Sheet ${published} is published.` : cardsInWords(board)
}

function cut<T>(all: readonly T[]): T[][] {
  const pages: T[][] = []
  for (let from = 0; from === 0 || from < all.length; from += ROWS_A_PAGE)
    pages.push(all.slice(from, from + ROWS_A_PAGE))
  return pages
}

export function barPages(board: ScreenBoard): BarPage[] {
  const shown = board.rows.filter((row) => row.noPlace !== 'withdrawn' && !isLeftToTheGroups(board, row))
  return cut(shown).map((rows, page) => ({
    rows,
    foot: footOf(board, rows, page),
  }))
}

/** Who has not started stands with the groups and their times; a page of dashes tells nobody anything. */
function isLeftToTheGroups({ head, groups }: ScreenBoard, row: ScreenRow): boolean {
  return (
    head.status !== 'closed' &&
    isNotStarted(row) &&
    groups.some((group) => group.entryIds.some((id) => id === row.entryIds[0]))
  )
}

/** Everything the screen goes through, once round. */
export function barTurns(screens: readonly ScreenBoard[]): BarTurn[] {
  const [main] = screens
  if (main && main.head.status !== 'in-play' && main.head.status !== 'closed') return turnsBefore(main)
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
  if (main?.head.status !== 'in-play') return turns
  // Before the first score there is nothing to show but who starts when.
  return [...turns.filter(({ shown }) => shown.kind === 'lines' || shown.rows.length > 0), ...groupTurns(main)]
}

/** A day that has not begun: the groups and their times, or before the draw everybody's name. */
function turnsBefore(board: ScreenBoard): BarTurn[] {
  if (board.groups.length > 0) return groupTurns(board)
  const names = board.rows.map((row) => row.name).sort(byLastWord)
  const lines = Array.from({ length: Math.ceil(names.length / NAMES_A_LINE) }, (_, at): BarLine => {
    const some = names.slice(at * NAMES_A_LINE, (at + 1) * NAMES_A_LINE)
    return { key: String(at), lead: '', name: some.join(', '), figure: '' }
  })
  return cut(lines).map((page) => ({
    title: 'Who plays',
    board,
    foot: board.sentence,
    shown: { kind: 'lines', headings: ['', 'Entered', ''], lines: page },
  }))
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
    ({ number, startTime, onHole, started, entryIds }): BarLine => ({
      key: String(number),
      lead: clockInWords(startTime),
      name: entryIds.flatMap((id) => family(id) ?? []).join(', ') || `Group ${number}`,
      figure: onHole !== null ? `on the ${ordinal(onHole)}` : started ? 'finished' : 'not started',
    }),
  )
  if (lines.length === 0) return []
  return cut(lines).map((page) => ({
    title: board.head.status === 'in-play' ? 'Where everybody is' : 'Start sheet',
    board,
    foot: board.head.status === 'in-play' ? stillOut(board) : board.sentence,
    shown: { kind: 'lines', headings: ['Start', 'Group', 'Where'], lines: page },
  }))
}
