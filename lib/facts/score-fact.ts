// What a phone sends: its facts in the order they were written, each with the device's own number. The same schema
// checks them on the phone before they are kept and on the server before they are taken.

import { z } from 'zod'
import { cardId, entryId, groupId, sideId } from './ids'
import { END } from './match-ending'

/** Gross strokes, 'x' for no score, null to clear what this writer (a name on a phone) wrote before. */
export const writtenScore = z.union([z.int().min(1).max(30), z.literal('x'), z.null()])
export type WrittenScore = z.infer<typeof writtenScore>

const common = {
  seq: z.int().min(1),
  cardId,
  /** Entry id of whoever holds the phone. */
  writer: entryId,
  writtenAt: z.iso.datetime(),
}

export const replacedScores = z.array(z.strictObject({ phone: z.string().min(1).max(40), seq: z.int().min(1) })).max(8)

export const scoreEntered = z.strictObject({
  kind: z.literal('score'),
  ...common,
  hole: z.int().min(1).max(18),
  score: writtenScore,
  /** Scores of another phone under the same name that this one takes the place of, each up to its number. */
  replaces: replacedScores.optional(),
})

export const cardSigned = z.strictObject({
  kind: z.literal('signature'),
  ...common,
  role: z.enum(['player', 'marker']),
  /** The whole card as the signer saw it. */
  scores: z.array(writtenScore).min(9).max(18),
})

const ofSide = {
  ...common,
  /** The side whose ball it is; `cardId` is the card it was written beside. */
  sideId,
  hole: z.int().min(1).max(18),
}

/** Scramble: whose drive the side took on a hole; null takes back what was written. */
export const driveTaken = z.strictObject({
  kind: z.literal('drive'),
  ...ofSide,
  entryId: entryId.nullable(),
})

/** Yellow ball: the named ball was lost on a hole, or was not after all. */
export const ballLost = z.strictObject({ kind: z.literal('ball-lost'), ...ofSide, lost: z.boolean() })

/** Rules of Golf 3.2b: an end of a match concedes a hole or, without one, the match; by nobody takes back what was written. */
export const concession = z.strictObject({
  kind: z.literal('concession'),
  ...common,
  /** Id of the match as the pack has it; `cardId` is a card of somebody in it. */
  matchId: z.string().min(1).max(40),
  hole: z.int().min(1).max(18).nullable(),
  by: END.nullable(),
})

export const deviceFact = z.discriminatedUnion('kind', [scoreEntered, cardSigned, driveTaken, ballLost, concession])
export type DeviceFact = z.infer<typeof deviceFact>
export type BallFact = Extract<DeviceFact, { kind: 'drive' | 'ball-lost' }>
export type ConcessionFact = Extract<DeviceFact, { kind: 'concession' }>

export const delivery = z.strictObject({
  deviceId: z.string().min(16).max(64).brand<'device', 'inout'>(),
  facts: z.array(deviceFact).min(1).max(200),
  /** What the phone says of itself, for the desk: an older app says nothing. */
  unsent: z.int().min(0).max(100_000).optional(),
  app: z.string().max(40).optional(),
  /** Group of the card on the phone: tells whose scores these are when the link has been renewed. */
  group: groupId.optional(),
})
export type Delivery = z.infer<typeof delivery>

/** The server's answer for each fact. A refusal is final and is shown; anything else is tried again. */
export type FactAnswer =
  | { readonly seq: number; readonly answer: 'received' }
  | { readonly seq: number; readonly answer: 'late'; readonly sentence: string }
  | { readonly seq: number; readonly answer: 'refused'; readonly code: string; readonly sentence: string }

export interface DeliveryAnswer {
  /** Everything up to this number is settled. */
  readonly lastSeq: number
  readonly answers: readonly FactAnswer[]
  readonly scoreVersion: number
}
