// Part of the list of a competition on the sheet: place, figure, name, and what else the reading has.

import { capital } from '@/lib/boards/in-words'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import { handicapFigure, hasHandicaps, placeFigure, scoreFigure, shortNote, unitHeading } from './words'

interface Props {
  readonly competition: CompetitionBoard
  readonly rows: readonly BoardRow[]
  /** The division whose places these are. */
  readonly of?: string
}

export function ResultColumn({ competition, rows, of }: Props) {
  const nine = rows.some((row) => row.in !== null)
  const window = competition.rows.find((row) => row.countback)?.countback?.window ?? 'last nine'
  const off = hasHandicaps(competition)
  const gross = competition.format !== 'gross' && competition.rows.some((row) => row.gross !== null)
  const [from, to] = [rows[0], rows.at(-1)].map((row) => (row ? placeFigure(row) : ''))
  return (
    <div className="scroll">
      <table role="table" className="res-table ruled">
        <caption className="unseen">
          {of ? `${competition.name}, ${of}` : competition.name},{' '}
          {from === to ? `place ${from}` : `places ${from} to ${to}`}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col" className="lead-col">
              Place
            </th>
            <th role="columnheader" scope="col" className="num">
              {unitHeading(competition)}
            </th>
            <th role="columnheader" scope="col">
              Name
            </th>
            {off && (
              <th role="columnheader" scope="col" className="num">
                <abbr title="Playing handicap">Hcp</abbr>
              </th>
            )}
            {nine && (
              <th role="columnheader" scope="col" className="num">
                {capital(window)}
              </th>
            )}
            {gross && (
              <th role="columnheader" scope="col" className="num">
                Gross
              </th>
            )}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <tr role="row" key={row.entrant}>
              <td role="cell" className="lead-col fig">
                {placeFigure(row)}
              </td>
              <td role="cell" className="fig pts">
                {scoreFigure(row.score, competition.unit)}
              </td>
              <th role="rowheader" scope="row">
                {row.name} {row.note && <span className="second small">{shortNote(row.note)}</span>}
              </th>
              {off && (
                <td role="cell" className="fig num" data-l="off">
                  {handicapFigure(row.playingHandicap)}
                </td>
              )}
              {nine && (
                <td role="cell" className="fig num" data-l={window}>
                  {row.countback?.figure ?? row.in ?? '–'}
                </td>
              )}
              {gross && (
                <td role="cell" className="fig num" data-l="gross">
                  {row.gross ?? '–'}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
