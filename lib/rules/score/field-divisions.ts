// How many divisions a field of that size makes, and where to cut it. Society custom: a society states from how many
// entries there are two, three or four; the limits are then put where they make the divisions about equal.

import type { Division } from '../day'
import { halfUp } from '../exact/fraction'

/** Entries from which there is one division more: two from 30, three from 60. */
export const USUAL_SWITCHES: readonly number[] = [30, 60]

export function divisionsForField(entries: number, switches: readonly number[] = USUAL_SWITCHES): number {
  let divisions = 1
  for (const from of switches) if (entries >= from) divisions++
  return divisions
}

/**
 * Divisions by playing handicap, lowest first, as a proposal for the terms. Nobody is parted from somebody with the same
 * handicap; a field too alike to be cut into as many makes fewer. None for a field of one division.
 */
export function proposedDivisions(
  handicaps: readonly number[],
  switches: readonly number[] = USUAL_SWITCHES,
): readonly Division[] {
  const low = [...handicaps].sort((a, b) => a - b)
  const wanted = divisionsForField(low.length, switches)
  const tops: number[] = []
  for (let part = 1; part < wanted; part++) {
    const top = cutNear(low, halfUp(part * low.length, wanted))
    if (top !== null && top !== tops[tops.length - 1]) tops.push(top)
  }
  if (tops.length === 0) return []
  return [...tops, null].map((top, at): Division => {
    const from = at === 0 ? undefined : tops[at - 1]! + 1
    return {
      id: `division-${at + 1}`,
      name: `Division ${at + 1}`,
      ...(from === undefined ? {} : { handicapFrom: from }),
      ...(top === null ? {} : { handicapTo: top }),
    }
  })
}

/** The highest handicap of the lower part when the field is cut as near as can be to so many players; null if it cannot. */
function cutNear(low: readonly number[], players: number): number | null {
  let best: number | null = null
  let missed = Number.MAX_SAFE_INTEGER
  for (let i = 1; i < low.length; i++) {
    if (low[i] === low[i - 1]) continue
    const off = Math.abs(i - players)
    if (off < missed) {
      missed = off
      best = low[i - 1]!
    }
  }
  return best
}
