// Where a day stands among the days of its season: the way back to all of them, to the one before and to the next.

import type { Actor } from '@/lib/facts/actor'
import { ok, type Result } from '@/lib/result'
import { type DayPlace, placeOfDay } from '@/lib/store/desk'
import { deskOnly, notFound } from './desk-only'

export type { DayPlace } from '@/lib/store/desk'

export async function dayPlace(actor: Actor, daySlug: string): Promise<Result<DayPlace, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const place = typeof daySlug === 'string' ? await placeOfDay(officer.value.societyId, daySlug) : null
  return place ? ok(place) : notFound('day')
}
