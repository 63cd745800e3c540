// Who has a card. On a day on which every side plays one ball the side has one, in the hands of its first player; on any
// other day everybody has an own one.

import type { DayRecord, SideRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { markersOf } from '@/lib/rules/draw/markers'
import { formatIn } from './format-of-competition'
import { playerId } from './ids-from-engine'

type Drawn = Pick<DayRecord, 'competitions' | 'groups'>

/** The sides that share a card; none on a day of own balls. */
export function sidesOfOneBall({ competitions }: Pick<DayRecord, 'competitions'>): readonly SideRecord[] {
  const isOneBall = competitions.length > 0 && competitions.every((one) => formatIn(one)?.ball === 'one')
  return isOneBall ? (competitions[0]?.sides ?? []) : []
}

/** The side a player shares a card with. */
export function sharedCard(day: Pick<DayRecord, 'competitions'>, entryId: EntryId): SideRecord | null {
  return sidesOfOneBall(day).find((side) => side.entryIds.includes(entryId)) ?? null
}

/** Card holders of the whole day with their markers: each is marked by the next of the group. */
export function markersOfDay(day: Drawn): ReadonlyMap<EntryId, EntryId | null> {
  const holderOf = new Map<EntryId, EntryId>()
  for (const { entryIds } of sidesOfOneBall(day)) {
    const drawn = entryIds.filter((id) => day.groups.some((group) => group.entryIds.includes(id)))
    for (const id of drawn) holderOf.set(id, drawn[0]!)
  }
  return new Map(
    day.groups.flatMap((group) =>
      [...markersOf(group.entryIds.filter((id) => (holderOf.get(id) ?? id) === id))].map(
        ([player, marker]) => [playerId(player), marker === null ? null : playerId(marker)] as const,
      ),
    ),
  )
}
