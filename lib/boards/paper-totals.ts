// What the paper adds up to, against the holes. The holes count (Rules of Golf 3.3b(4)); a total that differs is looked at.

import type { PaperTotals } from '@/lib/facts/day-record'
import type { WrittenScore } from '@/lib/facts/score-fact'

export const NO_TOTALS: PaperTotals = { out: null, in: null, total: null }

/** The totals of the paper that a complete card does not come to. */
export function totalsThatDiffer(scores: readonly WrittenScore[], paper: PaperTotals): readonly (keyof PaperTotals)[] {
  if (scores.includes(null)) return []
  const gross = (from: number, to: number) =>
    scores.slice(from, to).reduce<number>((sum, score) => sum + (typeof score === 'number' ? score : 0), 0)
  const half = Math.min(scores.length, 9)
  const comesTo = { out: gross(0, half), in: gross(half, scores.length), total: gross(0, scores.length) }
  return (['out', 'in', 'total'] as const).filter((part) => paper[part] !== null && paper[part] !== comesTo[part])
}
