// Everybody at most once, and only who plays on this day: asked of groups, sides and teams alike.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import type { Fault } from '@/lib/result'

export function seatFaults(
  day: Pick<DayRecord, 'entries'>,
  lists: readonly (readonly EntryId[])[],
  placeOf: (list: number, seat: number) => string,
): readonly Fault[] {
  const entered = new Map(
    day.entries.filter((entry) => entry.status === 'entered').map((entry) => [entry.id, entry] as const),
  )
  const seen = new Set<string>()
  return lists.flatMap((ids, at) =>
    ids.flatMap((id, seat) => {
      const place = placeOf(at, seat)
      const entry = entered.get(id)
      if (!entry) return [{ place, sentence: 'Somebody here is not entered on this day.' }]
      if (seen.has(id)) return [{ place, sentence: `${fullName(entry)} is there twice.` }]
      seen.add(id)
      return []
    }),
  )
}
