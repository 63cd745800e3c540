// How far a card has come: one closed set of states, and one set of words for the card, the board, the bar and the desk.
// "In" is said of nothing else than a card that was handed in or accepted.

import type { CardState } from '@/lib/facts/day-record'
import { ordinal } from './in-words'

export const CARD_PROGRESS = ['not-started', 'on-hole', 'finished', 'handed-in', 'accepted'] as const

export type CardProgress =
  | { readonly state: 'not-started' }
  /** The hole being played, by its flag: neither a count of holes nor a place in a list. */
  | { readonly state: 'on-hole'; readonly hole: number }
  | { readonly state: 'finished' }
  | { readonly state: 'handed-in' }
  | { readonly state: 'accepted' }

export interface CardOnItsWay {
  readonly state: CardState
  /** Flags in the order in which the group plays them. */
  readonly order: readonly number[]
  /** Flags that still have no score. */
  readonly missing: readonly number[]
  /** Flags that need no score: the match was over before them. */
  readonly notNeeded?: readonly number[]
  /** The committee has ruled on the card (no return, disqualified, withdrawn): nobody waits for it any more. */
  readonly isRuledOut?: boolean
}

export function cardProgress({
  state,
  order: whole,
  missing,
  notNeeded = [],
  isRuledOut = false,
}: CardOnItsWay): CardProgress {
  const order = whole.filter((hole) => !notNeeded.includes(hole))
  if (state === 'taken-in' || isRuledOut) return { state: 'accepted' }
  if (state === 'handed-in') return { state: 'handed-in' }
  const open = order.filter((hole) => missing.includes(hole))
  if (open.length === 0) return { state: 'finished' }
  if (open.length === order.length) return { state: 'not-started' }
  const last = order.findLastIndex((hole) => !missing.includes(hole))
  // Behind the last score there may be a gap on a card whose every later hole is written.
  return { state: 'on-hole', hole: order[last + 1] ?? open[0]! }
}

/** Several cards read as one, as a pair's: it has come as far as the one that has come least far. */
export function leastProgress(
  cards: readonly CardProgress[],
  /** The order in which they play; a shotgun group's begins anywhere. */
  order: readonly number[],
): CardProgress {
  const begun = cards.some((card) => card.state !== 'not-started')
  const holes = cards.flatMap((card) => (card.state === 'on-hole' ? [card.hole] : []))
  const waiting = cards.some((card) => card.state === 'not-started')
  if (!begun) return { state: 'not-started' }
  const first = waiting ? order[0] : order.find((hole) => holes.includes(hole))
  if (first !== undefined && (waiting || holes.length > 0)) return { state: 'on-hole', hole: first }
  const [least] = [...cards].sort((a, b) => CARD_PROGRESS.indexOf(a.state) - CARD_PROGRESS.indexOf(b.state))
  return least ?? { state: 'not-started' }
}

/** Handed in or accepted: the only meaning of "in". */
export function isIn(progress: CardProgress): boolean {
  return progress.state === 'handed-in' || progress.state === 'accepted'
}

/** Every hole has its score, whatever is still to be signed. */
export function isRound(progress: CardProgress): boolean {
  return progress.state === 'finished' || isIn(progress)
}

/** "not started", "on the 12th", "finished, not signed", "handed in", "accepted". */
export function progressInWords(progress: CardProgress): string {
  switch (progress.state) {
    case 'not-started':
      return 'not started'
    case 'on-hole':
      return `on the ${ordinal(progress.hole)}`
    case 'finished':
      return 'finished, not signed'
    case 'handed-in':
      return 'handed in'
    case 'accepted':
      return 'accepted'
  }
}
