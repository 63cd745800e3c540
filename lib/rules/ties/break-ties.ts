// Committee Procedures 5A(6): entrants level on their score are put in order step by step. A tie of several is settled
// from the top: whoever a step puts ahead is placed, and those still level go on to the next step.

import type { TieRule, TieStep } from '../day'
import { fraction, halfUp, modulo, shortDecimal, wholeHandicap } from '../exact/fraction'
import type { CountbackFigure, TieBroken } from '../standings'
import { stepInWords, type WindowStep, windowOf } from './windows'

/** What the tie rule needs to know of an entrant. */
export interface Contender {
  readonly entrant: string
  /** Value of each hole of the round that decides (the last one). */
  readonly values: readonly number[]
  /** In net stroke play on one ball, gross scores of the same holes: shares of the handicap are then taken off. */
  readonly gross: readonly number[] | null
  readonly handicap: number
  /** The handicap the entrant has, which the steps "lower" and "higher handicap" look at; `handicap` is for the shares. */
  readonly has: number
  /** Holes that handicap is for: more than the values where not every hole counts. */
  readonly handicapHoles: number
  /** Numbers of those holes on the card; one after the other from the first when absent. */
  readonly numbers?: readonly number[]
  /** Index of the hole that was played first. */
  readonly startsAt: number
  /** Score of the last round of several, compared before any window. */
  readonly lastRound: number | null
}

/** A step's figure for one entrant: `order` compares, `shown` goes on the sheet. */
interface Figure {
  readonly order: number
  readonly shown: string
}

export interface TieTerms {
  readonly rule: TieRule
  readonly better: 'high' | 'low'
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
}

type Step = TieStep | { readonly kind: 'last-round' }

function stepsOf(terms: TieTerms, contenders: readonly Contender[]): readonly Step[] {
  const several = contenders.some((one) => one.lastRound !== null)
  return several ? [{ kind: 'last-round' }, ...terms.rule.steps] : terms.rule.steps
}

/** Level entrants in their final order; those in the same cluster stay level. */
export function inOrder(contenders: readonly Contender[], terms: TieTerms): Contender[][] {
  const byId = [...contenders].sort((a, b) => (a.entrant < b.entrant ? -1 : a.entrant > b.entrant ? 1 : 0))
  return split(byId, stepsOf(terms, contenders), 0, terms)
}

function split(level: Contender[], steps: readonly Step[], at: number, terms: TieTerms): Contender[][] {
  if (level.length === 1 || at >= steps.length) return [level]
  const figures = new Map<Contender, number>()
  for (const one of level) figures.set(one, figureOf(one, steps[at]!, terms)?.order ?? 0)
  const sorted = [...level].sort((a, b) => figures.get(b)! - figures.get(a)!)
  const clusters: Contender[][] = []
  for (const one of sorted) {
    const last = clusters[clusters.length - 1]
    if (last !== undefined && figures.get(last[0]!) === figures.get(one)) last.push(one)
    else clusters.push([one])
  }
  return clusters.flatMap((cluster) => split(cluster, steps, at + 1, terms))
}

/** How `mine` came to stand above `theirs`: every step tried up to the one that decided. */
export function howBroken(
  mine: Contender,
  theirs: Contender,
  level: readonly string[],
  terms: TieTerms,
): TieBroken | undefined {
  const figures: { window: string; mine: string; theirs: string }[] = []
  for (const step of stepsOf(terms, [mine, theirs])) {
    const a = figureOf(mine, step, terms)
    const b = figureOf(theirs, step, terms)
    if (a === null || b === null) continue
    const window = step.kind === 'last-round' ? 'last round' : stepInWords(step)
    figures.push({ window, mine: a.shown, theirs: b.shown })
    if (a.order !== b.order) return { level, step: window, figures, against: theirs.entrant }
  }
  return undefined
}

/** Higher `order` is ahead. Null where the step does not apply to a round of this length. */
function figureOf(one: Contender, step: Step, terms: TieTerms): Figure | null {
  switch (step.kind) {
    case 'last-round': {
      const score = one.lastRound ?? 0
      return { order: terms.better === 'high' ? score : -score, shown: signed(score, terms.unit) }
    }
    case 'last':
    case 'first-nine-last':
    case 'holes':
      return windowFigure(one, step, terms)
    case 'lower-handicap':
      return { order: -one.has, shown: wholeHandicap(one.has) }
    case 'higher-handicap':
      return { order: one.has, shown: wholeHandicap(one.has) }
    case 'lot': {
      const lot = lotOf(one.entrant, step.seed)
      return { order: -lot, shown: String(lot) }
    }
    case 'play-off': {
      if (step.order.length === 0) return null
      const at = step.order.indexOf(one.entrant)
      return at < 0 ? { order: -step.order.length, shown: 'not in it' } : { order: -at, shown: String(at + 1) }
    }
  }
}

/** The first window of the rule that applies to this entrant, and its figure; null for a rule without windows. */
export function firstWindow(one: Contender, terms: TieTerms): CountbackFigure | null {
  for (const step of terms.rule.steps) {
    if (step.kind !== 'last' && step.kind !== 'first-nine-last' && step.kind !== 'holes') continue
    const found = windowFigure(one, step, terms)
    if (found === null) continue
    const asPlayed = terms.rule.holesCount === 'as-played' && step.kind !== 'holes'
    return { window: `${stepInWords(step)}${asPlayed ? ' played' : ''}`, figure: found.shown }
  }
  return null
}

function windowFigure(one: Contender, step: WindowStep, terms: TieTerms): Figure | null {
  const window = windowOf(step, one.values.length, one.startsAt, terms.rule.holesCount, one.numbers)
  if (window === null) return null
  let total = 0
  for (const i of window) total += (one.gross ?? one.values)[i]!
  const order = orderOnWindow(one, total, window.length, terms)
  if (one.gross !== null) return { order, shown: shortDecimal(fraction(-order, one.handicapHoles), 2) }
  return { order, shown: signed(total, terms.unit) }
}

/** Higher is ahead: `total` is the sum of the values on the window, or of the gross scores where shares are taken off. */
export function orderOnWindow(
  one: Pick<Contender, 'gross' | 'handicap' | 'handicapHoles'>,
  total: number,
  length: number,
  { rule, better }: Pick<TieTerms, 'rule' | 'better'>,
): number {
  if (one.gross === null) return better === 'high' ? total : -total
  // The share is handicap × window ÷ holes: as a fraction, everything is compared in parts of a round.
  const whole = one.handicapHoles
  const parts =
    rule.fractions === 'kept'
      ? total * whole - one.handicap * length
      : (total - halfUp(one.handicap * length, whole)) * whole
  return -parts
}

/** What a step makes of an entrant: higher is ahead, null where it does not apply. */
export function orderOnStep(one: Contender, step: TieStep, terms: TieTerms): number | null {
  return figureOf(one, step, terms)?.order ?? null
}

/** A figure as the sheet writes it. */
export function signed(n: number, unit: TieTerms['unit']): string {
  if (n < 0) return `−${-n}`
  return unit === 'holes' && n > 0 ? `+${n}` : String(n)
}

/** A lot that anybody can draw again from the recorded seed: the lowest number is ahead. */
export function lotOf(entrant: string, seed: number): number {
  let hash = modulo(seed, 4294967291) ^ 2166136261
  for (let i = 0; i < entrant.length; i++) hash = Math.imul(hash ^ entrant.charCodeAt(i), 16777619)
  hash = Math.imul(hash ^ (hash >>> 15), 2246822507)
  hash = Math.imul(hash ^ (hash >>> 13), 3266489909)
  return (hash ^ (hash >>> 16)) >>> 0
}
