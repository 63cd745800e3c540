import type { DayId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { Tx } from './client'
import { newId } from './new-id'

/** Only from the version the officer has seen, and only while the day is open: answers whether it was. */
export async function closeTheDay(
  tx: Tx,
  day: { readonly societyId: SocietyId; readonly dayId: DayId; readonly version: number },
  now: Date,
): Promise<boolean> {
  const closed = await tx.day.updateMany({
    where: {
      id: day.dayId,
      societyId: day.societyId,
      version: day.version,
      status: { in: ['frozen', 'in-play'] },
    },
    data: { status: 'closed', closedAt: now, version: { increment: 1 } },
  })
  return closed.count === 1
}

export async function openTheDayAgain(
  tx: Tx,
  day: { readonly societyId: SocietyId; readonly dayId: DayId; readonly version: number },
  by: { readonly userId: UserId; readonly name: string; readonly reason: string },
  now: Date,
): Promise<boolean> {
  const { societyId, dayId, version } = day
  const opened = await tx.day.updateMany({
    where: { id: dayId, societyId, version, status: 'closed' },
    data: { status: 'in-play', closedAt: null, version: { increment: 1 } },
  })
  if (opened.count === 0) return false
  await tx.reopening.create({
    data: {
      id: newId(),
      societyId,
      dayId,
      reason: by.reason,
      byUserId: by.userId,
      byName: by.name,
      reopenedAt: now,
    },
  })
  return true
}

/** Has a result of the day been published? */
export async function hasResult(tx: Tx, dayId: DayId): Promise<boolean> {
  return (await tx.publication.count({ where: { dayId } })) > 0
}
