import type { DayId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { PlayStopRecord } from '@/lib/facts/play-stop'
import { reading, type Tx } from './client'

/** Oldest first. */
export async function playStopsOf(tx: Pick<Tx, 'playStop'>, dayId: DayId): Promise<PlayStopRecord[]> {
  const rows = await tx.playStop.findMany({
    where: { dayId },
    select: { kind: true, reason: true, byName: true, toldAt: true },
    orderBy: { id: 'asc' },
  })
  return rows.map((row, at) => ({ ...row, number: at + 1, kind: row.kind as PlayStopRecord['kind'] }))
}

export const playStopsNow = (dayId: DayId): Promise<PlayStopRecord[]> => playStopsOf(reading(), dayId)

export interface NewPlayStop {
  readonly societyId: SocietyId
  readonly dayId: DayId
  readonly kind: PlayStopRecord['kind']
  readonly reason: string
  readonly byUserId: UserId
  readonly byName: string
  readonly toldAt: Date
}

export async function addPlayStop(tx: Tx, stop: NewPlayStop): Promise<void> {
  await tx.playStop.create({ data: stop })
}
