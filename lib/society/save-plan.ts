// Saves what a delivery came to: one transaction, given. Whoever calls has the device's row, and with it the lock.

import type { DayId, DeviceId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayStatus } from '@/lib/facts/day-record'
import { addBallFacts } from '@/lib/store/ball-facts'
import type { Tx } from '@/lib/store/client'
import {
  addFacts,
  addRefused,
  addSignatures,
  handInCard,
  moveDevice,
  moveScores,
  withdrawSignatures,
} from '@/lib/store/score-facts'
import type { DeliveryPlan } from './plan-delivery'

interface Sender {
  readonly societyId: SocietyId
  readonly dayId: DayId
  readonly status: DayStatus
  readonly deviceId: DeviceId
  readonly lastSeq: number
}

/** The day's new versions, or null when nothing that counts has changed. */
export async function savePlan(
  tx: Tx,
  { societyId, dayId, status, deviceId, lastSeq }: Sender,
  plan: DeliveryPlan,
  now: Date,
): Promise<{ readonly version: number; readonly scoreVersion: number } | null> {
  for (const { cardId, role } of plan.withdraws) await withdrawSignatures(tx, cardId, role, now)
  await addFacts(tx, plan.facts)
  await addSignatures(tx, plan.signatures)
  await addBallFacts(tx, dayId, plan.balls)
  await addRefused(tx, plan.refused)
  for (const cardId of plan.handedIn) await handInCard(tx, societyId, cardId)
  if (!(await moveDevice(tx, deviceId, lastSeq, plan.lastSeq)))
    throw new Error(`The number of ${deviceId} moved inside the transaction.`)
  if (!plan.facts.length && !plan.signatures.length && !plan.balls.length) return null
  return moveScores(tx, dayId, status === 'frozen' && plan.facts.some((fact) => !fact.late))
}
