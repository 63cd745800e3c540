// A course with its tees: ratings, par, stroke index and yards for each set and gender. Days keep their own copies.

import { courseWords } from '@/lib/boards/acts-in-words'
import type { CourseCard, CourseRow } from '@/lib/boards/desk-views'
import { ratingOf } from '@/lib/boards/figure'
import { mergeCourses } from '@/lib/boards/merge-courses'
import { twiceRoundInWords } from '@/lib/boards/twice-round'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { type KeepCourse, keepCourse as schema } from '@/lib/facts/commands'
import type { CourseId } from '@/lib/facts/ids'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { reading } from '@/lib/store/client'
import {
  type CourseKept,
  courseIn,
  courseNamed,
  coursesOf,
  insertCourse,
  type TeeToKeep,
  updateCourse,
} from '@/lib/store/courses'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { notUnderstood, parseInput } from './parse-input'

interface CourseKeptNow {
  readonly courseId: CourseId
  readonly version: number
  /** What another desk changed meanwhile, and is kept beside what was changed here. */
  readonly taken: readonly string[]
}

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'course-exists' | 'course-moved-on'

export async function keepCourse(
  actor: Actor,
  input: KeepCourse,
  now: Date = new Date(),
): Promise<Result<CourseKeptNow, Refusals>> {
  const officer = deskOnly(actor, 'keep-course')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { courseId, version, was, overrule = [], ...card } = read.value
  const faults = cardFaults(card.tees)
  if (faults.length > 0) return notUnderstood(faults)
  const { societyId } = officer.value

  return write<Result<CourseKeptNow, Refusals>>(async (tx) => {
    const named = await courseNamed(tx, societyId, card.name)
    if (named && named.courseId !== courseId)
      return refused(
        'course-exists',
        `${card.name} is in the book already. Change that one, or give this another name.`,
      )
    const said = { act: 'keep-course', area: 'book' as const, subject: card.name }
    if (courseId === undefined) {
      const id = await insertCourse(tx, societyId, withHoles(card), now)
      const tees = card.tees.map((tee) => `${tee.name}, ${tee.gender}`)
      await recordAct(tx, actor, { ...said, subjectId: id, after: { Course: 'added', Tees: tees }, version: 1 }, now)
      return ok({ courseId: id, version: 1, taken: [] })
    }
    const before = await courseIn(tx, societyId, courseId)
    if (!before) return notFound('course')
    if (version !== before.version && !was)
      return refused(
        'course-moved-on',
        'Somebody else has changed this course meanwhile. Look at it as it is now, then save again.',
      )
    const { merged, collisions, taken } = mergeCourses(was ?? before, card, before)
    const untold = collisions.filter((place) => !overrule.includes(place))
    if (untold.length > 0) return courseMovedOn(before, untold)
    const together = cardFaults(merged.tees)
    if (together.length > 0) return notUnderstood(together)
    const course = withHoles(merged)
    await updateCourse(tx, societyId, courseId, before.version, course)
    const words = changedInWords(courseWords(before), courseWords(course))
    await recordAct(tx, actor, { ...said, subjectId: courseId, ...words, version: before.version + 1 }, now)
    return ok({ courseId, version: before.version + 1, taken })
  })
}

const withHoles = (card: Pick<CourseKept, 'name' | 'place'> & { readonly tees: readonly TeeToKeep[] }) => ({
  ...card,
  holes: Math.max(...card.tees.map((tee) => tee.holes.length)),
})

/** Both desks changed the same of the card: nothing is kept until the later one has seen what the other wrote. */
function courseMovedOn(now: CourseKept, collisions: readonly string[]) {
  const words = courseWords(now)
  return refused(
    'course-moved-on',
    'Somebody else has changed the same meanwhile. Press again to keep yours.',
    collisions.map((place) => ({ place, sentence: `${place}: ${words[place] ?? 'taken out'} now.` })),
  )
}

/** What no single hole can show: numbers that are missing or twice there, and tees that do not fit together. */
export function cardFaults(tees: readonly TeeToKeep[]): readonly Fault[] {
  const faults: Fault[] = []
  const count = Math.max(0, ...tees.map((tee) => tee.holes.length))
  const seen = new Set<string>()
  tees.forEach((tee, at) => {
    const place = `tees[${at}]`
    const called = `${tee.name} ${tee.gender}`
    if (seen.has(called.toLowerCase()))
      faults.push({ place: `${place}.name`, sentence: `${tee.name} for ${tee.gender} is there twice.` })
    seen.add(called.toLowerCase())
    // The same bounds as a day file has: a rating of eighteen holes on nine would spoil every handicap.
    const [low, high] = tee.holes.length === 9 ? [200, 500] : [450, 900]
    if (tee.courseRatingTenths < low || tee.courseRatingTenths > high)
      faults.push({
        place: `${place}.courseRatingTenths`,
        sentence: `${called}: ${ratingOf(tee.courseRatingTenths)} is no course rating for ${tee.holes.length === 9 ? 'nine holes, such as 34.6. Where only a rating for eighteen is printed, add the nine played twice as a set of its own' : 'eighteen holes, such as 69.2'}.`,
      })
    if (tee.holes.length !== 9 && tee.holes.length !== 18)
      faults.push({ place: `${place}.holes`, sentence: `${called} has ${tee.holes.length} holes: 9 or 18 are needed.` })
    else faults.push(...holeFaults(tee, count, place, called))
  })
  return faults
}

/** A set of nine on a course of eighteen is its front or its back nine, with a rating of its own (RoH 2024, 6.1b). */
function holeFaults(tee: TeeToKeep, count: number, place: string, called: string): readonly Fault[] {
  const first = tee.holes.length === 9 && count === 18 && tee.holes[0]?.hole === 10 ? 10 : 1
  const faults: Fault[] = []
  const indexes = new Map<number, number>()
  // A card of nine holes made for going round twice has the odd indexes to 17, or the even ones to 18.
  const printed = tee.holes.map((hole) => hole.strokeIndex)
  const forTwice = count === 9 && [0, 1].some((rest) => printed.every((index) => index % 2 === rest))
  tee.holes.forEach((hole, at) => {
    if (hole.hole !== at + first)
      faults.push({
        place: `${place}.holes[${at}].hole`,
        sentence: `${called}: hole ${at + first} is missing or out of order.`,
      })
    const twin = indexes.get(hole.strokeIndex)
    const indexPlace = `${place}.holes[${at}].strokeIndex`
    if (hole.strokeIndex > count && !forTwice)
      faults.push({
        place: indexPlace,
        sentence: `${called}: stroke index ${hole.strokeIndex} on a course of ${count} holes.${count === 9 ? ' They run from 1 to 9, or are the odd numbers to 17 or the even ones to 18.' : ''}`,
      })
    else if (twin !== undefined)
      faults.push({
        place: indexPlace,
        sentence: `${called}: stroke index ${hole.strokeIndex} is on hole ${twin} and on hole ${hole.hole}.`,
      })
    indexes.set(hole.strokeIndex, hole.hole)
  })
  return faults
}

export async function courseList(actor: Actor): Promise<Result<readonly CourseRow[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  return ok((await coursesOf(officer.value.societyId)).map(rowOf))
}

function rowOf(course: CourseKept): CourseRow {
  return {
    courseId: course.courseId,
    name: course.name,
    place: course.place,
    holes: course.holes,
    version: course.version,
    tees: course.tees.map((tee) => ({
      teeId: tee.teeId,
      name: tee.name,
      gender: tee.gender,
      courseRating: ratingOf(tee.courseRatingTenths),
      slopeRating: tee.slopeRating,
      holes: tee.holes.length,
      firstHole: tee.holes[0]?.hole ?? 1,
      par: tee.holes.reduce((sum, hole) => sum + hole.par, 0),
      yards: yardsOf(tee),
      twice:
        course.holes === 9
          ? { courseRating: ratingOf(2 * tee.courseRatingTenths), said: twiceRoundInWords(tee) }
          : null,
    })),
  }
}

/** Null as soon as one hole has not been measured: a total that leaves a hole out would mislead. */
export function yardsOf(tee: TeeToKeep): number | null {
  return tee.holes.reduce<number | null>(
    (sum, hole) => (sum === null || hole.yards === null ? null : sum + hole.yards),
    0,
  )
}

export async function courseById(
  actor: Actor,
  courseId: CourseId,
): Promise<Result<CourseCard, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const course = await courseIn(reading(), officer.value.societyId, courseId)
  if (!course) return notFound('course')
  const { holes: _, ...card } = course
  return ok({
    ...card,
    tees: card.tees.map((tee) => ({
      ...tee,
      holes: tee.holes.map(({ yards, ...hole }) => (yards === null ? hole : { ...hole, yards })),
    })),
  })
}
