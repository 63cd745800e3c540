// The reader's own line, kept in view at the foot of the screen while the others move.

import { boardAt } from './addresses'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { placeFigure, scoreFigure, scoreWords, whereInWords } from './words'

export function MyLine({ board, row, c }: { board: ScreenBoard; row: ScreenRow; c: number }) {
  const { societySlug, daySlug } = board.head
  const { unit, format } = board.competition
  const where = whereInWords(row)
  return (
    <aside className="my-line no-print" aria-label="Your line">
      <a href={boardAt(societySlug, daySlug, { c, v: 'mine' })}>
        <span className="fig my-place">
          {placeFigure(row) || '–'}
          <span className="unseen"> place, </span>
        </span>
        <span className="fig my-score">
          <span aria-hidden="true">{row.holesPlayed === 0 ? '–' : scoreFigure(row.score, unit)}</span>
          <span className="unseen">{scoreWords(row.score, unit, format !== 'gross')}, </span>
        </span>
        <b>{row.name}</b>
        <span className="small second">{where}</span>
      </a>
    </aside>
  )
}
