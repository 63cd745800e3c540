// What a reader of the record of acts may ask for, from an address.

import { z } from 'zod'
import { ACT_AREAS } from './act-record'
import { isDate } from './calendar'

const date = z.string().refine(isDate)
const odd = undefined

/** Anything odd in an address counts as not asked: the reader sees more, never less than meant. */
export const actsAsked = z.object({
  area: z.enum(ACT_AREAS).optional().catch(odd),
  act: z
    .string()
    .regex(/^[a-z-]{1,40}$/)
    .optional()
    .catch(odd),
  who: z.string().trim().min(1).max(120).optional().catch(odd),
  subject: z.string().trim().min(1).max(80).optional().catch(odd),
  since: date.optional().catch(odd),
  until: date.optional().catch(odd),
  olderThan: z.coerce.number().int().min(1).max(Number.MAX_SAFE_INTEGER).optional().catch(odd),
})
export type ActsAskedFor = z.output<typeof actsAsked>
