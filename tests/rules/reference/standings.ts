// Totals, ties and places the slow way: every pair of entrants is compared, and a place is one more than the number of
// entrants that are better. Committee Procedures 5A(6) for matching scorecards.
import type { Competition, Day, HoleScore, TieRule, TieStep } from '@/lib/rules/day'
import {
  grossOn,
  higherIsBetter,
  holeValue,
  type Line,
  type PlayerCard,
  parOf,
  playerCards,
  sideCard,
  teeOf,
  worthOfNone,
} from './count'
import { compare, type Fraction, fraction, halfUp, minus, times } from './exact'
import { formOf, isGame } from './forms'
import { gameValues, offTheLowest } from './games'

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
  const byNumber = [...Array(count).keys()]
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

/** What a side makes of a hole: the best of its scores by weight; a disqualified partner has no score anywhere. */
function sideValue(day: Day, competition: Competition, entrant: Entrant, at: number): number | null | 'no score' {
  const form = formOf(competition.format)
  const balls = entrant.cards
  const scores = balls.map((one) =>
    balls.length > 1 && one.card?.outcome === 'disqualified' ? 'x' : grossNow(day, one, at),
  )
  const worth = (ball: number) => {
    const { tee, strokes } = balls[ball]!
    const score = scores[ball]!
    return score === null ? null : holeValue(competition, score, tee.holes[at]!, strokes[at]!)
  }
  const hole = balls[0]!.tee.holes[at]!.hole
  const named = form.named ? at % balls.length : null
  const others = balls.map((_, ball) => ball).filter((ball) => ball !== named)
  const holed = others.filter((ball) => typeof scores[ball] === 'number').length
  const weights = form.weights(hole)
  const waiting = others.some((ball) => scores[ball] === null) && holed < weights.length
  if (waiting || (named !== null && scores[named] === null)) return null
  const sign = higherIsBetter(competition.format) ? -1 : 1
  const bestFirst = others
    .map(worth)
    .filter((value) => value !== null)
    .sort((x, y) => sign * (x - y))
  const counting = weights.map((weight, place) => {
    const value = bestFirst[place] ?? worthOfNone(competition.format)
    return value === null ? null : weight * value
  })
  if (named !== null) counting.push((form.named ?? 0) * (worth(named) ?? 0))
  if (counting.includes(null)) return 'no score'
  const doubled = competition.format === 'double-point-stableford' && competition.namedHoles?.includes(hole)
  return counting.reduce<number>((sum, value) => sum + (value ?? 0), 0) * (doubled ? 2 : 1)
}

const WORST_FIRST = ['disqualified', 'no-return', 'withdrawn'] as const

function counted(competition: Competition, entrant: Entrant, read: readonly (number | null | 'no score')[]): Counted {
  const cards = entrant.cards.map((one) => one.card)
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

/** Net strokes on one ball: a share of the handicap comes off each window. Otherwise strokes stay where they fell. */
function takesShares(format: string): boolean {
  const form = formOf(format)
  return form.kind === 'strokes' && !isGame(format) && (form.size === 1 || form.oneBall)
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
  if (!takesShares(competition.format)) {
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

export function entrantsOf(day: Day, competition: Competition): Entrant[] {
  const { size, oneBall } = formOf(competition.format)
  const wanted = (id: string) => competition.entrants === undefined || competition.entrants.includes(id)
  const player = (id: string) => day.players.find((one) => one.id === id)!
  if (size === 1) {
    const cards = playerCards(
      day,
      competition,
      day.players.filter(({ id }) => wanted(id)),
    )
    return cards.map((one) => ({ id: one.id, cards: [one] }))
  }
  const sides = day.sides.filter(({ id }) => wanted(id))
  if (oneBall) {
    const lowestPar = Math.min(...sides.map((side) => parOf(teeOf(day, player(side.players[0]!)))))
    return sides.map(({ id }) => ({ id, cards: [sideCard(day, competition, id, lowestPar)] }))
  }
  const everybody = playerCards(
    day,
    competition,
    sides.flatMap((side) => side.players.map(player)),
  )
  return sides.map(({ id, players }) => ({
    id,
    cards: players.map((one) => everybody.find((card) => card.id === one)!),
  }))
}

function readOf(day: Day, competition: Competition): Counted[] {
  const entrants = entrantsOf(day, competition)
  if (!isGame(competition.format)) {
    return entrants.map((entrant) => {
      const holes = entrant.cards[0]!.tee.holes
      return counted(
        competition,
        entrant,
        holes.map((_, at) => sideValue(day, competition, entrant, at)),
      )
    })
  }
  const cards = offTheLowest(entrants.map((entrant) => entrant.cards[0]!))
  const taken = gameValues(day, competition, cards)
  return cards.map((card, at) => counted(competition, { id: card.id, cards: [card] }, taken[at]!))
}

export function referenceLines(day: Day, competition: Competition): Line[] {
  const rule = competition.ties ?? { steps: PUBLISHED_STEPS, holesCount: 'by-number', fractions: 'kept' }
  const all = readOf(day, competition)
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
      handicaps: Object.fromEntries(one.entrant.cards.map((card) => [card.id, card.handicap])),
      values: one.values,
    }
  })
}
