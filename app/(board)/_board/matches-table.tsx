// The matches of a competition: who meets whom, how it stands, and a way into each.

import { wonHow } from '@/lib/boards/match-ending-words'
import { matchAt } from './addresses'
import type { ScreenBoard } from './screen-board'

export function MatchesTable({ board }: { board: ScreenBoard }) {
  const { societySlug, daySlug } = board.head
  const { names, chances } = board.competition
  // Two players are two cards and can be opened; a side's match is read here only.
  const singles = new Set(board.groups.flatMap(({ entryIds }) => entryIds))
  return (
    <table className="matches ruled">
      <caption className="unseen">Matches</caption>
      <thead>
        <tr>
          <th scope="col" className="lead-col">
            Match
          </th>
          <th scope="col">Players</th>
          <th scope="col">How it stands</th>
        </tr>
      </thead>
      <tbody>
        {board.matches.map((match, at) => {
          const a = names[match.a] ?? match.a
          const b = names[match.b] ?? match.b
          return (
            <tr key={match.id}>
              <td className="lead-col fig">{at + 1}</td>
              <th scope="row">
                {singles.has(match.a) && singles.has(match.b) ? (
                  <a href={matchAt(societySlug, daySlug, match.a, match.b)}>
                    {a} against {b}
                  </a>
                ) : (
                  `${a} against ${b}`
                )}
              </th>
              <td className={match.finished ? undefined : 'second'}>
                {match.winner ? <b>{names[match.winner] ?? match.winner} </b> : null}
                <span className="match-how">{match.winner ? wonHow(match.result) : match.result}</span>
                {chances?.matches[match.id] && <span className="small second block">{chances.matches[match.id]}</span>}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
