// The desk's room for sides, matches, teams and rounds of a day.

import type { CourseId } from '@/lib/facts/ids'
import 'server-only'
import { boardOf } from '@/lib/boards/board'
import { type CompetitionAtDesk, deskMatchesOf, type PlayerAtDesk } from '@/lib/boards/desk-matches-view'
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import { ok, type Result } from '@/lib/result'
import { reading } from '@/lib/store/client'
import { coursesOf } from '@/lib/store/courses'
import { readDayRecord } from '@/lib/store/day-record'
import { type DayToCount, daysBefore } from '@/lib/store/pairings'
import { readAtOnce } from '@/lib/store/write'
import { deskDay } from './desk-day'

export interface DeskMatches {
  readonly record: DayRecord
  readonly players: readonly PlayerAtDesk[]
  readonly competitions: readonly CompetitionAtDesk[]
  /** Earlier days it can be added up with, newest first. */
  readonly days: readonly DayToCount[]
  readonly courses: readonly { readonly courseId: CourseId; readonly name: string }[]
}

export async function deskMatches(
  actor: Actor,
  daySlug: string,
  now: Date = new Date(),
): Promise<Result<DeskMatches, 'not-allowed' | 'not-found'>> {
  const found = await deskDay(actor, daySlug)
  if (!found.ok) return found
  const { id, society } = found.value.record
  const record = (await readDayRecord({ societyId: society.id, dayId: id })) ?? found.value.record
  const days = await readAtOnce((tx) => daysBefore(tx, society.id, record.date, record.id), reading())
  const courses = await coursesOf(society.id, reading())
  return ok({
    record,
    ...deskMatchesOf(record, boardOf(record, now)),
    days,
    courses: courses.map(({ courseId, name }) => ({ courseId, name })),
  })
}
