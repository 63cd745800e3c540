// Duties, accounts and one-time links: what their forms ask for.

import { z } from 'zod'
import { foundSociety } from './commands'
import { userId } from './ids'
import { typedLine } from './typed-text'

const id = z.string().min(1).max(40)
const email = z.email('That is not an e-mail address.').max(120)
const name = typedLine().min(1, 'A name is needed.').max(80, 'At most 80 letters.')
export const newPassword = z
  .string()
  .min(12, 'A password needs at least 12 characters.')
  .max(128, 'A password has at most 128 characters.')

export const endDuty = z.strictObject({ dutyId: id, endSessions: z.boolean().default(false) })
export type EndDuty = z.input<typeof endDuty>

export const handOver = z.strictObject({ dutyId: id, name, email })
export type HandOver = z.input<typeof handOver>

export const endOfficerSessions = z.strictObject({ userId })

/** The first start, from its page: the society and the officer who opens it. */
export const firstStart = foundSociety.omit({ isDemo: true })
export type FirstStart = z.input<typeof firstStart>
