// Teams of the day, between which its matches are counted: named and filled by hand, or shared out by handicap.

import { nameOf } from '@/lib/boards/handicap-table'
import { changedInWords, type InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import {
  type ArrangeTeams,
  type MakeTeams,
  makeTeams as makeSchema,
  arrangeTeams as schema,
} from '@/lib/facts/match-commands'
import { type Result, refused } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { replaceTeams } from '@/lib/store/pairings'
import { changeOfDay, type DayRefusals } from './day-change'
import { notUnderstood, parseInput } from './parse-input'
import { evenSides } from './put-together'
import { seatFaults } from './seats'

type Refusals = DayRefusals | 'day-closed'
interface Wanted {
  readonly name: string
  readonly entryIds: readonly EntryId[]
}

/** No teams at all takes them away again. */
export async function arrangeTeams(
  actor: Actor,
  input: ArrangeTeams,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { teams } = read.value
  return changeOfDay<object, Refusals>(
    actor,
    'arrange-teams',
    read.value,
    async (day) => {
      if (day.status === 'closed') return refused('day-closed', 'The day is closed: the teams stay as they were.')
      const names = new Set<string>()
      const faults = [
        ...(teams.length === 1 ? [{ place: 'teams', sentence: 'A match between teams needs two of them.' }] : []),
        ...teams.flatMap(({ name }, at) => {
          const taken = names.has(name.toLowerCase())
          names.add(name.toLowerCase())
          return taken ? [{ place: `teams[${at}].name`, sentence: `There is a team ${name} already.` }] : []
        }),
        ...seatFaults(
          day,
          teams.map((team) => team.entryIds),
          (at, seat) => `teams[${at}].entryIds[${seat}]`,
        ),
      ]
      return faults.length > 0 ? notUnderstood(faults) : kept(day, teams)
    },
    now,
  )
}

/** The same number shares the field out the same way again. */
export async function makeTeams(
  actor: Actor,
  input: MakeTeams,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals | 'too-few'>> {
  const read = parseInput(makeSchema, input)
  if (!read.ok) return read
  const { names, seed } = read.value
  return changeOfDay<object, Refusals | 'too-few'>(
    actor,
    'arrange-teams',
    read.value,
    async (day) => {
      if (day.status === 'closed') return refused('day-closed', 'The day is closed: the teams stay as they were.')
      const entered = day.entries.filter((entry) => entry.status === 'entered').map((entry) => entry.id)
      if (entered.length < names.length)
        return refused('too-few', `${names.length} teams need at least ${names.length} players entered.`)
      const shares = evenSides(day, entered, Math.ceil(entered.length / names.length), seed)
      return kept(
        day,
        names.map((name, at) => ({ name, entryIds: shares[at] ?? [] })),
      )
    },
    now,
  )
}

function kept(day: DayRecord, teams: readonly Wanted[]) {
  return {
    record: changedInWords(teamWords(day, day.teams), teamWords(day, teams)),
    save: async (tx: Tx) => {
      await replaceTeams(tx, day.society.id, day.id, teams)
      return {}
    },
  }
}

function teamWords(day: DayRecord, teams: readonly Wanted[]): InWords {
  const entries = new Map(day.entries.map((entry) => [entry.id, entry]))
  return Object.fromEntries(
    teams.map((team) => [
      team.name,
      team.entryIds.map((id) => {
        const entry = entries.get(id)
        return entry ? nameOf(entry) : id
      }),
    ]),
  )
}
