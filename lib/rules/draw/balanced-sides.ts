// House practice: sides as even as the handicaps allow. The field is cut into pots by handicap, the best first; one of
// each pot goes into each side, forward and back in turn, in an order drawn by lot. The same number, the same sides.

import { lotFrom, shuffled } from './lot'

export interface ForSide {
  readonly id: string
  /** Lower is better; whoever has none yet counts as the highest. */
  readonly handicap: number | null
}

/** So many sides; where the field does not divide, some are one short. */
export function balancedSides(
  players: readonly ForSide[],
  sides: number,
  seed: number,
): readonly (readonly string[])[] {
  if (sides < 1 || players.length === 0) return []
  const lot = lotFrom(seed)
  const highest = Number.MAX_SAFE_INTEGER
  const inOrder = players
    .map((player, entered) => ({ ...player, entered }))
    .sort((a, b) => (a.handicap ?? highest) - (b.handicap ?? highest) || a.entered - b.entered)
  const made: string[][] = Array.from({ length: sides }, () => [])
  const order = shuffled(
    made.map((_, at) => at),
    lot,
  )
  for (let from = 0, pot = 0; from < inOrder.length; from += sides, pot++) {
    const here = inOrder.slice(from, from + sides)
    // The last pot may be short: its players go where the sides are weakest so far, the ones served last.
    const to = pot % 2 === 0 ? order : [...order].reverse()
    here.forEach((player, at) => {
      made[to[at]!]!.push(player.id)
    })
  }
  return made.filter((ids) => ids.length > 0)
}
