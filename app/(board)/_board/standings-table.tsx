// The board as a table: by place, or under the teams for which they play.

import { BoardHead } from '@/app/_parts/board-row'
import { gamesOf } from '@/lib/boards/games-of-groups'
import { isNotStarted, NotStarted } from './not-started'
import { byTeam, type ScreenBoard, type ScreenRow, type View } from './screen-board'
import { StandingRow } from './standing-row'
import { hasHandicaps, unitHeading } from './words'

export interface TableProps {
  readonly board: ScreenBoard
  readonly c: number
  readonly view: View
  readonly open: ReadonlySet<string>
  readonly changed: ReadonlyMap<string, string>
  readonly toggle: (entrant: string) => void
  /** Only these rows, in the order of the board; all when absent. */
  readonly only?: ReadonlySet<string>
}

/** A game that each group plays by itself has its places group by group. */
function inGames(board: ScreenBoard, rows: readonly ScreenRow[]) {
  if (!board.competition.placesInGroups) return { sheets: [], loose: rows }
  const sheets = gamesOf(board.competition, rows).map(({ groupNumber, rows: inGroup }) => ({
    team: { id: `group-${groupNumber}`, name: `Group ${groupNumber}` },
    rows: inGroup,
  }))
  const seen = new Set(sheets.flatMap((sheet) => sheet.rows))
  return { sheets, loose: rows.filter((row) => !seen.has(row)) }
}

export function StandingsTable({ board, c, view, open, changed, toggle, only }: TableProps) {
  const isFolded = view === 'leaders' && board.head.status === 'in-play'
  const rows = only
    ? board.rows.filter((row) => only.has(row.entrant))
    : isFolded
      ? board.rows.filter((row) => !isNotStarted(row))
      : board.rows
  // Under the teams the row above is not the one it was parted from. The last row shown may have nobody below it.
  const saidAt = (entrant: (typeof rows)[number]): string | null => {
    if (view === 'teams') return null
    const at = rows.indexOf(entrant)
    return (
      [rows[at - 1]?.tieSentence, at === rows.length - 1 ? entrant.tieSentence : null].filter(Boolean).join(' ') || null
    )
  }
  const row = (entrant: (typeof rows)[number]) => (
    <StandingRow
      key={entrant.entrant}
      board={board}
      row={entrant}
      c={c}
      view={view}
      open={open.has(entrant.entrant)}
      changed={changed.get(entrant.entrant)}
      toggle={toggle}
      said={saidAt(entrant)}
    />
  )
  const { sheets, loose } = view === 'teams' ? byTeam(board) : inGames(board, rows)
  const table = (
    <table className={hasHandicaps({ ...board.competition, rows: board.rows }) ? 'board' : 'board no-hcp'} role="table">
      <caption className="unseen">
        {board.competition.name}, {board.competition.formatName}
      </caption>
      <BoardHead unit={unitHeading(board.competition)} />
      {sheets.map(({ team, rows: inTeam }) => (
        <tbody role="rowgroup" key={team.id}>
          <tr role="row" className="group-head">
            <td role="cell" className="lead-col" />
            <th role="rowheader" scope="rowgroup" colSpan={5}>
              {team.name}
            </th>
          </tr>
          {inTeam.map(row)}
        </tbody>
      ))}
      {loose.length > 0 && <tbody role="rowgroup">{loose.map(row)}</tbody>}
    </table>
  )
  if (!isFolded) return table
  return (
    <>
      {rows.length > 0 && table}
      <NotStarted board={board} />
    </>
  )
}
