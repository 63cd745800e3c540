// Which forms of play a day of the book can be called with, and why not the others. The desk's list and the use case
// ask the same question, so that nothing is offered which would be refused.

import type { Format } from '@/lib/rules/formats/format'

/** The largest group a draw makes; the sides are made inside the groups. */
const LARGEST_SIDE = 4

/** Null when the book can run it. */
export function whyNotYet(format: Pick<Format, 'isMatch' | 'sideSize' | 'value'>): string | null {
  if (format.isMatch && format.sideSize > 1)
    return 'A match between sides is read between any two cards of the day. Choose singles here.'
  if (format.value.kind === 'shared')
    return 'A game shared inside the group cannot be read from the day yet. Choose points or stroke play.'
  if (format.sideSize > LARGEST_SIDE)
    return 'Sides are made inside the groups, and a group has four players at the most. Choose sides of four or fewer.'
  return null
}
