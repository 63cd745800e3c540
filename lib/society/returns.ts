// Every card of the day as the desk must see it before the day can be closed.

import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import { returnsOf } from '@/lib/boards/returns'
import type { ReturnsView } from '@/lib/boards/returns-view'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result } from '@/lib/result'
import { readDayRecord, type WhichDay } from '@/lib/store/day-record'
import { slugOfSociety } from '@/lib/store/desk'
import { zoneOfInstallation } from '@/lib/store/settings'
import { deskOnly, notFound } from './desk-only'

type Refusals = 'not-allowed' | 'not-found'

export async function returns(actor: Actor, dayId: DayId): Promise<Result<ReturnsView, Refusals>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  return viewOf({ societyId: officer.value.societyId, dayId })
}

/** By the day's own words in the address: the day is read once. */
export async function returnsAt(actor: Actor, daySlug: string): Promise<Result<ReturnsView, Refusals>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const societySlug = await slugOfSociety(officer.value.societyId)
  // An act's address comes back from the browser: a missing one would mean any day to the database.
  if (societySlug === null || typeof daySlug !== 'string') return notFound('day')
  return viewOf({ societySlug, daySlug })
}

async function viewOf(which: WhichDay): Promise<Result<ReturnsView, 'not-found'>> {
  const record = await readDayRecord(which)
  return record ? ok(returnsOf(record, zoneOfInstallation())) : notFound('day')
}
