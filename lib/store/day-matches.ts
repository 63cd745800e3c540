import type { DayId, SideId } from '@/lib/facts/ids'
import 'server-only'
import type { BallFactRecord, PairingRecord, TeamRecord } from '@/lib/facts/day-record'
import { matchEnding } from '@/lib/facts/match-ending'
import type { Tx } from './client'

/** Who plays whom, by competition. */
export async function pairingsOf(tx: Tx, dayId: DayId): Promise<ReadonlyMap<string, PairingRecord[]>> {
  const rows = await tx.pairing.findMany({
    where: { competition: { dayId } },
    select: {
      id: true,
      competitionId: true,
      number: true,
      entryAId: true,
      entryBId: true,
      sideAId: true,
      sideBId: true,
      ending: true,
    },
    orderBy: { number: 'asc' },
  })
  const by = new Map<string, PairingRecord[]>()
  for (const row of rows) {
    const a = row.entryAId ?? row.sideAId
    const b = row.entryBId ?? row.sideBId
    if (a === null || b === null) continue
    const list = by.get(row.competitionId) ?? []
    by.set(row.competitionId, list)
    list.push({ id: row.id, number: row.number, a, b, ending: matchEnding.parse(JSON.parse(row.ending)) })
  }
  return by
}

export async function teamsOf(tx: Tx, dayId: DayId): Promise<TeamRecord[]> {
  const rows = await tx.team.findMany({
    where: { dayId },
    select: {
      id: true,
      number: true,
      name: true,
      members: { select: { entryId: true }, orderBy: [{ position: 'asc' }, { entryId: 'asc' }] },
    },
    orderBy: { number: 'asc' },
  })
  return rows.map(({ members, ...row }) => ({ ...row, entryIds: members.map((one) => one.entryId) }))
}

/** In the order of arrival. */
export async function ballFactsOf(tx: Tx, dayId: DayId, sideIds?: readonly SideId[]): Promise<BallFactRecord[]> {
  const rows = await tx.ballFact.findMany({
    where: { dayId, ...(sideIds ? { sideId: { in: [...sideIds] } } : {}) },
    select: {
      id: true,
      sideId: true,
      kind: true,
      hole: true,
      entryId: true,
      lost: true,
      writerId: true,
      writtenAt: true,
      receivedAt: true,
      late: true,
    },
    orderBy: { id: 'asc' },
  })
  return rows.map(({ writerId, ...row }) => ({
    ...row,
    kind: row.kind as BallFactRecord['kind'],
    writer: writerId ?? 'desk',
  }))
}

/** The earlier days that some competition of this day is added up with, by date. */
export async function countedDaysOf(tx: Tx, dayId: DayId): Promise<DayId[]> {
  const rows = await tx.countedDay.findMany({
    where: { competition: { dayId } },
    select: { dayId: true, day: { select: { date: true } } },
  })
  const dates = new Map(rows.map((row) => [row.dayId, row.day.date]))
  return [...dates].sort(([a, on], [b, then]) => (on < then || (on === then && a < b) ? -1 : 1)).map(([id]) => id)
}

/**
 * What earlier days add to the version of a board: it moves on with every change of any of them, and never back as long
 * as they are the same days. Other days are another version of the day itself.
 */
export function earlierVersions(
  earlier: readonly { readonly version: number; readonly scoreVersion: number }[],
): number {
  return earlier.reduce((sum, one) => sum + one.version + one.scoreVersion, 0)
}

/** Everything a board's version is made of, to be selected with the day. */
export const WITH_EARLIER = {
  competitions: {
    select: {
      countedDays: {
        select: {
          dayId: true,
          day: { select: { status: true, calledOffAt: true, version: true, scoreVersion: true } },
        },
      },
    },
  },
} as const

interface WithEarlier {
  readonly scoreVersion: number
  readonly competitions: readonly {
    readonly countedDays: readonly {
      readonly dayId: DayId
      readonly day: {
        readonly status: string
        readonly calledOffAt: Date | null
        readonly version: number
        readonly scoreVersion: number
      }
    }[]
  }[]
}

/** The same figure as `DayRecord.boardVersion`, and whether every day counted has its figures fixed. */
export function boardVersionOf(day: WithEarlier): { readonly boardVersion: number; readonly settled: boolean } {
  const counted = new Map(day.competitions.flatMap((one) => one.countedDays).map((one) => [one.dayId, one.day]))
  const earlier = [...counted.values()]
  return {
    boardVersion: day.scoreVersion + earlierVersions(earlier),
    settled: earlier.every((one) => one.calledOffAt !== null || one.status !== 'called'),
  }
}
