// The settings of an installation, parsed once with one schema: a wrong one stops the start with a sentence.

import { z } from 'zod'

const zones: readonly string[] = Intl.supportedValuesOf('timeZone')

/** An empty variable in a service file means "not set". */
const unset = (value: unknown) => (value === '' ? undefined : value)

const wholeNumber = (name: string, least: number, most: number, otherwise: number) => {
  const sentence = `${name} must be a whole number from ${least} to ${most}.`
  return z
    .string()
    .regex(/^\d{1,4}$/, sentence)
    .transform(Number)
    .refine((number) => number >= least && number <= most, sentence)
    .default(otherwise)
}

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
  /** Where copies of the book are put: `copies` beside the book when not set. Best on another disk. */
  DAYBOOK_COPIES: z.preprocess(unset, z.string().trim().min(1).optional()),
  /** The server takes a copy when the last one is older than this; 0: never by itself. */
  DAYBOOK_COPY_EVERY_HOURS: z.preprocess(unset, wholeNumber('DAYBOOK_COPY_EVERY_HOURS', 0, 720, 24)),
  /** The newest copy of so many days, weeks and months is kept. */
  DAYBOOK_COPIES_DAILY: z.preprocess(unset, wholeNumber('DAYBOOK_COPIES_DAILY', 1, 366, 14)),
  DAYBOOK_COPIES_WEEKLY: z.preprocess(unset, wholeNumber('DAYBOOK_COPIES_WEEKLY', 0, 520, 8)),
  DAYBOOK_COPIES_MONTHLY: z.preprocess(unset, wholeNumber('DAYBOOK_COPIES_MONTHLY', 0, 240, 12)),
  /** 1: a front server of ours sets X-Forwarded-For, -Host and -Proto, and nobody reaches this one past it. Otherwise they are not believed. */
  DAYBOOK_BEHIND_PROXY: z.preprocess(unset, z.enum(['0', '1'], 'DAYBOOK_BEHIND_PROXY must be 0 or 1.').default('0')),
  /** How much the log says. */
  DAYBOOK_LOG: z.preprocess(
    unset,
    z.enum(['silent', 'error', 'warn', 'info'], 'DAYBOOK_LOG must be silent, error, warn or info.').default('info'),
  ),
})
export type Settings = z.infer<typeof settings>
