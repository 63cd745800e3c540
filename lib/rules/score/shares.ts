// A hole shared out among the balls of a group. Society custom, no source. A hole is shared out once everybody in the group
// has finished it; what a tied hole carries goes to the next in the order of play, and past a hole that does not count.

import type { HoleScore } from '../day'
import { floorDiv } from '../exact/fraction'
import type { Shares } from '../formats/format'
import { inOrderOfPlay } from './order-of-play'

/**
 * What each ball gets on each hole, null while somebody is still out on it and on a hole that does not count; and what the
 * hole is played for, null where that is not known yet. Holes by their place on the card.
 */
export function sharesOf(
  values: readonly (readonly HoleScore[])[],
  start: number,
  shares: Shares,
  counted: readonly boolean[],
): { readonly shares: HoleScore[][]; readonly pots: (number | null)[] } {
  const holes = values[0]?.length ?? 0
  const got = values.map(() => new Array<HoleScore>(holes).fill(null))
  const pots = new Array<number | null>(holes).fill(null)
  let pot = 1
  for (const i of inOrderOfPlay(start, holes)) {
    if (!counted[i]) continue
    pots[i] = shares.kind === 'best-alone' ? pot : shares.points.reduce((sum, one) => sum + one, 0)
    const scores = values.map((of) => of[i]!)
    if (scores.some((score) => score === null)) {
      // What a tied hole carries on is not known beyond a hole still to be played.
      if (shares.kind === 'best-alone' && shares.tied === 'carried') break
      continue
    }
    if (shares.kind === 'by-place') {
      const points = pointsByPlace(scores, shares)
      for (let b = 0; b < values.length; b++) got[b]![i] = points[b]!
      continue
    }
    const best = aloneBest(scores)
    for (let b = 0; b < values.length; b++) got[b]![i] = b === best ? pot : 0
    pot = best < 0 && shares.tied === 'carried' ? pot + 1 : 1
  }
  return { shares: got, pots }
}

/** A number that puts no score behind every score. */
const strokesOf = (score: HoleScore) => (typeof score === 'number' ? score : Number.MAX_SAFE_INTEGER)

function aloneBest(scores: readonly HoleScore[]): number {
  const sorted = scores.map(strokesOf).sort((a, b) => a - b)
  if (sorted[0] === sorted[1] || sorted[0] === strokesOf('x')) return -1
  return scores.indexOf(sorted[0]!)
}

function pointsByPlace(
  scores: readonly HoleScore[],
  { points, clear }: Extract<Shares, { kind: 'by-place' }>,
): number[] {
  const figures = scores.map(strokesOf)
  const sorted = [...figures].sort((a, b) => a - b)
  if (clear !== undefined && sorted.length > 1 && sorted[1]! - sorted[0]! >= clear.by) {
    return figures.map((figure) => (figure === sorted[0] ? clear.takes : 0))
  }
  return figures.map((figure) => {
    const from = sorted.indexOf(figure)
    const level = sorted.lastIndexOf(figure) - from + 1
    let pooled = 0
    for (let place = from; place < from + level; place++) pooled += points[place] ?? 0
    // Tied places share their points; the tables are made so that the shares are whole.
    return floorDiv(pooled, level)
  })
}
