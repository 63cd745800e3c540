// A day in, its results out: every competition of the day read from the same cards. Total: a day that passed the schema
// always has an answer. Rules of Golf 2023; Rules of Handicapping in the edition the day names.

import type { Day } from './day'
import { FORMATS } from './formats/catalogue'
import type { Format } from './formats/format'
import { matchOf } from './matches/match'
import { teamPoints } from './matches/team-match'
import { type DayIndex, indexOf } from './score/day-index'
import { divisionsOf } from './score/divisions'
import type { Entry } from './score/entry-lines'
import { entriesOf } from './score/field'
import { ranked } from './score/rank'
import { addedUp } from './score/rounds'
import { sharedEntries } from './score/shared-holes'
import { type TermsInForce, termsInForce, termsOfRound } from './score/terms-in-force'
import type { CompetitionResult, MatchResult } from './standings'

export function scoreDay(day: Day, formats: readonly Format[] = FORMATS): readonly CompetitionResult[] {
  const seen = new Map<number, DayIndex>()
  const roundOf = (round: number): DayIndex => {
    const index = seen.get(round) ?? indexOf(day, round)
    seen.set(round, index)
    return index
  }
  const results: CompetitionResult[] = []
  for (const competition of day.competitions) {
    const terms = termsInForce(competition, day, formats)
    if (terms !== null) results.push(scoreCompetition(terms, roundOf))
  }
  return results
}

function scoreCompetition(terms: TermsInForce, roundOf: (round: number) => DayIndex): CompetitionResult {
  const { competition, format, allowance, allowanceFrom } = terms
  const { better, unit } = format
  const result = { competition: competition.id, format: format.id, allowance, allowanceFrom, better, unit }
  const rounds = competition.rounds ?? [1]
  const last = roundOf(rounds[rounds.length - 1] ?? 1)
  if (format.isMatch) {
    const matches = matchesOf(terms, last)
    const teams = last.day.teams === undefined ? {} : { teams: teamPoints(matches, last.day) }
    return { ...result, standings: [], matches, ...teams }
  }
  const each = rounds.map((round) => ({
    round,
    entries: readRound(termsOfRound(terms, round, last.day), roundOf(round)),
  }))
  const entries = each.length === 1 ? each[0]!.entries : addedUp(each, terms, last.day.closed)
  const divisions = competition.divisions === undefined ? {} : { divisions: divisionsOf(entries, terms, last) }
  return { ...result, standings: ranked(entries, terms), ...divisions }
}

function readRound(terms: TermsInForce, index: DayIndex): Entry[] {
  const { value } = terms.format
  return value.kind === 'shared' ? sharedEntries(terms, value, index) : entriesOf(terms, index)
}

function matchesOf(terms: TermsInForce, index: DayIndex): MatchResult[] {
  const matches: MatchResult[] = []
  for (const match of terms.competition.matches ?? []) {
    const played = matchOf(match, terms, index)
    if (played !== null) matches.push(played)
  }
  return matches
}
