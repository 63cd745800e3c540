// The terms of a competition as the book keeps them, and the schema the desk's form and the day file share.

import { z } from 'zod'
import { fiveChoices } from './format-choices'
import { rarerTerms, whole } from './rarer-terms'
import { writtenLine } from './typed-text'

export const ONE_PRIZE = ['by-order', 'by-value', 'as-many'] as const
export type OnePrize = (typeof ONE_PRIZE)[number]

/** Whether a prize of a pair or a team is a prize of each of its players, where nobody takes two. */
export const SIDES_PRIZES = ['apart', 'counted'] as const
export type SidesPrizes = (typeof SIDES_PRIZES)[number]

export const tieStep = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('last'), holes: z.int().min(1).max(36) }),
  z.strictObject({ kind: z.literal('first-nine-last'), holes: z.int().min(1).max(9) }),
  z.strictObject({ kind: z.literal('lower-handicap') }),
  z.strictObject({ kind: z.literal('higher-handicap') }),
  z.strictObject({ kind: z.literal('lot'), seed: z.int() }),
  z.strictObject({
    kind: z.literal('holes'),
    from: whole(1, 18, 'The first hole of a window'),
    to: whole(1, 18, 'The last hole of a window'),
  }),
  /** Empty in the terms of a day: the result is entered when it has been played. */
  z.strictObject({
    kind: z.literal('play-off'),
    order: z.array(z.string()).refine((order) => order.length !== 1, 'A play-off has at least two in it.'),
  }),
])

export const tieRule = z.strictObject({
  steps: z.array(tieStep).max(12),
  holesCount: z.enum(['by-number', 'as-played']).default('by-number'),
  fractions: z.enum(['kept', 'rounded']).default('kept'),
})

const MOST_STROKES = 'The most strokes on a hole are a whole number from 3 to 20.'

export const maximumScore = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('net-double-bogey') }),
  z.strictObject({ kind: z.literal('double-par') }),
  z.strictObject({ kind: z.literal('fixed'), strokes: z.int(MOST_STROKES).min(3, MOST_STROKES).max(20, MOST_STROKES) }),
])

/** Percent of the course handicap, or weights for one ball of a side, lowest handicap first. */
export const allowance = z.union([z.int().min(0).max(150), z.array(z.int().min(0).max(100)).min(2).max(4)])

export const competitionTerms = z.strictObject({
  allowance,
  /** The published figure, or an officer's own choice with its reason: shown on the sheet. */
  allowanceFrom: z.enum(['published', 'house-choice']),
  allowanceReason: writtenLine().max(200).optional(),
  ties: tieRule,
  maximum: maximumScore.optional(),
  /** May guests win its prizes? */
  guests: z.enum(['for-every-prize', 'guest-prize-only']).default('guest-prize-only'),
  /** One prize a player on this day, and whose turn comes first; the first competition of the day says it for all. */
  onePrize: z.enum(ONE_PRIZE).optional(),
  /** Said for the whole day like the rule above; `apart` when absent, as on the days of before there was the choice. */
  sidesPrizes: z.enum(SIDES_PRIZES).optional(),
  /** The society's own format by its five choices; the competition's format is then only its name. */
  custom: fiveChoices.optional(),
  ...rarerTerms,
})
/** Each of the rarer terms by itself: what can be read is read back while the rest is still being typed. */
export const rarerTermsSchema = z.strictObject(rarerTerms)
export type RarerTerms = z.infer<typeof rarerTermsSchema>

export type CompetitionTerms = z.infer<typeof competitionTerms>

/** Last nine, six, three and the last hole, then the same of the first nine. Committee Procedures 5A(6). */
export const PUBLISHED_COUNTBACK: z.infer<typeof tieRule> = {
  steps: [
    { kind: 'last', holes: 9 },
    { kind: 'last', holes: 6 },
    { kind: 'last', holes: 3 },
    { kind: 'last', holes: 1 },
    { kind: 'first-nine-last', holes: 6 },
    { kind: 'first-nine-last', holes: 3 },
    { kind: 'first-nine-last', holes: 1 },
  ],
  holesCount: 'by-number',
  fractions: 'kept',
}
