// Privacy: what a member asks for on the own page, what the desk carries out.

import { z } from 'zod'
import { personId } from './ids'
import { SHOWN_AS } from './society-settings'
import { typedLine } from './typed-text'

const _id = z.string().min(1).max(40)

export const correctDetails = z.strictObject({
  email: z.email('That is not an e-mail address.').max(120).nullable(),
  phone: typedLine().max(40).nullable(),
})
export type CorrectDetails = z.input<typeof correctDetails>

/** What only the desk can put right: the name, a figure, a score. Kept in the record, where the officers read it. */
export const askCorrection = z.strictObject({
  what: typedLine().min(5, 'Write what is wrong and what is right.').max(400, 'At most 400 letters.'),
})
export type AskCorrection = z.input<typeof askCorrection>

export const leaveSociety = z.strictObject({
  /** At least as little as the society shows of leavers. Absent: as the society does it. */
  shownAs: z.enum(SHOWN_AS).optional(),
})
export type LeaveSociety = z.input<typeof leaveSociety>

export const erasePerson = z.strictObject({ personId, shownAs: z.enum(['initials', 'former-member']) })
export type ErasePerson = z.input<typeof erasePerson>

export const personOfPage = z.strictObject({ personId })
