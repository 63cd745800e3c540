import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import type { CalledOff } from '@/lib/facts/day-record'
import type { Tx } from './client'

/** The two columns are there together or not at all: the database sees to it. */
export function calledOffOf(day: {
  readonly calledOffAt: Date | null
  readonly calledOffReason: string | null
}): CalledOff | null {
  return day.calledOffAt && day.calledOffReason ? { at: day.calledOffAt, reason: day.calledOffReason } : null
}

export async function setPlayedAhead(tx: Tx, dayId: DayId, at: Date): Promise<void> {
  await tx.day.update({ where: { id: dayId }, data: { playedAheadAt: at } })
}

export async function setCalledOff(tx: Tx, dayId: DayId, off: CalledOff | null): Promise<void> {
  await tx.day.update({
    where: { id: dayId },
    data: { calledOffAt: off?.at ?? null, calledOffReason: off?.reason ?? null },
  })
}
