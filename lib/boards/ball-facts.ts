// What stands about a side's ball beside the strokes: whose drive was taken hole by hole, and where the named ball was
// lost. The newest fact of a side and hole counts; what came late is kept and not counted.

import type { BallFactRecord } from '@/lib/facts/day-record'

export interface SideBall {
  /** Entry id of whose drive was taken, hole by hole. */
  readonly drives: readonly (string | null)[]
  /** First hole on which the named ball is said to be lost. */
  readonly ballLostOn: number | null
}

export function sideBall(sideId: string, facts: readonly BallFactRecord[], holes: number): SideBall {
  const drives: (string | null)[] = new Array(holes).fill(null)
  const lost: boolean[] = new Array(holes).fill(false)
  for (const fact of facts) {
    if (fact.sideId !== sideId || fact.late || fact.hole > holes) continue
    if (fact.kind === 'drive') drives[fact.hole - 1] = fact.entryId
    else lost[fact.hole - 1] = fact.lost
  }
  const first = lost.indexOf(true)
  return { drives, ballLostOn: first < 0 ? null : first + 1 }
}

export interface DriveCount {
  readonly entryId: string
  readonly taken: number
  /** Drives still wanted to reach the minimum. */
  readonly wanted: number
}

export interface DrivesStand {
  readonly minimum: number | null
  readonly counts: readonly DriveCount[]
  /** Holes on which nobody's drive is written yet. */
  readonly open: number
  /** More drives are wanted than there are holes to take them on. */
  readonly outOfReach: boolean
}

/** How the drives stand against the minimum of the terms. */
export function drivesStand(
  players: readonly string[],
  drives: readonly (string | null)[],
  minimum: number | null,
): DrivesStand {
  const counts = players.map((entryId) => {
    const taken = drives.filter((one) => one === entryId).length
    return { entryId, taken, wanted: Math.max(0, (minimum ?? 0) - taken) }
  })
  const open = drives.filter((one) => one === null || !players.includes(one)).length
  const wanted = counts.reduce((sum, one) => sum + one.wanted, 0)
  return { minimum, counts, open, outOfReach: minimum !== null && wanted > open }
}

/** Yellow ball: whose score must count on a hole. The engine's rota: in the side's order, by the number of the hole. */
export function namedPlayer(players: readonly string[], hole: number): string | null {
  return players.length === 0 ? null : players[(hole - 1) % players.length]!
}
