// The day as an act on its scores or its result finds it: there, and not called off.

import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { calledOffSentence } from '@/lib/boards/called-off'
import { daysBetween } from '@/lib/facts/calendar'
import type { CalledOff, DayRecord } from '@/lib/facts/day-record'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { type DayNow, takeDay } from '@/lib/store/day-versions'
import { today } from '@/lib/store/settings'
import { notFound } from './desk-only'

/** Null while the day is on; otherwise the refusal to hand back. */
export function whyCalledOff(day: { readonly calledOff?: CalledOff | null }): Refused<'day-called-off'> | null {
  if (!day.calledOff) return null
  return refused(
    'day-called-off',
    `${calledOffSentence(day.calledOff.reason)} Put the day back on before anything else is done with it.`,
  )
}

/** Before its date, and no officer has said that it is played early. */
export function isAhead(day: Pick<DayRecord, 'date' | 'playedAheadAt'>, now: Date): boolean {
  return day.date > today(now) && !day.playedAheadAt
}

/** Null from the date of the day on; before it, cards and results wait until an officer has said that it is played early. */
export function whyAhead(day: Pick<DayRecord, 'date' | 'playedAheadAt'>, now: Date): Refused<'day-ahead'> | null {
  if (!isAhead(day, now)) return null
  const days = daysBetween(today(now), day.date)
  return refused(
    'day-ahead',
    `This day is ${days === 1 ? 'tomorrow' : `${days} days ahead`}: it has no cards and no result yet. If it is being played early, say so on the page of the day.`,
  )
}

/** Takes the write lock with the day's row, as `takeDay`, and refuses a day that was called off. */
export async function takeDayOn(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
): Promise<Result<DayNow, 'not-found' | 'day-called-off'>> {
  const day = await takeDay(tx, societyId, dayId)
  if (!day) return notFound('day')
  return whyCalledOff(day) ?? ok(day)
}
