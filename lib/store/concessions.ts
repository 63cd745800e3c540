import type { DayId, DeviceId, EntryId, PairingId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { ConcessionFact } from '@/lib/facts/score-fact'
import type { Tx } from './client'

export interface NewConcession extends Pick<ConcessionFact, 'hole' | 'by'> {
  readonly societyId: SocietyId
  readonly pairingId: PairingId
  readonly writerId: EntryId
  readonly deviceId: DeviceId
  readonly seq: number
  readonly writtenAt: Date
  readonly receivedAt: Date
  readonly late: boolean
}

/** In the order given: the row's own number is the order of arrival. */
export async function addConcessions(tx: Tx, dayId: DayId, rows: readonly NewConcession[]): Promise<void> {
  if (!rows.length) return
  await tx.concession.createMany({ data: rows.map((row) => ({ ...row, dayId })) })
}

/** Numbers of this device whose concession came late. */
export async function lateConcessions(tx: Tx, deviceId: DeviceId, seqs: readonly number[]): Promise<number[]> {
  const rows = await tx.concession.findMany({
    where: { deviceId, seq: { in: [...seqs] }, late: true },
    select: { seq: true },
  })
  return rows.map((row) => row.seq)
}
