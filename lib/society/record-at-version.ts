// The day's record for public readers, read once for each version and shared by all who look at that version.

import 'server-only'
import type { DayRecord } from '@/lib/facts/day-record'
import { readDayRecord } from '@/lib/store/day-record'
import { dayAt } from '@/lib/store/day-versions'

const kept = globalThis as { daybookRecords?: Map<string, DayRecord> }
const DAYS_KEPT = 24

export async function recordAtVersion(societySlug: string, daySlug: string): Promise<DayRecord | null> {
  const day = await dayAt(societySlug, daySlug)
  if (!day) return null
  kept.daybookRecords ??= new Map()
  const known = kept.daybookRecords.get(day.dayId)
  if (known && `${known.version}.${known.boardVersion}` === day.version) return known
  const record = await readDayRecord({ societySlug, daySlug })
  // Before the freeze a changed figure or name of a member shows at once, although the day itself has not moved.
  if (!record || [record, ...record.earlier].some((one) => one.status === 'called')) return record
  kept.daybookRecords.delete(day.dayId)
  kept.daybookRecords.set(day.dayId, record)
  if (kept.daybookRecords.size > DAYS_KEPT) kept.daybookRecords.delete(kept.daybookRecords.keys().next().value ?? '')
  return record
}
