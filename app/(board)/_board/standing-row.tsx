// One entrant on the board: place, figure, name, and the card that opens under it.

import { listed } from '@/lib/boards/in-words'
import { Opens } from '../../_parts/opens'
import { boardAt, cardAt, matchAt } from './addresses'
import { HolesOfRow } from './holes-of-row'
import type { ScreenBoard, ScreenRow, View } from './screen-board'
import { handicapFigure, lastHole, NO_PLACE, placeFigure, scoreFigure, scoreWords } from './words'

export interface RowProps {
  readonly board: ScreenBoard
  readonly row: ScreenRow
  readonly c: number
  readonly view: View
  readonly open: boolean
  /** "up from 14th"; absent when nothing changed or nobody wants to be told. */
  readonly changed?: string
  readonly toggle: (entrant: string) => void
}

function LastHole({ row, board }: { row: ScreenRow; board: ScreenBoard }) {
  const { unit } = board.competition
  const last = lastHole(row.last, unit)
  const round = row.holesPlayed === board.course.length
  return (
    <>
      <span className="narrow">
        {row.holesPlayed} {row.holesPlayed === 1 ? 'hole' : 'holes'}
        {row.last ? '. ' : '.'}
      </span>
      {row.last && last.gross === null && `${last.hole}: no score`}
      {row.last && last.gross !== null && (
        <>
          {last.hole}: <span className="fig">{last.gross}</span> {unit === 'strokes' ? 'net' : 'for'}{' '}
          <span className="fig">{last.value}</span>
        </>
      )}
      {unit !== 'points' && !round && row.againstLevel !== null && row.holesPlayed > 0 && (
        <span className="small second block">{againstLevel(row.againstLevel, unit)}</span>
      )}
    </>
  )
}

function againstLevel(against: number, unit: 'strokes' | 'holes'): string {
  if (against === 0) return unit === 'strokes' ? 'level so far' : 'all square so far'
  const [over, under] = unit === 'strokes' ? ['over', 'under'] : ['up', 'down']
  return `${Math.abs(against)} ${against > 0 ? over : under} so far`
}

export function StandingRow({ board, row, c, view, open, changed, toggle }: RowProps) {
  const { societySlug, daySlug } = board.head
  const entry = row.entryIds[0] ?? row.entrant
  const { unit, format } = board.competition
  const words = scoreWords(row.score, unit, format !== 'gross')
  const place = placeFigure(row)
  const classes = ['standing', changed ? 'changed' : '', open ? 'is-open' : '', row.tieSentence ? 'tie-follows' : '']
  return (
    <>
      <tr role="row" className={classes.filter(Boolean).join(' ')} id={`row-${row.entrant}`}>
        <td role="cell" className="lead-col standing-place fig">
          {place || <span className="unseen">no place</span>}
        </td>
        <td role="cell" className="standing-score fig">
          {row.score === null || row.holesPlayed === 0 ? (
            <>
              <span aria-hidden="true">–</span>
              <span className="unseen">no score yet</span>
            </>
          ) : (
            <Opens
              href={cardAt(societySlug, daySlug, entry, { c, hole: 'all' })}
              label={`${words}, ${row.name}: open the working`}
            >
              {scoreFigure(row.score, unit)}
            </Opens>
          )}
        </td>
        <th role="rowheader" scope="row" className="standing-name">
          <a
            className="standing-open"
            href={boardAt(societySlug, daySlug, { c, v: view, open: row.entrant })}
            aria-expanded={open}
            aria-controls={`card-${row.entrant}`}
            onClick={(event) => {
              if (event.metaKey || event.ctrlKey || event.shiftKey) return
              event.preventDefault()
              toggle(row.entrant)
            }}
          >
            {row.name}
          </a>
          <span className="standing-off fig narrow">
            <span className="unseen">playing handicap </span>
            {handicapFigure(row.playingHandicap)}
          </span>
          {row.note && <span className="small">{row.note}</span>}
          {row.noPlace && row.noPlace !== 'not-started' && <span className="small">{NO_PLACE[row.noPlace]}</span>}
          {changed && <span className="small standing-moved">{changed}</span>}
          {row.notAgreed.length > 0 && (
            <span className="small standing-differs">
              {row.notAgreed.length === 1 ? 'hole' : 'holes'} {listed(row.notAgreed.map(String))} not agreed
            </span>
          )}
        </th>
        <td role="cell" className="standing-count standing-hcp fig">
          {handicapFigure(row.playingHandicap)}
        </td>
        <td role="cell" className="standing-count fig">
          {row.holesPlayed}
        </td>
        <td role="cell" className="standing-last">
          <LastHole row={row} board={board} />
        </td>
      </tr>
      {open && (
        <tr role="row" className="standing-card" id={`card-${row.entrant}`}>
          <td role="cell" className="lead-col" />
          <td role="cell" colSpan={5}>
            <HolesOfRow board={board} row={row} c={c} />
            <p className="standing-acts small">
              {row.entryIds.map((id, at) => (
                <a key={id} href={cardAt(societySlug, daySlug, id)}>
                  {row.entryIds.length === 1 ? 'The whole card' : `Card of ${row.name.split(' and ')[at] ?? 'partner'}`}
                </a>
              ))}
              <a href={matchAt(societySlug, daySlug, entry)}>As a match against…</a>
            </p>
          </td>
        </tr>
      )}
      {row.tieSentence && (
        <tr role="row" className="standing-said">
          <td role="cell" className="lead-col" />
          <td role="cell" colSpan={5} className="aside">
            {row.tieSentence}
          </td>
        </tr>
      )}
    </>
  )
}
