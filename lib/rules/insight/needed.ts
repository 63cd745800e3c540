// What somebody needs on the open holes to be level with, or ahead of, another card as it stands. Arithmetic of the
// format and of the day's tie rule (Committee Procedures 5A(6)); no source.
//
// A card that is full is caught at its score, and the tie rule then says who is ahead. One that is still out has no
// final score and no countback yet: it is caught as it stands now, on strokes against level par.

import type { HoleCount } from '../count/count-on-hole'
import type { Ball } from '../score/balls'
import type { Entry } from '../score/entry-lines'
import { contenderOf, rankKey } from '../score/rank'
import type { TermsInForce } from '../score/terms-in-force'
import { type Countback, countbackOf, type OpenHole } from './countback-outcomes'
import { holeValues, totalsOf, type Values } from './reachable-totals'

export interface Needed {
  /** Entrant to be caught. */
  readonly against: string
  /** Every hole of theirs is in. */
  readonly full: boolean
  /** Total over the open holes that makes the scores level; null when it cannot be made. */
  readonly ties: number | null
  /** The least total over the open holes that is ahead on the score alone (on strokes, the most); null when there is none. */
  readonly wins: number | null
  /** Ahead on the score whatever comes on the open holes. */
  readonly already: boolean
  /** Who is ahead when the scores are level; null where they cannot be, or their card is not full. */
  readonly countback: Countback | null
}

/** An entrant who is still out, with what it takes to look ahead. */
export interface StillOut {
  /** With the best scores on the open holes, the day over. */
  readonly best: Entry
  readonly worst: Entry
  readonly balls: readonly Ball[]
  readonly counts: readonly HoleCount[]
  readonly times: readonly number[]
  /** Indexes of the open holes that count. */
  readonly open: readonly number[]
}

export interface ToCatch {
  /** As it stands now. */
  readonly now: Entry
  /** The day over as it stands: what it is for good, when the card is full. */
  readonly final: Entry
  readonly full: boolean
}

export function neededTo(me: StillOut, them: ToCatch, terms: TermsInForce): Needed {
  const high = terms.format.better === 'high'
  const lines = me.open.map((i) => me.best.holes[i]!)
  const bestTotal = lines.reduce((sum, line) => sum + (line.value ?? 0), 0)
  const target = rankKey(them.full ? them.final : them.now, terms)
  const short = target - rankKey(me.best, terms)
  const level = high ? bestTotal + short : bestTotal - short
  const already = me.worst.noPlace === undefined && rankKey(me.worst, terms) > target
  const nothing = { against: them.now.entrant.id, full: them.full, ties: null, wins: null, already, countback: null }
  const holes = valuesOf(me, terms, high ? Number.POSITIVE_INFINITY : level, bestTotal)
  if (holes.some((values) => values.length === 0)) return nothing
  const totals = totalsOf(holes)
  const ties = totals.has(level) ? level : null
  let wins: number | null = null
  for (
    let total = high ? Math.max(level + 1, totals.low) : Math.min(level - 1, totals.high);
    wins === null && total >= totals.low && total <= totals.high;
    total += high ? 1 : -1
  ) {
    if (totals.has(total)) wins = total
  }
  return {
    ...nothing,
    ties,
    wins,
    countback: ties === null || !them.full ? null : countback(me, them, holes, ties, terms),
  }
}

/** On strokes a hole cannot cost more than the level total less the best of all the others. */
function valuesOf(me: StillOut, terms: TermsInForce, level: number, bestTotal: number): readonly Values[] {
  return me.open.map((i) => {
    const times = me.times[i]!
    const most = level - (bestTotal - (me.best.holes[i]!.value ?? 0))
    const values = holeValues(me.balls, i, me.counts[i]!, terms, times > 1 ? Math.max(most, 0) : most)
    return times === 1 ? values : values.map((value) => value * times).filter((value) => value <= most)
  })
}

function countback(
  me: StillOut,
  them: ToCatch,
  holes: readonly Values[],
  total: number,
  terms: TermsInForce,
): Countback {
  const mine = contenderOf(me.best, terms)
  const theirs = contenderOf(them.final, terms)
  // The tie rule numbers the holes that count.
  const place = new Map<number, number>()
  me.best.counted.forEach((counts, i) => {
    if (counts) place.set(i, place.size)
  })
  const open = me.open.map(
    (i, h): OpenHole => ({ at: place.get(i)!, values: holes[h]!, strokes: me.best.holes[i]!.strokes }),
  )
  return countbackOf({ mine, theirs, open, total }, terms)
}
