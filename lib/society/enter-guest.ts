// A guest comes with a host: typed in, or one the book knows from an earlier day or from the members' list.

import type { Actor } from '@/lib/facts/actor'
import {
  type EnterGuest,
  type EnterKnownGuest,
  enterGuest as guestSchema,
  enterKnownGuest as knownSchema,
} from '@/lib/facts/commands'
import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { EntryId, PersonId, SocietyId } from '@/lib/facts/ids'
import { fullName, type PersonName } from '@/lib/facts/person-name'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import type { Gender } from '@/lib/rules/day'
import type { Tx } from '@/lib/store/client'
import { dayExtras } from '@/lib/store/day-setup'
import { insertEntry, updateEntry } from '@/lib/store/entries'
import { guestsOf, insertPerson, type KnownGuest, type PersonKept, peopleOf } from '@/lib/store/people'
import { hostOn } from './change-host'
import { changeOfDay, type DayRefusals, type Decided } from './day-change'
import { deskOnly, notFound } from './desk-only'
import { cardsAfterChange, closedForEntries, type Entered, freezeLate, teeFor } from './entry-list'
import { namesakesOf, refusedForName } from './namesakes'
import { notUnderstood, parseInput } from './parse-input'

type Refusals = DayRefusals | 'entries-over' | 'no-figure' | 'no-host' | 'entered-already' | 'same-name' | 'told-apart'
type GuestEntered = Entered & { readonly entryId: EntryId; readonly name: string }
type Saved = Omit<GuestEntered, 'version'>

export async function enterGuest(
  actor: Actor,
  input: EnterGuest,
  now: Date = new Date(),
): Promise<Result<GuestEntered, Refusals>> {
  const read = parseInput(guestSchema, input)
  if (!read.ok) return read
  const { dayId, version, hostId, claimedTenths, namesake, ...typed } = read.value
  return changeOfDay<Saved, Refusals>(
    actor,
    'enter-player',
    { dayId, version },
    async (day, { societyId }, tx) => {
      const people = await peopleOf(societyId, tx)
      const same = namesake === 'same' ? onlyGuest(namesakesOf(people, typed)) : ok(null)
      if (!same.ok) return same
      const no = same.value ? null : refusedForName(people, typed, namesake === 'another', { onDay: day.entries })
      if (no) return no
      const person = same.value
        ? { ...same.value, add: null }
        : { ...typed, personId: null, add: (saving: Tx) => insertPerson(saving, societyId, asGuest(typed), null, now) }
      return entering(day, { societyId, people, person, hostId, claimedTenths, now }, tx)
    },
    now,
  )
}

export async function enterKnownGuest(
  actor: Actor,
  input: EnterKnownGuest,
  now: Date = new Date(),
): Promise<Result<GuestEntered, Refusals>> {
  const read = parseInput(knownSchema, input)
  if (!read.ok) return read
  const { dayId, version, hostId, personId, claimedTenths } = read.value
  return changeOfDay<Saved, Refusals>(
    actor,
    'enter-player',
    { dayId, version },
    async (day, { societyId }, tx) => {
      const people = await peopleOf(societyId, tx)
      const known = people.find((one) => one.personId === personId)
      if (known?.kind !== 'guest' || known.leftOn !== null) return notFound('guest')
      const entry = playsAlready(day, personId)
      if (entry) return enteredAlready(entry)
      if (claimedTenths === null && known.figure === null) {
        const sentence = `${fullName(known)} has no handicap yet. Write the one the host gives.`
        return refused('no-figure', sentence, [{ place: 'claimedTenths', sentence }])
      }
      return entering(day, { societyId, people, person: { ...known, add: null }, hostId, claimedTenths, now }, tx)
    },
    now,
  )
}

/** Guests the book knows, in the order of their names. */
export async function knownGuests(actor: Actor): Promise<Result<readonly KnownGuest[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  return officer.ok ? ok(await guestsOf(officer.value.societyId)) : officer
}

interface Guest {
  readonly societyId: SocietyId
  readonly people: readonly PersonKept[]
  readonly person: PersonName & { readonly gender: Gender } & (
      | { readonly personId: PersonId; readonly add: null }
      | { readonly personId: null; readonly add: (tx: Tx) => Promise<PersonId> }
    )
  readonly hostId: PersonId
  readonly claimedTenths: number | null
  readonly now: Date
}

async function entering(
  day: DayRecord,
  { societyId, people, person, hostId, claimedTenths, now }: Guest,
  tx: Tx,
): Promise<Decided<Saved> | Refused<Refusals>> {
  const over = closedForEntries(day)
  if (over) return over
  const already = person.personId === null ? undefined : playsAlready(day, person.personId)
  if (already) return enteredAlready(already)
  const entry = day.entries.find((one) => one.personId === person.personId)
  const asked = hostOn(day, people, hostId)
  if (!asked.ok) return asked
  const host = asked.value
  const tee = teeFor(day, person.gender, null)
  if (!tee.ok) return notUnderstood([{ place: 'gender', sentence: tee.sentence }])
  const name = fullName(person)
  const { places } = await dayExtras(tx, day.id)
  const inPlay = day.entries.filter((one) => one.status === 'entered').length
  const status = places === null || inPlay < places ? ('entered' as const) : ('waiting' as const)
  return {
    record: { area: 'entries', after: { [name]: `${status}, guest of ${fullName(host)}` } },
    save: async (saving) => {
      const personId = person.personId ?? (await person.add(saving))
      const fresh = { personId, hostId, kind: 'guest' as const, status, roundTeeId: tee.value, claimedTenths }
      const entryId = entry?.id ?? (await insertEntry(saving, societyId, day.id, fresh, now))
      // A figure already frozen belongs to the tee and the claim it was worked out from.
      if (entry)
        await updateEntry(saving, entryId, {
          status,
          hostId,
          enteredAt: now,
          ...(entry.frozen ? {} : { claimedTenths, roundTeeId: tee.value }),
        })
      await freezeLate(saving, day)
      await cardsAfterChange(saving, day)
      return {
        entryId,
        name,
        entered: status === 'entered' ? 1 : 0,
        withdrawn: [],
        waiting: status === 'waiting' ? [name] : [],
        movedUp: [],
      }
    },
  }
}

const playsAlready = (day: DayRecord, personId: PersonId) =>
  day.entries.find((one) => one.personId === personId && one.status !== 'withdrawn')

/** The guest of this day was meant: the way on is another host, not another entry. */
const enteredAlready = (entry: EntryRecord) =>
  refused(
    'entered-already',
    `${fullName(entry)} is entered on this day already${entry.hostName === null ? '' : `, as the guest of ${entry.hostName}`}.`,
  )

/** "Yes, the same guest": then there must be one, and only one, to mean. */
function onlyGuest(namesakes: readonly PersonKept[]): Result<PersonKept | null, 'not-understood'> {
  const guests = namesakes.filter((one) => one.kind === 'guest')
  if (guests.length > 1)
    return notUnderstood([
      {
        place: 'namesake',
        sentence: `There are ${guests.length} guests of that name: choose the right one from the list.`,
      },
    ])
  if (guests.length === 0 && namesakes.length > 0)
    return notUnderstood([
      { place: 'namesake', sentence: `${fullName(namesakes[0]!)} is a member: tick the name in the list above.` },
    ])
  return ok(guests[0] ?? null)
}

const asGuest = (typed: PersonName & { readonly gender: Gender }) => ({
  firstName: typed.firstName,
  familyName: typed.familyName,
  knownAs: typed.knownAs,
  gender: typed.gender,
  kind: 'guest' as const,
  regular: false,
  email: null,
  phone: null,
  handicapSource: 'claimed' as const,
  memberSince: null,
  leftOn: null,
})
