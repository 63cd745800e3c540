// The private link of a member's own page: renewed by the desk or by the member, or ended by the desk.

import type { PersonId, SocietyId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import { personOfPage as schema } from '@/lib/facts/privacy-commands'
import { ok, type Result } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import { personIn } from '@/lib/store/people'
import { changePageKey } from '@/lib/store/privacy'
import { write } from '@/lib/store/write'
import { type Act, mayNot } from './acts'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found'

/** The link is told once, to be handed over; the old one has ended. */
export async function renewPageKey(
  actor: Actor,
  input: { readonly personId: PersonId },
  now: Date = new Date(),
): Promise<Result<{ readonly path: string }, Refusals>> {
  const no = mayNot(actor, 'renew-page-key')
  if (no) return no
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { personId } = read.value
  if (actor.kind !== 'officer' && actor.kind !== 'member') return notFound('person')
  if (actor.kind === 'member' && actor.personId !== personId) return notFound('person')
  return write<Result<{ path: string }, 'not-found'>>(async (tx) => {
    const key = await changePageKey(tx, actor.societyId, personId, 'new')
    if (key === null) return notFound('person')
    await told(tx, actor, actor.societyId, personId, 'renew-page-key', now)
    return ok({ path: `/member/${key}` })
  })
}

export async function endPageKey(
  actor: Actor,
  input: { readonly personId: PersonId },
  now: Date = new Date(),
): Promise<Result<void, Refusals>> {
  const officer = deskOnly(actor, 'end-page-key')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { personId } = read.value
  return write<Result<void, 'not-found'>>(async (tx) => {
    if ((await changePageKey(tx, societyId, personId, 'ended')) === null) return notFound('person')
    await told(tx, actor, societyId, personId, 'end-page-key', now)
    return ok()
  })
}

async function told(tx: Tx, actor: Actor, societyId: SocietyId, personId: PersonId, act: Act, now: Date) {
  const person = await personIn(tx, societyId, personId)
  const subject = person ? fullName(person) : personId
  const record = {
    subject,
    subjectId: personId,
    after: { 'Link of the own page': act === 'end-page-key' ? 'ended' : 'renewed, the old one ended' },
  }
  await recordAct(tx, actor, { act, area: 'access', ...record }, now)
}
