// Saves what a delivery came to: one transaction, given. Whoever calls has the device's row, and with it the lock.

import type { DayId, DeviceId, GroupId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayStatus } from '@/lib/facts/day-record'
import { recordAct } from '@/lib/store/acts'
import { addBallFacts } from '@/lib/store/ball-facts'
import type { Tx } from '@/lib/store/client'
import { addConcessions } from '@/lib/store/concessions'
import { setEnding } from '@/lib/store/pairings'
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
  readonly groupId: GroupId
  readonly status: DayStatus
  readonly deviceId: DeviceId
  readonly lastSeq: number
}

/** The day's new versions, or null when nothing that counts has changed. */
export async function savePlan(
  tx: Tx,
  { societyId, dayId, groupId, status, deviceId, lastSeq }: Sender,
  plan: DeliveryPlan,
  now: Date,
): Promise<{ readonly version: number; readonly scoreVersion: number } | null> {
  for (const { cardId, role } of plan.withdraws) await withdrawSignatures(tx, cardId, role, now)
  await addFacts(tx, plan.facts)
  await addSignatures(tx, plan.signatures)
  await addBallFacts(tx, dayId, plan.balls)
  await addConcessions(tx, dayId, plan.concessions)
  for (const { pairingId, subject, ending, before, after, writer } of plan.endings) {
    await setEnding(tx, pairingId, ending)
    const record = {
      subject,
      subjectId: dayId,
      before: { Ending: before },
      after: { Ending: after, 'Written by': writer },
    }
    const scorer = { kind: 'scorer' as const, societyId, dayId, groupId }
    await recordAct(tx, scorer, { act: 'end-match', area: 'results', ...record }, now)
  }
  await addRefused(tx, plan.refused)
  for (const cardId of plan.handedIn) await handInCard(tx, societyId, cardId)
  if (!(await moveDevice(tx, deviceId, lastSeq, plan.lastSeq)))
    throw new Error(`The number of ${deviceId} moved inside the transaction.`)
  const { facts, signatures, balls, concessions } = plan
  if (!facts.length && !signatures.length && !balls.length && !concessions.length) return null
  const startsPlay = facts.some((fact) => !fact.late) || plan.endings.length > 0
  return moveScores(tx, dayId, status === 'frozen' && startsPlay)
}
