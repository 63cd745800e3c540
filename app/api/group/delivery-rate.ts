// A phone gone wrong must not keep the others from delivering. Each process counts for itself: the limit is far above
// what four people can tap, so it need not be exact.

import type { GroupId } from '@/lib/facts/ids'

const WINDOW = 60_000
const MOST = 240

const counts = new Map<string, { since: number; count: number }>()

export function mayDeliver(groupId: GroupId, now: number): boolean {
  const seen = counts.get(groupId)
  if (!seen || now - seen.since >= WINDOW) {
    if (counts.size > 10_000) counts.clear()
    counts.set(groupId, { since: now, count: 1 })
    return true
  }
  seen.count++
  return seen.count <= MOST
}
