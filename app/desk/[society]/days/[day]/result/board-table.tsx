import { scoreFigure } from '@/app/(board)/_board/words'
import { strokesFigure } from '@/lib/boards/figure'
import { wonHow } from '@/lib/boards/match-ending-words'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import type { EntryId } from '@/lib/facts/ids'

const NO_PLACE = {
  'no-return': 'no return',
  disqualified: 'disqualified',
  withdrawn: 'withdrawn',
  'not-started': 'not started',
  'one-round-only': 'one round only',
  'rounds-missing': 'not every round',
} as const

const scoreOf = (row: BoardRow, board: CompetitionBoard): string => {
  if (row.score === null) return row.noPlace ? NO_PLACE[row.noPlace] : '–'
  return scoreFigure(row.score, board.unit)
}

/** The standings of one competition as they will stand on the sheet, ties in words under the names. */
export function BoardTable({
  board,
  card,
  name,
}: {
  readonly board: CompetitionBoard
  readonly card: (row: BoardRow) => string
  readonly name: (entryId: EntryId) => string
}) {
  if (board.matches.length > 0) {
    const called = (id: string) => board.names[id] ?? name(id as EntryId)
    return (
      <ul className="plain">
        {board.matches.map((match) => (
          <li key={match.id}>
            {called(match.a)} v {called(match.b)}:{' '}
            <b>{match.winner === null ? match.result : `${called(match.winner)} ${wonHow(match.result)}`}</b>
          </li>
        ))}
      </ul>
    )
  }
  // One nine is neither out nor in.
  const hasHalves = board.rows.some((row) => row.holes.length !== 9)
  const isOff = board.rows.some((row) => row.playingHandicap !== null)
  return (
    <div className="scroll" role="group" aria-label={`Standings, ${board.name}`}>
      <table className="standing">
        <caption className="unseen">{board.name}</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              Place
            </th>
            <th scope="col">Name</th>
            {isOff ? (
              <th scope="col" className="num">
                Off
              </th>
            ) : null}
            {hasHalves ? (
              <>
                <th scope="col" className="num half">
                  Out
                </th>
                <th scope="col" className="num half">
                  In
                </th>
              </>
            ) : null}
            <th scope="col" className="num">
              {board.unit}
            </th>
          </tr>
        </thead>
        <tbody>
          {board.rows.map((row) => (
            <tr key={row.entrant}>
              <td className="lead-col fig">{row.place === null ? '' : `${row.place}${row.tied ? '=' : ''}`}</td>
              <th scope="row">
                {row.away ? row.name : <a href={card(row)}>{row.name}</a>}
                {row.note ? <span className="second small"> {row.note}</span> : null}
                {row.tieSentence ? <span className="under aside">{row.tieSentence}</span> : null}
              </th>
              {isOff ? (
                <td className="num fig">{row.playingHandicap === null ? '' : strokesFigure(row.playingHandicap)}</td>
              ) : null}
              {hasHalves ? (
                <>
                  <td className="num fig half">{row.out ?? ''}</td>
                  <td className="num fig half">{row.in ?? ''}</td>
                </>
              ) : null}
              <td className={row.score === null ? 'num second small' : 'num fig ph'}>{scoreOf(row, board)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
