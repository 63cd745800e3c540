// One entrant on the board: place, figure, name, and the card that opens under it.

import { BoardLine, BoardOpened, BoardSentence } from '@/app/_parts/board-row'
import { Opens } from '@/app/_parts/opens'
import { isRound } from '@/lib/boards/card-progress'
import { listed } from '@/lib/boards/in-words'
import { boardAt, cardAt, matchAt } from './addresses'
import { HolesOfRow } from './holes-of-row'
import type { ScreenBoard, ScreenRow, View } from './screen-board'
import { lastHole, scoreFigure, scoreWords, whereInWords } from './words'

export interface RowProps {
  readonly board: ScreenBoard
  readonly row: ScreenRow
  readonly c: number
  readonly view: View
  readonly open: boolean
  /** "up from 14th"; absent when nothing changed or nobody wants to be told. */
  readonly changed?: string
  readonly toggle: (entrant: string) => void
  /** How the row above and this one were parted: said once both have been read. */
  readonly said?: string | null
}

function againstLevel(against: number, unit: 'strokes' | 'holes'): string {
  if (against === 0) return unit === 'strokes' ? 'level so far' : 'all square so far'
  const [over, under] = unit === 'strokes' ? ['over', 'under'] : ['up', 'down']
  return `${Math.abs(against)} ${against > 0 ? over : under} so far`
}

/** Where the player is; while on the course with the last hole, which a finished card no longer needs. */
function Now({ row, board }: Pick<RowProps, 'row' | 'board'>) {
  const { unit } = board.competition
  const last = lastHole(row.last, unit)
  const round = row.progress === undefined ? row.holesPlayed === board.course.length : isRound(row.progress)
  const where = whereInWords(row)
  if (round || !row.last) return where
  return (
    <>
      {where && `${where}. `}
      {row.last && last.gross === null && `${last.hole}: no score`}
      {row.last && last.gross !== null && (
        <>
          {last.hole}: <span className="fig">{last.gross}</span>,{' '}
          {unit === 'strokes' ? 'net ' : unit === 'holes' ? 'for ' : ''}
          <span className="fig">{last.value}</span>
          {unit === 'points' && (last.value === '1' ? ' point' : ' points')}
          {unit === 'skins' && (last.value === '1' ? ' skin' : ' skins')}
        </>
      )}
      {(unit === 'strokes' || unit === 'holes') && !round && row.againstLevel !== null && row.holesPlayed > 0 && (
        <span className="small second block">{againstLevel(row.againstLevel, unit)}</span>
      )}
    </>
  )
}

function Figure({ row, board, c }: Pick<RowProps, 'row' | 'board' | 'c'>) {
  const { societySlug, daySlug } = board.head
  const { unit, format } = board.competition
  if (row.score === null || row.holesPlayed === 0)
    return (
      <>
        <span aria-hidden="true">–</span>
        <span className="unseen">{row.noPlace && row.noPlace !== 'not-started' ? 'no score' : 'no score yet'}</span>
      </>
    )
  if (row.away) return scoreFigure(row.score, unit)
  return (
    <Opens
      href={cardAt(societySlug, daySlug, row.entryIds[0] ?? row.entrant, { c, hole: 'all' })}
      label={`${scoreWords(row.score, unit, format !== 'gross')}, ${row.name}: open the working`}
    >
      {scoreFigure(row.score, unit)}
    </Opens>
  )
}

function Words({ row, changed }: Pick<RowProps, 'row' | 'changed'>) {
  return (
    <>
      {changed && <span className="small just-moved">{changed}</span>}
      {row.notAgreed.length > 0 && (
        <span className="small not-agreed">
          {row.notAgreed.length === 1 ? 'hole' : 'holes'} {listed(row.notAgreed.map(String))} not agreed
        </span>
      )}
    </>
  )
}

export function StandingRow({ board, row, c, view, open, changed, toggle, said = null }: RowProps) {
  const { societySlug, daySlug } = board.head
  const chance = board.competition.chances?.entrants[row.entrant]
  const opener = (
    <a
      className="opener"
      href={boardAt(societySlug, daySlug, { c, v: view, open: row.entrant })}
      aria-expanded={open}
      aria-controls={open ? `card-${row.entrant}` : undefined}
      onClick={(event) => {
        if (event.metaKey || event.ctrlKey || event.shiftKey) return
        event.preventDefault()
        toggle(row.entrant)
      }}
    >
      {row.name}
    </a>
  )
  return (
    <>
      <BoardLine
        id={`row-${row.entrant}`}
        place={row.place}
        tied={row.tied}
        score={<Figure row={row} board={board} c={c} />}
        name={row.name}
        opener={opener}
        note={row.note}
        words={<Words row={row} changed={changed} />}
        playingHandicap={row.playingHandicap}
        holesPlayed={row.holesPlayed}
        last={<Now row={row} board={board} />}
        changed={changed !== undefined}
        joined={open || said !== null || (row.tieSentence !== null && view !== 'teams')}
      />
      {open && (
        <BoardOpened id={`card-${row.entrant}`}>
          {row.away ? <p className="small">There is no card of this day; the rounds stand below the board.</p> : null}
          {row.away ? null : <HolesOfRow board={board} row={row} c={c} />}
          {chance && (
            <p className="small row-chance">
              {chance.stands} {chance.needed}
            </p>
          )}
          {row.away ? null : (
            <p className="standing-acts small">
              {row.entryIds.map((id, at) => (
                <a key={id} href={cardAt(societySlug, daySlug, id)}>
                  {row.entryIds.length === 1 ? 'The whole card' : `Card of ${row.players?.[at] ?? 'a partner'}`}
                </a>
              ))}
              <a href={matchAt(societySlug, daySlug, row.entryIds[0] ?? row.entrant)}>As a match against…</a>
            </p>
          )}
        </BoardOpened>
      )}
      {said && <BoardSentence>{said}</BoardSentence>}
    </>
  )
}
