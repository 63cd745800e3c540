'use client'

// The screen in the bar: it turns its own pages by a plain cut and is kept fresh like the board. It can be made to stand
// still, and does so by itself where somebody asked for less motion.

import { useEffect, useState } from 'react'
import { Device } from '@/app/_parts/device'
import { timeInWords } from '@/lib/boards/dates-in-words'
import { playSentence } from '@/lib/boards/play-in-words'
import { isStopped } from '@/lib/facts/play-stop'
import { barAge } from './bar-age'
import { type BarTurn, barTurns, PAGE_SECONDS } from './bar-pages'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { useBarScreens } from './use-bar-screens'
import { noteBesideGuest, placeFigure, scoreFigure, unitHeading, whereInWords } from './words'

interface Props {
  readonly initial: readonly ScreenBoard[]
  /** Which competitions they are, from 1. */
  readonly places: readonly number[]
  /** A page to stand still on, from 1; the pages turn when null. */
  readonly still: number | null
}

/** Longer than one line of the screen holds. */
const LONG_NAME = 26

/** The time in the bar. Null until the page runs: the server's minute need not be the screen's. */
function useWallClock(): Date | null {
  const [now, setNow] = useState<Date | null>(null)
  useEffect(() => {
    const look = () => setNow(new Date())
    look()
    const timer = setInterval(look, 5_000)
    return () => clearInterval(timer)
  }, [])
  return now
}

function Rows({
  turn,
  rows,
  changed,
}: {
  turn: BarTurn
  rows: readonly ScreenRow[]
  changed: ReadonlyMap<string, number>
}) {
  const { board } = turn
  const below = ({ groupNumber, note }: ScreenRow): readonly string[] => [
    ...(board.competition.placesInGroups && groupNumber !== null ? [`group ${groupNumber}`] : []),
    ...(noteBesideGuest(note) ? [noteBesideGuest(note)!] : []),
  ]
  return (
    <>
      <thead>
        <tr>
          <th scope="col" className="lead-col">
            Place
          </th>
          <th scope="col" className="num">
            {unitHeading(board.competition)}
          </th>
          <th scope="col">Name</th>
          <th scope="col" className="num">
            Now
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr
            key={row.entrant}
            className={changed.has(`${board.competition.id} ${row.entrant}`) ? 'bar-changed' : undefined}
          >
            <td className="lead-col fig">{placeFigure(row) || <span className="unseen">no place</span>}</td>
            <td className="fig bar-pts">
              {row.holesPlayed === 0 ? '–' : scoreFigure(row.score, board.competition.unit)}
            </td>
            <th scope="row" className={row.name.length > LONG_NAME ? 'bar-side' : undefined}>
              {row.name}
              {below(row).length > 0 ? <span className="bar-below">{below(row).join(', ')}</span> : null}
            </th>
            <td className="num bar-now">{whereInWords(row) || '–'}</td>
          </tr>
        ))}
      </tbody>
    </>
  )
}

function Lines({ shown }: { shown: Extract<BarTurn['shown'], { kind: 'lines' }> }) {
  const [lead, name, figure] = shown.headings
  return (
    <>
      <thead>
        <tr>
          <th scope="col" className="lead-col">
            {lead}
          </th>
          <th scope="col">{name}</th>
          <th scope="col" className="num">
            {figure}
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.lines.map((line) => (
          <tr key={line.key}>
            <td className="lead-col fig">{line.lead}</td>
            <th scope="row">
              {line.name}
              {line.below ? <span className="bar-below">{line.below}</span> : null}
            </th>
            <td className="num bar-where">{line.figure}</td>
          </tr>
        ))}
      </tbody>
    </>
  )
}

export function BarScreen({ initial, places, still }: Props) {
  const { screens, line, changed } = useBarScreens(initial, places)
  const [turned, setTurned] = useState(0)
  const [standing, setStanding] = useState(still !== null)
  const now = useWallClock()
  const turns = barTurns(screens)
  const at = still !== null && turned === 0 ? Math.min(still, turns.length) - 1 : turned % turns.length
  const turn = turns[at]

  useEffect(() => {
    if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) setStanding(true)
  }, [])
  useEffect(() => {
    if (standing) return
    const timer = setInterval(() => setTurned((before) => before + 1), PAGE_SECONDS * 1_000)
    return () => clearInterval(timer)
  }, [standing])

  if (!turn) return null
  const { board } = turn
  const stopped = isStopped(board.play) ? board.play : null
  const down = line === 'down'
  return (
    <main className="bar" id="main">
      <header className="bar-head">
        <Device />
        <h1>
          {board.head.dayName} <span className="bar-comp">{turn.title}</span>
        </h1>
        <p className={down ? 'bar-in bar-down' : 'bar-in'} role="status">
          {down
            ? `No connection: ${barAge(board.countedAt, now ?? new Date(board.countedAt), board.zone)}`
            : `${board.cardsIn - board.cardsNotReturned} of ${board.cards} cards in`}
        </p>
        <p className="bar-clock fig">
          {timeInWords((now ?? new Date(board.countedAt)).toISOString(), board.zone).replace(/ [ap]m$/, '')}
        </p>
      </header>
      <table className="bar-table">
        <caption className="unseen">
          {turn.title}, page {at + 1} of {turns.length}
        </caption>
        {turn.shown.kind === 'rows' ? (
          <Rows turn={turn} rows={turn.shown.rows} changed={changed} />
        ) : (
          <Lines shown={turn.shown} />
        )}
      </table>
      <footer className="bar-foot">
        {stopped ? (
          <p className="bar-stopped" role="alert">
            {playSentence(stopped, board.zone)} The course’s own warning decides.
          </p>
        ) : (
          <p>{turn.foot}</p>
        )}
        <p className="bar-folio no-print">
          <button type="button" onClick={() => setStanding((before) => !before)}>
            {standing ? 'Turn the pages' : 'Pause'}
          </button>
          <button type="button" onClick={() => setTurned((still !== null && turned === 0 ? at : turned) + 1)}>
            Next
          </button>
          <span className="fig">
            {at + 1}
            <span aria-hidden="true"> / </span>
            <span className="unseen"> of </span>
            {turns.length}
          </span>
        </p>
      </footer>
    </main>
  )
}
