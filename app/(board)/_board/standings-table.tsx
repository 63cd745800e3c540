// The board as a table: by place, or under the groups in which they play.

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

function Head({ board }: { board: ScreenBoard }) {
  return (
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col" className="lead-col">
          Place
        </th>
        <th role="columnheader" scope="col" className="num">
          {unitHeading(board.competition)}
        </th>
        <th role="columnheader" scope="col">
          Name
        </th>
        <th role="columnheader" scope="col" className="mid standing-c-hcp">
          Playing
          <br />
          handicap
        </th>
        <th role="columnheader" scope="col" className="mid standing-c-holes">
          Holes
          <br />
          played
        </th>
        <th role="columnheader" scope="col" className="standing-c-last">
          Last hole
        </th>
      </tr>
    </thead>
  )
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
    <table className="standings" role="table">
      <caption className="unseen">
        {board.competition.name}, {board.competition.formatName}
      </caption>
      <Head board={board} />
      {view !== 'groups' && <tbody role="rowgroup">{rows.map(row)}</tbody>}
      {view === 'groups' &&
        sheets.map(({ group, rows: inGroup }) => (
          <tbody role="rowgroup" key={group.number} className="standing-group">
            <tr role="row" className="standing-group-head">
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
