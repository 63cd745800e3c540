// Calls a day: a date, a course with its tees, a start, and the competitions played on the same cards.

import { randomInt } from 'node:crypto'
import { dayWords } from '@/lib/boards/acts-in-words'
import { proposedFor } from '@/lib/boards/format-of-competition'
import type { Actor } from '@/lib/facts/actor'
import { addDays, daysBetween, isDate } from '@/lib/facts/calendar'
import { type CallDay, type CompetitionInput, callDay as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId, SeasonId, TeeId } from '@/lib/facts/ids'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { ok, type Result, refused } from '@/lib/result'
import { intervalFor } from '@/lib/rules/draw/interval'
import { editionFor } from '@/lib/rules/editions/editions'
import { formatOf, type ProposedAllowance, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { recordAct } from '@/lib/store/acts'
import { type CourseKept, courseIn, coursesOf } from '@/lib/store/courses'
import { dayRecordIn } from '@/lib/store/day-record'
import { dayExtras, freeDaySlug, insertDay, lastDayOf } from '@/lib/store/day-setup'
import { peopleOf } from '@/lib/store/people'
import { type SeasonKept, seasonIn } from '@/lib/store/seasons'
import { today } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { dayToKeep } from './day-terms'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Called = Result<{ dayId: DayId; slug: string }, 'not-allowed' | 'not-understood' | 'not-found'>

export async function callDay(actor: Actor, input: CallDay, now: Date = new Date()): Promise<Called> {
  const officer = deskOnly(actor, 'call-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const form = read.value
  const { societyId } = officer.value
  return write<Called>(async (tx) => {
    const season = await seasonIn(tx, societyId, form.seasonId)
    if (!season) return notFound('season')
    const course = await courseIn(tx, societyId, form.courseId)
    if (!course) return notFound('course')
    const day = dayToKeep(form, season, course)
    if (!day.ok) return day
    const slug = await freeDaySlug(tx, societyId, addressOf(form.name, form.date))
    const dayId = await insertDay(tx, societyId, season.seasonId, slug, day.value, now)
    const record = { act: 'call-day', area: 'day' as const, subject: form.name, subjectId: dayId, version: 1 }
    await recordAct(tx, actor, { ...record, after: dayWords(day.value) }, now)
    return ok({ dayId, slug })
  })
}

/** "spring-cup-2026": readable in an address, and free of letters that an address would have to spell out. */
export function addressOf(name: string, date: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[\p{M}'’]/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40)
  const year = date.slice(0, 4)
  if (plain === '') return `day-${date}`
  return plain.endsWith(year) ? plain : `${plain}-${year}`
}

/** A form already filled: from the last day, or from the published table and common practice when there is none. */
export async function proposeDay(
  actor: Actor,
  seasonId: SeasonId,
  now: Date = new Date(),
): Promise<Result<CallDay, 'not-allowed' | 'not-found' | 'no-course'>> {
  const officer = deskOnly(actor, 'call-day')
  if (!officer.ok) return officer
  const { societyId } = officer.value
  return write<Result<CallDay, 'not-allowed' | 'not-found' | 'no-course'>>(async (tx) => {
    const season = await seasonIn(tx, societyId, seasonId)
    if (!season) return notFound('season')
    const courses = await coursesOf(societyId, tx)
    const lastId = await lastDayOf(tx, societyId)
    const last = lastId ? await dayRecordIn(tx, { societyId, dayId: lastId }) : null
    const course = courses.find((one) => one.courseId === last?.round.courseId) ?? courses[0]
    if (!course) return refused('no-course', 'The book has no course yet. Add one first, by hand or from a file.')
    const regulars = (await peopleOf(societyId, tx)).filter(
      (one) => one.kind === 'member' && one.regular && one.leftOn === null,
    ).length
    const players = last?.entries.filter((entry) => entry.status === 'entered').length || regulars
    const places = lastId ? (await dayExtras(tx, lastId)).places : null
    return ok(proposal({ season, course, last, players, places, today: today(now) }))
  })
}

interface Known {
  readonly season: SeasonKept
  readonly course: CourseKept
  readonly last: DayRecord | null
  readonly players: number
  readonly places: number | null
  readonly today: string
}

function proposal({ season, course, last, players, places, today: now }: Known): CallDay {
  const date = nextDate(season, last?.date ?? null, now)
  const apart = last?.entriesCloseOn ? last.entriesCloseOn : null
  return {
    seasonId: season.seasonId,
    name: `Day ${season.days + 1}`,
    date,
    courseId: course.courseId,
    // On a course of nine holes as it was played there the last time.
    holes: course.holes === 9 && !(last?.round.courseId === course.courseId && last.round.holes === 18) ? 9 : 18,
    startKind: last?.round.startKind ?? 'tee-times',
    firstTee: last?.round.firstTee ?? '10:00',
    intervalMinutes: last?.round.intervalMinutes ?? intervalFor(4),
    entriesCloseOn: apart && last ? addDays(date, -daysBetween(apart, last.date)) : addDays(date, -10),
    places,
    teeMen: teeLikeLast(course, last, 'men'),
    teeWomen: teeLikeLast(course, last, 'women'),
    competitions: last
      ? last.competitions.map((one) => again(one, players, date))
      : [proposeCompetition('stableford', date, players, course.holes)],
  }
}

/** Four weeks after the last day or today, whichever is later, on the same weekday, inside the season. */
function nextDate(season: SeasonKept, last: string | null, now: string): string {
  let date = last !== null && isDate(last) ? addDays(last, 28) : addDays(now, 28)
  while (date <= now) date = addDays(date, 7)
  if (date < season.startsOn) return season.startsOn
  if (date > season.endsOn) return season.endsOn
  return date
}

function teeLikeLast(course: CourseKept, last: DayRecord | null, gender: 'men' | 'women'): TeeId | null {
  const tees = course.tees.filter((tee) => tee.gender === gender && tee.holes.length === course.holes)
  const was = last?.tees.find((tee) => tee.gender === gender && tee.isDefault)
  return (
    (
      tees.find((tee) => tee.name === was?.name) ??
      tees.find((tee) => tee.name === (gender === 'men' ? 'Yellow' : 'Red'))
    )?.teeId ??
    tees.at(-1)?.teeId ??
    null
  )
}

/** A competition of the last day with its prizes; a published allowance is looked up again, a house choice stays one. */
function again(one: DayRecord['competitions'][number], players: number, date: string): CompetitionInput {
  const fresh = proposedFor({ format: one.format, custom: one.terms.custom }, players, editionFor(date))
  return {
    name: one.name,
    format: one.format,
    terms: freshLots(one.terms.allowanceFrom === 'published' ? { ...one.terms, ...figureOf(fresh) } : one.terms),
    prizes: one.prizes.map(({ number: _, ...prize }) => prize),
  }
}

/** A lot that everybody knows from the last day is none: each day draws its own. */
function freshLots(terms: CompetitionInput['terms']): CompetitionInput['terms'] {
  const lot = () => randomInt(1_000_000)
  const steps = terms.ties.steps.map((step) => (step.kind === 'lot' ? { ...step, seed: lot() } : step))
  const { missing } = terms
  return {
    ...terms,
    ties: { ...terms.ties, steps },
    ...(missing?.kind === 'drawn' ? { missing: { ...missing, seed: lot() } } : {}),
  }
}

const figureOf = ({ allowance, from }: ProposedAllowance) => ({
  allowance: typeof allowance === 'number' ? allowance : [...allowance],
  allowanceFrom: from,
})

/** A competition of this format with the published allowance for the field, the published countback and three prizes. */
export function proposeCompetition(format: string, date: string, players: number, holes = 18): CompetitionInput {
  const proposed = proposedAllowance(format, players, editionFor(date))
  return {
    name: formatOf(format)?.name ?? format,
    format,
    terms: {
      ...figureOf(proposed),
      ...(proposed.from === 'house-choice' ? { allowanceReason: proposed.sentence } : {}),
      ties: { ...PUBLISHED_COUNTBACK, steps: PUBLISHED_COUNTBACK.steps.filter((step) => fitsRound(step, holes)) },
      ...(formatOf(format)?.value.kind === 'maximum' ? { maximum: { kind: 'net-double-bogey' as const } } : {}),
      guests: 'guest-prize-only',
    },
    prizes: ['First', 'Second', 'Third'].map((name, at) => ({
      name,
      place: at + 1,
      eligible: 'members' as const,
      valuePence: null,
    })),
  }
}

/** On nine holes the countback begins with the last six and has no first nine to go back to. */
function fitsRound(step: (typeof PUBLISHED_COUNTBACK)['steps'][number], holes: number): boolean {
  return holes > 9 || (step.kind === 'last' && step.holes < 9)
}
