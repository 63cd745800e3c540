// Adds a person to the society's book or changes what it says of one.

import { figureWords, personWords } from '@/lib/boards/acts-in-words'
import type { MemberRow } from '@/lib/boards/desk-views'
import { figureOf } from '@/lib/boards/figure'
import { mergeFields } from '@/lib/boards/merge-fields'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { type KeepPerson, keepPerson as schema } from '@/lib/facts/commands'
import type { PersonId } from '@/lib/facts/ids'
import { fullName, nameKey } from '@/lib/facts/person-name'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
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
import { maySeePageKeys } from './keys-for-duty'
import { refusedForName } from './namesakes'
import { parseInput } from './parse-input'

type Refusals =
  | 'not-allowed'
  | 'not-understood'
  | 'not-found'
  | 'figure-not-yours'
  | 'person-moved-on'
  | 'same-name'
  | 'told-apart'

export async function keepPerson(
  actor: Actor,
  input: KeepPerson,
  now: Date = new Date(),
): Promise<Result<{ personId: PersonId }, Refusals>> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { personId, indexTenths, was, overrule = [], isAnother, ...typed } = read.value
  const { societyId, userId } = officer.value
  const figure = (reason: string) =>
    indexTenths === null
      ? null
      : { indexTenths, source: typed.handicapSource, from: today(now), reason, byUserId: userId }

  return write<Result<{ personId: PersonId }, Refusals>>(async (tx) => {
    const said = { act: 'keep-people', subject: fullName(typed) }
    const entered = indexTenths === null ? {} : figureWords(indexTenths, typed.handicapSource)
    if (personId === undefined) {
      const no = refusedForName(await peopleOf(societyId, tx), typed, isAnother)
      if (no) return no
      const id = await insertPerson(tx, societyId, typed, figure('First figure in the book'), now)
      const after = { ...personWords(typed), ...entered }
      await recordAct(tx, actor, { ...said, area: 'book', subjectId: id, after }, now)
      return ok({ personId: id })
    }
    const before = await personIn(tx, societyId, personId)
    if (!before) return notFound('person')
    const { merged: person, collisions } = mergeFields<PersonToKeep>(was ?? {}, typed, before)
    const untold = collisions.filter((key) => !overrule.includes(key))
    if (untold.length > 0) return personMovedOn(before, untold)
    const renamed = fullName({ ...before, ...person }) !== fullName(before)
    const no = renamed
      ? refusedForName(await peopleOf(societyId, tx), { ...before, ...person }, isAnother || isRetold(before, person), {
          self: personId,
        })
      : null
    if (no) return no
    const changed = changesFigure(before, person, indexTenths)
    if (changed && mayNot(actor, 'change-handicap'))
      return refused(
        'figure-not-yours',
        `${fullName(before)} has ${figureOf(before.indexTenths)}: the handicap secretary changes it, with a reason.`,
      )
    await updatePerson(tx, societyId, personId, person)
    const added = figure('Corrected in the member list')
    if (changed && added) await addFigure(tx, societyId, personId, added, now)
    const figured = changed && added !== null
    const words = changedInWords(
      {
        ...personWords(before),
        ...contactWords(before),
        ...(figured ? figureWords(before.indexTenths, before.handicapSource) : {}),
      },
      { ...personWords({ ...before, ...person }), ...contactWords(before, person), ...(figured ? entered : {}) },
    )
    if (Object.keys(words.after).length > 0)
      await recordAct(tx, actor, { ...said, area: figured ? 'handicaps' : 'book', subjectId: personId, ...words }, now)
    return ok({ personId })
  })
}

const FIELDS: Readonly<Partial<Record<keyof PersonToKeep, string>>> = {
  firstName: 'First name',
  familyName: 'Family name',
  knownAs: 'Told apart by',
  gender: 'Tees',
  kind: 'Kind',
  regular: 'Plays regularly',
  email: 'E-mail',
  phone: 'Telephone',
  handicapSource: 'Where the figure is kept',
  memberSince: 'Member since',
  membershipNumber: 'Membership number',
  homeClub: 'Home club',
  leftOn: 'Left on',
  junior: 'Under 18',
  labels: 'Sorted under',
}

/** Only the word was changed: nobody has to be asked again whether there are two. */
const isRetold = (before: PersonToKeep, person: PersonToKeep) => nameKey(before) === nameKey(person)

/** Both desks changed the same field: nothing is kept until the later one has seen what the other wrote. */
function personMovedOn(now: PersonToKeep, collisions: readonly (keyof PersonToKeep)[]) {
  return refused(
    'person-moved-on',
    'Somebody else has changed the same meanwhile. Press again to keep yours.',
    collisions.map((key) => {
      const value = now[key]
      const said = typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value ?? 'nothing')
      return { place: key, sentence: `${FIELDS[key] ?? key} reads ${said} now.` }
    }),
  )
}

type Contact = { readonly email: string | null; readonly phone: string | null }

/** That a contact detail changed, never what it is. */
function contactWords(before: Contact, after: Contact = before) {
  const word = (was: string | null, is: string | null) =>
    was === is ? 'as it was' : is === null ? 'taken out' : 'changed'
  return { 'E-mail address': word(before.email, after.email), Telephone: word(before.phone, after.phone) }
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
        pageKey: maySeePageKeys(actor) ? person.pageKey : null,
        indexTenths: figure?.indexTenths ?? null,
        figure: figureOf(figure?.indexTenths ?? null),
        figureFrom: figure?.from ?? null,
        figureReason: figure?.reason ?? null,
      })),
  )
}
