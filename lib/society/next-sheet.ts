// The sheet as it would be published now, seen at the desk before it is: its prizes, and what differs from the last one.

import 'server-only'
import { type EmptyCompetition, emptyCompetitions } from '@/lib/boards/empty-competitions'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { sheetDifferences } from '@/lib/boards/sheet-differences'
import type { ResultSheet } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import type { DayId } from '@/lib/facts/ids'
import { ok, type Result } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { newestSheetNow } from '@/lib/store/publications'
import { deskOnly, notFound } from './desk-only'
import { sheetOf } from './read-board'

export interface NextSheet {
  readonly sheet: ResultSheet
  /** Number of the last one; null before the first. */
  readonly last: number | null
  /** What it would say otherwise than the last one, in lines of words; empty when it would say the same. */
  readonly differs: readonly string[]
  /** Competitions in which nobody has a result, and why. */
  readonly empty: readonly EmptyCompetition[]
}

export async function nextSheet(
  actor: Actor,
  dayId: DayId,
  now: Date = new Date(),
): Promise<Result<NextSheet, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const record = await readDayRecord({ societyId: officer.value.societyId, dayId })
  if (!record) return notFound('day')
  const last = await newestSheetNow(record.id)
  const number = (last?.number ?? 0) + 1
  const sheet = resultSheetOf(record, { number, reason: null, by: officer.value.name, at: now })
  return ok({
    sheet,
    last: last?.number ?? null,
    differs: last ? sheetDifferences(sheetOf(last), sheet) : [],
    empty: emptyCompetitions(record, sheet.board),
  })
}
