// What an officer may say about a file with a course card before it is imported: the names of the course and its tees, who
// they are rated for, ratings that the card does not have, and which tees are left out.

import { z } from 'zod'
import { typedLine } from './typed-text'

const word = typedLine().max(80)

export const courseImportChoices = z.strictObject({
  /** Of the course; empty or absent: as the file has it. */
  name: word.optional(),
  tees: z
    .record(
      z.string().max(100),
      z.strictObject({
        name: word.optional(),
        gender: z.enum(['men', 'women']).optional(),
        courseRating: z.string().max(10).optional(),
        slopeRating: z.string().max(10).optional(),
        leftOut: z.boolean().optional(),
      }),
    )
    .default({}),
})
export type CourseImportChoices = z.output<typeof courseImportChoices>

export const NOTHING_SAID: CourseImportChoices = courseImportChoices.parse({})
