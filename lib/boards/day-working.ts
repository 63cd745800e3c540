// Figures of a day that belong to no single card, opened: the points of a team match by match, and who stands in a
// division and why.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Competition, Day } from '@/lib/rules/day'
import { teamTotal } from '@/lib/rules/matches/team-match'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult, WorkingStep } from '@/lib/rules/standings'
import { divisionWorkings } from '@/lib/rules/working/division-working'
import { teamWorking } from '@/lib/rules/working/team-working'
import { dayHead } from './board'
import { dayOfRecord } from './day-of-record'
import { decidingHandicap, divisionInWords } from './divisions'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { capital, counted } from './in-words'
import type { DayHead } from './views'

export interface DayWorking extends DayHead {
  /** Number of the competition from 1, as `?c=` counts; null for all the matches of the day. */
  readonly c: number | null
  /** Id of the division on whose board it stands; null for a team. */
  readonly d: string | null
  /** "Singles", "All matches". */
  readonly of: string
  /** "The Brake", "Division 2". */
  readonly title: string
  readonly sentence: string
  readonly figure: string
  readonly unit: string
  readonly steps: readonly WorkingStep[]
}

export type DayWorkingAsked =
  | { readonly team: string; readonly competition: number | null }
  | { readonly division: string; readonly competition: number }

/** Null when there is no such team, division or competition. */
export function dayWorkingOf(record: DayRecord, asked: DayWorkingAsked): DayWorking | null {
  const day = dayOfRecord(record)
  const results = scoreDay(day)
  const names = namesOf(record)
  const figured =
    'team' in asked
      ? ofTeam(record, day, results, names, asked)
      : ofDivision(record, day, results, names, asked.division, asked.competition)
  return figured && { ...dayHead(record), c: asked.competition, ...figured }
}

type Figured = Omit<DayWorking, keyof DayHead | 'c'>

function ofTeam(
  record: DayRecord,
  day: Day,
  results: readonly CompetitionResult[],
  names: Names,
  { team: id, competition }: { readonly team: string; readonly competition: number | null },
): Figured | null {
  const asked = competition === null ? null : record.competitions[competition - 1]
  if (asked === undefined) return null
  const played = results.filter((one) => one.teams && (asked === null || one.competition === asked.id))
  const line = teamTotal(played, day).find((one) => one.team === id)
  if (!line || played.length === 0) return null
  const nameOf = (one: CompetitionResult) => record.competitions.find((kept) => kept.id === one.competition)?.name ?? ''
  const sessions = played.map((one) => ({ name: asked ? null : nameOf(one), matches: one.matches ?? [] }))
  const steps = teamWorking(day, id, sessions, (entrant) => names.entrantShort(entrant))
  return {
    d: null,
    of: asked?.name ?? 'All matches',
    title: line.name,
    sentence: `${capital(counted(steps.length - 1, 'match', 'matches'))}: one point for a match won, a half for one halved.`,
    figure: line.points,
    unit: line.halfPoints === 2 ? 'point' : 'points',
    steps,
  }
}

function ofDivision(
  record: DayRecord,
  day: Day,
  results: readonly CompetitionResult[],
  names: Names,
  id: string,
  number: number,
): Figured | null {
  const kept = record.competitions[number - 1]
  const found = kept && divisionsOf(day, kept)
  const division = found?.competition.divisions?.find((one) => one.id === id)
  if (!kept || !found || !division) return null
  const standings =
    results.find((one) => one.competition === kept.id)?.divisions?.find((one) => one.id === id)?.standings ?? []
  const steps = standings.flatMap(({ entrant }): WorkingStep[] => {
    const way = found.ways.get(entrant)
    const own = way?.divisions.find((one) => one.id === id)
    if (!way || !own) return []
    const { figure = 'in', sum } = way.handicap ?? {}
    return [{ ...own.step, figure, label: names.entrant(entrant), ...(sum === undefined ? {} : { sum }) }]
  })
  const sentence = divisionInWords(division, decidingHandicap(formatIn(kept)))
  const many = steps.some((_, at) => (standings[at]?.players.length ?? 1) > 1)
  const all = many ? counted(steps.length, 'side') : counted(steps.length, 'player')
  return {
    d: id,
    of: kept.name,
    title: division.name,
    sentence,
    figure: String(steps.length),
    unit: all.replace(/^\S+ /, ''),
    steps: [
      ...steps,
      {
        figure: String(steps.length),
        label: division.name,
        sentence: `${capital(all)} in it. ${sentence}`,
        clause: 'Terms of the competition',
      },
    ],
  }
}

function divisionsOf(
  day: Day,
  { id }: Pick<CompetitionRecord, 'id'>,
): { readonly competition: Competition; readonly ways: ReturnType<typeof divisionWorkings> } | null {
  const competition = day.competitions.find((one) => one.id === id)
  return competition ? { competition, ways: divisionWorkings(day, competition) } : null
}

/** Of one entrant: the handicap that decides, then every division, those it is in at the end; empty where there are none. */
export function divisionStepsOf(day: Day, competition: Pick<CompetitionRecord, 'id'>, entrant: string): WorkingStep[] {
  const way = divisionsOf(day, competition)?.ways.get(entrant)
  if (!way) return []
  const inLast = [...way.divisions].sort((one, other) => Number(one.isIn) - Number(other.isIn))
  return [...(way.handicap ? [way.handicap] : []), ...inLast.map(({ step }) => step)]
}
