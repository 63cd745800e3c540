// Entries: members ticked in or taken out, guests with their host, and a waiting list when the places are full.

import { sidesDecided } from '@/lib/boards/sides-of-record'
import type { InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import {
  type EnterGuest,
  type EnterPlayers,
  enterGuest as guestSchema,
  enterPlayers as playersSchema,
} from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { type Fault, type Refused, type Result, refused } from '@/lib/result'
import { dayExtras } from '@/lib/store/day-setup'
import { insertEntry, takeOutOfDraw, updateEntry } from '@/lib/store/entries'
import { insertPerson, type PersonKept, peopleOf } from '@/lib/store/people'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { cardsAfterChange, closedForEntries, freezeLate, hasScores, movedUp, teeFor } from './entry-list'
import { notUnderstood, parseInput } from './parse-input'

export interface Entered {
  readonly version: number
  /** Names of those who had to be put on the waiting list. */
  readonly waiting: readonly string[]
  /** Names of those who got a place because somebody withdrew. */
  readonly movedUp: readonly string[]
}

type Refusals = DayRefusals | 'entries-over' | 'has-scores' | 'no-figure'

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
      const people = new Map((await peopleOf(societyId, tx)).map((person) => [person.personId, person]))
      const { places } = await dayExtras(tx, day.id)
      const decided = decide(day, people, places, enter, withdraw)
      if ('ok' in decided) return decided
      return {
        record: { area: 'entries', ...entriesSaid(day, people, decided) },
        save: async (saving) => {
          for (const entryId of decided.out) {
            await takeOutOfDraw(saving, entryId, sidesDecided(day))
            await updateEntry(saving, entryId, { status: 'withdrawn' })
          }
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
          return { waiting: decided.waiting, movedUp: decided.up.map((entry) => entry.familyName) }
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
  const tee = (id: string) => day.tees.find((one) => one.id === id)?.name ?? 'no tee'
  const before: Record<string, string> = {}
  const after: Record<string, string> = {}
  const say = (entryId: string, status: string, teeId?: string) => {
    const entry = entryOf.get(entryId)
    if (!entry) return
    const name = `${entry.firstName} ${entry.familyName}`
    before[name] = `${entry.status}, ${tee(entry.roundTeeId)}`
    after[name] = `${status}, ${tee(teeId ?? entry.roundTeeId)}`
  }
  for (const entryId of out) say(entryId, 'withdrawn')
  for (const { entryId, tee: teeId } of moved) say(entryId, entryOf.get(entryId)?.status ?? 'entered', teeId)
  for (const { entryId, status, tee: teeId } of back) say(entryId, status, teeId)
  for (const { id } of up) say(id, 'entered')
  for (const { personId, status, tee: teeId } of fresh) {
    const person = people.get(personId)
    if (person) after[`${person.firstName} ${person.familyName}`] = `${status}, ${tee(teeId)}`
  }
  return { before, after }
}

type Status = 'entered' | 'waiting'

interface Decision {
  readonly out: readonly string[]
  readonly moved: readonly { entryId: string; tee: string }[]
  readonly back: readonly { entryId: string; status: Status; tee: string }[]
  readonly fresh: readonly { personId: string; status: Status; tee: string }[]
  readonly up: DayRecord['entries']
  readonly waiting: readonly string[]
}

function decide(
  day: DayRecord,
  people: ReadonlyMap<string, PersonKept>,
  places: number | null,
  enter: readonly { personId: string; roundTeeId: string | null }[],
  withdraw: readonly string[],
): Decision | Refused<'not-understood' | 'has-scores' | 'not-found' | 'no-figure'> {
  const faults: Fault[] = []
  const entryOf = new Map(day.entries.map((entry) => [entry.personId, entry]))
  const out: DayRecord['entries'][number][] = []
  for (const [at, personId] of withdraw.entries()) {
    const entry = entryOf.get(personId)
    if (!entry) return notFound('entry')
    if (enter.some((one) => one.personId === personId))
      faults.push({ place: `withdraw[${at}]`, sentence: `${entry.familyName} cannot be put in and taken out at once.` })
    if (entry.status === 'withdrawn') continue
    if (hasScores(day, entry.id))
      return refused(
        'has-scores',
        `${entry.firstName} ${entry.familyName} has scores on the card. Rule the card withdrawn instead, under Returns.`,
      )
    out.push(entry)
  }
  let free =
    (places ?? Number.POSITIVE_INFINITY) -
    day.entries.filter((entry) => entry.status === 'entered' && !out.includes(entry)).length
  const decision = {
    moved: [] as { entryId: string; tee: string }[],
    back: [] as { entryId: string; status: Status; tee: string }[],
    fresh: [] as { personId: string; status: Status; tee: string }[],
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
    const name = `${person.firstName} ${person.familyName}`
    const entry = entryOf.get(personId)
    if (seen.has(personId)) {
      faults.push({ place, sentence: `${name} is there twice.` })
      continue
    }
    seen.add(personId)
    if (person.leftOn !== null) faults.push({ place, sentence: `${name} has left the society.` })
    if (person.kind === 'guest' && !entry) faults.push({ place, sentence: `${name} is a guest: enter with a host.` })
    const tee = teeFor(day, person.gender, roundTeeId)
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
    else decision.waiting.push(person.familyName)
    if (status === 'entered' && day.status !== 'called' && person.figure === null)
      return refused('no-figure', `Handicaps are frozen and ${name} has no figure. Give one first, under Members.`)
    // A figure already frozen belongs to the tee it was worked out for.
    if (entry) decision.back.push({ entryId: entry.id, status, tee: entry.frozen ? entry.roundTeeId : tee.value })
    else decision.fresh.push({ personId, status, tee: tee.value })
  }
  if (faults.length > 0) return notUnderstood(faults)
  return { ...decision, up, out: out.map((entry) => entry.id) }
}

export async function enterGuest(
  actor: Actor,
  input: EnterGuest,
  now: Date = new Date(),
): Promise<Result<Entered & { entryId: string }, Refusals | 'no-host' | 'entered-already'>> {
  const read = parseInput(guestSchema, input)
  if (!read.ok) return read
  const { dayId, version, hostId, claimedTenths, ...guest } = read.value
  return changeOfDay<Omit<Entered, 'version'> & { entryId: string }, Refusals | 'no-host' | 'entered-already'>(
    actor,
    'enter-player',
    { dayId, version },
    async (day, { societyId }, tx) => {
      const over = closedForEntries(day)
      if (over) return over
      const people = await peopleOf(societyId, tx)
      const host = people.find((person) => person.personId === hostId)
      if (!host) return notFound('person')
      const hostEntry = day.entries.find((entry) => entry.personId === hostId)
      if (host.kind !== 'member' || !hostEntry || hostEntry.status === 'withdrawn')
        return refused('no-host', `A guest plays with a host: enter ${host.firstName} ${host.familyName} first.`)
      const tee = teeFor(day, guest.gender, null)
      if (!tee.ok) return notUnderstood([{ place: 'gender', sentence: tee.sentence }])
      const known = people.find((person) => person.kind === 'guest' && isSame(person, guest))
      const entry = day.entries.find((one) => one.personId === known?.personId)
      if (entry && entry.status !== 'withdrawn')
        return refused('entered-already', `${guest.firstName} ${guest.familyName} is entered already.`)
      const { places } = await dayExtras(tx, day.id)
      const inPlay = day.entries.filter((one) => one.status === 'entered').length
      const status: Status = places === null || inPlay < places ? 'entered' : 'waiting'
      return {
        record: {
          area: 'entries',
          after: {
            [`${guest.firstName} ${guest.familyName}`]: `${status}, guest of ${host.firstName} ${host.familyName}`,
          },
        },
        save: async (saving) => {
          const personId =
            known?.personId ??
            (await insertPerson(
              saving,
              societyId,
              {
                ...guest,
                kind: 'guest',
                regular: false,
                email: null,
                phone: null,
                handicapSource: 'claimed',
                memberSince: null,
                leftOn: null,
              },
              null,
              now,
            ))
          const fresh = { personId, hostId, kind: 'guest' as const, status, roundTeeId: tee.value, claimedTenths }
          const entryId = entry?.id ?? (await insertEntry(saving, societyId, day.id, fresh, now))
          // A figure already frozen belongs to the tee and the claim it was worked out from.
          if (entry)
            await updateEntry(saving, entryId, {
              status,
              hostId,
              ...(entry.frozen ? {} : { claimedTenths, roundTeeId: tee.value }),
            })
          await freezeLate(saving, day)
          await cardsAfterChange(saving, day)
          return { entryId, waiting: status === 'waiting' ? [guest.familyName] : [], movedUp: [] }
        },
      }
    },
    now,
  )
}

function isSame(
  person: Pick<PersonKept, 'firstName' | 'familyName' | 'gender'>,
  other: Pick<PersonKept, 'firstName' | 'familyName' | 'gender'>,
): boolean {
  const word = (one: string) => one.trim().toLocaleLowerCase('en-GB')
  return (
    word(person.firstName) === word(other.firstName) &&
    word(person.familyName) === word(other.familyName) &&
    person.gender === other.gender
  )
}
