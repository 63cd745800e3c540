'use client'
// The screen in the bar: pages of eight, turned every fifteen seconds by a plain cut, kept fresh like the board.

import { useEffect, useState } from 'react'
import { Device } from '@/app/_parts/device'
import { playSentence } from '@/lib/boards/play-in-words'
import { isStopped } from '@/lib/facts/play-stop'
import { barPages, PAGE_SECONDS } from './bar-pages'
import type { ScreenBoard } from './screen-board'
import { useLiveBoard } from './use-live-board'
import { clock, handicapFigure, placeFigure, scoreFigure, unitHeading } from './words'

interface Props {
  readonly initial: ScreenBoard
  readonly c: number
  /** A page to stand still on, from 1; the pages turn when null. */
  readonly still: number | null
}

function holesOf(row: ScreenBoard['rows'][number], holes: number): string {
  if (row.handedIn || row.holesPlayed === holes) return 'in'
  return row.holesPlayed === 0 ? '–' : String(row.holesPlayed)
}

/** The time in the bar. Null until the page runs: the server's minute need not be the screen's. */
function useWallClock(): string | null {
  const [now, setNow] = useState<string | null>(null)
  useEffect(() => {
    const look = () => setNow(new Date().toISOString())
    look()
    const timer = setInterval(look, 5_000)
    return () => clearInterval(timer)
  }, [])
  return now
}

export function BarScreen({ initial, c, still }: Props) {
  const { board, line, changes } = useLiveBoard(initial, c, true)
  const [turn, setTurn] = useState(0)
  const now = useWallClock()
  const pages = barPages(board)
  const at = still === null ? turn % pages.length : Math.min(still, pages.length) - 1
  const page = pages[at]

  useEffect(() => {
    if (still !== null) return
    const timer = setInterval(() => setTurn((now) => now + 1), PAGE_SECONDS * 1_000)
    return () => clearInterval(timer)
  }, [still])

  if (!page) return null
  const changed = new Set(changes.map((change) => change.entrant))
  const several = board.competitions.length > 1
  const stopped = isStopped(board.play) ? board.play : null
  return (
    <main className="bar" id="main">
      <header className="bar-head">
        <Device />
        <h1>
          {board.head.dayName}
          {several && <span className="bar-comp"> {board.competition.name}</span>}
        </h1>
        <p className="bar-in">
          {line === 'down' ? 'the line is down; as of' : `${board.cardsIn} of ${board.players} cards in`}
        </p>
        <p className="bar-clock fig">
          {clock(line === 'down' ? board.countedAt : (now ?? board.countedAt), board.zone).replace(/ [ap]m$/, '')}
        </p>
      </header>
      <table className="bar-table">
        <caption className="unseen">
          {board.competition.name}, page {at + 1} of {pages.length}
        </caption>
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
              Handicap
            </th>
            <th scope="col" className="num">
              Holes
            </th>
          </tr>
        </thead>
        <tbody>
          {page.rows.map((row) => (
            <tr key={row.entrant} className={changed.has(row.entrant) ? 'bar-changed' : undefined}>
              <td className="lead-col fig">{placeFigure(row) || <span className="unseen">no place</span>}</td>
              <td className="fig bar-pts">
                {row.holesPlayed === 0 ? '–' : scoreFigure(row.score, board.competition.unit)}
              </td>
              <th scope="row">{row.name}</th>
              <td className="fig num bar-hcp">{handicapFigure(row.playingHandicap)}</td>
              <td className="fig num bar-holes">{holesOf(row, board.course.length)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <footer className="bar-foot">
        {stopped ? (
          <p className="bar-stopped" role="alert">
            {playSentence(stopped, board.zone)} The course’s own warning decides.
          </p>
        ) : (
          <p>{page.foot}</p>
        )}
        <p className="bar-folio">
          <span className="unseen">
            Page {at + 1} of {pages.length}
          </span>
          {pages.map((_, number) =>
            number === at ? (
              // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
              <b key={number} className="fig" aria-hidden="true">
                {number + 1}
              </b>
            ) : (
              // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
              <span key={number} className="fig" aria-hidden="true">
                {number + 1}
              </span>
            ),
          )}
        </p>
      </footer>
    </main>
  )
}
