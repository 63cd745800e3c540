// What it needs to win: who can still be first, in the order of the board, each with a sentence. Only where the committee
// allows it; the sentences come finished with the board.

import { counted } from '@/lib/boards/in-words'
import { cardAt } from './addresses'
import type { ScreenBoard } from './screen-board'
import { placeFigure, scoreFigure, unitHeading } from './words'

interface Props {
  readonly board: ScreenBoard
  readonly division: boolean
}

export function NeedsView({ board, division }: Props) {
  const { chances } = board.competition
  if (!chances) return null
  if (chances.note) return <p className="needs-note">{chances.note}</p>
  const { societySlug, daySlug } = board.head
  const still = board.rows.filter(({ entrant }) => (chances.entrants[entrant]?.first ?? 'out') !== 'out')
  const out = board.rows.length - still.length
  return (
    <>
      <p className="needs-note small second">
        What can still happen by the Rules, from a hole in one to no score, with the cards as they stand
        {division ? ', in the whole field' : ''}. It is arithmetic, and no forecast.
      </p>
      <table className="needs ruled">
        <caption className="unseen">Who can still finish first, and what it needs</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              Place
            </th>
            <th scope="col">{unitHeading(board.competition)}, name, and what it needs</th>
          </tr>
        </thead>
        <tbody>
          {still.map((row) => {
            const { first, stands, needed } = chances.entrants[row.entrant]!
            return (
              <tr key={row.entrant}>
                <td className="lead-col fig">{placeFigure(row) || <span className="unseen">no place yet</span>}</td>
                <td>
                  {row.holesPlayed > 0 && (
                    <span className="fig needs-score">{scoreFigure(row.score, board.competition.unit)}</span>
                  )}
                  {row.away ? (
                    <span className="needs-name">{row.name}</span>
                  ) : (
                    <a className="needs-name" href={cardAt(societySlug, daySlug, row.entryIds[0] ?? row.entrant)}>
                      {row.name}
                    </a>
                  )}
                  <span className="block">{first === 'possible' && needed ? needed : stands}</span>
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      {out > 0 && <p className="small second">For {counted(out, 'other card')} first place is out of reach.</p>}
    </>
  )
}
