// Adds a person to the society's book or changes what it says of one.

import type { MemberRow } from '@/lib/boards/desk-views'
import { figureOf } from '@/lib/boards/figure'
import type { Actor } from '@/lib/facts/actor'
import { type KeepPerson, keepPerson as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import {
  addFigure,
  insertPerson,
  type PersonAndFigure,
  type PersonToKeep,
  peopleOf,
  personIn,
  updatePerson,
} from '@/lib/store/people'
import { today } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'figure-not-yours'

export async function keepPerson(
  actor: Actor,
  input: KeepPerson,
  now: Date = new Date(),
): Promise<Result<{ personId: string }, Refusals>> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { personId, indexTenths, ...person } = read.value
  const { societyId, userId } = officer.value
  const figure = (reason: string) =>
    indexTenths === null
      ? null
      : { indexTenths, source: person.handicapSource, from: today(now), reason, byUserId: userId }

  return write<Result<{ personId: string }, Refusals>>(async (tx) => {
    if (personId === undefined)
      return ok({ personId: await insertPerson(tx, societyId, person, figure('First figure in the book'), now) })
    const before = await personIn(tx, societyId, personId)
    if (!before) return notFound('person')
    const changed = changesFigure(before, person, indexTenths)
    if (changed && mayNot(actor, 'change-handicap'))
      return refused(
        'figure-not-yours',
        `${before.firstName} ${before.familyName} has ${figureOf(before.indexTenths)}: the handicap secretary changes it, with a reason.`,
      )
    await updatePerson(tx, societyId, personId, person)
    const added = figure('Corrected in the member list')
    if (changed && added) await addFigure(tx, societyId, personId, added, now)
    return ok({ personId })
  })
}

/** A figure that somebody already has is history: an empty field leaves it, another one is a change. */
function changesFigure(before: PersonAndFigure, person: PersonToKeep, indexTenths: number | null): boolean {
  if (indexTenths === null) return false
  return before.indexTenths !== indexTenths || before.handicapSource !== person.handicapSource
}

/** Members and known guests; whoever has left only when asked for. */
export async function memberList(
  actor: Actor,
  { withFormer = false } = {},
): Promise<Result<readonly MemberRow[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const people = await peopleOf(officer.value.societyId)
  return ok(
    people
      .filter((person) => withFormer || person.leftOn === null)
      .map(({ figure, ...person }) => ({
        ...person,
        indexTenths: figure?.indexTenths ?? null,
        figure: figureOf(figure?.indexTenths ?? null),
        figureFrom: figure?.from ?? null,
        figureReason: figure?.reason ?? null,
      })),
  )
}
