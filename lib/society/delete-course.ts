// Deletes a course that was entered by mistake. A day needs its course for as long as the day is in the book.

import { courseWords } from '@/lib/boards/acts-in-words'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import type { Actor } from '@/lib/facts/actor'
import { type DeleteCourse, deleteCourse as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { courseIn, daysOnCourse, deleteCourseRow } from '@/lib/store/courses'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Deleted = Result<
  { name: string },
  'not-allowed' | 'not-understood' | 'not-found' | 'course-in-use' | 'course-moved-on'
>

export async function deleteCourse(actor: Actor, input: DeleteCourse, now: Date = new Date()): Promise<Deleted> {
  const officer = deskOnly(actor, 'delete-course')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { courseId, version } = read.value
  return write<Deleted>(async (tx) => {
    const course = await courseIn(tx, societyId, courseId)
    if (!course) return notFound('course')
    if (course.version !== version)
      return refused(
        'course-moved-on',
        'Somebody else has changed this course meanwhile. Look at it as it is now, then delete it if it should still go.',
      )
    const days = await daysOnCourse(tx, societyId, courseId)
    if (days.length > 0)
      return refused(
        'course-in-use',
        `${course.name} cannot be deleted: ${days.length === 1 ? 'a golf day is' : `${days.length} golf days are`} on it.`,
        days.map(({ name, date }) => ({ place: date, sentence: `${name}, ${shortDateInWords(date)}` })),
      )
    await deleteCourseRow(tx, societyId, courseId)
    const said = { act: 'delete-course', area: 'book' as const, subject: course.name, subjectId: courseId }
    await recordAct(tx, actor, { ...said, before: courseWords(course), after: { Course: 'deleted' } }, now)
    return ok({ name: course.name })
  })
}
