// A match between teams: one point for a match won, a half for one halved. Society custom; points are kept in halves so
// that nothing is ever rounded.

import type { Day, Team } from '../day'
import { halves } from '../exact/fraction'
import type { CompetitionResult, MatchResult, TeamPoints } from '../standings'

function teamOf(id: string, day: Day): Team | null {
  const players = day.sides.find((side) => side.id === id)?.players ?? [id]
  return day.teams?.find((team) => players.every((player) => team.players.includes(player))) ?? null
}

/** What a match is to a team. */
export interface ForTeam {
  readonly fate: 'won' | 'halved' | 'lost' | 'not finished' | 'no result'
  /** The team's own side in it, and the other. */
  readonly own: string
  readonly other: string
}

/** Null: it is none of the team's business, or between two of its own. */
export function matchForTeam(match: MatchResult, team: Team, day: Day): ForTeam | null {
  const isA = teamOf(match.a, day) === team
  const isB = teamOf(match.b, day) === team
  if (isA === isB) return null
  const [own, other] = isA ? [match.a, match.b] : [match.b, match.a]
  return { fate: fateOf(match, own), own, other }
}

function fateOf({ result, finished, winner }: MatchResult, own: string): ForTeam['fate'] {
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
    for (const match of matches) {
      const fate = matchForTeam(match, team, day)?.fate
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
