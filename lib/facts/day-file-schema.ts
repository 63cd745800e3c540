// The shape of a day file, version 1: lib/facts/day-file.md says in words what each key means. Strict everywhere, so that
// a key we do not know is refused by name.

import { z } from 'zod'
import { EDITIONS } from '@/lib/rules/editions/editions'
import { fiveChoices } from './format-choices'
import { id, name, rarerTerms, whole } from './rarer-terms'
import { maximumScore, tieRule } from './terms'
import { writtenLine } from './typed-text'

/** A figure with one decimal as tenths, exactly; null when it has more decimals than that. */
function tenthsOf(value: number): number | null {
  const whole = Math.round(value * 10)
  return Number.isSafeInteger(whole) && Math.abs(value * 10 - whole) < 1e-6 ? whole : null
}

const INDEX = 'Write a handicap index as 18.4, or a plus index as "+2.1", between +15.0 and 54.0.'

/** 18.4, "18.4", "+2.1" or -2.1; as tenths, a plus index below zero. */
export const handicapIndex = z
  .union([z.number(), z.string().regex(/^[+-]?\d{1,2}(\.\d)?$/, INDEX)], { error: INDEX })
  .transform((written, context): number => {
    const plus = typeof written === 'string' && /^[+-]/.test(written)
    const value = typeof written === 'number' ? written : plus ? -Number(written.slice(1)) : Number(written)
    const tenths = tenthsOf(value)
    if (tenths === null || tenths < -150 || tenths > 540) {
      context.issues.push({ code: 'custom', message: INDEX, input: written })
      return z.NEVER
    }
    return tenths + 0
  })

const RATING = 'Write a course rating with one decimal, as 69.2.'

const courseRating = z.number(RATING).transform((written, context): number => {
  const tenths = tenthsOf(written)
  if (tenths === null) {
    context.issues.push({ code: 'custom', message: RATING, input: written })
    return z.NEVER
  }
  return tenths
})

const hole = z.strictObject({
  hole: whole(1, 18, 'A hole'),
  par: whole(3, 6, 'Par'),
  strokeIndex: whole(1, 18, 'A stroke index'),
  yards: whole(30, 900, 'A length in yards').optional(),
})

const tee = z.strictObject({
  id,
  name,
  gender: z.enum(['men', 'women'], 'Write "men" or "women".'),
  courseRating,
  slopeRating: whole(55, 155, 'A slope rating'),
  holes: z
    .array(hole, 'Write the holes as a list.')
    .min(9, 'A tee has 9 or 18 holes.')
    .max(18, 'A tee has 9 or 18 holes.'),
})

const byHand = whole(-30, 99, 'A playing handicap')

const player = z.strictObject({
  id,
  name,
  handicapIndex,
  tee: id,
  /** Set by a ruling, in place of the one computed from the index; the allowance of each competition applies to it. */
  courseHandicap: whole(-30, 99, 'A course handicap').optional(),
  /** The index confirmed for the day, where a ruling put the right one in its place. */
  handicapIndexBefore: handicapIndex.optional(),
  /** One figure for every competition, or one for each by its id. */
  playingHandicap: z
    .union([byHand, z.record(id, byHand)], {
      error: 'Write a whole playing handicap, or one for each competition by its id.',
    })
    .optional(),
  guest: z.boolean('Write true or false.').optional(),
  groups: z.array(id).max(20).optional(),
})

const side = z.strictObject({
  id,
  name: name.optional(),
  players: z
    .array(id, 'Write the players as a list of ids.')
    .min(1, 'A side needs a player.')
    .max(12, 'A side has at most 12 players.'),
  competitions: z.array(id).optional(),
  ballLostOn: whole(1, 18, 'A hole').optional(),
})

const SCORE = 'A score is a whole number from 1 to 30, "x" for no score, or null for a hole not played yet.'
const score = z.union([z.int(SCORE).min(1, SCORE).max(30, SCORE), z.literal('x'), z.null()], { error: SCORE })

const holeNumber = z.string().regex(/^([1-9]|1[0-8])$/, 'Name a hole by its number, 1 to 18.')

const card = z.strictObject({
  player: id,
  scores: z.array(score, 'Write the scores as a list, in hole order.').max(18, 'A card has at most 18 scores.'),
  outcome: z
    .enum(['no-return', 'disqualified', 'withdrawn'], 'Write "no-return", "disqualified" or "withdrawn".')
    .optional(),
  penaltyStrokes: z.record(holeNumber, whole(1, 20, 'A penalty')).optional(),
  penaltyPoints: whole(0, 60, 'A penalty in points').optional(),
  startHole: whole(1, 18, 'A starting hole').optional(),
  round: whole(1, 8, 'A round').optional(),
  missed: z.literal(true, 'Write true, or leave it out.').optional(),
  tee: id.optional(),
  handicapIndex: handicapIndex.optional(),
  courseHandicap: whole(-30, 99, 'A course handicap').optional(),
  playingHandicap: byHand.optional(),
  drives: z.array(id.nullable()).max(18).optional(),
})

const ALLOWANCE =
  'An allowance is a whole percentage, or the weights of a side’s handicaps from the lowest up, as [60, 40].'

const percent = (most: number) => z.int(ALLOWANCE).min(0, ALLOWANCE).max(most, ALLOWANCE)
const allowance = z.union([percent(150), z.array(percent(100), ALLOWANCE).min(2, ALLOWANCE).max(6, ALLOWANCE)], {
  error: ALLOWANCE,
})

const end = z.enum(['a', 'b'], 'Write "a" or "b".')
const holed = z.union([z.int(SCORE).min(1, SCORE).max(30, SCORE), z.literal('x')], { error: SCORE })

const match = z.strictObject({
  id,
  a: id,
  b: id,
  concededHoles: z
    .array(z.strictObject({ hole: whole(1, 18, 'A hole'), to: end }))
    .max(18)
    .optional(),
  concededBy: end.optional(),
  walkover: end.optional(),
  result: z
    .strictObject({ winner: end.nullable(), up: whole(0, 18, 'Holes up'), left: whole(0, 17, 'Holes left') })
    .optional(),
  abandoned: z.boolean('Write true or false.').optional(),
  extraHoles: z
    .array(z.strictObject({ a: holed, b: holed }))
    .max(36)
    .optional(),
})

/** The id of a known format, or a name with the five choices of the society's own. */
const format = z.union(
  [writtenLine().min(1).max(80), z.strictObject({ name: writtenLine().min(1).max(80), ...fiveChoices.shape })],
  { error: 'Write the id of a format (`score -- --formats` lists them), or its name and five choices.' },
)

const competition = z.strictObject({
  id,
  name: name.optional(),
  format,
  allowance: allowance.optional(),
  ties: tieRule.optional(),
  matches: z.array(match).max(500).optional(),
  entrants: z.array(id).max(1000).optional(),
  maximum: maximumScore.optional(),
  ...rarerTerms,
  groups: z.array(z.array(id).min(2, 'A group has at least two players.')).max(200).optional(),
  rounds: z
    .array(whole(1, 8, 'A round'))
    .min(1, 'Name at least one round.')
    .max(8)
    .optional(),
  roundTerms: z
    .array(
      z.strictObject({
        round: whole(1, 8, 'A round'),
        allowance: allowance.optional(),
        maximum: maximumScore.optional(),
        sideTee: rarerTerms.sideTee,
        handicapLimit: rarerTerms.handicapLimit,
        dividedBy: rarerTerms.dividedBy,
        namedHoles: rarerTerms.namedHoles,
        countedHoles: rarerTerms.countedHoles,
        notPlayed: rarerTerms.notPlayed,
        missing: rarerTerms.missing,
        ballLost: rarerTerms.ballLost,
      }),
      'Write the terms of the rounds as a list.',
    )
    .max(8)
    .optional(),
})

const team = z.strictObject({ id, name, players: z.array(id).min(1, 'A team needs a player.').max(100) })

/** Who withdrew, or never came, and is still named by a match that was decided without them. */
const absent = z.strictObject({ id, name })

function isCalendarDate(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}

const DATE = 'Write the date as year-month-day, "2026-06-13".'

export const dayFileSchema = z.strictObject({
  dayFile: z.literal(1, 'This is not a day file of version 1: write "dayFile": 1.'),
  date: z
    .string(DATE)
    .regex(/^\d{4}-\d{2}-\d{2}$/, DATE)
    .refine(isCalendarDate, { error: 'There is no such day in the calendar.' })
    .refine((date) => date >= '2000' && date < '2100', { error: 'That is no day of this century.' }),
  /** The edition in force on the date in that region when absent. */
  edition: z
    .enum(
      EDITIONS.map((one) => one.id),
      `Write one of: ${EDITIONS.map((one) => one.id).join(', ')}.`,
    )
    .optional(),
  region: z.enum(['gbi', 'world'], 'Write "gbi" or "world".').optional(),
  closed: z.boolean('Write true or false.').default(false),
  course: z.strictObject({
    name: writtenLine('Write a name in quotation marks.').max(200, 'A name has at most 200 signs.'),
    tees: z.array(tee, 'Write the tees as a list.').min(1, 'A course needs a tee.').max(40, 'At most 40 tees.'),
  }),
  players: z.array(player, 'Write the players as a list.').max(1000, 'At most 1,000 players.'),
  sides: z.array(side, 'Write the sides as a list.').max(1000, 'At most 1,000 sides.').default([]),
  cards: z.array(card, 'Write the cards as a list.').max(2000, 'At most 2,000 cards.').default([]),
  competitions: z.array(competition, 'Write the competitions as a list.').max(60, 'At most 60 competitions.'),
  teams: z.array(team, 'Write the teams as a list.').max(10, 'At most 10 teams.').optional(),
  absent: z.array(absent, 'Write who is absent as a list.').max(1000, 'At most 1,000 who are absent.').optional(),
})

export type DayFileShape = z.output<typeof dayFileSchema>
