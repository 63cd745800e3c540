// Ends a duty, or hands it over. One officer with full duty always remains: whoever is left can let others in.

import type { SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import { type EndDuty, endDuty as endSchema, type HandOver, handOver as handSchema } from '@/lib/facts/duty-commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import {
  closeDuty,
  type DutyRow,
  dutiesIn,
  hasOtherSecretary,
  holdSociety,
  insertDuty,
  isAwaitedElsewhere,
  userByEmail,
  userWith,
} from '@/lib/store/officers'
import { endOneTimes, issueOneTime } from '@/lib/store/one-time'
import { endSessionsOf } from '@/lib/store/sessions'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { awaitedElsewhere, linkUntil } from './give-duty'
import { parseInput } from './parse-input'

type Ended = Result<
  { readonly sessionsEnded: number },
  'not-allowed' | 'not-understood' | 'not-found' | 'ended-already' | 'last-secretary'
>

export async function endDuty(actor: Actor, input: EndDuty, now: Date = new Date()): Promise<Ended> {
  const officer = deskOnly(actor, 'end-duty')
  if (!officer.ok) return officer
  const read = parseInput(endSchema, input)
  if (!read.ok) return read
  const { dutyId, endSessions } = read.value
  const { societyId } = officer.value
  return write<Ended>(async (tx) => {
    const held = await heldAt(tx, societyId, dutyId, now)
    if (!held.ok) return held
    const row = held.value
    if (row.duty === 'secretary' && !(await hasOtherSecretary(tx, societyId, dutyId, now))) return lastOne(row)
    await closeDuty(tx, societyId, dutyId, now)
    const sessionsEnded = endSessions ? await endSessionsOf(tx, row.userId) : 0
    const record = {
      subject: row.name,
      subjectId: row.userId,
      before: { Duty: row.duty.replace('-', ' ') },
      after: { Duty: 'ended', ...(endSessions ? { 'Sessions ended': sessionsEnded } : {}) },
    }
    await recordAct(tx, actor, { act: 'end-duty', area: 'access', ...record }, now)
    return ok({ sessionsEnded })
  })
}

type Handed = Result<
  {
    readonly name: string
    /** For somebody new: until the link is used, the duty stays where it is. */
    readonly token: string | null
  },
  'not-allowed' | 'not-understood' | 'not-found' | 'ended-already' | 'same-person' | 'awaited-elsewhere'
>

/** The duty goes over at once to whoever can sign in; to somebody new at the moment the one-time link is used. */
export async function handOver(actor: Actor, input: HandOver, now: Date = new Date()): Promise<Handed> {
  const officer = deskOnly(actor, 'give-duty')
  if (!officer.ok) return officer
  const read = parseInput(handSchema, input)
  if (!read.ok) return read
  const { dutyId, name, email } = read.value
  const { societyId } = officer.value
  return write<Handed>(async (tx) => {
    const held = await heldAt(tx, societyId, dutyId, now)
    if (!held.ok) return held
    const row = held.value
    const userId = await userWith(tx, { name, email, passwordHash: null }, now)
    if (userId === row.userId) return refused('same-person', `${row.name} holds this duty already.`)
    const to = await userByEmail(tx, email)
    if (!to?.canSignIn && (await isAwaitedElsewhere(tx, societyId, userId, now))) return awaitedElsewhere(name)
    await insertDuty(tx, societyId, { userId, duty: row.duty, personId: null }, now)
    let token: string | null = null
    if (to?.canSignIn) await closeDuty(tx, societyId, dutyId, now)
    else {
      await endOneTimes(tx, 'set-password', userId)
      const what = { purpose: 'set-password' as const, userId, societyId, endsDuty: dutyId }
      token = await issueOneTime(tx, what, linkUntil(now), now)
    }
    const duty = row.duty.replace('-', ' ')
    const record = {
      subject: duty,
      subjectId: dutyId,
      before: { 'Held by': row.name },
      after: { 'Held by': to?.name ?? name, From: token ? 'when the one-time link is used' : 'now' },
    }
    await recordAct(tx, actor, { act: 'give-duty', area: 'access', ...record }, now)
    return ok({ name: to?.name ?? name, token })
  })
}

async function heldAt(
  tx: Tx,
  societyId: SocietyId,
  dutyId: string,
  now: Date,
): Promise<Result<DutyRow, 'not-found' | 'ended-already'>> {
  // The lock first: two desks that end each other's duty at once are put in order here, and the second one is refused.
  if (!(await holdSociety(tx, societyId))) return notFound('society')
  const row = (await dutiesIn(societyId, tx)).find((one) => one.dutyId === dutyId)
  if (!row) return notFound('duty')
  if (row.until !== null && row.until <= now) return refused('ended-already', 'That duty has ended already.')
  return ok(row)
}

function lastOne(row: DutyRow) {
  return refused(
    'last-secretary',
    `${row.name} is the only secretary who can sign in. Hand the duty over, or give it to somebody else first: the book must never be without one.`,
  )
}
