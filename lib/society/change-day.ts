// Changes a day. Course, tees and terms only before the freeze; names, times, places and prizes until it is closed.

import { dayWords } from '@/lib/boards/acts-in-words'
import { movedUp } from '@/lib/boards/waiting-list'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { type ChangeDay, changeDay as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { fullName } from '@/lib/facts/person-name'
import { type Refused, type Result, refused } from '@/lib/result'
import { starts } from '@/lib/rules/draw/starts'
import { courseIn } from '@/lib/store/courses'
import {
  type DayToKeep,
  dayExtras,
  numberByDate,
  replaceCompetitions,
  replaceTees,
  updateDay,
} from '@/lib/store/day-setup'
import { updateEntry } from '@/lib/store/entries'
import { replaceGroups, setCodesUntil } from '@/lib/store/groups'
import { seasonIn } from '@/lib/store/seasons'
import { changeOfDay, type DayRefusals } from './day-change'
import { codesUntil } from './day-clock'
import { dayToKeep } from './day-terms'
import { notFound } from './desk-only'
import { freezeLate } from './entry-list'
import { canonical, frozenDayToKeep } from './frozen-day'
import { notUnderstood, parseInput } from './parse-input'

type Refusals = DayRefusals | 'day-closed' | 'frozen' | 'too-many-groups'

export async function changeDay(
  actor: Actor,
  input: ChangeDay,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const form = read.value.day
  return changeOfDay<object, Refusals>(
    actor,
    'change-day',
    read.value,
    async (day, { societyId }, tx) => {
      if (day.status === 'closed')
        return refused('day-closed', 'The day is closed. Reopen it before changing anything.')
      const season = await seasonIn(tx, societyId, form.seasonId)
      if (!season) return notFound('season')
      const course = await courseIn(tx, societyId, form.courseId)
      const isOpen = day.status === 'called'
      if (!course && (isOpen || form.courseId !== day.round.courseId)) return notFound('course')
      const wanted = isOpen && course ? dayToKeep(form, season, course) : frozenDayToKeep(day, form, season, course)
      if (!wanted.ok) return wanted
      const changed = wanted.value
      const untee = isOpen ? withoutTee(day, changed) : null
      if (untee) return untee
      const retimed = timesOf(day, changed)
      if (retimed === null)
        return refused('too-many-groups', 'A shotgun start has room for two groups a hole, and none on the par threes.')
      const before = await dayExtras(tx, day.id)
      const playing = day.entries.filter((entry) => entry.status === 'entered').length
      const up = movedUp(day, [], (changed.places ?? Number.POSITIVE_INFINITY) - playing)
      return {
        record: changedInWords(dayWords({ ...day, places: before.places }), dayWords(changed)),
        save: async (saving) => {
          await updateDay(saving, day.id, season.seasonId, changed)
          if (isOpen && !sameTees(day, changed)) await replaceTees(saving, day, changed.tees)
          await replaceCompetitions(saving, day, changed.competitions)
          if (retimed.length > 0) await replaceGroups(saving, day, retimed, codesUntil(changed.date), null, now)
          else await setCodesUntil(saving, day.round.id, codesUntil(changed.date))
          for (const entry of up) await updateEntry(saving, entry.id, { status: 'entered' })
          if (up.length > 0) await freezeLate(saving, day)
          await numberByDate(saving, season.seasonId)
          if (before.seasonId !== season.seasonId) await numberByDate(saving, before.seasonId)
          return {}
        },
      }
    },
    now,
  )
}

/** Somebody is entered who would have no tee of their gender. */
function withoutTee(day: DayRecord, wanted: DayToKeep): Refused<'not-understood'> | null {
  const missing = day.entries.find(
    (entry) => entry.status !== 'withdrawn' && !wanted.tees.some((tee) => tee.gender === entry.gender && tee.isDefault),
  )
  if (!missing) return null
  return notUnderstood([
    {
      place: missing.gender === 'men' ? 'teeMen' : 'teeWomen',
      sentence: `${fullName(missing)} is entered and would have no tee.`,
    },
  ])
}

function sameTees(day: DayRecord, wanted: DayToKeep): boolean {
  const plain = (tees: DayToKeep['tees'] | DayRecord['tees']) =>
    canonical(
      tees
        .map(({ name, gender, courseRatingTenths, slopeRating, isDefault, holes }) => ({
          name,
          gender,
          courseRatingTenths,
          slopeRating,
          isDefault,
          holes: holes.map((hole) => [hole.hole, hole.par, hole.strokeIndex, hole.yards ?? null]),
        }))
        .sort((a, b) => (`${a.gender} ${a.name}` < `${b.gender} ${b.name}` ? -1 : 1)),
    )
  return wanted.round.courseId === day.round.courseId && plain(day.tees) === plain(wanted.tees)
}

/** New times for the groups when the start moved; none when it stayed, so that times set by hand stay too. */
function timesOf(day: DayRecord, wanted: DayToKeep) {
  const { startKind, firstTee, intervalMinutes } = wanted.round
  const firstHole = wanted.tees[0]?.holes[0]?.hole ?? 1
  const stayed =
    wanted.round.holes === day.round.holes &&
    firstHole === day.round.firstHole &&
    startKind === day.round.startKind &&
    firstTee === day.round.firstTee &&
    intervalMinutes === day.round.intervalMinutes
  if (stayed || day.groups.length === 0) return []
  const tee = wanted.tees.find((one) => one.isDefault) ?? wanted.tees[0]
  const times = starts(day.groups.length, {
    kind: startKind,
    firstTee,
    intervalMinutes,
    pars: tee?.holes.map((hole) => hole.par) ?? [],
    firstHole,
  })
  return (
    times?.map(({ time, hole }, at) => ({
      startTime: time,
      startHole: hole,
      entryIds: day.groups[at]!.entryIds,
    })) ?? null
  )
}
