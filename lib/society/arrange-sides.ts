// Sides of a competition: chosen by hand, inside a group or across several, or made as even as the handicaps allow.

import { sideWords } from '@/lib/boards/acts-in-words'
import { togetherIn } from '@/lib/boards/format-of-competition'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import {
  type ArrangeSides,
  type MakeSides,
  makeSides as makeSchema,
  arrangeSides as schema,
} from '@/lib/facts/match-commands'
import { ok, type Result, refused } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { replaceSides } from '@/lib/store/sides'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { cardsAfterChange } from './entry-list'
import { notUnderstood, parseInput } from './parse-input'
import { evenSides, pairingsAfterDraw } from './put-together'
import { seatFaults } from './seats'

type Refusals = DayRefusals | 'day-closed' | 'no-sides'

export async function arrangeSides(
  actor: Actor,
  input: ArrangeSides,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { competitionId, sides } = read.value
  const names = read.value.names?.map((name) => name || null)
  return changeOfDay<object, Refusals>(
    actor,
    'arrange-sides',
    read.value,
    async (day) => {
      const found = sided(day, competitionId)
      if (!found.ok) return found
      const { size } = found.value
      const faults = [
        ...seatFaults(day, sides, (at, seat) => `sides[${at}][${seat}]`),
        ...sides.flatMap((side, at) =>
          side.length > size ? [{ place: `sides[${at}]`, sentence: `A side here has ${size} players.` }] : [],
        ),
        ...(names ?? []).flatMap((name, at) =>
          name !== null && names?.indexOf(name) !== at
            ? [{ place: `name-${at + 1}`, sentence: 'Another side has that name.' }]
            : [],
        ),
      ]
      return faults.length > 0 ? notUnderstood(faults) : kept(day, found.value.competition, sides, names)
    },
    now,
  )
}

/** The same number makes the same sides again. */
export async function makeSides(
  actor: Actor,
  input: MakeSides,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals | 'too-few'>> {
  const read = parseInput(makeSchema, input)
  if (!read.ok) return read
  const { competitionId, seed } = read.value
  return changeOfDay<object, Refusals | 'too-few'>(
    actor,
    'arrange-sides',
    read.value,
    async (day) => {
      const found = sided(day, competitionId)
      if (!found.ok) return found
      const entered = day.entries.filter((entry) => entry.status === 'entered').map((entry) => entry.id)
      if (entered.length < 2) return refused('too-few', 'Sides need at least two players entered.')
      const { competition, size } = found.value
      return kept(day, competition, evenSides(day, entered, size, seed))
    },
    now,
  )
}

function sided(
  day: DayRecord,
  competitionId: CompetitionId,
): Result<{ competition: CompetitionRecord; size: number }, 'day-closed' | 'not-found' | 'no-sides'> {
  if (day.status === 'closed') return refused('day-closed', 'The day is closed: the sides stay as they were.')
  const competition = day.competitions.find((one) => one.id === competitionId)
  if (!competition) return notFound('competition')
  const size = togetherIn(competition)
  if (size < 2) return refused('no-sides', `${competition.name} is played alone: it has no sides.`)
  return ok({ competition, size })
}

function kept(
  day: DayRecord,
  competition: CompetitionRecord,
  sides: readonly (readonly EntryId[])[],
  names?: readonly (string | null)[],
) {
  const calledNow = competition.sides.map((side) => side.name)
  const before = sideWords(
    day,
    competition.sides.map((side) => side.entryIds),
    names && calledNow,
  )
  return {
    record: { subject: `${competition.name}, ${day.name}`, ...changedInWords(before, sideWords(day, sides, names)) },
    save: async (tx: Tx) => {
      await replaceSides(tx, day.society.id, competition.id, sides, names)
      await pairingsAfterDraw(tx, day, 'all')
      await cardsAfterChange(tx, day)
      return {}
    },
  }
}
