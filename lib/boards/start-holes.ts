// Where a group of a shotgun start stands: two groups on one hole are 1A and 1B, in the order of the groups.

import type { DayRecord, GroupRecord } from '@/lib/facts/day-record'

/** "7", "1A", "1B", by the number of the group. */
export function startHolesOf({ groups, round }: Pick<DayRecord, 'groups' | 'round'>): ReadonlyMap<number, string> {
  const there = groups.filter(({ entryIds }) => entryIds.length > 0)
  return new Map(
    there.map(({ number, startHole }) => {
      const sharing = there.filter((one) => one.startHole === startHole)
      const at = sharing.findIndex((one) => one.number === number)
      const isApart = round.startKind === 'shotgun' && sharing.length > 1
      return [number, isApart ? `${startHole}${String.fromCharCode('A'.charCodeAt(0) + at)}` : String(startHole)]
    }),
  )
}

export const startHoleIn = (
  record: Pick<DayRecord, 'groups' | 'round'>,
  group: Pick<GroupRecord, 'number' | 'startHole'>,
) => startHolesOf(record).get(group.number) ?? String(group.startHole)
