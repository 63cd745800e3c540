// A match between teams: one point for a match won, a half for one halved. Society custom; points are kept in halves so
// that nothing is ever rounded. Of a match in parts each part is a match, unless the terms let only the whole count.

import type { Day, Team } from '../day'
import { halves } from '../exact/fraction'
import type { CompetitionResult, MatchPartResult, MatchResult, TeamPoints } from '../standings'

function teamOf(id: string, day: Day): Team | null {
  const players = day.sides.find((side) => side.id === id)?.players ?? [id]
  return day.teams?.find((team) => players.every((player) => team.players.includes(player))) ?? null
}

/** What a match, or a part of one, is to a team. */
export interface ForTeam {
  /** Of a match in parts. */
  readonly part?: string
  readonly fate: 'won' | 'halved' | 'lost' | 'not finished' | 'no result'
  /** The team's own side in it, and the other. */
  readonly own: string
  readonly other: string
}

/** Nothing when it is none of the team's business, or between two of its own; one for each part that counts. */
export function matchForTeam(match: MatchResult, team: Team, day: Day): readonly ForTeam[] {
  const isA = teamOf(match.a, day) === team
  const isB = teamOf(match.b, day) === team
  if (isA === isB) return []
  const [own, other] = isA ? [match.a, match.b] : [match.b, match.a]
  if (match.parts === undefined || match.wholeForTeams) return [{ fate: fateOf(match, own), own, other }]
  return match.parts.map((part) => ({ part: part.name, fate: fateOf(part, own), own, other }))
}

function fateOf({ result, finished, winner }: MatchPartResult | MatchResult, own: string): ForTeam['fate'] {
  if (result === 'no result') return 'no result'
  if (!finished) return 'not finished'
  if (winner === null) return 'halved'
  return winner === own ? 'won' : 'lost'
}

export function teamPoints(matches: readonly MatchResult[], day: Day): TeamPoints[] {
  return (day.teams ?? []).map((team) => {
    let won = 0
    let halved = 0
    let lost = 0
    for (const { fate } of matches.flatMap((match) => matchForTeam(match, team, day))) {
      if (fate === 'won') won++
      else if (fate === 'halved') halved++
      else if (fate === 'lost') lost++
    }
    return pointsOf(team, won, halved, lost)
  })
}

/** All the sessions of a day together: singles, four-balls, foursomes. */
export function teamTotal(results: readonly CompetitionResult[], day: Day): TeamPoints[] {
  return (day.teams ?? []).map((team) => {
    const sessions = results.flatMap((result) => result.teams?.filter((one) => one.team === team.id) ?? [])
    const sum = (of: (one: TeamPoints) => number) => sessions.reduce((all, one) => all + of(one), 0)
    return pointsOf(
      team,
      sum((one) => one.won),
      sum((one) => one.halved),
      sum((one) => one.lost),
    )
  })
}

function pointsOf(team: Team, won: number, halved: number, lost: number): TeamPoints {
  const halfPoints = 2 * won + halved
  return { team: team.id, name: team.name, halfPoints, points: halves(halfPoints), won, halved, lost }
}
