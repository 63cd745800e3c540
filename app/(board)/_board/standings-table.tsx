// The board as a table: by place, or under the groups in which they play.

import { BoardHead } from '@/app/_parts/board-row'
import { ordinal } from '@/lib/boards/in-words'
import { byGroup, type ScreenBoard, type View } from './screen-board'
import { StandingRow } from './standing-row'
import { teeTime, unitHeading } from './words'

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

export function StandingsTable({ board, c, view, open, changed, toggle, only }: TableProps) {
  const rows = only ? board.rows.filter((row) => only.has(row.entrant)) : board.rows
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
    />
  )
  const { sheets, loose } = byGroup(board)
  return (
    <table className="board" role="table">
      <caption className="unseen">
        {board.competition.name}, {board.competition.formatName}
      </caption>
      <BoardHead unit={unitHeading(board.competition)} />
      {view !== 'groups' && <tbody role="rowgroup">{rows.map(row)}</tbody>}
      {view === 'groups' &&
        sheets.map(({ group, rows: inGroup }) => (
          <tbody role="rowgroup" key={group.number}>
            <tr role="row" className="group-head">
              <td role="cell" className="lead-col fig">
                {teeTime(group.startTime)}
              </td>
              <th role="rowheader" scope="rowgroup" colSpan={5}>
                Group {group.number}
                <span className="small">
                  {group.onHole !== null
                    ? `on the ${ordinal(group.onHole)}`
                    : group.through >= board.course.length
                      ? 'round'
                      : 'not started'}
                </span>
              </th>
            </tr>
            {inGroup.map(row)}
          </tbody>
        ))}
      {view === 'groups' && loose.length > 0 && <tbody role="rowgroup">{loose.map(row)}</tbody>}
    </table>
  )
}
