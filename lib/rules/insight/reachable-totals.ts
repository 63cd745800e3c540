// What an entrant can still make of the open holes: the values each hole can have, and the totals they add up to.
// Arithmetic of the format; no source. Totals may have gaps: a table of points that jumps, a score that counts twice.

import { type HoleCount, worthOfNone } from '../count/count-on-hole'
import type { HoleScore } from '../day'
import { ballValueOf } from '../formats/format'
import type { Ball } from '../score/balls'
import type { TermsInForce } from '../score/terms-in-force'
import { isOpen, scoresThatDiffer, valueAt } from './possible-cards'

/** Whole numbers in ascending order. */
export type Values = readonly number[]

export interface Totals {
  readonly low: number
  readonly high: number
  readonly has: (total: number) => boolean
}

/** No score that counts: behind every number where the fewest strokes are best. */
const NONE = Number.POSITIVE_INFINITY

/**
 * Values an open hole can have up to `most`: strokes have no end. That a hole ends without a score is left out, since no
 * total comes of it.
 */
export function holeValues(
  balls: readonly Ball[],
  i: number,
  count: HoleCount,
  terms: TermsInForce,
  most: number,
): Values {
  const high = terms.format.better === 'high'
  const none = worthOfNone(ballValueOf(terms.format.value))
  const worth = (taken: Values) =>
    count.take.reduce((sum, times, k) => sum + (taken[k] ?? (none === 'x' ? NONE : none)) * times, 0)
  const kept = (taken: Values) => [...taken].sort((a, b) => (high ? b - a : a - b)).slice(0, count.take.length)
  if (count.take.every((times) => times === 1) && goesByOnes(terms)) {
    const ends = (['x', 1] as const).map((score) => worth(kept(balls.map((ball) => at(ball, i, score, terms)))))
    const [from, to] = [Math.min(...ends), Math.min(Math.max(...ends), most)]
    return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step)
  }
  // What counts of the balls looked at so far: the best of them in order, as many as are taken.
  let states = new Map<string, Values>([['', []]])
  const mostOfBall = Math.max(most, 0) + 3 * count.weight
  for (const ball of balls) {
    const next = new Map<string, Values>()
    for (const value of ballValues(ball, i, terms, mostOfBall)) {
      for (const taken of states.values()) {
        const now = kept([...taken, value])
        next.set(now.join(' '), now)
      }
    }
    states = next
  }
  const sums = new Set([...states.values()].map(worth).filter((sum) => sum !== NONE && sum <= most))
  return [...sums].sort((a, b) => a - b)
}

/**
 * Does one stroke more never change a ball's value by more than one? Then, going from the best card to the worst a stroke
 * at a time, the sum of the scores that count leaves no number out.
 */
function goesByOnes({ format }: TermsInForce): boolean {
  const on = ballValueOf(format.value)
  if (on.kind !== 'points') return true
  const { points, beyond, noScore } = on.table
  const small = (drop: number) => drop === 0 || drop === 1
  return small(beyond) && points.every((one, k) => small(one - (points[k + 1] ?? noScore)))
}

function at(ball: Ball, i: number, score: number | 'x', terms: TermsInForce): number {
  // A card that the side was filled up with is nobody's to play.
  const open = !ball.filled && isOpen(ball.card, i)
  return asNumber(open ? valueAt(ball, i, score, terms) : ball.values[i]!)
}

function asNumber(value: HoleScore): number {
  return typeof value === 'number' ? value : NONE
}

function ballValues(ball: Ball, i: number, terms: TermsInForce, most: number): ReadonlySet<number> {
  const scores = scoresThatDiffer(ball, i, terms, most + ball.strokes[i]!)
  return new Set([...scores, 'x' as const].map((score) => at(ball, i, score, terms)))
}

/** Every total of one value from each hole; without gaps as long as no hole has one. */
export function totalsOf(holes: readonly Values[]): Totals {
  const low = holes.reduce((sum, values) => sum + values[0]!, 0)
  const high = holes.reduce((sum, values) => sum + values[values.length - 1]!, 0)
  if (holes.every(withoutGaps)) return { low, high, has: (total) => total >= low && total <= high }
  let reached: ReadonlySet<number> = new Set([0])
  for (const values of holes) {
    const next = new Set<number>()
    for (const sum of reached) for (const value of values) next.add(sum + value)
    reached = next
  }
  return { low, high, has: (total) => reached.has(total) }
}

function withoutGaps(values: Values): boolean {
  return values[values.length - 1]! - values[0]! === values.length - 1
}
