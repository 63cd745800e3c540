// A match opened: that of a competition on its own terms, or any two cards of the day, or any four as a four-ball, on the
// published ones. Strokes from the lowest, holes won and lost, how it came out.

import type { DayRecord } from '@/lib/facts/day-record'
import { byName } from '@/lib/facts/person-name'
import type { Competition, Day } from '@/lib/rules/day'
import { FORMATS, formatOf, inWords, proposedAllowance } from '@/lib/rules/formats/catalogue'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { matchBetween } from '@/lib/rules/matches/match'
import { scoreDay } from '@/lib/rules/score-day'
import type { MatchResult } from '@/lib/rules/standings'
import { matchSeen } from '@/lib/rules/working/match-seen'
import { workingOfMatch } from '@/lib/rules/working/match-working'
import { competitionBoard, dayHead } from './board'
import { sidesOfOneBall } from './card-holders'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { listed } from './in-words'
import { matchSentence, resultShown } from './match-sentences'
import { matchSides } from './match-sides'
import type { MatchSheet, MatchSide } from './match-views'

/** Entry ids: one card, or the two of a side. */
export type CardsOfSide = readonly [string] | readonly [string, string]

/** Two cards, or four as a four-ball; null when somebody does not play in the day or is asked for twice. */
export function matchSheetOf(
  record: DayRecord,
  a: CardsOfSide,
  b: CardsOfSide,
  hole: number | null = null,
): MatchSheet | null {
  if (sidesOfOneBall(record).length > 0) return ballsAsAMatch(record, a, b, hole)
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const asked = [...a, ...b]
  if (a.length !== b.length || new Set(asked).size !== asked.length || !asked.every((id) => cards.has(id))) return null
  const format = formatOf(a.length === 2 ? 'four-ball-match' : 'match')!
  const match = matchBetween(day, endOf(a), endOf(b), format)
  if (!match) return null
  const names = namesOf(record)
  const { allowance, sentence } = proposedAllowance(format.id, 0, record.edition)
  const short = { a: listed(a.map((id) => names.short(id))), b: listed(b.map((id) => names.short(id))) }
  const competition = { id: match.id, format: format.id }
  const opened = openedMatch(record, { day, match, competition, names, short, hole })
  return opened && { ...opened, of: null, allowance: `${allowance} %`, allowanceFrom: sentence }
}

/** The balls of two sides that share a card each, off the handicaps of their own competition, as the difference. */
function ballsAsAMatch(record: DayRecord, a: CardsOfSide, b: CardsOfSide, hole: number | null): MatchSheet | null {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  const [one, other] = [a, b].map((ids) =>
    ids.length === 1 ? sidesOfOneBall(record).find(({ entryIds }) => entryIds.some((id) => id === ids[0])) : undefined,
  )
  if (!main || !format || !one || !other || one.id === other.id) return null
  const choices: FiveChoices = {
    side: format.side,
    ball: 'one',
    strokes: format.strokes.kind === 'none' ? format.strokes : { kind: 'for-the-side', off: 'lowest' },
    value: { kind: 'against-opponent', on: { kind: 'strokes' } },
    count: { kind: 'best', take: [1] },
  }
  const day = dayOfRecord(record)
  const kept = day.competitions.find(({ id }) => id === main.id)
  const { allowance, dividedBy, handicapLimit, missing, sideTee } = kept ?? { id: main.id, format: main.format }
  const given = {
    ...(allowance === undefined ? {} : { allowance }),
    ...(dividedBy === undefined ? {} : { dividedBy }),
    ...(handicapLimit === undefined ? {} : { handicapLimit }),
    ...(missing === undefined ? {} : { missing }),
    ...(sideTee === undefined ? {} : { sideTee }),
  }
  const asMatch = { ...format, ...choices, id: `${format.name} as a match`, unit: 'holes' as const, isMatch: true }
  const match = matchBetween(day, one.id, other.id, asMatch, given)
  if (!match) return null
  const names = namesOf(record)
  const short = { a: names.entrantShort(one.id), b: names.entrantShort(other.id) }
  const competition = { ...given, id: match.id, format: asMatch.id, custom: choices }
  const opened = openedMatch(record, { day, match, competition, names, short, hole })
  const figure = dividedBy === undefined ? inWords(main.terms.allowance) : `course handicaps added up ÷ ${dividedBy}`
  return opened && { ...opened, of: null, allowance: figure, allowanceFrom: `As in ${main.name}.` }
}

/** The cards there are, by name: of sides that share one, a card a side, in the hands of one of its players. */
export function cardsToMatch(record: DayRecord): MatchSheet['players'] {
  const cards = cardsAsTheyStand(record)
  const names = namesOf(record)
  const sides = sidesOfOneBall(record)
  if (sides.length > 0)
    return sides.flatMap(({ id, entryIds }) => {
      const holder = entryIds.find((player) => cards.has(player))
      return holder ? [{ entryId: holder, name: names.entrant(id) }] : []
    })
  return record.entries
    .filter((one) => one.status === 'entered' && cards.has(one.id))
    .sort(byName)
    .map((one) => ({ entryId: one.id, name: names.full(one.id) }))
}

export interface MatchAsked {
  /** From 1, as `?c=` counts. */
  readonly competition: number
  /** Id of the match. */
  readonly match: string
  readonly hole: number | null
}

/** The match as the board has it; null when there is no such competition, match or hole. */
export function competitionMatchSheet(record: DayRecord, asked: MatchAsked): MatchSheet | null {
  const kept = record.competitions[asked.competition - 1]
  const day = dayOfRecord(record)
  const competition = day.competitions.find((one) => one.id === kept?.id)
  const result = kept && scoreDay(day).find((one) => one.competition === kept.id)
  const match = result?.matches?.find((one) => one.id === asked.match)
  if (!kept || !competition || !result || !match) return null
  const names = namesOf(record)
  const { name, formatName, allowance, allowanceFrom, moreTerms } = competitionBoard(
    record,
    kept,
    result,
    cardsAsTheyStand(record),
    names,
  )
  const short = { a: names.entrantShort(match.a), b: names.entrantShort(match.b) }
  const opened = openedMatch(record, { day, match, competition, names, short, hole: asked.hole })
  const of = { number: asked.competition, name, formatName, moreTerms: moreTerms ?? [] }
  return opened && { ...opened, of, allowance, allowanceFrom }
}

const endOf = (side: CardsOfSide) => (side.length === 1 ? side[0] : side)

interface Opening {
  readonly day: Day
  readonly match: MatchResult
  readonly competition: Competition
  readonly names: Names
  readonly short: { readonly a: string; readonly b: string }
  readonly hole: number | null
}

function openedMatch(
  record: DayRecord,
  { day, match, competition, names, short, hole }: Opening,
): Omit<MatchSheet, 'of' | 'allowance' | 'allowanceFrom'> | null {
  const seen = matchSeen(day, match, competition, FORMATS)
  const whole = workingOfMatch(day, match, null, competition)
  if (seen === null || whole === null) return null
  if (hole !== null && !match.holes.some((state) => state.hole === hole)) return null
  const steps = hole === null ? null : workingOfMatch(day, match, hole, competition)
  const cards = cardsAsTheyStand(record)
  const sides = matchSides(seen, names, (entryId) => cards.has(entryId))
  return {
    ...dayHead(record),
    ...sides,
    match: { ...match, result: resultShown(match, short) },
    sentence: matchSentence(match, short, {
      a: holesWritten(sides.a),
      b: holesWritten(sides.b),
      of: match.holes.length,
    }),
    working: whole.strokes,
    handicaps: whole.handicaps,
    outcome: whole.then,
    opened: hole === null || steps === null ? null : { hole, steps: steps.then },
    players: cardsToMatch(record),
  }
}

/** Holes with a score on any ball of the side. */
function holesWritten({ holes, partners }: MatchSide): number {
  const balls = partners ?? [{ holes }]
  return holes.filter(({ hole }) =>
    balls.some((ball) => ball.holes.some((one) => one.hole === hole && one.gross !== null)),
  ).length
}
