// How a match ended other than on the course, as the desk writes it down beside the pairing. Rules of Golf 2023, 3.2b;
// a walkover and an abandoned match are the committee's.

import { z } from 'zod'
import { hasHole, type RoundHoles, rangeInWords } from '@/lib/rules/hole-numbers'

export const END = z.enum(['a', 'b'])
const holed = z.union([z.int().min(1).max(30), z.literal('x')])

export const matchEnding = z.strictObject({
  concededHoles: z
    .array(z.strictObject({ hole: z.int().min(1).max(18), to: END }))
    .max(18)
    .optional(),
  concededBy: END.optional(),
  walkover: END.optional(),
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
  const ends = [ending.walkover, ending.concededBy, ending.abandoned || undefined].filter((one) => one !== undefined)
  if (ends.length > 1)
    faults.push({
      place: 'ending',
      sentence: 'A match ends by a walkover, by concession or abandoned: by one of them.',
    })
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
