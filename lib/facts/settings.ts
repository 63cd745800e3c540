// The settings of an installation, parsed once with one schema: a wrong one stops the start with a sentence.

import { z } from 'zod'

const zones: readonly string[] = Intl.supportedValuesOf('timeZone')

/** An empty variable in a service file means "not set". */
const unset = (value: unknown) => (value === '' ? undefined : value)

export const settings = z.object({
  /** Where the installation is reached from outside, such as https://days.example.org. Told by the request when not set. */
  DAYBOOK_ORIGIN: z.preprocess(
    unset,
    z
      .url({ protocol: /^https?$/, error: 'DAYBOOK_ORIGIN must be an address such as https://days.example.org.' })
      .transform((address) => new URL(address).origin)
      .optional(),
  ),
  /** Signs the session cookies; made once and kept beside the book when not set. */
  DAYBOOK_SECRET: z.preprocess(
    unset,
    z.string().min(32, 'DAYBOOK_SECRET must have at least 32 characters.').optional(),
  ),
  /** The calendar and the clock of the societies. */
  DAYBOOK_ZONE: z.preprocess(
    unset,
    z
      .string()
      .refine(
        (zone) => zone === 'UTC' || zones.includes(zone),
        'DAYBOOK_ZONE must be a time zone such as Europe/London.',
      )
      .optional(),
  ),
  /** 1: no demonstration society; the first start makes an empty society with one officer. */
  DAYBOOK_EMPTY: z.preprocess(unset, z.enum(['0', '1'], 'DAYBOOK_EMPTY must be 0 or 1.').default('0')),
  DAYBOOK_SOCIETY: z.preprocess(unset, z.string().trim().min(1).max(80).default('Our society')),
  DAYBOOK_OFFICER_NAME: z.preprocess(unset, z.string().trim().min(1).max(80).default('The secretary')),
  DAYBOOK_OFFICER_EMAIL: z.preprocess(
    unset,
    z.email('DAYBOOK_OFFICER_EMAIL must be an e-mail address.').default('secretary@example.org'),
  ),
  /** A one-time password is made and printed when not set. */
  DAYBOOK_OFFICER_PASSWORD: z.preprocess(
    unset,
    z.string().min(12, 'DAYBOOK_OFFICER_PASSWORD must have at least 12 characters.').max(128).optional(),
  ),
})
export type Settings = z.infer<typeof settings>
