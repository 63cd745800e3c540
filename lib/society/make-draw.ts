// The draw: groups by lot, by handicap, in order of entry or by hand, and the sides inside them.

import { groupWords } from '@/lib/boards/acts-in-words'
import { goInPairs, groupNeeds } from '@/lib/boards/groups-that-fit'
import { figuresOf } from '@/lib/boards/handicap-table'
import { playerIds } from '@/lib/boards/ids-from-engine'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import {
  type ArrangeGroups,
  arrangeGroups as groupsSchema,
  type MakeDraw,
  makeDraw as schema,
} from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { type Result, refused } from '@/lib/result'
import { drawGroups } from '@/lib/rules/draw/groups'
import { starts } from '@/lib/rules/draw/starts'
import { hasHole, rangeInWords } from '@/lib/rules/hole-numbers'
import type { Tx } from '@/lib/store/client'
import { type GroupToKeep, type HowDrawn, replaceGroups } from '@/lib/store/groups'
import { changeOfDay, type DayRefusals } from './day-change'
import { codesUntil } from './day-clock'
import { cardsAfterChange } from './entry-list'
import { notUnderstood, parseInput } from './parse-input'
import { pairingsAfterDraw, sidesAfterDraw } from './put-together'
import { seatFaults } from './seats'

type Refusals = DayRefusals | 'day-closed' | 'start-published' | 'too-few' | 'too-many-groups'

export async function makeDraw(
  actor: Actor,
  input: MakeDraw,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { way, groupSize, seed, threes, evenSizes } = read.value
  return changeOfDay<object, Refusals>(
    actor,
    'make-draw',
    read.value,
    async (day) => {
      if (day.startPublishedAt !== null)
        return refused('start-published', 'The start sheet is out. Move players by hand, so that the others stay put.')
      const handicaps = figuresOf(day)
      const players = day.entries
        .filter((entry) => entry.status === 'entered')
        .map((entry) => ({
          id: entry.id,
          handicap: handicaps.get(entry.id)?.course.numerator ?? null,
          hostId: day.entries.find((host) => host.personId === entry.hostId)?.id ?? null,
        }))
      if (players.length < 2) return refused('too-few', 'A draw needs at least two players entered.')
      const inPairs = !evenSizes && goInPairs(groupNeeds(day.competitions))
      const groups = drawGroups(players, { way, groupSize: groupSize as 2 | 3 | 4, seed, smaller: threes, inPairs })
      return placed(
        day,
        groups.map((players) => ({ entryIds: playerIds(players) })),
        { drawWay: way, drawSeed: seed },
        now,
      )
    },
    now,
  )
}

/** Groups as moved by hand. Whoever is in none of them is left without a group until the desk finds a place. */
export async function arrangeGroups(
  actor: Actor,
  input: ArrangeGroups,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(groupsSchema, input)
  if (!read.ok) return read
  const { groups } = read.value
  return changeOfDay<object, Refusals>(
    actor,
    'make-draw',
    read.value,
    async (day) => {
      const faults = seatFaults(
        day,
        groups.map((group) => group.entryIds),
        (at, seat) => `groups[${at}].entryIds[${seat}]`,
      )
      if (faults.length > 0) return notUnderstood(faults)
      return placed(day, groups, { drawWay: 'by-hand', drawSeed: null }, now)
    },
    now,
  )
}

type Asked = { entryIds: readonly EntryId[]; startTime?: string | undefined; startHole?: number | undefined }

function placed(day: DayRecord, groups: readonly Asked[], drawn: HowDrawn, now: Date) {
  if (day.status === 'closed') return refused('day-closed', 'The day is closed: the groups stay as they were.')
  const tee = day.tees.find((one) => one.isDefault) ?? day.tees[0]
  const times = starts(groups.length, {
    kind: day.round.startKind,
    firstTee: day.round.firstTee,
    intervalMinutes: day.round.intervalMinutes,
    pars: tee?.holes.map((hole) => hole.par) ?? [],
    firstHole: day.round.firstHole,
  })
  if (times === null)
    return refused('too-many-groups', 'A shotgun start has room for two groups a hole, and none on the par threes.')
  const nowhere = groups.findIndex(({ startHole }) => startHole !== undefined && !hasHole(day.round, startHole))
  if (nowhere >= 0)
    return notUnderstood([
      {
        place: `groups[${nowhere}].startHole`,
        sentence: `This round has ${rangeInWords(day.round)}: group ${nowhere + 1} cannot start on hole ${groups[nowhere]!.startHole}.`,
      },
    ])
  const kept = groups.map(
    (group, at): GroupToKeep => ({
      entryIds: group.entryIds,
      startTime: group.startTime ?? times[at]!.time,
      startHole: group.startHole ?? times[at]!.hole,
    }),
  )
  return {
    record: changedInWords(
      { Draw: day.groups.length === 0 ? 'none' : `${day.groups.length} groups`, ...groupWords(day, day.groups) },
      { Draw: drawnWords(drawn, kept.length), ...groupWords(day, kept) },
    ),
    save: async (tx: Tx) => {
      await replaceGroups(tx, day, kept, codesUntil(day.date), drawn, now)
      await sidesAfterDraw(tx, day, kept, drawn.drawSeed)
      await pairingsAfterDraw(tx, day, drawn.drawSeed === null ? 'all' : 'in-group')
      await cardsAfterChange(tx, day)
      return {}
    },
  }
}

function drawnWords({ drawWay, drawSeed }: HowDrawn, groups: number): string {
  const how = drawWay.replaceAll('-', ' ')
  return `${groups} groups, ${how}${drawSeed === null ? '' : ` with the number ${drawSeed}`}`
}
