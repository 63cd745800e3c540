// A day in, its results out: every competition of the day read from the same cards. Total: a day that passed the schema
// always has an answer. Rules of Golf 2023; Rules of Handicapping in the edition the day names.

import { countsOf } from './count/count-on-hole'
import type { Day } from './day'
import { FORMATS } from './formats/catalogue'
import type { Format } from './formats/format'
import { matchOf } from './matches/match'
import {
  type Ball,
  type BallSeed,
  ballOf,
  handicapInFull,
  levelPars,
  lowestParOf,
  ownHandicap,
  seedsOf,
} from './score/balls'
import { type DayIndex, indexOf, type TeeSheet } from './score/day-index'
import { entrantsOf } from './score/entrants'
import { entryOf, type Reading } from './score/entry-lines'
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
  const result = {
    competition: competition.id,
    format: format.id,
    allowance,
    allowanceFrom,
    better: format.better,
    unit: format.unit,
  }
  if (format.isMatch) {
    const matches: MatchResult[] = []
    for (const match of competition.matches ?? []) {
      const played = matchOf(match, terms, index)
      if (played !== null) matches.push(played)
    }
    return { ...result, standings: [], matches }
  }
  return { ...result, standings: standingsOf(terms, index) }
}

function standingsOf(terms: TermsInForce, index: DayIndex): Standing[] {
  const { format } = terms
  const { day } = index
  const entrants = entrantsOf(terms, index)
  const seeds = entrants.map((entrant) => seedsOf(entrant.id, entrant.players, format.ball === 'one', index))
  const all: BallSeed[] = seeds.flat()
  const first = all[0]
  if (first === undefined)
    return ranked(
      entrants.map((one) => entryOf(one, [], EMPTY(format))),
      terms,
    )
  const lowestPar = lowestParOf(all)
  const lowest = [...index.sheets.values()]
    .filter((sheet) => sheet.par === lowestPar && all.some((seed) => seed.sheet === sheet))
    .sort((a, b) => (a.tee.id < b.tee.id ? -1 : 1))[0]!
  const reading = readingOf(terms, first.sheet, lowest)
  const entries = entrants.map((entrant, e) => {
    const balls = seeds[e]!.map((seed) => {
      const handicap = ownHandicap(handicapInFull(seed, terms, lowestPar, day.edition))
      return ballOf(seed, handicap, terms, day.closed)
    })
    return entryOf(entrant, balls, reading)
  })
  return ranked(entries, terms)
}

const EMPTY = (format: Format): Reading => ({ format, counts: [], holeTimes: [], levelsOf: () => [] })

function readingOf({ format }: TermsInForce, sheet: TeeSheet, lowest: TeeSheet): Reading {
  const numbers = sheet.tee.holes.map(({ hole }) => hole)
  const levels = new Map<TeeSheet, readonly number[]>()
  return {
    format,
    counts: countsOf(format.count, numbers),
    holeTimes: numbers.map(() => 1),
    levelsOf: (ball: Ball) => {
      let own = levels.get(ball.sheet)
      if (own === undefined) {
        own = levelPars(ball.sheet, lowest)
        levels.set(ball.sheet, own)
      }
      return own
    },
  }
}
