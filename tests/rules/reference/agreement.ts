// Holds the engine against the second way on many random days and tells the first days on which they differ.
import type { Competition, Day } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult, Standing } from '@/lib/rules/standings'
import type { Line } from './count'
import { referenceMatch } from './match'
import { randomDay, type Wanted } from './random-day'
import { referenceLines } from './standings'

/** Days a format: 20,000 unless the environment asks for more or fewer. */
export const DAYS = Number(process.env.RULES_DAYS ?? 20_000)

const SHOWN = 3

function lineOf(standing: Standing): Line {
  return {
    entrant: standing.entrant,
    place: standing.place,
    tied: standing.tied,
    score: standing.score,
    noPlace: standing.noPlace ?? null,
    // A side with one ball has one handicap, under its own name.
    handicaps:
      standing.playingHandicap === null ? standing.handicaps : { [standing.entrant]: standing.playingHandicap },
    values: standing.holes.map((hole) => hole.value),
  }
}

function difference(wanted: Line, found: Line | undefined): string | null {
  if (!found) return `${wanted.entrant} is missing`
  const wrong = (['place', 'tied', 'score', 'noPlace'] as const).filter((key) => wanted[key] !== found[key])
  const keys: (keyof Line)[] = [...wrong]
  if (wanted.values.length !== found.values.length || wanted.values.some((value, at) => value !== found.values[at])) {
    keys.push('values')
  }
  const players = Object.keys(wanted.handicaps)
  const same = players.every((player) => wanted.handicaps[player] === found.handicaps[player])
  if (!same || players.length !== Object.keys(found.handicaps).length) keys.push('handicaps')
  if (keys.length === 0) return null
  return keys
    .map(
      (key) =>
        `${wanted.entrant} ${key}: ${JSON.stringify(wanted[key])} by definition, engine ${JSON.stringify(found[key])}`,
    )
    .join('; ')
}

function standingsDiffer(day: Day, competition: Competition, result: CompetitionResult): string | null {
  const lines = referenceLines(day, competition)
  if (lines.length !== result.standings.length) {
    return `${lines.length} entrants by definition, engine ${result.standings.length}`
  }
  const found = new Map(result.standings.map((standing) => [standing.entrant, lineOf(standing)]))
  for (const line of lines) {
    const wrong = difference(line, found.get(line.entrant))
    if (wrong) return wrong
  }
  const places = result.standings.map((standing) => standing.place ?? Number.POSITIVE_INFINITY)
  return places.every((place, at) => at === 0 || places[at - 1]! <= place) ? null : `not in order: ${places.join(', ')}`
}

function matchesDiffer(day: Day, competition: Competition, result: CompetitionResult): string | null {
  for (const match of competition.matches ?? []) {
    const wanted = referenceMatch(day, competition, match)
    const found = result.matches?.find((one) => one.id === match.id)
    if (!found) return `match ${match.id} is missing`
    const up = found.holes.flatMap((hole) => (hole.up === null ? [] : [hole.up]))
    const said = { id: found.id, winner: found.winner, result: found.result, finished: found.finished, up }
    if (JSON.stringify(wanted) !== JSON.stringify(said)) {
      return `${JSON.stringify(wanted)} by definition, engine ${JSON.stringify(said)}`
    }
  }
  return null
}

export function differencesOn(day: Day): string[] {
  const results = scoreDay(day)
  return day.competitions.flatMap((competition) => {
    const result = results.find((one) => one.competition === competition.id)
    if (!result) return [`${competition.id}: no result`]
    const wrong = competition.matches
      ? matchesDiffer(day, competition, result)
      : standingsDiffer(day, competition, result)
    return wrong ? [`${competition.format}: ${wrong}`] : []
  })
}

/** The first disagreements in so many days, each with the seed that makes the day again. */
export function disagreements(wanted: Wanted, days = DAYS, from = 1): string[] {
  const found: string[] = []
  for (let seed = from; seed < from + days && found.length < SHOWN; seed += 1) {
    const day = randomDay(seed, wanted)
    for (const what of differencesOn(day)) found.push(`seed ${seed}: ${what}`)
  }
  return found
}
