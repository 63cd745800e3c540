// Any two cards of a day as a match, or any four as a four-ball: strokes from the lowest, holes won and lost, the result
// in words.

import type { DayRecord } from '@/lib/facts/day-record'
import type { Day } from '@/lib/rules/day'
import { formatOf, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { courseHandicap } from '@/lib/rules/handicap/course-handicap'
import { matchBetween } from '@/lib/rules/matches/match'
import type { HoleLine, MatchResult } from '@/lib/rules/standings'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { matchWorking } from '@/lib/rules/working/match-working'
import { dayHead } from './board'
import type { MatchSheet, MatchSide } from './card-views'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { type Names, namesOf } from './entrant-names'
import { listed } from './in-words'
import { wonHow } from './match-ending-words'

/** Two cards, or four as a four-ball; null when somebody does not play in the day or is asked for twice. */
export function matchSheetOf(record: DayRecord, a: CardsOfSide, b: CardsOfSide): MatchSheet | null {
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const asked = [...a, ...b]
  if (a.length !== b.length || new Set(asked).size !== asked.length || !asked.every((id) => cards.has(id))) return null
  const format = formatOf(a.length === 2 ? 'four-ball-match' : 'match')!
  const match = matchBetween(day, endOf(a), endOf(b), format)
  if (!match) return null
  const names = namesOf(record)
  const { allowance, sentence } = proposedAllowance(format.id, 0, record.edition)
  const shown = withNames(namedSides(match, a, b, names))
  return {
    ...dayHead(record),
    a: sideOf(day, a, match, 1, names),
    b: sideOf(day, b, match, -1, names),
    match: shown,
    allowance: `${allowance} %`,
    allowanceFrom: sentence,
    sentence: matchSentence(match, shown, shortOf(a, names), shortOf(b, names)),
    working: matchWorking(day, match, 1, { id: match.id, format: format.id }).filter((step) =>
      step.label.startsWith('Strokes for'),
    ),
    players: record.entries
      .filter((one) => one.status === 'entered' && cards.has(one.id))
      .map((one) => ({ entryId: one.id, name: names.full(one.id) }))
      .sort((one, other) => one.name.localeCompare(other.name, 'en')),
  }
}

/** Entry ids: one card, or the two of a side. */
export type CardsOfSide = readonly [string] | readonly [string, string]

const endOf = (side: CardsOfSide) => (side.length === 1 ? side[0] : side)
const shortOf = (side: CardsOfSide, names: Names) => listed(side.map((id) => names.short(id)))
const fullOf = (side: CardsOfSide, names: Names) => listed(side.map((id) => names.full(id)))

/** Hole by hole +1 won, 0 halved, -1 lost for one side; null after the match is decided. */
function won(match: MatchResult, way: 1 | -1): ReadonlyMap<number, number | null> {
  let before = 0
  return new Map(
    match.holes.map(({ hole, up }) => {
      if (up === null) return [hole, null]
      const here = (up - before) * way
      before = up
      return [hole, here === 0 ? 0 : here]
    }),
  )
}

function sideOf(day: Day, entries: CardsOfSide, match: MatchResult, way: 1 | -1, names: Names): MatchSide {
  const balls = entries.map((id) => ballOf(day, id, match.strokes[id] ?? 0, names))
  const values = won(match, way)
  const [first, second] = balls
  if (second === undefined) return { ...first!, holes: first!.holes.map((line) => withValue(line, values)) }
  return {
    ...first!,
    name: fullOf(entries, names),
    tee: listed([...new Set(balls.map(({ tee }) => tee))]),
    courseHandicap: null,
    strokes: way === 1 ? match.strokesA : match.strokesB,
    holes: first!.holes.map((line, at) => withValue(betterOf(line, second.holes[at]), values)),
    partners: balls,
  }
}

const withValue = (line: HoleLine, values: ReadonlyMap<number, number | null>): HoleLine => ({
  ...line,
  value: values.get(line.hole) ?? null,
})

/** The ball that counts, with its player; the first where they are level. */
function betterOf(line: HoleLine, other: HoleLine | undefined): HoleLine {
  const isBetter = other !== undefined && other.net !== null && (line.net === null || other.net < line.net)
  return isBetter ? other : line
}

function ballOf(day: Day, entryId: string, strokes: number, names: Names): MatchSide {
  const player = day.players.find((one) => one.id === entryId)
  const tee = day.tees.find((one) => one.id === player?.tee)
  const card = day.cards.find((one) => one.player === entryId && (one.round ?? 1) === 1)
  const received = strokesOnHoles(strokes, tee?.holes ?? [])
  const holes = (tee?.holes ?? []).map(({ hole, par, strokeIndex }, at): HoleLine => {
    const written = card?.scores[at] ?? null
    const gross = typeof written === 'number' ? written + (card?.penaltyStrokes?.[hole] ?? 0) : written
    const here = received[at] ?? 0
    const net = typeof gross === 'number' ? gross - here : null
    return { hole, par, strokeIndex, strokes: here, gross, net, value: null, by: [entryId] }
  })
  return {
    entryId,
    name: names.full(entryId),
    tee: tee ? `${tee.name}, ${tee.gender}` : '',
    courseHandicap: player && tee ? courseHandicap(player.indexTenths, tee, day.edition).rounded : null,
    strokes,
    holes,
  }
}

/** "A 2 up after 11" with the names of A. */
function withNames({ match, a, b }: { match: MatchResult; a: string; b: string }): MatchResult {
  const who = match.result.startsWith('A ') ? a : match.result.startsWith('B ') ? b : null
  return who === null ? match : { ...match, result: `${who} ${match.result.slice(2)}` }
}

function namedSides(match: MatchResult, a: CardsOfSide, b: CardsOfSide, names: Names) {
  return { match, a: shortOf(a, names), b: shortOf(b, names) }
}

function matchSentence(match: MatchResult, shown: MatchResult, a: string, b: string): string {
  if (!match.finished) {
    const { result } = shown
    if (result === 'not started') return `${a} and ${b} have not started.`
    if (result.startsWith('level')) return `${a} and ${b} are ${result}.`
    const who = match.result.startsWith('A ') ? a : b
    return `${who} ${who.includes(' and ') ? 'are' : 'is'}${result.slice(who.length)}.`
  }
  if (match.winner === null) return `${a} and ${b} halved the match.`
  const [winner, loser] = match.winner === match.a ? [a, b] : [b, a]
  return `${winner} beat ${loser} ${wonHow(match.result)}.`
}
