// What others did to a thing since a form was filled, out of the record of acts: who, what and how long ago.

import 'server-only'
import { actInWords, agoInWords, changeInWords, changesOf } from '@/lib/boards/record-of-acts'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result } from '@/lib/result'
import { type ActRow, actsSince } from '@/lib/store/acts'
import { deskOnly } from './desk-only'

const CHANGES_TOLD = 6

/** "Nora Fenwick changed the draw two minutes ago. P. Quill: group 3 (was group 1)" */
export async function toldMeanwhile(
  actor: Actor,
  since: { readonly subjectId: string; readonly version: number },
  now: Date = new Date(),
): Promise<Result<readonly string[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const rows = await actsSince(officer.value.societyId, since.subjectId, since.version)
  return ok(rows.map((row) => toldOf(row, now)))
}

function toldOf(row: ActRow, now: Date): string {
  const changes = changesOf(row.before, row.after).map(changeInWords)
  const shown = changes.slice(0, CHANGES_TOLD)
  const more = changes.length - shown.length
  const what = [...shown, ...(more > 0 ? [`and ${more} more`] : [])].join('; ')
  return `${row.actorName} ${actInWords(row.act)} ${agoInWords(row.at, now)}${what ? `. ${what}` : ''}`
}
