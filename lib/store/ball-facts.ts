import type { DayId, DeviceId, EntryId, GroupId, SideId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { BallFactRecord } from '@/lib/facts/day-record'
import type { DeviceFact } from '@/lib/facts/score-fact'
import type { Tx } from './client'

export interface SideOfGroup {
  readonly id: string
  readonly entryIds: readonly EntryId[]
}

/** Sides of the day with somebody in the group: what a phone of the group may write about. */
async function sidesOfGroup(
  tx: Tx,
  which: { readonly dayId: DayId; readonly groupId: GroupId },
): Promise<SideOfGroup[]> {
  const rows = await tx.side.findMany({
    where: {
      competition: { dayId: which.dayId },
      members: { some: { entry: { place: { groupId: which.groupId } } } },
    },
    select: { id: true, members: { select: { entryId: true }, orderBy: { position: 'asc' } } },
  })
  return rows.map(({ id, members }) => ({ id, entryIds: members.map((one) => one.entryId) }))
}

/** One side of the day for the desk; null when it is not there. */
export async function sideOfDay(
  tx: Tx,
  which: { readonly societyId: SocietyId; readonly dayId: DayId; readonly sideId: SideId },
): Promise<SideOfGroup | null> {
  const row = await tx.side.findFirst({
    where: { id: which.sideId, societyId: which.societyId, competition: { dayId: which.dayId } },
    select: { id: true, members: { select: { entryId: true }, orderBy: { position: 'asc' } } },
  })
  return row && { id: row.id, entryIds: row.members.map((one) => one.entryId) }
}

/** What decides about these facts: the sides too, when one of them is about a ball. */
export async function withSides<T extends object>(
  tx: Tx,
  which: { readonly dayId: DayId; readonly groupId: GroupId },
  facts: readonly DeviceFact[],
  sources: T,
): Promise<T & { readonly sides?: readonly SideOfGroup[] }> {
  const ofBalls = facts.some((fact) => fact.kind === 'drive' || fact.kind === 'ball-lost')
  return ofBalls ? { ...sources, sides: await sidesOfGroup(tx, which) } : sources
}

export interface NewBallFact {
  readonly societyId: SocietyId
  readonly sideId: SideId
  readonly kind: BallFactRecord['kind']
  readonly hole: number
  readonly entryId: EntryId | null
  readonly lost: boolean
  /** Entry id, or null for the desk. */
  readonly writerId: EntryId | null
  readonly userId: UserId | null
  readonly deviceId: DeviceId
  readonly seq: number
  readonly writtenAt: Date
  readonly receivedAt: Date
  readonly late: boolean
}

/** In the order given: the row's own number is the order of arrival. */
export async function addBallFacts(tx: Tx, dayId: DayId, facts: readonly NewBallFact[]): Promise<void> {
  if (!facts.length) return
  await tx.ballFact.createMany({
    data: facts.map((fact) => ({ ...fact, dayId, writer: fact.writerId === null ? 'desk' : 'entry' })),
  })
}

/** Numbers of this device whose fact about a ball came late. */
export async function lateBalls(tx: Tx, deviceId: DeviceId, seqs: readonly number[]): Promise<number[]> {
  const rows = await tx.ballFact.findMany({
    where: { deviceId, seq: { in: [...seqs] }, late: true },
    select: { seq: true },
  })
  return rows.map((row) => row.seq)
}
