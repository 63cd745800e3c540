// Every card of the day as the desk must see it before the day can be closed.

import 'server-only'
import { returnsOf } from '@/lib/boards/returns'
import type { ReturnsView } from '@/lib/boards/returns-view'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { zoneOfInstallation } from '@/lib/store/settings'
import { deskOnly, notFound } from './desk-only'

export async function returns(actor: Actor, dayId: string): Promise<Result<ReturnsView, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const record = await readDayRecord({ societyId: officer.value.societyId, dayId })
  return record ? ok(returnsOf(record, zoneOfInstallation())) : notFound('day')
}
