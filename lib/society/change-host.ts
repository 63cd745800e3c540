// A guest comes with another member than was first said: the host is changed where the entry stands, without withdrawing.

import type { Actor } from '@/lib/facts/actor'
import { type ChangeHost, changeHost as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { PersonId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { updateEntry } from '@/lib/store/entries'
import { type PersonKept, peopleOf } from '@/lib/store/people'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { cardsAfterChange, closedForEntries } from './entry-list'
import { parseInput } from './parse-input'

type Refusals = DayRefusals | 'entries-over' | 'no-host'

/** Both by name, for the word that it is done. */
interface HostChanged {
  readonly guest: string
  readonly host: string
}

export async function changeHost(
  actor: Actor,
  input: ChangeHost,
  now: Date = new Date(),
): Promise<Result<HostChanged & { readonly version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { dayId, version, entryId, hostId } = read.value
  return changeOfDay<HostChanged, Refusals>(
    actor,
    'enter-player',
    { dayId, version },
    async (day, { societyId }, tx) => {
      const over = closedForEntries(day)
      if (over) return over
      const entry = day.entries.find((one) => one.id === entryId)
      if (entry?.kind !== 'guest' || entry.status === 'withdrawn') return notFound('guest')
      const people = await peopleOf(societyId, tx)
      const host = hostOn(day, people, hostId)
      if (!host.ok) return host
      const guest = fullName(entry)
      const before = people.find((one) => one.personId === entry.hostId)
      const words = (one: PersonKept | undefined) => `guest of ${one ? fullName(one) : 'the society'}`
      return {
        record: {
          area: 'entries',
          before: { [guest]: words(before) },
          after: { [guest]: words(host.value) },
        },
        save: async (saving) => {
          await updateEntry(saving, entryId, { hostId })
          await cardsAfterChange(saving, day)
          return { guest, host: fullName(host.value) }
        },
      }
    },
    now,
  )
}

/** A member who plays on the day. */
export function hostOn(
  day: DayRecord,
  people: readonly PersonKept[],
  hostId: PersonId,
): Result<PersonKept, 'not-found' | 'no-host'> | Refused<'not-found' | 'no-host'> {
  const host = people.find((one) => one.personId === hostId)
  if (!host) return notFound('person')
  const entry = day.entries.find((one) => one.personId === hostId)
  if (host.kind === 'member' && entry && entry.status !== 'withdrawn') return ok(host)
  const sentence = `A guest plays with a host: enter ${fullName(host)} first.`
  return refused('no-host', sentence, [{ place: 'hostId', sentence }])
}
