// The link and the code of a group let their holder write scores, and the link of an own page lets its holder act as the
// member. A reading at the desk carries them only for duties that may do the same there.

import type { GroupKey } from '@/lib/boards/desk-views'
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import { mayNot } from './acts'

/** May this officer have what opens a group's card? */
export const maySeeGroupKeys = (actor: Actor): boolean => mayNot(actor, 'enter-score') === null

/** May this officer have what opens a member's own page? */
export const maySeePageKeys = (actor: Actor): boolean => mayNot(actor, 'renew-page-key') === null

/** Null for an officer who may not have them. */
export function groupKeysFor(actor: Actor, record: DayRecord): readonly GroupKey[] | null {
  if (!maySeeGroupKeys(actor)) return null
  return record.groups.map(({ id, number, startTime, code, linkKey }) => ({ id, number, startTime, code, linkKey }))
}

/** The day as the desk's pages get it: what opens a card never goes along by accident. */
export const withoutKeys = (record: DayRecord): DayRecord => ({
  ...record,
  groups: record.groups.map((group) => ({ ...group, code: '', linkKey: '' })),
})
