// Level on the score with a finished card: to whom would the tie rule give it? Every way of spreading a total over the
// open holes is looked at. Committee Procedures 5A(6); the spreading is arithmetic, no source.

import type { TieStep } from '../day'
import type { TermsInForce } from '../score/terms-in-force'
import { type Contender, orderOnStep, orderOnWindow, type TieTerms } from '../ties/break-ties'
import { windowOf } from '../ties/windows'
import type { Values } from './reachable-totals'

/** 'depends': on which of the open holes the total is made. */
export type Countback = 'mine' | 'theirs' | 'level' | 'depends'

export interface OpenHole {
  /** Index among the holes that count. */
  readonly at: number
  readonly values: Values
  /** Added to the value where the tie rule looks at gross scores. */
  readonly strokes: number
}

export interface LevelCards {
  /** With any scores on the open holes: only the others are read. */
  readonly mine: Contender
  readonly theirs: Contender
  readonly open: readonly OpenHole[]
  /** What the open holes come to. */
  readonly total: number
}

/** A window, and what my part of it outside the open holes comes to. */
interface Window {
  readonly has: (at: number) => boolean
  readonly length: number
  readonly fixed: number
  readonly theirs: number
}

export function countbackOf(cards: LevelCards, terms: TermsInForce): Countback {
  const tie: TieTerms = { rule: terms.ties, better: terms.format.better, unit: terms.format.unit }
  const ways = new Set<'mine' | 'theirs' | 'level'>()
  const level: Window[] = []
  let stillLevel = true
  for (const step of terms.ties.steps) {
    const window = windowOn(step, cards, tie)
    const known = window === null ? signOfStep(step, cards, tie) : signWithoutLooking(window, cards, tie)
    const signs = known === null ? signsOnWindow(window!, level, cards, tie) : new Set([known])
    if (signs.has(1)) ways.add('mine')
    if (signs.has(-1)) ways.add('theirs')
    stillLevel = signs.has(0)
    if (!stillLevel || ways.size > 1) break
    if (known === null) level.push(window!)
  }
  if (stillLevel) ways.add('level')
  return ways.size === 1 ? [...ways][0]! : 'depends'
}

function signOfStep(step: TieStep, { mine, theirs }: LevelCards, tie: TieTerms): number {
  const a = orderOnStep(mine, step, tie)
  const b = orderOnStep(theirs, step, tie)
  return a === null || b === null ? 0 : Math.sign(a - b)
}

/** Null where the step looks at no holes, or does not apply to a round of this length. */
function windowOn(step: TieStep, { mine, theirs, open }: LevelCards, tie: TieTerms): Window | null {
  if (step.kind !== 'last' && step.kind !== 'first-nine-last' && step.kind !== 'holes') return null
  const holes = windowOf(step, mine.values.length, mine.startsAt, tie.rule.holesCount)
  const order = orderOnStep(theirs, step, tie)
  if (holes === null || order === null) return null
  const inWindow = new Set(holes)
  const isOpenHole = new Set(open.map((one) => one.at))
  const figures = mine.gross ?? mine.values
  const fixed = holes.reduce((sum, i) => sum + (isOpenHole.has(i) ? 0 : figures[i]!), 0)
  return { has: (at) => inWindow.has(at), length: holes.length, fixed, theirs: order }
}

/** All the open holes lie inside the window, or none does: the total alone says what it comes to. */
function signWithoutLooking(window: Window, { mine, open, total }: LevelCards, tie: TieTerms): number | null {
  const inside = open.filter((hole) => window.has(hole.at))
  if (inside.length > 0 && inside.length < open.length) return null
  const strokes = mine.gross === null ? 0 : inside.reduce((sum, hole) => sum + hole.strokes, 0)
  const made = inside.length === 0 ? 0 : total + strokes
  return Math.sign(orderOnWindow(mine, window.fixed + made, window.length, tie) - window.theirs)
}

/**
 * The first window that the open holes straddle, and no hole with a gap in its values: what is made inside is any number
 * between the two ends that leave the rest of the total to the other holes. Otherwise every way is looked at.
 */
function signsOnWindow(window: Window, level: readonly Window[], cards: LevelCards, tie: TieTerms): Set<number> {
  const { mine, open, total } = cards
  const gaps = open.some(({ values }) => values[values.length - 1]! - values[0]! !== values.length - 1)
  if (level.length > 0 || gaps) return signsOn(window, level, cards, tie)
  const inside = open.filter((hole) => window.has(hole.at))
  const outside = open.filter((hole) => !window.has(hole.at))
  const low = (holes: readonly OpenHole[]) => holes.reduce((sum, { values }) => sum + values[0]!, 0)
  const high = (holes: readonly OpenHole[]) => holes.reduce((sum, { values }) => sum + values[values.length - 1]!, 0)
  const strokes = mine.gross === null ? 0 : inside.reduce((sum, hole) => sum + hole.strokes, 0)
  const signs = new Set<number>()
  const last = Math.min(high(inside), total - low(outside))
  for (let made = Math.max(low(inside), total - high(outside)); made <= last; made++) {
    const order = orderOnWindow(mine, window.fixed + made + strokes, window.length, tie)
    signs.add(Math.sign(order - window.theirs))
  }
  return signs
}

/**
 * Who is ahead on this window, over all ways that are level on the windows before it and come to the total. The state is
 * the sum so far on each of those windows, this one, and in all; a state that cannot come out right any more is dropped.
 */
function signsOn(window: Window, level: readonly Window[], cards: LevelCards, tie: TieTerms): Set<number> {
  const { mine, open, total } = cards
  const worth = (hole: OpenHole, value: number) => value + (mine.gross === null ? 0 : hole.strokes)
  const windows = [...level, window]
  const orderOf = (one: Window, sum: number) => orderOnWindow(mine, one.fixed + sum, one.length, tie)
  const holes = [...open].sort((a, b) => b.at - a.at)
  const ends = restOf(holes, windows, worth)
  const signs = new Set<number>()
  let states = new Map<string, readonly number[]>([['', [0, ...windows.map(() => 0)]]])
  holes.forEach((hole, h) => {
    const next = new Map<string, readonly number[]>()
    for (const sums of states.values()) {
      for (const value of hole.values) {
        const now = sums.map((sum, w) =>
          w === 0 ? sum + value : windows[w - 1]!.has(hole.at) ? sum + worth(hole, value) : sum,
        )
        const rest = ends[h + 1]!
        if (now[0]! + rest[0]!.low > total || now[0]! + rest[0]!.high < total) continue
        const lost = level.some((one, w) => {
          const a = orderOf(one, now[w + 1]! + rest[w + 1]!.low) - one.theirs
          const b = orderOf(one, now[w + 1]! + rest[w + 1]!.high) - one.theirs
          return (a > 0 && b > 0) || (a < 0 && b < 0)
        })
        if (!lost) next.set(now.join(' '), now)
      }
    }
    states = next
  })
  for (const sums of states.values()) signs.add(Math.sign(orderOf(window, sums[windows.length]!) - window.theirs))
  return signs
}

interface Rest {
  readonly low: number
  readonly high: number
}

/** Lowest and highest sums still to come after each hole: in all, then on each window. */
function restOf(
  holes: readonly OpenHole[],
  windows: readonly Window[],
  worth: (hole: OpenHole, value: number) => number,
): readonly (readonly Rest[])[] {
  const ends: Rest[][] = [[{ low: 0, high: 0 }, ...windows.map(() => ({ low: 0, high: 0 }))]]
  for (let h = holes.length - 1; h >= 0; h--) {
    const hole = holes[h]!
    const [low, high] = [hole.values[0]!, hole.values[hole.values.length - 1]!]
    const after = ends[0]!
    ends.unshift(
      after.map((rest, w) => {
        if (w === 0) return { low: rest.low + low, high: rest.high + high }
        if (!windows[w - 1]!.has(hole.at)) return rest
        return { low: rest.low + worth(hole, low), high: rest.high + worth(hole, high) }
      }),
    )
  }
  return ends
}
