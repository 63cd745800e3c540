import type { DayId, DeviceId, EntryId, GroupId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { deviceFact } from '@/lib/facts/score-fact'
import { reading, type Tx } from './client'
import { AFTER_END, type PhoneSays } from './score-facts'

export interface PhoneRecord {
  readonly deviceId: DeviceId
  readonly groupId: GroupId
  readonly lastSeen: Date
  readonly unsent: number
  readonly appVersion: string | null
}

/** Every phone that was heard of in the groups of a day. */
export async function phonesOfDay(dayId: DayId): Promise<PhoneRecord[]> {
  const rows = await reading().device.findMany({
    where: { group: { round: { dayId } } },
    select: { id: true, groupId: true, lastSeen: true, unsent: true, appVersion: true },
    orderBy: { lastSeen: 'desc' },
  })
  return rows.flatMap(({ id, groupId, ...row }) => (groupId === null ? [] : [{ deviceId: id, groupId, ...row }]))
}

/** What a phone says while it only looks. A phone nobody has heard of yet gets its row with its first score. */
export async function notePhone(tx: Tx, deviceId: DeviceId, says: PhoneSays, now: Date): Promise<void> {
  await tx.device.updateMany({ where: { id: deviceId }, data: { lastSeen: now, ...says } })
}

/** The phone says whose it is; a phone nobody has heard of gets its row, as long as there are not too many. */
export async function noteHolder(
  tx: Tx,
  device: { readonly id: DeviceId; readonly societyId: SocietyId; readonly groupId: GroupId },
  holder: { readonly entryId: EntryId; readonly number: number },
  most: number,
  now: Date,
): Promise<void> {
  const { entryId: holderId, number: holdNumber } = holder
  const { id, groupId } = device
  const inGroup = { groupId, entryId: holderId }
  const changed = await tx.device.updateMany({
    where: {
      id,
      group: { places: { some: inGroup } },
      OR: [{ holderId: null }, { holderId: { not: holderId } }, { holdNumber: { not: holdNumber } }],
    },
    data: { holderId, holdNumber, heldSince: now },
  })
  if (changed.count > 0 || (await tx.device.count({ where: { id } })) > 0) return
  if ((await tx.groupPlace.count({ where: inGroup })) === 0 || !(await hasRoomFor(tx, groupId, id, most))) return
  await tx.device.create({
    data: { ...device, lastSeq: 0, firstSeen: now, lastSeen: now, holderId, holdNumber, heldSince: now },
  })
}

export interface PhoneHolder {
  readonly groupId: GroupId
  readonly deviceId: DeviceId
  readonly entryId: EntryId
  readonly since: Date
  readonly lastSeq: number
}

/** Phones of a day's groups that said whose they are. */
export async function holdersOfDay(dayId: DayId): Promise<PhoneHolder[]> {
  const rows = await reading().device.findMany({
    where: { group: { round: { dayId } }, NOT: { holderId: null } },
    select: { id: true, groupId: true, holderId: true, heldSince: true, lastSeq: true },
    orderBy: { heldSince: 'asc' },
  })
  return rows.flatMap(({ id, groupId, holderId, heldSince, lastSeq }) =>
    groupId && holderId && heldSince ? [{ groupId, deviceId: id, entryId: holderId, since: heldSince, lastSeq }] : [],
  )
}

export interface HeldFact {
  readonly deviceId: DeviceId
  readonly seq: number
  readonly fact: DeviceFact
  readonly heldAt: Date
}

/** Facts that came after their link had ended and that nobody has taken in yet, in the order they were written. */
export async function heldFacts(
  tx: Pick<Tx, 'refusedFact' | 'device'>,
  which: { readonly dayId: DayId } | { readonly deviceId: DeviceId },
): Promise<HeldFact[]> {
  const rows = await tx.refusedFact.findMany({
    where: {
      code: AFTER_END,
      ...('dayId' in which ? { device: { group: { round: { dayId: which.dayId } } } } : { deviceId: which.deviceId }),
    },
    select: { deviceId: true, seq: true, fact: true, refusedAt: true, device: { select: { lastSeq: true } } },
    orderBy: [{ deviceId: 'asc' }, { seq: 'asc' }],
  })
  // A number the device has passed is settled: the desk took it in.
  return rows
    .filter((row) => row.seq > row.device.lastSeq)
    .map(({ deviceId, seq, fact, refusedAt }) => ({
      deviceId,
      seq,
      fact: deviceFact.parse(JSON.parse(fact)),
      heldAt: refusedAt,
    }))
}

export const heldNow = (dayId: DayId): Promise<HeldFact[]> => heldFacts(reading(), { dayId })

/** Numbers of a device that are held already. */
export async function heldSeqs(tx: Tx, deviceId: DeviceId): Promise<ReadonlySet<number>> {
  const rows = await tx.refusedFact.findMany({ where: { deviceId }, select: { seq: true } })
  return new Set(rows.map((row) => row.seq))
}

/** A phone that is known already, or one of not too many. */
export async function hasRoomFor(tx: Tx, groupId: GroupId, deviceId: DeviceId, most: number): Promise<boolean> {
  if ((await tx.device.count({ where: { id: deviceId } })) > 0) return true
  return (await tx.device.count({ where: { groupId } })) < most
}

/** The group a phone of that day belongs to; null when it is no phone of that day and society. */
export async function groupOfPhone(
  tx: Tx,
  which: { readonly societyId: SocietyId; readonly dayId: DayId; readonly deviceId: DeviceId },
): Promise<{ readonly groupId: GroupId; readonly number: number } | null> {
  const row = await tx.device.findFirst({
    where: { id: which.deviceId, societyId: which.societyId, group: { round: { dayId: which.dayId } } },
    select: { group: { select: { id: true, number: true } } },
  })
  return row?.group ? { groupId: row.group.id, number: row.group.number } : null
}
