// Rules of Handicapping 2024, Appendix E: strokes fall by stroke index; above the number of holes the order begins
// again; a plus handicap gives back from the highest index. Over nine holes the ORDER of the printed indexes counts.

import type { Hole } from '../day'
import { floorDiv, modulo } from '../exact/fraction'

/** Place of each hole in the order of the indexes: 1 for the lowest index among these holes. */
export function strokeOrder(holes: readonly Pick<Hole, 'strokeIndex'>[]): number[] {
  return holes.map((one, i) => {
    let before = 1
    for (let j = 0; j < holes.length; j++) {
      const other = holes[j]!.strokeIndex
      if (other < one.strokeIndex || (other === one.strokeIndex && j < i)) before++
    }
    return before
  })
}

/** The same with the order already known, for whoever counts many cards on one tee. */
export function strokesInOrder(playingHandicap: number, order: readonly number[]): number[] {
  const everywhere = floorDiv(playingHandicap, order.length)
  const left = modulo(playingHandicap, order.length)
  const strokes = new Array<number>(order.length)
  for (let i = 0; i < order.length; i++) strokes[i] = everywhere + (order[i]! <= left ? 1 : 0)
  return strokes
}

/** Strokes received on each hole, in the order given; below zero where a plus handicap gives one back. */
export function strokesOnHoles(playingHandicap: number, holes: readonly Pick<Hole, 'strokeIndex'>[]): number[] {
  return holes.length === 0 ? [] : strokesInOrder(playingHandicap, strokeOrder(holes))
}
