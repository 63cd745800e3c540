// What the page of a match is given: finished, serialisable, nothing left to count.

import type { EntryId } from '@/lib/facts/ids'
import type { HoleLine, MatchResult, WorkingStep } from '@/lib/rules/standings'
import type { DayHead } from './views'

export interface MatchSide {
  readonly entryId: EntryId
  readonly name: string
  /** "Trevennor", "Trevennor and Coldbrook". */
  readonly short: string
  readonly tee: string
  readonly strokes: number
  /** Of a side of several balls the one that counts on each hole, with the players who count in `by`. */
  readonly holes: readonly HoleLine[]
  /** Each ball of a side that plays several; `entryId` is then the first of them. */
  readonly partners?: readonly MatchSide[]
}

/** The competition a match is played in. */
export interface MatchOf {
  /** From 1, as `?c=` counts. */
  readonly number: number
  readonly name: string
  readonly formatName: string
  /** Limits, order of the difference and the like, a sentence each. */
  readonly moreTerms: readonly string[]
}

/** A match of a competition, any two cards as a match, or any four as a four-ball. */
export interface MatchSheet extends DayHead {
  readonly a: MatchSide
  readonly b: MatchSide
  readonly match: MatchResult
  /** Null for cards put together after the event. */
  readonly of: MatchOf | null
  readonly allowance: string
  readonly allowanceFrom: string
  /** "Trevennor beat Coldbrook 2&1." */
  readonly sentence: string
  /** How many strokes and to whom, with the clauses. */
  readonly working: readonly WorkingStep[]
  /** Course and playing handicap of each ball: what the strokes are taken from. */
  readonly handicaps: readonly WorkingStep[]
  /** How it came out, part by part where it has parts. */
  readonly outcome: readonly WorkingStep[]
  /** One hole opened; null when none was asked for. */
  readonly opened: { readonly hole: number; readonly steps: readonly WorkingStep[] } | null
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
}
