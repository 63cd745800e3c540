// The matches of a competition on the sheet: who met whom, and how it ended.

import { wonHow } from '@/lib/boards/match-ending-words'
import type { CompetitionBoard } from '@/lib/boards/views'

export function ResultMatches({ competition }: { readonly competition: CompetitionBoard }) {
  const { names, matches } = competition
  const nameOf = (id: string) => names[id] ?? id
  return (
    <div className="scroll">
      <table className="matches ruled">
        <caption className="unseen">Matches of {competition.name}</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              Match
            </th>
            <th scope="col">Players</th>
            <th scope="col">Result</th>
          </tr>
        </thead>
        <tbody>
          {matches.map((match, at) => (
            <tr key={match.id}>
              <td className="lead-col fig">{at + 1}</td>
              <th scope="row">
                {nameOf(match.a)} against {nameOf(match.b)}
              </th>
              <td>
                {match.winner === null ? null : <b>{nameOf(match.winner)} </b>}
                {match.winner === null ? match.result : wonHow(match.result)}
                {match.parts?.map((part) => (
                  <span className="small second" key={part.name}>
                    {' '}
                    {part.name}: {part.winner === null ? part.result : `${nameOf(part.winner)} ${wonHow(part.result)}`}.
                  </span>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
