// A further officer: a duty with a date. Somebody new gets a one-time link to set the own password.

import type { Actor } from '@/lib/facts/actor'
import { type GiveDuty, giveDuty as schema } from '@/lib/facts/commands'
import type { UserId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { holdSociety, insertDuty, isAwaitedElsewhere, userByEmail, userWith } from '@/lib/store/officers'
import { endOneTimes, issueOneTime } from '@/lib/store/one-time'
import { hashOfPassword } from '@/lib/store/password'
import { write } from '@/lib/store/write'
import { deskOnly } from './desk-only'
import { parseInput } from './parse-input'

/** A link in an envelope or a message is opened within the week, or made anew. */
export const LINK_DAYS = 7
export const linkUntil = (now: Date) => new Date(now.getTime() + LINK_DAYS * 86_400_000)

/** A link for an account that another society made would let this desk into that one. */
export const awaitedElsewhere = (name: string) =>
  refused(
    'awaited-elsewhere',
    `${name} has an account here that was never opened. Once that link is used, the duty can be given.`,
  )

export interface Given {
  readonly userId: UserId
  /** To be handed to the new officer once; null when that person can sign in already. */
  readonly token: string | null
}

export async function giveDuty(
  actor: Actor,
  input: GiveDuty,
  now: Date = new Date(),
): Promise<Result<Given, 'not-allowed' | 'not-understood' | 'held-already' | 'awaited-elsewhere'>> {
  const officer = deskOnly(actor, 'give-duty')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { name, email, password, duty, personId } = read.value
  const { societyId } = officer.value
  const passwordHash = password === null ? null : await hashOfPassword(password)
  return write<Result<Given, 'held-already' | 'awaited-elsewhere'>>(async (tx) => {
    await holdSociety(tx, societyId)
    const userId = await userWith(tx, { name, email, passwordHash }, now)
    const known = await userByEmail(tx, email)
    const held = await insertDuty(tx, societyId, { userId, duty, personId }, now)
    const able = known?.canSignIn ?? false
    if (!held.fresh && able)
      return refused('held-already', `${known?.name ?? name} is ${duty.replace('-', ' ')} already.`)
    let token: string | null = null
    if (!able && (await isAwaitedElsewhere(tx, societyId, userId, now))) return awaitedElsewhere(name)
    if (!able) {
      await endOneTimes(tx, 'set-password', userId)
      token = await issueOneTime(
        tx,
        { purpose: 'set-password', userId, societyId, endsDuty: null },
        linkUntil(now),
        now,
      )
    }
    const after = { Duty: duty.replace('-', ' '), 'One-time link': token ? 'made' : 'not needed' }
    const subject = known?.name ?? name
    await recordAct(tx, actor, { act: 'give-duty', area: 'access', subject, subjectId: userId, after }, now)
    return ok({ userId, token })
  })
}
