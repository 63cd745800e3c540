// Reads a member list in: first what would happen, row by row; then all of it in one transaction, or nothing.

import type { ImportPreview, MemberImportRow } from '@/lib/boards/desk-views'
import { figureOf } from '@/lib/boards/figure'
import type { Actor } from '@/lib/facts/actor'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { addFigure, insertPerson, type PersonKept, peopleOf, updatePerson } from '@/lib/store/people'
import { today } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly } from './desk-only'
import { memberColumns, membersIn, type SheetColumns, type SheetMember } from './member-sheet'
import { readTable, type TableFile } from './table-file'

export interface FileToRead {
  readonly fileName: string
  readonly bytes: Uint8Array
}

type Unreadable = 'not-allowed' | 'file-too-large' | 'not-a-table' | 'old-spreadsheet' | 'empty-file' | 'no-headings'

export async function previewMembers(
  actor: Actor,
  file: FileToRead,
): Promise<Result<ImportPreview<MemberImportRow>, Unreadable>> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const sheet = await sheetIn(file)
  if (!sheet.ok) return sheet
  const people = await peopleOf(officer.value.societyId)
  return ok(previewOf(file, sheet.value, planned(sheet.value, people, mayNot(actor, 'change-handicap') === null)))
}

export async function importMembers(
  actor: Actor,
  file: FileToRead & { digest: string },
  now: Date = new Date(),
): Promise<
  Result<{ added: number; changed: number; unchanged: number }, Unreadable | 'file-changed' | 'file-has-faults'>
> {
  const officer = deskOnly(actor, 'keep-people')
  if (!officer.ok) return officer
  const { societyId, userId } = officer.value
  const sheet = await sheetIn(file)
  if (!sheet.ok) return sheet
  if (sheet.value.table.digest !== file.digest)
    return refused('file-changed', 'This is not the file that was looked at. Look at it again before reading it in.')
  return write(async (tx) => {
    // Planned again on the book of this moment: somebody may have added a person since the preview.
    const plan = planned(sheet.value, await peopleOf(societyId, tx), mayNot(actor, 'change-handicap') === null)
    const { faults } = previewOf(file, sheet.value, plan)
    if (faults.length > 0)
      return refused(
        'file-has-faults',
        'Nothing was read in: put the rows right that are named, and try again.',
        faults,
      )
    const figure = (row: SheetMember, known: PersonKept | null) =>
      row.indexTenths === null
        ? null
        : {
            indexTenths: row.indexTenths,
            source: row.source ?? known?.handicapSource ?? NEW_SOURCE,
            from: today(now),
            reason: `Read in from ${file.fileName.slice(0, 80)}`,
            byUserId: userId,
          }
    for (const { row, known, what } of plan) {
      if (what === 'new') {
        const person = {
          firstName: row.firstName,
          familyName: row.familyName,
          gender: row.gender!,
          kind: 'member' as const,
          regular: true,
          email: row.email,
          phone: row.phone,
          handicapSource: row.source ?? NEW_SOURCE,
          memberSince: row.memberSince,
          leftOn: null,
          labels: row.labels ?? [],
        }
        await insertPerson(tx, societyId, person, figure(row, null), now)
      } else if (what === 'changed' && known) {
        const added = changesFigure(row, known) ? figure(row, known) : null
        await updatePerson(tx, societyId, known.personId, {
          firstName: known.firstName,
          familyName: known.familyName,
          gender: known.gender,
          kind: known.kind,
          regular: known.regular,
          email: row.email ?? known.email,
          phone: row.phone ?? known.phone,
          handicapSource: added?.source ?? known.handicapSource,
          memberSince: row.memberSince ?? known.memberSince,
          leftOn: known.leftOn,
          labels: row.labels ?? known.labels,
        })
        if (added) await addFigure(tx, societyId, known.personId, added, now)
      }
    }
    const count = (what: MemberImportRow['what']) => plan.filter((one) => one.what === what).length
    const done = { added: count('new'), changed: count('changed'), unchanged: count('unchanged') }
    const figures = plan.filter(
      ({ row, known, what }) => what === 'changed' && known && changesFigure(row, known),
    ).length
    const after = { Added: done.added, Changed: done.changed, 'New figures': figures, 'As they were': done.unchanged }
    const record = { act: 'keep-people', area: figures > 0 ? ('handicaps' as const) : ('book' as const), after }
    if (done.added + done.changed > 0)
      await recordAct(tx, actor, { ...record, subject: `Member list ${file.fileName.slice(0, 80)}` }, now)
    return ok(done)
  })
}

/** What a figure is that nobody says anything about: nothing official may be claimed for it. */
const NEW_SOURCE = 'society' as const

interface Sheet {
  readonly table: TableFile
  readonly columns: SheetColumns
  readonly members: readonly SheetMember[]
}

async function sheetIn({ bytes }: FileToRead): Promise<Result<Sheet, Exclude<Unreadable, 'not-allowed'>>> {
  const table = await readTable(bytes)
  if (!table.ok) return table
  const columns = memberColumns(table.value.rows)
  if (!columns)
    return refused(
      'no-headings',
      'No row of headings was found. The list needs at least a name and a handicap, each with its heading above.',
    )
  return ok({ table: table.value, columns, members: membersIn(table.value.rows, columns) })
}

interface Planned {
  readonly row: SheetMember
  readonly known: PersonKept | null
  readonly what: MemberImportRow['what']
  readonly sentence: string
  readonly faults: readonly Fault[]
}

const wordOf = (firstName: string, familyName: string) =>
  `${firstName} ${familyName}`
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim()

function planned(sheet: Sheet, people: readonly PersonKept[], mayChangeFigures: boolean): readonly Planned[] {
  const inBook = new Map(
    people
      .filter((person) => person.kind === 'member')
      .map((person) => [wordOf(person.firstName, person.familyName), person]),
  )
  const seen = new Map<string, SheetMember>()
  return sheet.members.map((row): Planned => {
    const word = wordOf(row.firstName, row.familyName)
    const known = inBook.get(word) ?? null
    const twin = seen.get(word)
    if (!twin) seen.set(word, row)
    const fault = (sentence: string): Planned => ({
      row,
      known,
      what: 'fault',
      sentence,
      faults: [{ place: `row ${row.row}`, sentence }],
    })
    if (row.faults.length > 0)
      return { row, known, what: 'fault', sentence: row.faults[0]!.sentence, faults: row.faults }
    if (twin)
      return sameRow(twin, row)
        ? { row, known, what: 'left-aside', sentence: `The same as row ${twin.row}.`, faults: [] }
        : fault(`${row.firstName} ${row.familyName} is in row ${twin.row} too, and the two rows differ.`)
    if (known?.leftOn)
      return fault(`${known.firstName} ${known.familyName} has left. Take them back under Members first.`)
    if (!known && row.gender === null) return fault('Men or women? It decides the tees: add a column headed M/F.')
    if (!known) return { row, known, what: 'new', sentence: newSentence(row), faults: [] }
    const changes = changesOf(row, known)
    if (changes.length === 0) return { row, known, what: 'unchanged', sentence: 'As in the book.', faults: [] }
    if (changesFigure(row, known) && !mayChangeFigures)
      return fault('A new figure for somebody in the book is for the handicap secretary to read in.')
    return { row, known, what: 'changed', sentence: `${changes.join('; ')}.`, faults: [] }
  })
}

function newSentence(row: SheetMember): string {
  if (row.indexTenths === null) return 'New member, without a figure yet.'
  const said = `New member, ${row.source === 'home-club' ? 'handicap index' : 'society handicap'} ${figureOf(row.indexTenths)}.`
  return row.source === null ? `${said} The heading does not say whose figure it is.` : said
}

function changesFigure(row: SheetMember, known: PersonKept): boolean {
  if (row.indexTenths === null) return false
  const otherSource = row.source !== null && known.handicapSource !== row.source
  return known.figure?.indexTenths !== row.indexTenths || otherSource
}

function changesOf(row: SheetMember, known: PersonKept): readonly string[] {
  const changes: string[] = []
  if (changesFigure(row, known))
    changes.push(
      known.figure?.indexTenths === row.indexTenths
        ? `${figureOf(row.indexTenths)} kept as ${row.source === 'home-club' ? 'a handicap index' : 'a society handicap'}`
        : `Figure ${figureOf(known.figure?.indexTenths ?? null)} becomes ${figureOf(row.indexTenths)}`,
    )
  if (row.email !== null && row.email !== known.email) changes.push('new e-mail address')
  if (row.phone !== null && row.phone !== known.phone) changes.push('new telephone number')
  if (row.memberSince !== null && row.memberSince !== known.memberSince) changes.push(`member since ${row.memberSince}`)
  if (row.labels !== null && row.labels.join() !== known.labels.join())
    changes.push(row.labels.length === 0 ? 'marked with no words' : `marked ${row.labels.join(', ')}`)
  return changes
}

function sameRow(a: SheetMember, b: SheetMember): boolean {
  return (
    (['gender', 'indexTenths', 'source', 'email', 'phone', 'memberSince'] as const).every((key) => a[key] === b[key]) &&
    a.labels?.join() === b.labels?.join()
  )
}

function previewOf(file: FileToRead, sheet: Sheet, plan: readonly Planned[]): ImportPreview<MemberImportRow> {
  const faults = [...sheet.table.faults, ...plan.flatMap((one) => one.faults)]
  if (plan.length === 0) faults.push({ place: 'file', sentence: 'There are headings and nothing under them.' })
  const count = (what: MemberImportRow['what']) => plan.filter((one) => one.what === what).length
  return {
    digest: sheet.table.digest,
    fileName: file.fileName,
    columns: sheet.columns.shown,
    rows: plan.map(({ row, known, what, sentence }) => ({
      row: row.row,
      name: `${row.firstName} ${row.familyName}`.trim(),
      gender: known?.gender ?? row.gender,
      figure: figureOf(row.indexTenths ?? known?.figure?.indexTenths ?? null),
      email: row.email ?? known?.email ?? null,
      what,
      sentence,
    })),
    faults,
    ready: faults.length === 0,
    sentence: `${count('new')} new, ${count('changed')} changed, ${count('unchanged')} as in the book${
      count('fault') > 0 ? `, ${count('fault')} to put right` : ''
    }.`,
  }
}
