// The record of acts, for every officer: who did what, when, from where, before and after.

import 'server-only'
import Papa from 'papaparse'
import { type ActLine, AREAS_IN_WORDS, actInWords, changeInWords, changesOf } from '@/lib/boards/record-of-acts'
import type { Actor } from '@/lib/facts/actor'
import { actsAsked } from '@/lib/facts/acts-asked'
import { addDays, momentIn } from '@/lib/facts/calendar'
import { ok, type Result } from '@/lib/result'
import { type ActRow, type ActsAsked, actsOf, choicesOfActs } from '@/lib/store/acts'
import { zoneOfInstallation } from '@/lib/store/settings'
import { deskOnly } from './desk-only'

export interface RecordPage {
  readonly lines: readonly ActLine[]
  /** The number to ask older lines with; null at the end. */
  readonly older: number | null
  readonly people: readonly string[]
  readonly acts: readonly { readonly act: string; readonly did: string }[]
}

const PAGE = 50
const MOST_EXPORTED = 50_000

export async function readRecord(
  actor: Actor,
  asked: Readonly<Record<string, unknown>>,
): Promise<Result<RecordPage, 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-record')
  if (!officer.ok) return officer
  const { societyId } = officer.value
  const rows = await actsOf(societyId, understood(asked), PAGE + 1)
  const choices = await choicesOfActs(societyId)
  const lines = rows.slice(0, PAGE).map(lineOf)
  return ok({
    lines,
    older: rows.length > PAGE ? (lines.at(-1)?.id ?? null) : null,
    people: choices.people,
    acts: choices.acts.map((act) => ({ act, did: actInWords(act) })),
  })
}

/** The same, as a file for a spreadsheet. */
export async function exportRecord(
  actor: Actor,
  asked: Readonly<Record<string, unknown>>,
): Promise<Result<{ readonly csv: string }, 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-record')
  if (!officer.ok) return officer
  const rows = await actsOf(officer.value.societyId, understood(asked), MOST_EXPORTED)
  const lines = rows.map((row) => {
    const line = lineOf(row)
    return {
      Number: line.id,
      When: line.at,
      Who: line.who,
      'From network': line.from ?? '',
      Area: line.areaName,
      Did: line.did,
      'To what': line.subject,
      Changes: line.changes.map(changeInWords).join('; '),
    }
  })
  // Cells that a spreadsheet would take for a formula are written as text.
  return ok({ csv: Papa.unparse(lines, { escapeFormulae: true, newline: '\r\n' }) })
}

function understood(asked: Readonly<Record<string, unknown>>): ActsAsked {
  const { since, until, ...rest } = actsAsked.parse(asked)
  const zone = zoneOfInstallation()
  return {
    ...rest,
    since: since ? momentIn(since, '00:00', zone) : undefined,
    until: until ? momentIn(addDays(until, 1), '00:00', zone) : undefined,
  }
}

function lineOf(row: ActRow): ActLine {
  const { id, actorName, from, act, area, subject } = row
  return {
    id,
    at: row.at.toISOString(),
    who: actorName,
    from,
    act,
    did: actInWords(act),
    area,
    areaName: AREAS_IN_WORDS[area],
    subject,
    changes: changesOf(row.before, row.after),
  }
}
