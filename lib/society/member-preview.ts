// The preview of a member list: what stands in the spreadsheet, what would happen, and what is still to be said, once.

import type { MemberImportPreview, MemberImportRow, MemberRowToLookAt } from '@/lib/boards/desk-views'
import { figureOf } from '@/lib/boards/figure'
import type { MemberColumn } from '@/lib/facts/member-import'
import type { SheetColumns } from './member-headings'
import type { MemberPlan, Planned } from './member-plan'
import type { SheetRows } from './member-sheet'
import type { TableFile } from './table-file'

/** So many first rows are shown as they are; of the others those that need a look. */
const FIRST_ROWS = 6
const MOST_SHOWN = 40

interface Seen {
  readonly table: TableFile
  readonly columns: SheetColumns
  readonly rows: SheetRows
}

export function memberPreview(fileName: string, seen: Seen, plan: MemberPlan, digest: string): MemberImportPreview {
  const { table, columns, rows } = seen
  const has = (...kinds: MemberColumn[]) => columns.columns.some((column) => kinds.includes(column.as))
  const questions = questionsOf(plan, has)
  const named = questions.every((one) => one.about !== 'names')
  const look = named ? plan.planned.flatMap(lookOf) : []
  const outcome = named ? plan.planned.flatMap((one) => rowOf(one, plan)) : []
  const leftOut = [
    ...rows.leftOut.map((one) => ({ ...one, byItself: true })),
    ...plan.planned.flatMap((one) =>
      one.what === 'left-out' ? [{ row: one.row.row, reads: nameOf(one), why: one.why, byItself: one.byItself }] : [],
    ),
  ].sort((a, b) => a.row - b.row)
  const faults = [...table.faults]
  if (rows.members.length === 0) faults.push({ place: 'file', sentence: 'There are headings and nobody under them.' })
  const count = (what: Planned['what']) => outcome.filter((one) => one.what === what).length
  const ready = faults.length + questions.length + look.length === 0
  return {
    digest,
    fileName,
    headingRow: columns.headingRow,
    columns: columns.columns.map(({ at, heading, as }) => ({ at, heading, as })),
    sheet: sheetOf(seen, look, leftOut),
    rows: outcome,
    look,
    leftOut,
    blank: rows.blank,
    questions,
    notes: notesOf(has, rows, columns),
    genderChosen: !plan.askGender && plan.genderUnsaid.length > 0,
    faults,
    ready,
    sentence: `${[
      `${count('new')} new, ${count('changed')} changed, ${count('unchanged')} as in the member list`,
      look.length > 0 ? `${look.length} ${look.length === 1 ? 'needs' : 'need'} a look` : null,
      leftOut.length > 0 ? `${leftOut.length} left out` : null,
    ]
      .filter(Boolean)
      .join(', ')}.`,
  }
}

/** What no single row can answer: asked once, however many rows it is about. */
function questionsOf(plan: MemberPlan, has: (...kinds: MemberColumn[]) => boolean): MemberImportPreview['questions'] {
  if (!has('surnameFirst', 'firstSurname') && !(has('firstName') && has('familyName')))
    return [
      {
        about: 'names',
        sentence: has('familyName')
          ? 'Which column has the first names? Choose it above, or choose “Whole name” where both are in one column.'
          : 'Which column has the names? Choose it above: first and family name, or the whole name in one column.',
      },
    ]
  const questions: MemberImportPreview['questions'][number][] = []
  if (plan.askGender)
    questions.push({
      about: 'gender',
      sentence: `${has('gender') ? 'For many rows the file does' : 'The file does'} not say who plays from the men’s tees and who from the women’s. This is about ${people(plan.genderUnsaid.length)}.`,
    })
  if (plan.kindUnsaid > 0)
    questions.push({
      about: 'handicap',
      sentence: `The file says “handicap” and not which kind. What ${plan.kindUnsaid === 1 ? 'is the handicap of one person' : `are the handicaps of ${plan.kindUnsaid} people`} who have none in the member list yet?`,
    })
  return questions
}

const people = (count: number) => (count === 1 ? 'one person' : `${count} people`)

function notesOf(
  has: (...kinds: MemberColumn[]) => boolean,
  rows: SheetRows,
  columns: SheetColumns,
): readonly string[] {
  const out = columns.columns.filter((column) => column.as === 'out' && column.heading !== '')
  return [
    has('index', 'society', 'figure') ? null : 'No column has a handicap: new members come without one.',
    out.length > 0
      ? `Left out: ${out.map((column) => `“${column.heading}”`).join(', ')}. Say above what a column is to bring it in.`
      : null,
    rows.blank > 0 ? `${rows.blank} blank ${rows.blank === 1 ? 'row is' : 'rows are'} passed over.` : null,
  ].filter((one) => one !== null)
}

const nameOf = ({ row }: Planned) => `${row.firstName} ${row.familyName}`.trim()

function lookOf(one: Planned): MemberRowToLookAt[] {
  if (one.what !== 'look') return []
  const { row, sentences, cells, who } = one
  return [{ row: row.row, name: nameOf(one) || 'no name', sentences, cells, who }]
}

function rowOf(one: Planned, plan: MemberPlan): MemberImportRow[] {
  if (one.what === 'look' || one.what === 'left-out') return []
  const known = one.what === 'new' ? null : one.known
  const { row } = one
  return [
    {
      row: row.row,
      firstName: row.firstName,
      familyName: row.familyName,
      gender: known?.gender ?? row.gender,
      figure: figureOf(row.indexTenths ?? known?.figure?.indexTenths ?? null),
      what: one.what,
      genderUnsaid: plan.genderUnsaid.includes(row.row),
      sentence: one.sentence,
    },
  ]
}

function sheetOf(
  { table, columns }: Seen,
  look: readonly MemberRowToLookAt[],
  leftOut: MemberImportPreview['leftOut'],
): MemberImportPreview['sheet'] {
  const looked = new Set(look.map((one) => one.row))
  const out = new Set(leftOut.map((one) => one.row))
  const state = (row: number) => (looked.has(row) ? 'look' : out.has(row) ? 'left-out' : 'ready')
  const filled = table.rows
    .map((cells, at) => ({ row: at + 1, cells }))
    .filter(({ row, cells }) => row > columns.headingRow && cells.some((cell) => cell !== ''))
  return filled
    .filter(({ row }, at) => at < FIRST_ROWS || state(row) !== 'ready')
    .slice(0, MOST_SHOWN)
    .map(({ row, cells }) => ({
      row,
      cells: columns.columns.map((column) => (cells[column.at] ?? '').slice(0, 80)),
      state: state(row),
    }))
}
