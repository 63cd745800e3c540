// Ties by matching scorecards, Committee Procedures 5A(6), and by whatever else a society puts into its list of steps.
import type { Competition, TieRule, TieStep } from '@/lib/rules/day'
import { compare, type Fraction, fraction, halfUp, minus, times } from './exact'
import { formOf, isGame } from './forms'
import { counts, higherIsBetter, lotOf } from './holes'
import type { Counted, Whole } from './standings'

const PUBLISHED: TieRule = {
  steps: [
    { kind: 'last', holes: 9 },
    { kind: 'last', holes: 6 },
    { kind: 'last', holes: 3 },
    { kind: 'last', holes: 1 },
    { kind: 'first-nine-last', holes: 6 },
    { kind: 'first-nine-last', holes: 3 },
    { kind: 'first-nine-last', holes: 1 },
  ],
  holesCount: 'by-number',
  fractions: 'kept',
}

/** Which of the holes that count a step looks at; none when it looks at nothing or at the whole round. */
function windowOf(step: TieStep, numbers: readonly number[], startHole: number | undefined, rule: TieRule): number[] {
  const byNumber = [...numbers.keys()]
  const count = numbers.length
  if (step.kind === 'holes') {
    const window = byNumber.filter((at) => numbers[at]! >= step.from && numbers[at]! <= step.to)
    return window.length < count ? window : []
  }
  const start =
    startHole === undefined
      ? 0
      : Math.max(
          0,
          numbers.findIndex((hole) => hole >= startHole),
        )
  const from = rule.holesCount === 'as-played' ? start : 0
  const order = [...byNumber.slice(from), ...byNumber.slice(0, from)]
  if (step.kind === 'last' && step.holes < count) return order.slice(-step.holes)
  if (step.kind === 'first-nine-last' && count > 9 && step.holes <= 9) return order.slice(0, 9).slice(-step.holes)
  return []
}

/** The figure of an entrant on one step: the smaller is the better. */
function figure(competition: Competition, rule: TieRule, step: TieStep, one: Counted): Fraction {
  const { entrant, values } = one
  const own = entrant.balls.filter((ball) => !ball.standIn)
  const handicap = own.reduce((sum, ball) => sum + ball.handicap, 0)
  const has = own.reduce((sum, ball) => sum + ball.has, 0)
  switch (step.kind) {
    case 'lower-handicap':
      return fraction(has)
    case 'higher-handicap':
      return fraction(-has)
    case 'lot':
      return fraction(lotOf(entrant.id, step.seed))
    case 'play-off': {
      const at = step.order.indexOf(entrant.id)
      return fraction(at < 0 ? step.order.length : at)
    }
  }
  const { holes } = own[0]!.tee
  const counting = [...holes.keys()].filter((at) => counts(competition, holes[at]!.hole))
  const numbers = counting.map((at) => holes[at]!.hole)
  const window = windowOf(step, numbers, own[0]!.card?.startHole, rule).map((at) => counting[at]!)
  const net = window.reduce((sum, at) => sum + (values[at] ?? 0), 0)
  const form = formOf(competition.format)
  // Net strokes on one ball: the gross of the window less the same share of the handicap as of the holes.
  const shares = (form.kind === 'strokes' || form.kind === 'gross') && !isGame(competition.format)
  if (!shares || (form.size > 1 && !form.oneBall)) return fraction(higherIsBetter(competition.format) ? -net : net)
  const gross = window.reduce((sum, at) => sum + own[0]!.strokes[at]!, net)
  const share = times(fraction(handicap), fraction(window.length, holes.length))
  return minus(fraction(gross), rule.fractions === 'kept' ? share : fraction(halfUp(share)))
}

/** Below zero when a is ahead, zero when nothing parts the two. The last of several rounds is looked at first. */
export function aheadOnTies(competition: Competition, a: Whole, b: Whole): number {
  const rule = competition.ties ?? PUBLISHED
  const isShared = isGame(competition.format)
  const windows = ['last', 'first-nine-last', 'holes']
  const steps = rule.steps.filter(({ kind }) => !isShared || !windows.includes(kind))
  if (steps.length === 0) return 0
  if (a.rounds.length > 1) {
    const byLast = higherIsBetter(competition.format) ? b.last.total - a.last.total : a.last.total - b.last.total
    if (byLast !== 0) return byLast
  }
  for (const step of steps) {
    const byStep = compare(figure(competition, rule, step, a.last), figure(competition, rule, step, b.last))
    if (byStep !== 0) return byStep
  }
  return 0
}
