// Totals, ties and places the slow way: every pair of entrants is compared, and a place is one more than the number of
// entrants that are better. Committee Procedures 5A(6) for matching scorecards.
import type { Competition, Day, HoleScore, TieRule, TieStep } from '@/lib/rules/day'
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
  /** Nothing left to play. */
  readonly complete: boolean
  readonly noPlace: string | null
}

export function windowOf(step: TieStep, count: number, startHole: number, rule: TieRule): number[] {
  const byNumber = Array.from({ length: count }, (_, at) => at)
  const from = rule.holesCount === 'as-played' ? startHole - 1 : 0
  const order = [...byNumber.slice(from), ...byNumber.slice(0, from)]
  // The whole round is level already, and a round of nine has no first nine apart.
  if (step.kind === 'last' && step.holes < count) return order.slice(-step.holes)
  if (step.kind === 'first-nine-last' && count > 9) return order.slice(0, 9).slice(-step.holes)
  return []
}

/** A hole not played counts as one without a score once the day is closed or the player is out of it. */
function grossNow(day: Day, one: PlayerCard, at: number): HoleScore {
  const gross = grossOn(one.card, at, one.tee.holes[at]!)
  return gross === null && (day.closed || one.card?.outcome !== undefined) ? 'x' : gross
}

/** What a side makes of a hole: the best of its balls; a disqualified partner's ball has no score anywhere. */
function sideValue(day: Day, competition: Competition, entrant: Entrant, at: number): number | null | 'no score' {
  const balls = entrant.cards
  const scores = balls.map((one) =>
    balls.length > 1 && one.card?.outcome === 'disqualified' ? 'x' : grossNow(day, one, at),
  )
  if (scores.includes(null) && !scores.some((score) => typeof score === 'number')) return null
  const values = balls
    .map((one, ball) => holeOutcome(competition, scores[ball]!, one.tee.holes[at]!, one.strokes[at]!))
    .flatMap((outcome) => (typeof outcome === 'object' ? [outcome.value] : []))
  if (values.length === 0) return 'no score'
  return higherIsBetter(competition.format) ? Math.max(...values) : Math.min(...values)
}

const WORST_FIRST = ['disqualified', 'no-return', 'withdrawn'] as const

function counted(day: Day, competition: Competition, entrant: Entrant): Counted {
  const cards = entrant.cards.map((one) => one.card)
  const read = entrant.cards[0]!.tee.holes.map((_, at) => sideValue(day, competition, entrant, at))
  const values = read.map((one) => (one === 'no score' ? null : one))
  const outcomes = cards.map((card) => card?.outcome)
  let noPlace: string | null = null
  if (outcomes.every((one) => one !== undefined)) noPlace = WORST_FIRST.find((one) => outcomes.includes(one))!
  else if (cards.every((card) => !card || card.scores.every((score) => score === null))) noPlace = 'not-started'
  else if (read.includes('no score')) noPlace = 'no-return'
  if (noPlace !== null) return { entrant, values, total: null, complete: false, noPlace }
  const sum = values.reduce<number>((total, value) => total + (value ?? 0), 0)
  const off = cards.reduce((total, card) => total + (card?.penaltyPoints ?? 0), 0)
  const total = higherIsBetter(competition.format) ? sum - off : sum
  return { entrant, values, total, complete: !read.includes(null), noPlace }
}

/** The figure of an entrant on one step: the smaller is the better. */
function figure(competition: Competition, rule: TieRule, step: TieStep, one: Counted): Fraction {
  const card = one.entrant.cards[0]!
  const handicaps = one.entrant.cards.reduce((sum, each) => sum + each.handicap, 0)
  if (step.kind === 'lower-handicap') return fraction(handicaps)
  if (step.kind === 'higher-handicap') return fraction(-handicaps)
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

function better(competition: Competition, rule: TieRule, a: Counted, b: Counted, all: readonly Counted[]): number {
  const sign = higherIsBetter(competition.format) ? -1 : 1
  const byScore = sign * (a.total! - b.total!)
  if (byScore !== 0) return byScore
  // A tie is left alone until everybody in it has finished.
  if (all.some((one) => one.total === a.total && !one.complete)) return 0
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
      place: isPlaced ? 1 + others.filter((other) => better(competition, rule, other, one, placed) < 0).length : null,
      tied: isPlaced && others.some((other) => better(competition, rule, other, one, placed) === 0),
      score: one.total,
      noPlace: one.noPlace,
      handicaps: Object.fromEntries(one.entrant.cards.map((card) => [card.player.id, card.handicap])),
      values: one.values,
    }
  })
}
