// House practice: who plays whom inside a group. First against second and third against fourth; in a match between teams
// the first of one team against the first of the other; partners of another competition of the day meet only where nobody
// else is left for them. Whoever is left over has no opponent until the desk finds one. Common practice, no source.

import { floorDiv } from '../exact/fraction'

export interface Drawn {
  /** A player, or a side. */
  readonly id: string
  /** The team it plays for; null without teams. */
  readonly team: string | null
  /** With whom the player plays as partners on the same card in another competition. */
  readonly partners?: readonly string[]
}

type Pairs = readonly (readonly [string, string])[]

export function opponentsOf(group: readonly Drawn[]): Pairs {
  return bestOf(group).pairs
}

interface Paired {
  readonly pairs: Pairs
  /** Pairs that are partners elsewhere. */
  readonly partners: number
}

const NOBODY: Paired = { pairs: [], partners: 0 }

/** As many matches as there can be, then as few of them between partners; among equals the earliest in the order of the group. */
function bestOf(waiting: readonly Drawn[]): Paired {
  const [first, ...rest] = waiting
  if (!first || rest.length === 0) return NOBODY
  let best: Paired | null = null
  for (const [at, other] of rest.entries()) {
    if (first.team !== null && other.team === first.team) continue
    const left = bestOf(rest.filter((_, place) => place !== at))
    const meet = arePartners(first, other) ? 1 : 0
    const found = { pairs: [[first.id, other.id] as const, ...left.pairs], partners: left.partners + meet }
    if (best === null || isBetter(found, best)) best = found
    if (best.partners === 0 && best.pairs.length === floorDiv(waiting.length, 2)) break
  }
  return best ?? bestOf(rest)
}

const isBetter = (one: Paired, other: Paired) =>
  one.pairs.length > other.pairs.length || (one.pairs.length === other.pairs.length && one.partners < other.partners)

const arePartners = (one: Drawn, other: Drawn) =>
  (one.partners?.includes(other.id) ?? false) || (other.partners?.includes(one.id) ?? false)
