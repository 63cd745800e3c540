// The rarer terms of a competition, shared by the day file and by the terms the book keeps: what each means stands in
// day-file.md and lib/rules/day.ts.

import { z } from 'zod'
import { writtenLine } from './typed-text'

export const id = writtenLine('Write an id in quotation marks.')
  .min(1, 'An id cannot be empty.')
  .max(80, 'An id has at most 80 signs.')
export const name = writtenLine('Write a name in quotation marks.')
  .max(200, 'A name has at most 200 signs.')
  .regex(/\S/, 'A name cannot be empty.')

export const whole = (from: number, to: number, what: string) => {
  const sentence = `${what} is a whole number from ${from} to ${to}.`
  return z.int(sentence).min(from, sentence).max(to, sentence)
}

const holeList = z.array(whole(1, 18, 'A hole'), 'Write the numbers of the holes: 3, 7, 18.').max(18)

const missing = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('nothing') }),
  z.strictObject({
    kind: z.literal('ghost'),
    overPar: whole(-2, 5, 'Strokes over par'),
    courseHandicap: whole(-15, 77, 'A course handicap'),
  }),
  z.strictObject({ kind: z.literal('lowest-again') }),
  z.strictObject({ kind: z.literal('drawn'), seed: z.int('A seed is a whole number.') }),
])

const division = z.strictObject({
  id,
  name,
  handicapFrom: whole(-30, 200, 'A handicap').optional(),
  handicapTo: whole(-30, 200, 'A handicap').optional(),
  gender: z.enum(['men', 'women'], 'Write "men" or "women".').optional(),
  guests: z.enum(['only', 'none'], 'Write "only" or "none".').optional(),
  group: id.optional(),
})

export const rarerTerms = {
  handicapLimit: z
    .strictObject({ men: whole(0, 99, 'A limit').optional(), women: whole(0, 99, 'A limit').optional() })
    .optional(),
  dividedBy: whole(1, 20, 'The divisor').optional(),
  matchDifference: z.enum(['rounded', 'unrounded'], 'Write "rounded" or "unrounded".').optional(),
  extraHoleStrokes: z.enum(['as-on-the-card', 'none'], 'Write "as-on-the-card" or "none".').optional(),
  namedHoles: holeList.optional(),
  countedHoles: holeList.min(1, 'Name at least one hole that counts.').optional(),
  notPlayed: z.enum(['no-score', 'level'], 'Write "no-score" or "level".').optional(),
  missing: missing.optional(),
  ballLost: z
    .enum(
      ['counts-once', 'named-score-nothing', 'side-out'],
      'Write "counts-once", "named-score-nothing" or "side-out".',
    )
    .optional(),
  sideTee: id.optional(),
  partPoints: z.enum(['each-part', 'whole'], 'Write "each-part" or "whole".').optional(),
  ranking: z.enum(['in-group', 'everybody'], 'Write "in-group" or "everybody".').optional(),
  minimumDrives: whole(0, 18, 'The minimum of drives').optional(),
  divisions: z.array(division).max(20).optional(),
}
