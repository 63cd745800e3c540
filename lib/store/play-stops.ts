import 'server-only'
import type { PlayStopRecord } from '@/lib/facts/play-stop'
import { reading, type Tx } from './client'

/** Oldest first. */
export async function playStopsOf(tx: Pick<Tx, 'playStop'>, dayId: string): Promise<PlayStopRecord[]> {
  const rows = await tx.playStop.findMany({
    where: { dayId },
    select: { kind: true, reason: true, byName: true, toldAt: true },
    orderBy: { id: 'asc' },
  })
  return rows.map((row, at) => ({ ...row, number: at + 1, kind: row.kind as PlayStopRecord['kind'] }))
}

export const playStopsNow = (dayId: string): Promise<PlayStopRecord[]> => playStopsOf(reading(), dayId)

export interface NewPlayStop {
  readonly societyId: string
  readonly dayId: string
  readonly kind: PlayStopRecord['kind']
  readonly reason: string
  readonly byUserId: string
  readonly byName: string
  readonly toldAt: Date
}

export async function addPlayStop(tx: Tx, stop: NewPlayStop): Promise<void> {
  await tx.playStop.create({ data: stop })
}
