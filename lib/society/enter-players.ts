// Entries: members ticked in or taken out, and a waiting list when the places are full.

import { listed } from '@/lib/boards/in-words'
import { movedUp } from '@/lib/boards/waiting-list'
import type { InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { type EnterPlayers, enterPlayers as playersSchema } from '@/lib/facts/commands'
import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { EntryId, PersonId, RoundTeeId } from '@/lib/facts/ids'
import { fullName, namesApart } from '@/lib/facts/person-name'
import { type Fault, type Refused, type Result, refused } from '@/lib/result'
import { dayExtras } from '@/lib/store/day-setup'
import { insertEntry, updateEntry } from '@/lib/store/entries'
import { type PersonKept, peopleOf } from '@/lib/store/people'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { cardsAfterChange, closedForEntries, type Entered, freezeLate, teeFor } from './entry-list'
import { notUnderstood, parseInput } from './parse-input'
import { saveWithdrawals, withdrawals } from './withdrawals'

type Refusals = DayRefusals | 'entries-over' | 'has-scores' | 'no-figure' | 'without-tee'

export async function enterPlayers(
  actor: Actor,
  input: EnterPlayers,
  now: Date = new Date(),
): Promise<Result<Entered, Refusals>> {
  const read = parseInput(playersSchema, input)
  if (!read.ok) return read
  const { dayId, version, enter, withdraw } = read.value
  return changeOfDay<Omit<Entered, 'version'>, Refusals>(
    actor,
    'enter-player',
    { dayId, version },
    async (day, { societyId }, tx) => {
      const over = closedForEntries(day)
      if (over) return over
      const out = withdrawals(day, withdraw)
      if (!out.ok) return out
      const people = new Map((await peopleOf(societyId, tx)).map((person) => [person.personId, person]))
      const { places } = await dayExtras(tx, day.id)
      const decided = decide(day, people, places, enter, out.value)
      if ('ok' in decided) return decided
      return {
        record: { area: 'entries', ...entriesSaid(day, people, decided) },
        save: async (saving) => {
          await saveWithdrawals(saving, day, decided.out)
          for (const { entryId, tee } of decided.moved) await updateEntry(saving, entryId, { roundTeeId: tee })
          for (const { entryId, status, tee } of decided.back)
            await updateEntry(saving, entryId, { status, roundTeeId: tee, enteredAt: now })
          for (const { personId, status, tee } of decided.fresh)
            await insertEntry(
              saving,
              societyId,
              day.id,
              { personId, hostId: null, kind: 'member', status, roundTeeId: tee, claimedTenths: null },
              now,
            )
          for (const entry of decided.up) await updateEntry(saving, entry.id, { status: 'entered' })
          await freezeLate(saving, day)
          await cardsAfterChange(saving, day)
          return {
            entered: decided.fresh.length + decided.back.length - decided.waiting.length,
            withdrawn: decided.out.map(fullName),
            waiting: decided.waiting,
            movedUp: decided.up.map(fullName),
          }
        },
      }
    },
    now,
  )
}

/** Everybody whose entry moves, as it was and as it is. */
function entriesSaid(
  day: DayRecord,
  people: ReadonlyMap<string, PersonKept>,
  { out, moved, back, fresh, up }: Decision,
): { before: InWords; after: InWords } {
  const entryOf = new Map(day.entries.map((entry) => [entry.id, entry]))
  const fresher = fresh.flatMap(({ personId }) => people.get(personId) ?? [])
  const labels = namesApart([...day.entries, ...fresher], (one) => one.personId)
  const tee = (id: RoundTeeId) => day.tees.find((one) => one.id === id)?.name ?? 'no tee'
  const before: Record<string, string> = {}
  const after: Record<string, string> = {}
  const say = (entryId: EntryId, status: string, teeId?: RoundTeeId) => {
    const entry = entryOf.get(entryId)
    const label = entry && labels.get(entry.personId)
    if (!label) return
    before[label] = `${entry.status}, ${tee(entry.roundTeeId)}`
    after[label] = `${status}, ${tee(teeId ?? entry.roundTeeId)}`
  }
  for (const { id } of out) say(id, 'withdrawn')
  for (const { entryId, tee: teeId } of moved) say(entryId, entryOf.get(entryId)?.status ?? 'entered', teeId)
  for (const { entryId, status, tee: teeId } of back) say(entryId, status, teeId)
  for (const { id } of up) say(id, 'entered')
  for (const { personId, status, tee: teeId } of fresh) {
    const label = labels.get(personId)
    if (label) after[label] = `${status}, ${tee(teeId)}`
  }
  return { before, after }
}

type Status = 'entered' | 'waiting'

interface Decision {
  readonly out: readonly EntryRecord[]
  readonly moved: readonly { entryId: EntryId; tee: RoundTeeId }[]
  readonly back: readonly { entryId: EntryId; status: Status; tee: RoundTeeId }[]
  readonly fresh: readonly { personId: PersonId; status: Status; tee: RoundTeeId }[]
  readonly up: readonly EntryRecord[]
  readonly waiting: readonly string[]
}

function decide(
  day: DayRecord,
  people: ReadonlyMap<string, PersonKept>,
  places: number | null,
  enter: readonly { personId: PersonId; roundTeeId: RoundTeeId | null }[],
  out: readonly EntryRecord[],
): Decision | Refused<'not-understood' | 'not-found' | 'no-figure' | 'without-tee'> {
  const faults: Fault[] = []
  const withoutTee: PersonKept[] = []
  const entryOf = new Map(day.entries.map((entry) => [entry.personId, entry]))
  let free =
    (places ?? Number.POSITIVE_INFINITY) -
    day.entries.filter((entry) => entry.status === 'entered' && !out.includes(entry)).length
  const decision = {
    moved: [] as { entryId: EntryId; tee: RoundTeeId }[],
    back: [] as { entryId: EntryId; status: Status; tee: RoundTeeId }[],
    fresh: [] as { personId: PersonId; status: Status; tee: RoundTeeId }[],
    waiting: [] as string[],
  }
  // Whoever waits already comes before whoever enters now.
  const up = movedUp(day, out, free)
  free -= up.length
  const seen = new Set<string>()
  for (const [at, { personId, roundTeeId }] of enter.entries()) {
    const place = `enter[${at}]`
    const person = people.get(personId)
    if (!person) return notFound('person')
    const name = fullName(person)
    const entry = entryOf.get(personId)
    if (seen.has(personId)) {
      faults.push({ place, sentence: `${name} is there twice.` })
      continue
    }
    seen.add(personId)
    if (entry && out.includes(entry))
      faults.push({ place, sentence: `${name} cannot be entered and withdrawn at once.` })
    if (person.leftOn !== null) faults.push({ place, sentence: `${name} has left the society.` })
    if (person.kind === 'guest' && !entry) faults.push({ place, sentence: `${name} is a guest: enter with a host.` })
    const tee = teeFor(day, person.gender, roundTeeId)
    if (!tee.ok && roundTeeId === null) {
      withoutTee.push(person)
      continue
    }
    if (!tee.ok) {
      faults.push({ place: `${place}.roundTeeId`, sentence: tee.sentence })
      continue
    }
    if (entry && entry.status !== 'withdrawn') {
      if (roundTeeId === null || entry.roundTeeId === tee.value) continue
      if (entry.frozen)
        faults.push({ place: `${place}.roundTeeId`, sentence: `${name}'s handicap is frozen on the tee as it is.` })
      decision.moved.push({ entryId: entry.id, tee: tee.value })
      continue
    }
    const status: Status = free > 0 ? 'entered' : 'waiting'
    if (status === 'entered') free -= 1
    else decision.waiting.push(name)
    if (status === 'entered' && day.status !== 'called' && person.figure === null && !entry?.frozen)
      return refused(
        'no-figure',
        `Handicaps are frozen and ${name} has no handicap yet. Give one first, under Members.`,
      )
    // A figure already frozen belongs to the tee it was worked out for.
    if (entry) decision.back.push({ entryId: entry.id, status, tee: entry.frozen ? entry.roundTeeId : tee.value })
    else decision.fresh.push({ personId, status, tee: tee.value })
  }
  if (faults.length > 0) return notUnderstood(faults)
  if (withoutTee.length > 0) return noTeeFor(withoutTee)
  return { ...decision, up, out }
}

/** Who it is, so that the others can be entered without them; the place of each fault is the person. */
function noTeeFor(people: readonly PersonKept[]): Refused<'without-tee'> {
  const genders = [...new Set(people.map((one) => one.gender))]
  const names = people.map(fullName)
  const who = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} more`] : names
  return refused(
    'without-tee',
    `${listed(who)} ${names.length === 1 ? 'has' : 'have'} no tee to play from: the day has no tee for ${listed(genders)}. Nobody was entered yet.`,
    people.map((one) => ({ place: one.personId, sentence: `${fullName(one)}: the day has no tee for ${one.gender}.` })),
  )
}
