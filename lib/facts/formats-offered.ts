// Which forms of play a day of the book can be called with, and why not the others. The desk's list and the use case
// ask the same question, so that nothing is offered which would be refused. Every format of the list is offered; of the
// society's own only one whose sides no draw could hold is not.

import type { Format } from '@/lib/rules/formats/format'

/** The largest side the desk arranges: three groups of four. */
export const LARGEST_SIDE = 12

/** Null when the book can run it. */
export function whyNotYet(format: Pick<Format, 'isMatch' | 'sideSize' | 'value'>): string | null {
  if (format.sideSize > LARGEST_SIDE) return `A side has ${LARGEST_SIDE} players at the most.`
  return null
}
