// The day file of a day: what the board was counted from, to be scored again by anybody.

import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import type { Actor } from '@/lib/facts/actor'
import { writeDayFile } from '@/lib/facts/day-file'
import { ok, type Result } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { deskOnly, notFound } from './desk-only'

/** The day file as a value, ready for JSON. */
export async function dayFileOf(
  actor: Actor,
  dayId: DayId,
): Promise<Result<{ fileName: string; dayFile: unknown }, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const record = await readDayRecord({ societyId: officer.value.societyId, dayId })
  if (!record) return notFound('day')
  return ok({ fileName: `${record.date}-${record.slug}.json`, dayFile: writeDayFile(dayOfRecord(record)) })
}
