// The matches of a competition: who meets whom, how it stands, and a way into each.

import { Opens } from '@/app/_parts/opens'
import { matchOfAt } from './addresses'
import { isPlayed, MatchParts, matchEnd } from './match-parts'
import type { ScreenBoard } from './screen-board'

export function MatchesTable({ board }: { board: ScreenBoard }) {
  const { societySlug, daySlug } = board.head
  const { id, names, chances } = board.competition
  const c = board.competitions.findIndex((one) => one.id === id) + 1
  return (
    <div className="scroll">
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
            const { winner, how } = matchEnd(match, names)
            return (
              <tr key={match.id}>
                <td className="lead-col fig">{at + 1}</td>
                <th scope="row">
                  {a} against {b}
                </th>
                <td className={match.finished ? undefined : 'second'}>
                  {winner ? <b>{winner} </b> : null}
                  {isPlayed(match) ? (
                    <Opens
                      href={matchOfAt(societySlug, daySlug, c, match.id)}
                      label={`${a} against ${b}, ${winner ? `${winner} ` : ''}${how}: open the working`}
                      className="match-how"
                    >
                      {how}
                    </Opens>
                  ) : (
                    how
                  )}
                  <MatchParts match={match} names={names} />
                  {chances?.matches[match.id] && (
                    <span className="small second block">{chances.matches[match.id]}</span>
                  )}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}
