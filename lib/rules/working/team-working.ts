// How the points of a team add up, match by match: one for a match won, a half for one halved. Society custom; counted in
// halves, so that nothing is rounded.

import type { Day } from '../day'
import { halves } from '../exact/fraction'
import { type ForTeam, matchForTeam } from '../matches/team-match'
import type { MatchResult, WorkingStep } from '../standings'
import { capital, inWords } from './words'

/** The matches of one competition, in their order. */
export interface Session {
  /** Said before each match where the day has several sessions. */
  readonly name: string | null
  readonly matches: readonly MatchResult[]
}

const CLAUSE = 'Common practice, one point a match'

const WORTH: Readonly<Record<ForTeam['fate'], { readonly halfPoints: number; readonly said: string }>> = {
  won: { halfPoints: 2, said: 'one point' },
  halved: { halfPoints: 1, said: 'half a point' },
  lost: { halfPoints: 0, said: 'no point' },
  'not finished': { halfPoints: 0, said: 'no point yet' },
  'no result': { halfPoints: 0, said: 'it counts for neither team' },
}

/** Works from the matches as `scoreDay` answers them. Empty where the day has no such team. */
export function teamWorking(
  day: Day,
  teamId: string,
  sessions: readonly Session[],
  nameOf: (entrant: string) => string = (id) => id,
): WorkingStep[] {
  const team = day.teams?.find((one) => one.id === teamId)
  if (team === undefined) return []
  const counts: Record<ForTeam['fate'], number> = { won: 0, halved: 0, lost: 0, 'not finished': 0, 'no result': 0 }
  let sum = 0
  const steps = sessions.flatMap(({ name, matches }) =>
    matches.flatMap((match, at): WorkingStep[] => {
      return matchForTeam(match, team, day).map(({ part, fate, own, other }): WorkingStep => {
        const { halfPoints, said } = WORTH[fate]
        counts[fate]++
        const before = sum
        sum += halfPoints
        const how = part === undefined ? match : match.parts!.find((one) => one.name === part)!
        const which = `${name === null ? 'Match' : `${name}, match`} ${at + 1}${part === undefined ? '' : `, ${part}`}`
        return {
          figure: halves(sum),
          label: `${which}: ${nameOf(own)} against ${nameOf(other)}`,
          ...(halfPoints === 0 ? {} : { sum: `${halves(before)} + ${halves(halfPoints)}` }),
          sentence: `${capital(fate)}${howIn(how, fate)}: ${said}.`,
          clause: CLAUSE,
        }
      })
    }),
  )
  return [...steps, totalStep(sum, counts)]
}

/** ", 2&1", ", conceded"; nothing where the fate says it all. */
function howIn({ result }: Pick<MatchResult, 'result'>, fate: ForTeam['fate']): string {
  return fate === 'won' || fate === 'lost' ? `, ${result.replace(/^[AB] /, '')}` : ''
}

function totalStep(sum: number, counts: Readonly<Record<ForTeam['fate'], number>>): WorkingStep {
  const { won, halved, lost } = counts
  const open = counts['not finished']
  const each = [`${inWords(won)} won`, `${inWords(halved)} halved`, `${inWords(lost)} lost`].map((one) =>
    one.replace('nought', 'none'),
  )
  return {
    figure: halves(sum),
    label: 'Total',
    sum: `${won} × 1 + ${halved} × ½`,
    sentence: `${capital(each.join(', '))}${open === 0 ? '' : `; ${inWords(open)} still to come`}.`,
    clause: CLAUSE,
  }
}
