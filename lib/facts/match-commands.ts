// What the desk asks for about matches, teams, sides, balls and days added up: one schema an act, as in commands.ts.

import { z } from 'zod'
import { clockTime, isoDate } from './commands'
import { LARGEST_SIDE } from './formats-offered'
import { competitionId, courseId, dayId, entryId, sideId } from './ids'
import { matchEnding } from './match-ending'
import { typedLine } from './typed-text'

const id = z.string().min(1).max(40)
const onDay = { dayId, version: z.int() }
const seed = z.int().min(0).max(4_294_967_295)

/** Sides of a competition made by the desk: as even as the handicaps allow. */
export const makeSides = z.strictObject({ ...onDay, competitionId, seed })
export type MakeSides = z.input<typeof makeSides>

export const arrangeSides = z.strictObject({
  ...onDay,
  competitionId,
  sides: z.array(z.array(entryId).min(1).max(LARGEST_SIDE)).max(100),
  /** What the sides are called, in their order; empty: by their players. Left out: as they were called. */
  names: z.array(typedLine().max(40, 'At most 40 letters.')).max(100).optional(),
})
export type ArrangeSides = z.input<typeof arrangeSides>

/** Who plays whom: entries in singles, sides otherwise. Null asks for the pairings that follow from the draw. */
export const arrangePairings = z.strictObject({
  ...onDay,
  competitionId,
  pairings: z
    .array(z.strictObject({ a: id, b: id }))
    .max(200)
    .nullable(),
})
export type ArrangePairings = z.input<typeof arrangePairings>

export const endMatch = z.strictObject({
  ...onDay,
  competitionId,
  /** Id of the match as the board has it. */
  matchId: id,
  ending: matchEnding,
  /** The ending as it stood when the form was filled, as text: the players concede on their phones meanwhile. */
  was: z.string().max(4000).optional(),
})
export type EndMatch = z.input<typeof endMatch>

const teamName = typedLine().min(1, 'A team needs a name.').max(60, 'At most 60 letters.')

export const arrangeTeams = z.strictObject({
  ...onDay,
  teams: z.array(z.strictObject({ name: teamName, entryIds: z.array(entryId).max(100) })).max(8),
})
export type ArrangeTeams = z.input<typeof arrangeTeams>

/** The field shared out among teams of these names, as even as the handicaps allow. */
export const makeTeams = z.strictObject({ ...onDay, names: z.array(teamName).min(2).max(8), seed })
export type MakeTeams = z.input<typeof makeTeams>

/** Earlier days that a competition is added up with. */
export const countDays = z.strictObject({
  ...onDay,
  competitionId,
  dayIds: z.array(dayId).max(7),
  /** Said by an officer who has read that some of them had other terms. */
  underTheseTerms: z.boolean().default(false),
  /** Of days with other terms: those that are counted anew under the terms of this one, not as they were published. */
  recount: z.array(dayId).max(7).default([]),
})
export type CountDays = z.input<typeof countDays>

/** A further round: the same field, sides and groups on another day or the same one, added up with this. */
export const callAgain = z.strictObject({
  ...onDay,
  name: typedLine().min(1, 'A name is needed.').max(80, 'At most 80 letters.'),
  date: isoDate,
  firstTee: clockTime,
  courseId,
  holes: z.union([z.literal(9), z.literal(18)]),
})
export type CallAgain = z.input<typeof callAgain>

/** What a card on paper says of a side's ball: whose drives were taken, where the named ball was lost. */
export const keyBall = z.strictObject({
  dayId,
  sideId,
  /** Entry id of whose drive, hole by hole; null where nothing is written. Absent where no drives are kept. */
  drives: z.array(entryId.nullable()).max(18).optional(),
  /** Absent where no ball is named; null when it came home. */
  ballLostOn: z.int().min(1).max(18).nullable().optional(),
})
export type KeyBall = z.input<typeof keyBall>
