// Sides that did not take the drives the terms ask for, by name, for the officer who closes the day. What follows is for the
// committee to say: common practice, no source. Until it rules the side keeps its place.

import type { DayRecord } from '@/lib/facts/day-record'
import { drivesStand, sideBall } from './ball-facts'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { listed } from './in-words'

/** "Texas: Ashgill and Verrow took two of four drives of Verrow." Holes on which nobody's drive is written are named too. */
export function drivesShort(record: DayRecord, names: Names = namesOf(record)): readonly string[] {
  return record.competitions.flatMap((one) => {
    const { minimumDrives } = one.terms
    if (minimumDrives === undefined || formatIn(one)?.ball !== 'one') return []
    return one.sides.flatMap((side) => {
      const { drives } = sideBall(side.id, record.ballFacts, record.round)
      const stand = drivesStand(side.entryIds, drives, minimumDrives)
      const short = stand.counts.filter(({ wanted }) => wanted > 0)
      if (short.length === 0) return []
      const each = short.map(({ entryId, taken }) => `${names.short(entryId)} ${minimumDrives} needed, ${taken} taken`)
      const open = stand.open === 0 ? '' : ` On ${stand.open} of the holes no drive is written.`
      return [`${one.name}, ${names.entrant(side.id)}: ${listed(each)}.${open}`]
    })
  })
}
