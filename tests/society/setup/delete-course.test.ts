// Promise: a course entered by mistake can be deleted with its tees; while a day uses it the refusal names the days, and
// the deletion stands in the record of acts.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { deleteCourse } from '@/lib/society/delete-course'
import { courseById, courseList, keepCourse } from '@/lib/society/keep-course'
import type { Book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { aDay, course, got, type World, world } from './world'

let close: () => Promise<void>
let book: Book
let w: World
beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
})
afterAll(() => close())

const names = async () => got(await courseList(w.actor)).map((one) => one.name)

it('deletes a course that no day uses, and says so in the record', async () => {
  const { courseId, version } = got(await keepCourse(w.actor, course('Typed Twice')))
  expect(await deleteCourse(w.actor, { courseId, version: version + 1 })).toMatchObject({ code: 'course-moved-on' })
  expect(await names()).toContain('Typed Twice')
  expect(got(await deleteCourse(w.actor, { courseId, version }))).toEqual({ name: 'Typed Twice' })
  expect(await names()).not.toContain('Typed Twice')
  expect(await book.tee.count({ where: { courseId } })).toBe(0)
  expect(await book.actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })).toMatchObject({
    act: 'delete-course',
    subject: 'Typed Twice',
    subjectId: courseId,
  })
  expect(await deleteCourse(w.actor, { courseId, version })).toMatchObject({ code: 'not-found' })
})

it('names the days that use the course and deletes nothing', async () => {
  await aDay(w)
  const { version } = got(await courseById(w.actor, w.courseId))
  const refused = await deleteCourse(w.actor, { courseId: w.courseId, version })
  expect(refused).toMatchObject({ ok: false, code: 'course-in-use' })
  if (!refused.ok) expect(refused.faults.map((one) => one.sentence)).toEqual(['Spring Cup, 14 Jun 2031'])
  expect(await names()).toContain('Aldermoss Park')
})

it('is for the officers who keep the courses, and never reaches another society', async () => {
  const other = await world('other')
  const { version } = got(await courseById(w.actor, w.courseId))
  expect(await deleteCourse({ ...w.actor, duties: ['treasurer'] }, { courseId: w.courseId, version })).toMatchObject({
    code: 'not-allowed',
  })
  expect(await deleteCourse(other.actor, { courseId: w.courseId, version })).toMatchObject({ code: 'not-found' })
})
