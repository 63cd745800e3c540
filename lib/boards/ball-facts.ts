// What stands about a side's ball beside the strokes: whose drive was taken hole by hole, and where the named ball was
// lost. The newest fact of a side and hole counts; what came late is kept and not counted.

import type { BallFactRecord, DayRecord } from '@/lib/facts/day-record'
import type { EntryId, SideId } from '@/lib/facts/ids'
import { hasHole, holesFrom, placeOfHole, type RoundHoles } from '@/lib/rules/hole-numbers'

export interface SideBall {
  /** Entry id of whose drive was taken, hole by hole. */
  readonly drives: readonly (EntryId | null)[]
  /** First hole, in the order of play, on which the named ball is said to be lost. */
  readonly ballLostOn: number | null
}

/** `startHole`: where the side's group began. */
export function sideBall(
  sideId: SideId,
  facts: readonly BallFactRecord[],
  round: RoundHoles,
  startHole: number = round.firstHole,
): SideBall {
  const drives: (EntryId | null)[] = new Array(round.holes).fill(null)
  const lost: boolean[] = new Array(round.holes).fill(false)
  for (const fact of facts) {
    if (fact.sideId !== sideId || fact.late || !hasHole(round, fact.hole)) continue
    const place = placeOfHole(round, fact.hole)
    if (fact.kind === 'drive') drives[place] = fact.entryId
    else lost[place] = fact.lost
  }
  const first = holesFrom(round, startHole).find((hole) => lost[placeOfHole(round, hole)])
  return { drives, ballLostOn: first ?? null }
}

/** Where the group of a side began; undefined before the draw. */
export function startHoleOf({ groups }: Pick<DayRecord, 'groups'>, entryIds: readonly string[]): number | undefined {
  return groups.find((group) => group.entryIds.some((id) => entryIds.includes(id)))?.startHole
}

export interface DriveCount {
  readonly entryId: EntryId
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
  players: readonly EntryId[],
  drives: readonly (EntryId | null)[],
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
