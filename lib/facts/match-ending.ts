// How a match ended other than on the course, as the desk writes it down beside the pairing. Rules of Golf 2023, 3.2b;
// a walkover and an abandoned match are the committee's.

import { z } from 'zod'
import { hasHole, type RoundHoles, rangeInWords } from '@/lib/rules/hole-numbers'
import type { Concession } from '@/lib/rules/matches/concede'

export const END = z.enum(['a', 'b'])
const holed = z.union([z.int().min(1).max(30), z.literal('x')])

export const givenResult = z.strictObject({
  winner: END.nullable(),
  up: z.int().min(0).max(18),
  left: z.int().min(0).max(17),
})

/** No match on so many holes ends like this: null where one does. Rules of Golf 3.2a(3). */
export function resultFault({ winner, up, left }: z.infer<typeof givenResult>, holes: number): string | null {
  const sentence = 'That is no result of a match. Write 3 and 2, or 1 up; a match that was halved has nobody up.'
  if (winner === null) return up === 0 && left === 0 ? null : sentence
  // It ended on the hole that made the lead larger than what was left: one or two more.
  const isDecided = left === 0 ? up === 1 || up === 2 : up === left + 1 || up === left + 2
  return isDecided && up + left <= holes ? null : sentence
}

export const matchEnding = z.strictObject({
  concededHoles: z
    .array(z.strictObject({ hole: z.int().min(1).max(18), to: END }))
    .max(18)
    .optional(),
  concededBy: END.optional(),
  walkover: END.optional(),
  /** "3 and 2" as the players give it, where the scores of the holes are not written down. */
  result: givenResult.optional(),
  abandoned: z.boolean().optional(),
  /** Gross scores of extra holes in the order played; of a side with several balls the better net. */
  extraHoles: z
    .array(z.strictObject({ a: holed, b: holed }))
    .max(36)
    .optional(),
})
export type MatchEnding = z.infer<typeof matchEnding>

export const NO_ENDING: MatchEnding = {}

/** What contradicts itself: the place inside the ending, and why. */
export function endingFaults(ending: MatchEnding, round: RoundHoles): { place: string; sentence: string }[] {
  const faults: { place: string; sentence: string }[] = []
  const { walkover, concededBy, result, abandoned } = ending
  const ends = [walkover, concededBy, result, abandoned || undefined].filter((one) => one !== undefined)
  if (ends.length > 1)
    faults.push({
      place: 'ending',
      sentence: 'A match ends by a walkover, by concession, with a result or abandoned: by one of them.',
    })
  const fault = result && resultFault(result, round.holes)
  if (fault) faults.push({ place: 'ending.result', sentence: fault })
  const seen = new Set<number>()
  ending.concededHoles?.forEach(({ hole }, at) => {
    const place = `ending.concededHoles[${at}]`
    if (!hasHole(round, hole))
      faults.push({ place, sentence: `This round has ${rangeInWords(round)}; there is no hole ${hole}.` })
    else if (seen.has(hole)) faults.push({ place, sentence: `Hole ${hole} is conceded already.` })
    seen.add(hole)
  })
  return faults
}

/** The ending once this is written on a phone: the newest word of a hole, and of the match, counts. */
export function endingAfter(ending: MatchEnding, { hole, by }: Concession): MatchEnding {
  const { concededHoles = [], concededBy, ...rest } = ending
  const holes =
    hole === null
      ? concededHoles
      : [
          ...concededHoles.filter((one) => one.hole !== hole),
          ...(by === null ? [] : [{ hole, to: by === 'a' ? ('b' as const) : ('a' as const) }]),
        ].sort((one, other) => one.hole - other.hole)
  const match = hole === null ? by : concededBy
  return {
    ...rest,
    ...(holes.length > 0 ? { concededHoles: holes } : {}),
    ...(match ? { concededBy: match } : {}),
  }
}
