// Totals, ties and places the slow way: every pair of entrants is compared, and a place is one more than the number of
// entrants that are better. Committee Procedures 5A(6) for matching scorecards.
import type { Competition, Day, TieRule, TieStep } from '@/lib/rules/day'
import { grossOn, higherIsBetter, holeOutcome, type Line, type PlayerCard, playerCards } from './count'
import { compare, type Fraction, fraction, halfUp, minus, times } from './exact'

const PUBLISHED_STEPS: readonly TieStep[] = [
  { kind: 'last', holes: 9 },
  { kind: 'last', holes: 6 },
  { kind: 'last', holes: 3 },
  { kind: 'last', holes: 1 },
  { kind: 'first-nine-last', holes: 6 },
  { kind: 'first-nine-last', holes: 3 },
  { kind: 'first-nine-last', holes: 1 },
]

export interface Entrant {
  readonly id: string
  readonly cards: readonly PlayerCard[]
}

interface Counted {
  readonly entrant: Entrant
  readonly values: readonly (number | null)[]
  readonly total: number | null
  readonly noPlace: string | null
}

export function windowOf(step: TieStep, count: number, startHole: number, rule: TieRule): number[] {
  const byNumber = Array.from({ length: count }, (_, at) => at)
  const from = rule.holesCount === 'as-played' ? startHole - 1 : 0
  const order = [...byNumber.slice(from), ...byNumber.slice(0, from)]
  if (step.kind === 'last') return order.slice(-step.holes)
  if (step.kind === 'first-nine-last') return order.slice(0, 9).slice(-step.holes)
  return []
}

/** What a side makes of a hole: the best of its balls that have a score. */
function sideValue(competition: Competition, entrant: Entrant, at: number): number | null | 'no score' {
  const outcomes = entrant.cards
    .filter((one) => one.card?.outcome === undefined)
    .map((one) =>
      holeOutcome(competition, grossOn(one.card, at, one.tee.holes[at]!), one.tee.holes[at]!, one.strokes[at]!),
    )
  const values = outcomes.flatMap((one) => (typeof one === 'object' ? [one.value] : []))
  if (values.length > 0) return higherIsBetter(competition.format) ? Math.max(...values) : Math.min(...values)
  return outcomes.includes('not played') ? null : 'no score'
}

function counted(day: Day, competition: Competition, entrant: Entrant): Counted {
  const holes = entrant.cards[0]!.tee.holes
  const outcomes = entrant.cards.map((one) => one.card?.outcome)
  const read = holes.map((_, at) => sideValue(competition, entrant, at))
  const values = read.map((one) => (one === 'no score' ? null : one))
  const cards = entrant.cards.map((one) => one.card)
  let noPlace: string | null = null
  if (outcomes.includes('disqualified')) noPlace = 'disqualified'
  else if (outcomes.every((one) => one !== undefined)) noPlace = outcomes[0]!
  else if (cards.every((card) => !card || card.scores.every((score) => score === null))) noPlace = 'not-started'
  else if (read.includes('no score') || (day.closed && read.includes(null))) noPlace = 'no-return'
  if (noPlace !== null) return { entrant, values, total: null, noPlace }
  const sum = values.reduce<number>((total, value) => total + (value ?? 0), 0)
  const off = cards.reduce((total, card) => total + (card?.penaltyPoints ?? 0), 0)
  return { entrant, values, total: higherIsBetter(competition.format) ? sum - off : sum, noPlace }
}

/** The figure of an entrant on one step: the smaller is the better. */
function figure(competition: Competition, rule: TieRule, step: TieStep, one: Counted): Fraction {
  const card = one.entrant.cards[0]!
  if (step.kind === 'lower-handicap') return fraction(card.handicap)
  if (step.kind === 'higher-handicap') return fraction(-card.handicap)
  const count = card.tee.holes.length
  const window = windowOf(step, count, card.card?.startHole ?? 1, rule)
  const sign = higherIsBetter(competition.format) ? -1 : 1
  if (competition.format !== 'medal') {
    return fraction(sign * window.reduce((sum, at) => sum + (one.values[at] ?? 0), 0))
  }
  // Individual net stroke play: the gross of the window less the same share of the handicap as of the holes.
  const gross = window.reduce((sum, at) => sum + Number(grossOn(card.card, at, card.tee.holes[at]!)), 0)
  const share = times(fraction(card.handicap), fraction(window.length, count))
  return minus(fraction(gross), rule.fractions === 'kept' ? share : fraction(halfUp(share)))
}

function better(competition: Competition, rule: TieRule, a: Counted, b: Counted): number {
  const sign = higherIsBetter(competition.format) ? -1 : 1
  const byScore = sign * (a.total! - b.total!)
  if (byScore !== 0) return byScore
  for (const step of rule.steps) {
    const byStep = compare(figure(competition, rule, step, a), figure(competition, rule, step, b))
    if (byStep !== 0) return byStep
  }
  return 0
}

export function entrantsOf(day: Day, competition: Competition, size: number): Entrant[] {
  const wanted = (id: string) => competition.entrants === undefined || competition.entrants.includes(id)
  if (size === 1) {
    const playing = day.players.filter((player) => wanted(player.id))
    const everybody = playerCards(day, competition, playing)
    return everybody.map((one) => ({ id: one.player.id, cards: [one] }))
  }
  const sides = day.sides.filter((side) => wanted(side.id))
  const playing = day.players.filter((player) => sides.some((side) => side.players.includes(player.id)))
  const everybody = playerCards(day, competition, playing)
  return sides.map((side) => ({
    id: side.id,
    cards: side.players.map((id) => everybody.find((one) => one.player.id === id)!),
  }))
}

export function referenceLines(day: Day, competition: Competition, size: number): Line[] {
  const rule = competition.ties ?? { steps: PUBLISHED_STEPS, holesCount: 'by-number', fractions: 'kept' }
  const all = entrantsOf(day, competition, size).map((entrant) => counted(day, competition, entrant))
  const placed = all.filter((one) => one.total !== null)
  return all.map((one) => {
    const others = placed.filter((other) => other !== one)
    const isPlaced = one.total !== null
    return {
      entrant: one.entrant.id,
      place: isPlaced ? 1 + others.filter((other) => better(competition, rule, other, one) < 0).length : null,
      tied: isPlaced && others.some((other) => better(competition, rule, other, one) === 0),
      score: one.total,
      noPlace: one.noPlace,
      handicaps: Object.fromEntries(one.entrant.cards.map((card) => [card.player.id, card.handicap])),
      values: one.values,
    }
  })
}
