// A further round of the same competition: another day of the book with the same field, sides and groups, added up with
// the days before it. Thirty-six holes, nine and eighteen, or a trip.

import { dateInWords } from '@/lib/boards/dates-in-words'
import { formatIn } from '@/lib/boards/format-of-competition'
import { teeTerm } from '@/lib/boards/side-tee'
import type { Actor } from '@/lib/facts/actor'
import { addMinutes } from '@/lib/facts/calendar'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId, EntryId } from '@/lib/facts/ids'
import { type CallAgain, callAgain as schema } from '@/lib/facts/match-commands'
import type { CompetitionTerms } from '@/lib/facts/terms'
import { ok, type Result, refused } from '@/lib/result'
import { hasHole, placeOfHole, shownHole } from '@/lib/rules/hole-numbers'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import { type CourseKept, courseIn } from '@/lib/store/courses'
import { dayRecordIn } from '@/lib/store/day-record'
import { dayExtras, freeDaySlug, insertDay } from '@/lib/store/day-setup'
import { insertEntry } from '@/lib/store/entries'
import { replaceGroups } from '@/lib/store/groups'
import { replaceCountedDays, replaceTeams } from '@/lib/store/pairings'
import { seasonIn } from '@/lib/store/seasons'
import { replaceSides } from '@/lib/store/sides'
import { write } from '@/lib/store/write'
import { addressOf } from './call-day'
import { codesUntil } from './day-clock'
import { type DayForm, dayToKeep } from './day-terms'
import { deskOnly, movedOn, notFound } from './desk-only'
import { notUnderstood, parseInput } from './parse-input'
import { pairingsAfterDraw } from './put-together'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on' | 'no-entries' | 'too-many-days'

export async function callAgain(
  actor: Actor,
  input: CallAgain,
  now: Date = new Date(),
): Promise<Result<{ dayId: DayId; slug: string }, Refusals>> {
  const officer = deskOnly(actor, 'call-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const asked = read.value
  const { societyId } = officer.value
  return write<Result<{ dayId: DayId; slug: string }, Refusals>>(async (tx) => {
    const first = await dayRecordIn(tx, { societyId, dayId: asked.dayId })
    if (!first) return notFound('day')
    if (first.version !== asked.version) return movedOn()
    if (asked.date < first.date)
      return notUnderstood([
        { place: 'date', sentence: `A further round is played on ${dateInWords(first.date)} or later.` },
      ])
    const field = first.entries.filter((entry) => entry.status === 'entered')
    if (field.length === 0) return refused('no-entries', 'Nobody is entered yet: there is no field to call again.')
    if (first.earlier.length >= 7) return refused('too-many-days', 'Eight rounds are added up at the most.')
    const season = await seasonIn(tx, societyId, first.season.id)
    if (!season) return notFound('season')
    const course = await courseIn(tx, societyId, asked.courseId)
    if (!course) return notFound('course')
    const { places } = await dayExtras(tx, first.id)
    const day = dayToKeep(formOf(first, asked, course, places), season, course)
    if (!day.ok) return day
    const missing = field.find((entry) => !day.value.tees.some((tee) => tee.gender === entry.gender && tee.isDefault))
    if (missing)
      return notUnderstood([
        { place: 'courseId', sentence: `${course.name} has no tee for ${missing.gender}: choose another course.` },
      ])
    const slug = await freeDaySlug(tx, societyId, addressOf(asked.name, asked.date))
    const dayId = await insertDay(tx, societyId, season.seasonId, slug, day.value, now)
    await sameField(tx, first, dayId, now)
    await recordAct(
      tx,
      officer.value,
      {
        act: 'call-day',
        area: 'day',
        subject: asked.name,
        subjectId: dayId,
        after: { 'Further round of': first.name, Players: field.length, Date: asked.date, Course: course.name },
      },
      now,
    )
    return ok({ dayId, slug })
  })
}

/** The tees of a side’s card are named only where the course has them. */
function onCourse(terms: CompetitionTerms, course: CourseKept): CompetitionTerms {
  const { sideTee, ...others } = terms
  return sideTee === undefined || course.tees.some((tee) => teeTerm(tee) === sideTee) ? terms : others
}

function formOf(first: DayRecord, asked: CallAgain, course: CourseKept, places: number | null): DayForm {
  const teeLike = (gender: 'men' | 'women') => {
    const was = first.tees.find((tee) => tee.gender === gender && tee.isDefault)?.name
    const tees = course.tees.filter((tee) => tee.gender === gender)
    return (tees.find((tee) => tee.name === was) ?? tees[0])?.teeId ?? null
  }
  return {
    seasonId: first.season.id,
    name: asked.name,
    date: asked.date,
    courseId: asked.courseId,
    holes: asked.holes,
    startKind: first.round.startKind,
    firstTee: asked.firstTee,
    intervalMinutes: first.round.intervalMinutes,
    entriesCloseOn: null,
    places,
    teeMen: teeLike('men'),
    teeWomen: teeLike('women'),
    competitions: first.competitions.map(({ name, format, terms, prizes }) => ({
      name,
      format,
      terms: onCourse(
        asked.holes === first.round.holes ? terms : { ...terms, ties: tiesOn(terms.ties, asked.holes) },
        course,
      ),
      prizes: prizes.map(({ number: _, ...prize }) => prize),
    })),
  }
}

/** Windows of a countback that fit the holes of the last round. */
function tiesOn(ties: DayRecord['competitions'][number]['terms']['ties'], holes: number) {
  return {
    ...ties,
    steps: ties.steps.filter(
      (step) => !(step.kind === 'last' && step.holes > holes) && !(step.kind === 'first-nine-last' && holes <= 9),
    ),
  }
}

/** The entries, groups, sides and teams of the first round on the new day, and what it is added up with. */
async function sameField(tx: Tx, first: DayRecord, dayId: DayId, now: Date): Promise<void> {
  const societyId = first.society.id
  const day = await dayRecordIn(tx, { societyId, dayId })
  if (!day) throw new Error(`Day ${dayId} went away while it was called.`)
  const teeNames = new Map(first.tees.map((tee) => [tee.id, tee.name]))
  const entryNow = new Map<EntryId, EntryId>()
  for (const entry of first.entries) {
    if (entry.status !== 'entered') continue
    const own = day.tees.filter((tee) => tee.gender === entry.gender)
    const tee = own.find((one) => one.name === teeNames.get(entry.roundTeeId)) ?? own.find((one) => one.isDefault)!
    const { personId, hostId, kind, status, claimedTenths } = entry
    const kept = { personId, hostId, kind, status, claimedTenths, roundTeeId: tee.id }
    entryNow.set(entry.id, await insertEntry(tx, societyId, dayId, kept, now))
  }
  const again = (ids: readonly EntryId[]) => ids.flatMap((id) => entryNow.get(id) ?? [])
  // The same place on the card of the new round, which may be another nine.
  const startOf = (hole: number) => {
    const now = shownHole(day.round, placeOfHole(first.round, hole))
    return hasHole(day.round, now) ? now : day.round.firstHole
  }
  const groups = first.groups.flatMap((group) => {
    const entryIds = again(group.entryIds)
    return entryIds.length > 0 ? [{ entryIds, startHole: startOf(group.startHole), startTime: group.startTime }] : []
  })
  const by = minutesBetween(first.round.firstTee, day.round.firstTee)
  if (groups.length > 0)
    await replaceGroups(
      tx,
      day,
      groups.map((group) => ({ ...group, startTime: addMinutes(group.startTime, by) })),
      codesUntil(day.date),
      { drawWay: 'by-hand', drawSeed: null },
      now,
    )
  for (const [at, one] of day.competitions.entries()) {
    const was = first.competitions[at]!
    await replaceSides(
      tx,
      societyId,
      one.id,
      was.sides.map((side) => again(side.entryIds)).filter((ids) => ids.length > 0),
    )
    if (!formatIn(one)?.isMatch) {
      const counted = [...was.countedDayIds, first.id]
      await replaceCountedDays(tx, societyId, one.id, counted, was.recountedDayIds)
    }
  }
  await replaceTeams(
    tx,
    societyId,
    dayId,
    first.teams.map(({ name, entryIds }) => ({ name, entryIds: again(entryIds) })),
  )
  await pairingsAfterDraw(tx, day, 'all')
}

const minutesOf = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3))
const minutesBetween = (from: string, to: string) => minutesOf(to) - minutesOf(from)
