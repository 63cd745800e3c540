// Group by group: where each is, and what everybody in it has made hole by hole so far.

import { Dots } from '@/app/_parts/dots'
import { clockInWords } from '@/lib/boards/dates-in-words'
import { ordinal } from '@/lib/boards/in-words'
import { cardAt } from './addresses'
import { byGroup, type ScreenBoard, type ScreenRow } from './screen-board'
import { handicapFigure, scoreFigure, scoreWords } from './words'

interface Props {
  readonly board: ScreenBoard
  readonly changed: ReadonlyMap<string, string>
}

/** A phone has no room for eighteen numbers side by side. */
const NAMED_ON_A_PHONE = new Set([1, 3, 6, 9, 12, 15, 18])

/** The tenth hole of the card begins the second half of the sheet; a day of nine has one half. */
const figClass = (place: number) => (place === 9 ? 'fig back-nine' : 'fig')

function whereabouts({ onHole, started, startsAt }: ScreenBoard['groups'][number]): string {
  if (onHole !== null) return `on the ${ordinal(onHole)}`
  if (started) return 'finished'
  return startsAt ? `not started, from ${startsAt}` : 'not started'
}

/** Own strokes where a card is one player's, with those received; what the side counts where it is not. */
function figureOn(row: ScreenRow, hole: number, unit: ScreenBoard['competition']['unit']) {
  const line = row.holes.find(([number]) => number === hole)
  const alone = row.entryIds.length === 1
  const figure = alone ? line?.[2] : line?.[3]
  const strokes = alone ? (line?.[1] ?? 0) : 0
  if (figure === null || figure === undefined) return { shown: '', said: 'not played', points: null, strokes }
  const points = alone && unit === 'points' ? (line?.[3] ?? null) : null
  if (figure === 'x') return { shown: '–', said: 'no score', points, strokes }
  const shown = alone ? String(figure) : scoreFigure(figure, unit)
  return { shown, said: null, points, strokes }
}

interface RowProps {
  readonly board: ScreenBoard
  readonly row: ScreenRow
  readonly changed: boolean
}

// The rows are grids on a phone, which would drop their meaning as a table: the roles are written out.
function Row({ board, row, changed }: RowProps) {
  const { societySlug, daySlug } = board.head
  const { unit, format } = board.competition
  return (
    <tr role="row" className={changed ? 'changed' : undefined}>
      <th role="rowheader" scope="row">
        <a href={cardAt(societySlug, daySlug, row.entryIds[0] ?? row.entrant)}>{row.name}</a>
        {row.playingHandicap !== null && (
          <span className="small second fig">
            <span className="unseen">plays off </span>
            {handicapFigure(row.playingHandicap)}
          </span>
        )}
      </th>
      <td role="cell" className="fig so-far">
        {row.score === null || row.holesPlayed === 0 ? (
          <span className="unseen">{row.noPlace && row.noPlace !== 'not-started' ? 'no score' : 'no score yet'}</span>
        ) : (
          <>
            <span aria-hidden="true">{scoreFigure(row.score, unit)}</span>
            <span className="unseen">{scoreWords(row.score, unit, format !== 'gross')}</span>
          </>
        )}
      </td>
      {board.course.map(({ hole }, place) => {
        const { shown, said, points, strokes } = figureOn(row, hole, unit)
        const differs = row.notAgreed.includes(hole)
        return (
          <td key={hole} role="cell" className={differs ? `${figClass(place)} differs` : figClass(place)}>
            {said === null ? (
              shown
            ) : (
              <>
                <span aria-hidden="true">{shown}</span>
                <span className="unseen">{said}</span>
              </>
            )}
            {differs && <span className="unseen">, not agreed</span>}
            {strokes !== 0 && (
              <span className="hole-dots">
                <Dots strokes={strokes} />
              </span>
            )}
            {points !== null && (
              <span className="hole-points second">
                <span className="unseen">, points </span>
                {points}
              </span>
            )}
          </td>
        )
      })}
    </tr>
  )
}

function Sheet({
  title,
  where,
  rows,
  board,
  changed,
}: Props & { title: string; where: string; rows: readonly ScreenRow[] }) {
  const isNine = board.course.length <= 9
  return (
    <section className="group-sheet">
      <h2>
        {title} <span className="small second">{where}</span>
      </h2>
      <table className={isNine ? 'group-holes nine' : 'group-holes'} role="table">
        <caption className="unseen">{title}, hole by hole</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">
              Name
            </th>
            <th role="columnheader" scope="col" className="so-far">
              <span className="unseen">so far</span>
            </th>
            {board.course.map(({ hole }, place) => (
              <th key={hole} role="columnheader" scope="col" className={figClass(place)}>
                <span className="unseen">hole </span>
                <span className={isNine || NAMED_ON_A_PHONE.has(hole) ? undefined : 'wide-only'}>{hole}</span>
              </th>
            ))}
          </tr>
          <tr role="row" className="par-row">
            <th role="columnheader" scope="col">
              Par
            </th>
            <th role="columnheader" scope="col" className="so-far">
              <span className="unseen">par</span>
            </th>
            {board.course.map(({ hole, par }, place) => (
              <th key={hole} role="columnheader" scope="col" className={figClass(place)}>
                <span className="unseen">par </span>
                {par}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <Row key={row.entrant} board={board} row={row} changed={changed.has(row.entrant)} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

export function GroupsView({ board, changed }: Props) {
  const { sheets, loose } = byGroup(board)
  const rest = { board, changed }
  return (
    <div className="group-sheets">
      {sheets.map(({ group, rows }) => (
        <Sheet
          key={group.number}
          title={`Group ${group.number}`}
          where={`${clockInWords(group.startTime)}, ${whereabouts(group)}`}
          rows={rows}
          {...rest}
        />
      ))}
      {loose.length > 0 && <Sheet title="In no group" where="" rows={loose} {...rest} />}
    </div>
  )
}
