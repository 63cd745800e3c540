// The desk takes in what a phone brought after its link had ended: as if it had been delivered in time. On a card that is
// closed by now the scores are late facts, like any other.

import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { takeLateScores as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { withSides } from '@/lib/store/ball-facts'
import { versionText } from '@/lib/store/day-versions'
import { groupOfPhone, heldFacts } from '@/lib/store/phones'
import { groupSources, takeDevice } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { takeDayOn } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { planDelivery } from './plan-delivery'
import { savePlan } from './save-plan'
import { cardsTouched, withSigning } from './signing-sources'

export interface TakenLate {
  readonly taken: number
  /** Came after their card was closed: kept, not counted. */
  readonly late: number
  readonly refused: number
}

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-called-off' | 'nothing-held'

export async function takeLateScores(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<TakenLate, Refusals>> {
  const officer = deskOnly(actor, 'enter-score')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, deviceId } = read.value

  const done = await write(async (tx) => {
    const phone = await groupOfPhone(tx, { societyId, dayId, deviceId })
    if (!phone) return notFound('phone')
    const day = await takeDayOn(tx, societyId, dayId)
    if (!day.ok) return day
    const { groupId } = phone
    const lastSeq = await takeDevice(tx, { id: deviceId, societyId, groupId }, now, { unsent: 0 })
    const facts = (await heldFacts(tx, { deviceId })).map((held) => held.fact)
    if (lastSeq === null || facts.length === 0)
      return refused('nothing-held', 'Everything that phone brought has been taken in already.')
    const group = await groupSources(tx, { societyId, dayId, groupId }, cardsTouched(facts))
    if (!group) return notFound('group')
    const sided = await withSides(tx, { dayId, groupId }, facts, group)
    const sources = await withSigning(tx, { societyId, dayId }, facts, sided)
    const plan = planDelivery(sources, facts, lastSeq, societyId, deviceId, now)
    // A number is missing before the first one: the phone had more to say before this than it brought.
    if (plan.answers.length === 0)
      return refused('nothing-held', 'That phone has not brought its first scores yet. They come when it looks again.')
    const late = plan.answers.filter((one) => one.answer === 'late').length
    const sender = { societyId, dayId, groupId, status: group.status, deviceId, lastSeq }
    // What cannot stand is refused already, by the row it was held in.
    const saved = await savePlan(tx, sender, { ...plan, refused: [] }, now)
    const taken = { taken: plan.answers.length - plan.refused.length - late, late, refused: plan.refused.length }
    await recordAct(
      tx,
      officer.value,
      {
        act: 'enter-score',
        area: 'results',
        subject: `Late scores of group ${phone.number}`,
        subjectId: dayId,
        after: { ...taken },
      },
      now,
    )
    return ok({ taken, version: saved && versionText(saved) })
  })
  if (!done.ok) return done
  if (done.value.version) live().announce(dayId, done.value.version)
  return ok(done.value.taken)
}
