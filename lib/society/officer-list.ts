// Who holds which duty since when, who held it before; and ending an officer's sessions.

import type { UserId } from '@/lib/facts/ids'
import 'server-only'
import type { Actor, Duty } from '@/lib/facts/actor'
import { endOfficerSessions as schema } from '@/lib/facts/duty-commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { dutiesIn, holdSociety, isAwaitedElsewhere } from '@/lib/store/officers'
import { endOneTimes, issueOneTime } from '@/lib/store/one-time'
import { endSessionsOf } from '@/lib/store/sessions'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly, notFound } from './desk-only'
import { linkUntil } from './give-duty'
import { parseInput } from './parse-input'

export interface DutyLine {
  readonly dutyId: string
  readonly userId: UserId
  readonly name: string
  readonly email: string
  readonly duty: Duty
  readonly from: string
  readonly until: string | null
  readonly canSignIn: boolean
  readonly mine: boolean
}

type LinkRefusals = 'not-found' | 'own-link' | 'desk-elsewhere'

export interface OfficerList {
  readonly present: readonly DutyLine[]
  readonly before: readonly DutyLine[]
  readonly mayChange: boolean
  readonly mayEndSessions: boolean
}

const ORDER: readonly string[] = ['secretary', 'captain', 'handicap-secretary', 'treasurer', 'committee']

export async function officerList(actor: Actor, now: Date = new Date()): Promise<Result<OfficerList, 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-record')
  if (!officer.ok) return officer
  const rows = await dutiesIn(officer.value.societyId)
  const lines = rows.map((row) => ({
    ...row,
    from: row.from.toISOString(),
    until: row.until?.toISOString() ?? null,
    mine: row.userId === officer.value.userId,
  }))
  const isPresent = (line: DutyLine) => line.until === null || line.until > now.toISOString()
  return ok({
    present: lines
      .filter(isPresent)
      .sort((a, b) => ORDER.indexOf(a.duty) - ORDER.indexOf(b.duty) || a.name.localeCompare(b.name, 'en')),
    before: lines.filter((line) => !isPresent(line)),
    mayChange: mayNot(actor, 'end-duty') === null,
    mayEndSessions: mayNot(actor, 'end-sessions') === null,
  })
}

/** Signs an officer out everywhere: a telephone lost, or a duty that ended in a quarrel. */
export async function endOfficerSessions(
  actor: Actor,
  input: { readonly userId: UserId },
  now: Date = new Date(),
): Promise<Result<{ readonly ended: number }, 'not-allowed' | 'not-understood' | 'not-found'>> {
  const officer = deskOnly(actor, 'end-sessions')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { userId } = read.value
  return write<Result<{ ended: number }, 'not-found'>>(async (tx) => {
    await holdSociety(tx, societyId)
    const row = (await dutiesIn(societyId, tx)).find((one) => one.userId === userId)
    if (!row) return notFound('officer')
    const ended = await endSessionsOf(tx, userId)
    const record = { subject: row.name, subjectId: userId, after: { 'Sessions ended': ended } }
    await recordAct(tx, actor, { act: 'end-sessions', area: 'access', ...record }, now)
    return ok({ ended })
  })
}

/**
 * A one-time link: for a new officer who lost the first one, which ends, or for one who forgot the password. An officer
 * who has a desk in another society too gets none: the link would open that desk as well.
 */
export async function newOneTimeLink(
  actor: Actor,
  input: { readonly userId: UserId },
  now: Date = new Date(),
): Promise<Result<{ readonly token: string }, 'not-allowed' | 'not-understood' | LinkRefusals>> {
  const officer = deskOnly(actor, 'give-duty')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { userId } = read.value
  if (userId === officer.value.userId) return refused('own-link', 'Change your own password under Your account.')
  return write<Result<{ token: string }, LinkRefusals>>(async (tx) => {
    await holdSociety(tx, societyId)
    const rows = await dutiesIn(societyId, tx)
    const row = rows.find((one) => one.userId === userId && (one.until === null || one.until > now))
    if (!row) return notFound('officer')
    if (await isAwaitedElsewhere(tx, societyId, userId, now))
      return refused(
        'desk-elsewhere',
        `${row.name} is an officer of another society too. Whoever runs the server can make the link.`,
      )
    await endOneTimes(tx, 'set-password', userId)
    const what = { purpose: 'set-password' as const, userId, societyId, endsDuty: null }
    const token = await issueOneTime(tx, what, linkUntil(now), now)
    const record = {
      subject: row.name,
      subjectId: userId,
      after: { 'One-time link': row.canSignIn ? 'made, for a new password' : 'made anew' },
    }
    await recordAct(tx, actor, { act: 'give-duty', area: 'access', ...record }, now)
    return ok({ token })
  })
}
