// Sides that did not take the drives the terms ask for, by name: for the officer before the side's card is accepted and again
// before the day is closed. What follows is for the committee to say: common practice, no source. Until
// it rules the side keeps its place.

import type { CompetitionRecord, DayRecord, SideRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { holesOfRound } from '@/lib/rules/hole-numbers'
import { drivesStand, sideBall } from './ball-facts'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { listed } from './in-words'

type CompetitionOf = Pick<CompetitionRecord, 'name' | 'format' | 'terms' | 'sides'>

/** "Texas, Ashgill and Verrow: Verrow 4 needed, 2 taken." Holes on which nobody's drive is written are named too. */
export function drivesShort(record: DayRecord, names: Names = namesOf(record)): readonly string[] {
  return record.competitions.flatMap((one) =>
    shortSides(record, one, names).map(
      ({ side, each, open }) => `${one.name}, ${names.entrant(side.id)}: ${each}.${open}`,
    ),
  )
}

/** Before the card that a side is written on is accepted: "Verrow 4 needed, 2 taken. On hole 18 no drive is written." */
export function drivesShortOnCard(record: DayRecord, holder: EntryId, names: Names): readonly string[] {
  return record.competitions.flatMap((one) =>
    shortSides(record, one, names)
      .filter(({ side }) => side.entryIds.includes(holder))
      .map(({ each, open }) => `${one.name}: ${each}.${open}`),
  )
}

function shortSides(record: DayRecord, one: CompetitionOf, names: Names) {
  const { minimumDrives } = one.terms
  if (minimumDrives === undefined || formatIn(one)?.ball !== 'one') return []
  return one.sides.flatMap((side: SideRecord) => {
    const { drives } = sideBall(side.id, record.ballFacts, record.round)
    const stand = drivesStand(side.entryIds, drives, minimumDrives)
    const short = stand.counts.filter(({ wanted }) => wanted > 0)
    if (short.length === 0) return []
    const each = short.map(({ entryId, taken }) => `${names.short(entryId)} ${minimumDrives} needed, ${taken} taken`)
    const holes = holesOfRound(record.round).filter((_, at) => !side.entryIds.some((id) => id === drives[at]))
    return [{ side, each: listed(each), open: openInWords(holes) }]
  })
}

/** Few holes are named, many are counted. */
function openInWords(holes: readonly number[]): string {
  if (holes.length === 0) return ''
  if (holes.length > 3) return ` On ${holes.length} of the holes no drive is written.`
  return ` On ${holes.length === 1 ? 'hole' : 'holes'} ${listed(holes.map(String))} no drive is written.`
}
