// Imports a member list: first what would happen, row by row; then all the rows chosen in one transaction, or nothing.

import { createHash } from 'node:crypto'
import type { MemberImportPreview } from '@/lib/boards/desk-views'
import type { Actor } from '@/lib/facts/actor'
import type { SocietyId, UserId } from '@/lib/facts/ids'
import { type MemberImportChoices, memberImportChoices, NOTHING_CHOSEN } from '@/lib/facts/member-import'
import { harmlessLine } from '@/lib/facts/typed-text'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import { addFigure, insertPerson, type PersonKept, peopleOf, updatePerson } from '@/lib/store/people'
import { today } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly } from './desk-only'
import { memberColumns, type SheetColumns } from './member-headings'
import { type MemberPlan, type Planned, planMembers } from './member-plan'
import { memberPreview } from './member-preview'
import { membersIn, type SheetRows } from './member-sheet'
import { parseInput } from './parse-input'
import { readTable, type TableFile } from './table-file'

export interface FileToRead {
  readonly fileName: string
  readonly bytes: Uint8Array
}

export interface MembersToRead extends FileToRead {
  /** What the officer said about the file; read with the schema in `lib/facts/member-import.ts`. */
  readonly choices?: unknown
}

type Unreadable = 'not-allowed' | 'not-understood' | 'file-too-large' | 'not-a-table' | 'old-spreadsheet' | 'empty-file'

export async function previewMembers(
  actor: Actor,
  file: MembersToRead,
): Promise<Result<MemberImportPreview, Unreadable>> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const sheet = await sheetIn(file)
  if (!sheet.ok) return sheet
  return ok(lookedAt(actor, file, sheet.value, await peopleOf(officer.value.societyId)).preview)
}

export interface MembersRead {
  readonly added: number
  readonly changed: number
  readonly unchanged: number
  readonly leftOut: number
}

export async function importMembers(
  actor: Actor,
  file: MembersToRead & { digest: string },
  now: Date = new Date(),
): Promise<Result<MembersRead, Unreadable | 'file-changed' | 'file-has-faults'>> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const { societyId, userId } = officer.value
  const sheet = await sheetIn(file)
  if (!sheet.ok) return sheet
  return write<Result<MembersRead, 'file-changed' | 'file-has-faults'>>(async (tx) => {
    // Planned again on the book of this moment: somebody may have added a person since the preview.
    const { plan, preview } = lookedAt(actor, file, sheet.value, await peopleOf(societyId, tx))
    if (preview.digest !== file.digest)
      return refused(
        'file-changed',
        'The file or the member list has changed since you looked. Nothing was imported: look at it again, then import.',
      )
    if (!preview.ready)
      return refused('file-has-faults', 'Nothing was imported yet: some rows or questions still need an answer.')
    const fileName = harmlessLine(file.fileName).slice(0, 80)
    const reason = `Imported from ${fileName}`
    for (const one of plan.planned) await carryOut(tx, societyId, one, { reason, byUserId: userId }, now)
    const count = (what: Planned['what']) => plan.planned.filter((one) => one.what === what).length
    const done = {
      added: count('new'),
      changed: count('changed'),
      unchanged: count('unchanged'),
      leftOut: preview.leftOut.length,
    }
    const figures = plan.planned.filter((one) => one.what === 'changed' && one.source !== null).length
    const after = {
      Added: done.added,
      Changed: done.changed,
      'New figures': figures,
      'As they were': done.unchanged,
      'Rows left out': done.leftOut,
    }
    const record = { act: 'keep-people', area: figures > 0 ? ('handicaps' as const) : ('book' as const), after }
    if (done.added + done.changed > 0)
      await recordAct(tx, actor, { ...record, subject: `Member list ${fileName}` }, now)
    return ok(done)
  })
}

async function carryOut(
  tx: Tx,
  societyId: SocietyId,
  one: Planned,
  why: { readonly reason: string; readonly byUserId: UserId | null },
  now: Date,
): Promise<void> {
  const figure = (indexTenths: number | null, source: PersonKept['handicapSource'] | null) =>
    indexTenths === null || source === null ? null : { indexTenths, source, from: today(now), ...why }
  if (one.what === 'new') {
    const { firstName, familyName, knownAs, gender, email, phone, memberSince, membershipNumber, homeClub } = one.row
    if (gender === null) throw new Error(`Row ${one.row.row} has no tees: the preview was not ready.`)
    const contact = { email, phone, memberSince, membershipNumber, homeClub, leftOn: null }
    const person = { firstName, familyName, knownAs, gender, kind: 'member' as const, regular: true, ...contact }
    const labels = one.row.labels ?? []
    const kept = { ...person, handicapSource: one.source, labels }
    await insertPerson(tx, societyId, kept, figure(one.row.indexTenths, one.source), now)
  } else if (one.what === 'changed') {
    const { row, known, source } = one
    await updatePerson(tx, societyId, known.personId, {
      firstName: known.firstName,
      familyName: known.familyName,
      gender: known.gender,
      // A guest on a list of members is one from now on.
      kind: 'member',
      regular: known.regular,
      email: row.email ?? known.email,
      phone: row.phone ?? known.phone,
      handicapSource: source ?? known.handicapSource,
      memberSince: row.memberSince ?? known.memberSince,
      membershipNumber: row.membershipNumber ?? known.membershipNumber,
      homeClub: row.homeClub ?? known.homeClub,
      leftOn: known.leftOn,
      labels: row.labels ?? known.labels,
    })
    const added = figure(row.indexTenths, source)
    if (added) await addFigure(tx, societyId, known.personId, added, now)
  }
}

export interface Sheet {
  readonly table: TableFile
  readonly columns: SheetColumns
  readonly rows: SheetRows
  readonly choices: MemberImportChoices
}

async function sheetIn({
  bytes,
  choices: said,
}: MembersToRead): Promise<Result<Sheet, Exclude<Unreadable, 'not-allowed'>>> {
  const choices = said === undefined ? ok(NOTHING_CHOSEN) : parseInput(memberImportChoices, said)
  if (!choices.ok) return choices
  const table = await readTable(bytes)
  if (!table.ok) return table
  const columns = memberColumns(table.value.rows, choices.value)
  const rows = membersIn(table.value.rows, columns, choices.value)
  return ok({ table: table.value, columns, rows, choices: choices.value })
}

function lookedAt(
  actor: Actor,
  file: FileToRead,
  sheet: Sheet,
  people: readonly PersonKept[],
): { readonly plan: MemberPlan; readonly preview: MemberImportPreview } {
  const plan = planMembers(sheet.rows, people, {
    choices: sheet.choices,
    hasGenderColumn: sheet.columns.columns.some((column) => column.as === 'gender'),
    mayChangeFigures: mayNot(actor, 'change-handicap') === null,
  })
  return { plan, preview: memberPreview(file.fileName, sheet, plan, digestOf(sheet, plan)) }
}

/** Of the file, of everything said about it, and of what would happen: what was seen is what is done. */
function digestOf({ table, choices }: Sheet, plan: MemberPlan): string {
  const outcome = plan.planned.map((one) => [
    one.row.row,
    one.what,
    'known' in one ? one.known.personId : null,
    'sentence' in one ? one.sentence : null,
  ])
  return createHash('sha256')
    .update(JSON.stringify([table.digest, choices, outcome]))
    .digest('hex')
}
