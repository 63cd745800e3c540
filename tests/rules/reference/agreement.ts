// Holds the engine against the second way on many random days and tells the first days on which they differ.
import type { Competition, Day } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult, Standing } from '@/lib/rules/standings'
import { halfPointsOf, referenceMatch } from './match'
import { randomDay, type Wanted } from './random-day'
import { belongs, type Line, linesOf, placesAmong, wholesOf } from './standings'

/** Days for each format. `npm run prove` asks for 20,000 of each; here as many as somebody who waits can bear. */
export const DAYS = Number(process.env.RULES_DAYS ?? 1_000)

const SHOWN = 3

function drivesIn({ drives, drivesShort }: Standing): string {
  return Object.entries(drives ?? {})
    .map(([id, taken]) => `${id} ${taken}${drivesShort?.includes(id) ? '*' : ''}`)
    .join(', ')
}

/** A side with one ball has one handicap, under its own name. */
function handicapsOf(standing: Standing): Readonly<Record<string, number>> {
  return standing.playingHandicap === null ? standing.handicaps : { [standing.entrant]: standing.playingHandicap }
}

const same = (a: readonly (number | null)[], b: readonly (number | null)[]) =>
  a.length === b.length && a.every((one, at) => one === b[at])

const PLAIN = ['place', 'tied', 'score', 'againstLevel', 'out', 'in'] as const

function difference(wanted: Line, found: Standing): string | null {
  const wrong: string[] = []
  const say = (what: string, definition: unknown, engine: unknown) =>
    wrong.push(
      `${wanted.entrant} ${what}: ${JSON.stringify(definition)} by definition, engine ${JSON.stringify(engine)}`,
    )
  for (const key of PLAIN) if (wanted[key] !== found[key]) say(key, wanted[key], found[key])
  if (wanted.noPlace !== (found.noPlace ?? null)) say('noPlace', wanted.noPlace, found.noPlace)
  const values = found.holes.map((hole) => hole.value)
  if (!same(wanted.values, values)) say('values', wanted.values, values)
  const handicaps = handicapsOf(found)
  const players = Object.keys(wanted.handicaps)
  const differ = players.some((player) => wanted.handicaps[player] !== handicaps[player])
  if (differ || players.length !== Object.keys(handicaps).length) say('handicaps', wanted.handicaps, handicaps)
  const rounds = found.rounds?.map(({ score }) => score) ?? []
  if (!same(wanted.rounds, rounds)) say('rounds', wanted.rounds, rounds)
  if (wanted.drives !== drivesIn(found)) say('drives', wanted.drives, drivesIn(found))
  return wrong.length === 0 ? null : wrong.join('; ')
}

function standingsDiffer(day: Day, competition: Competition, result: CompetitionResult): string | null {
  const wholes = wholesOf(day, competition)
  const lines = linesOf(competition, wholes)
  if (lines.length !== result.standings.length) {
    return `${lines.length} entrants by definition, engine ${result.standings.length}`
  }
  for (const line of lines) {
    const found = result.standings.find(({ entrant }) => entrant === line.entrant)
    const wrong = found ? difference(line, found) : `${line.entrant} is missing`
    if (wrong) return wrong
  }
  const order = result.standings.map(({ group = 0, place }) => ({ group, place: place ?? Number.POSITIVE_INFINITY }))
  const isBefore = (a: (typeof order)[number], b: (typeof order)[number]) =>
    a.group < b.group || (a.group === b.group && a.place <= b.place)
  if (order.some((one, at) => at > 0 && !isBefore(order[at - 1]!, one)))
    return `not in order: ${order.map(({ group, place }) => `${group} ${place}`).join(', ')}`
  for (const division of competition.divisions ?? []) {
    const inIt = wholes.filter((one) => belongs(day, competition, one, division))
    const wanted = placesAmong(competition, inIt).map(({ place, tied }, at) => [inIt[at]!.last.entrant.id, place, tied])
    const standings = result.divisions?.find(({ id }) => id === division.id)?.standings ?? []
    const found = standings.map(({ entrant, place, tied }) => [entrant, place, tied])
    if (wanted.map(String).sort().join(' ') !== found.map(String).sort().join(' '))
      return `division ${division.id}: ${JSON.stringify(wanted)} by definition, engine ${JSON.stringify(found)}`
  }
  return null
}

function matchesDiffer(day: Day, competition: Competition, result: CompetitionResult): string | null {
  const matches = competition.matches ?? []
  const lines = matches.map((match) => referenceMatch(day, competition, match))
  for (const wanted of lines) {
    const found = result.matches?.find((one) => one.id === wanted.id)
    if (!found) return `match ${wanted.id} is missing`
    const { id, winner, result: words, finished, strokes, parts = [] } = found
    const up = found.holes.flatMap((hole) => (hole.up === null ? [] : [hole.up]))
    const said = { id, winner, result: words, finished, up, strokes, parts }
    if (JSON.stringify(wanted) !== JSON.stringify(said)) {
      return `${JSON.stringify(wanted)} by definition, engine ${JSON.stringify(said)}`
    }
  }
  for (const { team, halfPoints } of result.teams ?? []) {
    const wanted = halfPointsOf(day, competition, team, lines, matches)
    if (wanted !== halfPoints) return `team ${team}: ${wanted} half points by definition, engine ${halfPoints}`
  }
  return null
}

/** The engine's reading of a day against the second way's of the same, or of another to see that a difference is told. */
export function differencesOn(day: Day, other: Day = day): string[] {
  const results = scoreDay(other)
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
