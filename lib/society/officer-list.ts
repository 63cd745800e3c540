// Who holds which duty since when, who held it before; and ending an officer's sessions.

import 'server-only'
import type { Actor, Duty } from '@/lib/facts/actor'
import { endOfficerSessions as schema } from '@/lib/facts/duty-commands'
import { ok, type Result } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { dutiesIn, holdSociety } from '@/lib/store/officers'
import { endOneTimes, issueOneTime } from '@/lib/store/one-time'
import { endSessionsOf } from '@/lib/store/sessions'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly, notFound } from './desk-only'
import { linkUntil } from './give-duty'
import { parseInput } from './parse-input'

export interface DutyLine {
  readonly dutyId: string
  readonly userId: string
  readonly name: string
  readonly email: string
  readonly duty: Duty
  readonly from: string
  readonly until: string | null
  readonly canSignIn: boolean
  readonly mine: boolean
}

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
  input: { readonly userId: string },
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

/** A new one-time link for a new officer who lost the first one, which ends. */
export async function newOneTimeLink(
  actor: Actor,
  input: { readonly userId: string },
  now: Date = new Date(),
): Promise<Result<{ readonly token: string }, 'not-allowed' | 'not-understood' | 'not-found'>> {
  const officer = deskOnly(actor, 'give-duty')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { userId } = read.value
  return write<Result<{ token: string }, 'not-found'>>(async (tx) => {
    await holdSociety(tx, societyId)
    const rows = await dutiesIn(societyId, tx)
    const row = rows.find((one) => one.userId === userId && (one.until === null || one.until > now))
    // Only for whoever cannot sign in yet: a link for another officer's account would be a way into it.
    if (!row || row.canSignIn) return notFound('officer who waits for a link')
    await endOneTimes(tx, 'set-password', userId)
    const what = { purpose: 'set-password' as const, userId, societyId, endsDuty: null }
    const token = await issueOneTime(tx, what, linkUntil(now), now)
    const record = { subject: row.name, subjectId: userId, after: { 'One-time link': 'made anew' } }
    await recordAct(tx, actor, { act: 'give-duty', area: 'access', ...record }, now)
    return ok({ token })
  })
}
