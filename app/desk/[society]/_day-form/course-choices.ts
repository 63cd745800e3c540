import type { CourseRow } from '@/lib/boards/desk-views'
import type { CourseChoice } from './day-form'

/** The courses of the book as the day form offers them. */
export const courseChoices = (courses: readonly CourseRow[]): readonly CourseChoice[] =>
  courses.map((course) => ({
    id: course.courseId,
    name: course.name,
    tees: course.tees.flatMap((tee) => {
      const once = {
        id: tee.teeId,
        name: tee.name,
        gender: tee.gender,
        courseRating: tee.courseRating,
        slopeRating: tee.slopeRating,
        holes: tee.holes,
        firstHole: tee.firstHole,
        par: tee.par,
        yards: tee.yards,
      }
      if (tee.twice === null) return [once]
      const { courseRating, said } = tee.twice
      const yards = tee.yards === null ? null : 2 * tee.yards
      return [once, { ...once, holes: 18, courseRating, par: 2 * tee.par, yards, said }]
    }),
  }))
