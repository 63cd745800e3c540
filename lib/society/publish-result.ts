// The result is published as a frozen, numbered sheet. A correction is the next sheet, with its reason.

import 'server-only'
import { randomUUID } from 'node:crypto'
import { boardOf } from '@/lib/boards/board'
import { emptyCompetitions, withoutSentence } from '@/lib/boards/empty-competitions'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { sheetDifferences } from '@/lib/boards/sheet-differences'
import type { ResultSheet } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import { type PublishResult, publishResult as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { dayRecordIn } from '@/lib/store/day-record'
import { moveDayVersion, versionText } from '@/lib/store/day-versions'
import { addSheet, newestSheet } from '@/lib/store/publications'
import { write } from '@/lib/store/write'
import { takeDayOn, whyAhead } from './day-on'
import { deskOnly, movedOn, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { sheetOf } from './read-board'

/** A request sent twice gets the number of the one sheet, not a second one. */
export async function publishResult(
  actor: Actor,
  input: PublishResult,
  now: Date = new Date(),
): Promise<
  Result<
    { number: number; version: number },
    | 'not-allowed'
    | 'not-understood'
    | 'not-found'
    | 'day-moved-on'
    | 'day-called-off'
    | 'day-ahead'
    | 'day-not-closed'
    | 'nothing-changed'
    | 'reason-needed'
    | 'competition-empty'
  >
> {
  const officer = deskOnly(actor, 'publish-result')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId, userId, name } = officer.value
  const { dayId, version } = read.value
  const reason = read.value.reason || null
  const { without } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on
    const day = on.value
    const before = await newestSheet(tx, dayId)
    if (before && versionOf(before.sheet) === version)
      return ok({ number: before.number, version: day.version, announce: null })
    if (day.version !== version) return movedOn()
    if (day.status !== 'closed') return refused('day-not-closed', 'Close the day first: then the result is published.')
    const ahead = whyAhead(day, now)
    if (ahead) return ahead
    const record = await dayRecordIn(tx, { societyId, dayId })
    if (!record) return notFound('day')
    const number = (before?.number ?? 0) + 1
    const empty = emptyCompetitions(record, boardOf(record, now))
    const sheet = resultSheetOf(record, {
      number,
      reason: before ? reason : null,
      without: without && empty.length > 0 ? withoutSentence(empty, without) : null,
      by: name,
      at: now,
    })
    if (before && sheetDifferences(sheetOf(before), sheet).length === 0)
      return refused(
        'nothing-changed',
        `Nothing differs from sheet ${before.number}: there is nothing to publish. To correct a score, open the day again first.`,
      )
    if (before && !reason)
      return refused(
        'reason-needed',
        `Sheet ${before.number} is out. Write the reason for sheet ${number}: it is printed on it.`,
      )
    if (empty.length > 0 && !without)
      return refused(
        'competition-empty',
        `${empty.map(({ sentence }) => sentence).join(' ')} Open the day again and put it right, or say why the sheet goes out without it.`,
        empty.map(({ name: place, sentence }) => ({ place, sentence })),
      )
    await addSheet(tx, {
      id: randomUUID(),
      societyId,
      dayId,
      number,
      sheet: JSON.stringify(sheet),
      reason: sheet.reason,
      edition: record.edition,
      scoreVersion: record.scoreVersion,
      byUserId: userId,
      byName: name,
      publishedAt: now,
    })
    const moved = await moveDayVersion(tx, dayId)
    const out = { subject: record.name, subjectId: dayId, version: moved.version }
    const words = {
      before: before ? { Sheet: before.number } : null,
      after: {
        Sheet: number,
        ...(sheet.reason === null ? {} : { Reason: sheet.reason }),
        ...(sheet.without ? { Without: sheet.without } : {}),
      },
    }
    await recordAct(tx, actor, { act: 'publish-result', area: 'results', ...out, ...words }, now)
    return ok({ number, version: moved.version, announce: versionText(moved) })
  })
  if (!done.ok) return done
  const { announce, ...answer } = done.value
  if (announce) live().announce(dayId, announce)
  return ok(answer)
}

/** The version of the day a sheet was made from. */
function versionOf(sheet: string): number {
  return Number((JSON.parse(sheet) as ResultSheet).board.version.split('.')[0])
}
