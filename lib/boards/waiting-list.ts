// Who gets the place of somebody who withdraws.

import type { DayStatus, EntryRecord } from '@/lib/facts/day-record'

type Waiting = Pick<EntryRecord, 'id' | 'kind' | 'status' | 'indexTenths'>

/** Members before guests, then in the order in which they came. After the freeze only who has a handicap. */
export function movedUp<E extends Waiting>(
  day: { readonly status: DayStatus; readonly entries: readonly E[] },
  out: readonly Pick<E, 'id'>[],
  free: number,
): readonly E[] {
  const gone = new Set(out.map((entry) => entry.id))
  const waiting = day.entries.filter(
    (entry) =>
      entry.status === 'waiting' && !gone.has(entry.id) && (day.status === 'called' || entry.indexTenths !== null),
  )
  const inOrder = [
    ...waiting.filter((entry) => entry.kind === 'member'),
    ...waiting.filter((entry) => entry.kind === 'guest'),
  ]
  return inOrder.slice(0, Math.max(0, Math.min(free, inOrder.length)))
}
