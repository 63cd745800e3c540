// The order in which a group plays its holes: from the one it began on round to it. Whatever is carried from hole to hole,
// or counts from a hole on, goes by it. Rules of Golf 2023, 5.1: a round is its holes in the order the committee sets.

import type { Card, Hole } from '../day'
import { modulo } from '../exact/fraction'

/** A ball as far as the order looks at it. */
export interface Started {
  readonly card: Pick<Card, 'startHole'> | null
  readonly filled?: true
}

/**
 * Place, in card order, of the hole these balls began on together. The first of the card where no card says, and where two
 * cards of one group contradict each other: then there is no common order of play.
 */
export function startPlace(balls: readonly Started[], holes: readonly Pick<Hole, 'hole'>[]): number {
  let start: number | null = null
  for (const { card, filled } of balls) {
    const said = filled ? undefined : card?.startHole
    if (said === undefined) continue
    if (start !== null && start !== said) return 0
    start = said
  }
  const place = start === null ? 0 : holes.findIndex(({ hole }) => hole === start)
  return Math.max(place, 0)
}

/** How many holes were played before the one at this place of the card. */
export function placeInPlay(place: number, start: number, holes: number): number {
  return modulo(place - start, holes)
}

/** Places of the card in the order of play. */
export function inOrderOfPlay(start: number, holes: number): number[] {
  return Array.from({ length: holes }, (_, at) => modulo(start + at, holes))
}
