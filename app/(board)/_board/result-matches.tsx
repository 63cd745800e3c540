// The matches of a competition on the sheet: who met whom, and how it ended.

import { Opens } from '@/app/_parts/opens'
import type { CompetitionBoard, DayHead } from '@/lib/boards/views'
import { matchOfAt } from './addresses'
import { isPlayed, MatchParts, matchEnd } from './match-parts'

interface Props {
  readonly head: Pick<DayHead, 'societySlug' | 'daySlug'>
  readonly competition: CompetitionBoard
  /** Which competition of the day, from 1. */
  readonly c: number
}

export function ResultMatches({ head: { societySlug, daySlug }, competition, c }: Props) {
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
          {matches.map((match, at) => {
            const { winner, how } = matchEnd(match, names)
            return (
              <tr key={match.id}>
                <td className="lead-col fig">{at + 1}</td>
                <th scope="row">
                  {nameOf(match.a)} against {nameOf(match.b)}
                </th>
                <td>
                  {winner ? <b>{winner} </b> : null}
                  {isPlayed(match) ? (
                    <Opens
                      href={matchOfAt(societySlug, daySlug, c, match.id)}
                      label={`${nameOf(match.a)} against ${nameOf(match.b)}, ${winner ? `${winner} ` : ''}${how}: open the working`}
                    >
                      {how}
                    </Opens>
                  ) : (
                    how
                  )}
                  <MatchParts match={match} names={names} />
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}
