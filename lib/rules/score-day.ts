// A day in, its results out: every competition of the day read from the same cards. Total: a day that passed the schema
// always has an answer. Rules of Golf 2023; Rules of Handicapping in the edition the day names.

import type { Day } from './day'
import { FORMATS } from './formats/catalogue'
import type { Format } from './formats/format'
import { matchOf } from './matches/match'
import { type DayIndex, indexOf } from './score/day-index'
import { entryOf } from './score/entry-lines'
import { ballsOf, fieldOf } from './score/field'
import { ranked } from './score/rank'
import { type TermsInForce, termsInForce } from './score/terms-in-force'
import type { CompetitionResult, MatchResult, Standing } from './standings'

export function scoreDay(day: Day, formats: readonly Format[] = FORMATS): readonly CompetitionResult[] {
  const index = indexOf(day)
  const results: CompetitionResult[] = []
  for (const competition of day.competitions) {
    const terms = termsInForce(competition, day, formats)
    if (terms !== null) results.push(scoreCompetition(terms, index))
  }
  return results
}

function scoreCompetition(terms: TermsInForce, index: DayIndex): CompetitionResult {
  const { competition, format, allowance, allowanceFrom } = terms
  const { better, unit } = format
  const result = { competition: competition.id, format: format.id, allowance, allowanceFrom, better, unit }
  if (format.isMatch) return { ...result, standings: [], matches: matchesOf(terms, index) }
  return { ...result, standings: standingsOf(terms, index) }
}

function matchesOf(terms: TermsInForce, index: DayIndex): MatchResult[] {
  const matches: MatchResult[] = []
  for (const match of terms.competition.matches ?? []) {
    const played = matchOf(match, terms, index)
    if (played !== null) matches.push(played)
  }
  return matches
}

function standingsOf(terms: TermsInForce, index: DayIndex): Standing[] {
  const field = fieldOf(terms, index)
  const entries = field.entrants.map((entrant, at) => entryOf(entrant, ballsOf(field, at, terms, index), field.reading))
  return ranked(entries, terms)
}
