// Reads the plain files of a society into an installation that does not have it yet: the whole of it or nothing. Only
// whoever runs the server does this, by command: there is no address for it.
import type { SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import Papa from 'papaparse'
import { valueOfCell } from '@/lib/facts/export-cells'
import { EXPORT_KINDS, type ExportKind } from '@/lib/facts/export-kinds'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { book } from '@/lib/store/client'
import { issueOneTime } from '@/lib/store/one-time'
import { type Column, exportColumns, type Row, societyThere, type Tables, writeSociety } from '@/lib/store/society-rows'
import type { PlainFiles } from './export-society'

export interface ReadIn {
  readonly slug: string
  readonly name: string
  readonly rows: number
  /** Officers who had no way in here, with the address behind which each sets a password, once. */
  readonly officers: readonly { readonly name: string; readonly email: string; readonly path: string }[]
}

const MOST_FAULTS = 50

export async function importSociety(
  files: PlainFiles,
  now: Date = new Date(),
): Promise<Result<ReadIn, 'not-an-export' | 'not-understood' | 'society-there'>> {
  if (!isExport(files))
    return refused(
      'not-an-export',
      'These files are no export of a society: export.json is missing or is another kind.',
    )
  const faults: Fault[] = []
  const expected = new Set(EXPORT_KINDS.map(({ name }) => `${name}.csv`))
  for (const name of files.keys())
    if (name.endsWith('.csv') && !expected.has(name))
      faults.push({ place: name, sentence: 'This file is not known here.' })
  const tables = new Map<string, { columns: readonly Column[]; rows: readonly Row[] }>()
  const ids = new Map<string, ReadonlySet<string>>()
  for (const kind of EXPORT_KINDS) {
    const text = files.get(`${kind.name}.csv`)
    if (text === undefined) {
      faults.push({ place: `${kind.name}.csv`, sentence: 'This file is missing.' })
      continue
    }
    const table = readTable(kind, text, ids, faults)
    const idAt = table.columns.findIndex((column) => column.name === 'id')
    if (idAt >= 0) ids.set(kind.name, new Set(table.rows.map((row) => String(row[idAt]))))
    tables.set(kind.name, table)
    if (faults.length >= MOST_FAULTS) break
  }
  const society = faults.length === 0 ? societyOf(tables, faults) : null
  if (faults.length > 0 || !society) return notReadIn(faults)
  if (societyThere(society.slug))
    return refused('society-there', `A society with the address part ${society.slug} is in this installation already.`)
  const written = writeSociety(tables)
  if ('faults' in written) return notReadIn(written.faults)
  const officers = []
  for (const { userId, name, email } of written.newOfficers)
    officers.push({ name, email, path: `/sign-in/link/${await wayIn(userId, written.societyId, now)}` })
  const rows = [...tables.values()].reduce((sum, table) => sum + table.rows.length, 0)
  return ok({ ...society, rows, officers })
}

const WEEK = 7 * 86_400_000

function wayIn(userId: UserId, societyId: SocietyId, now: Date): Promise<string> {
  const what = { purpose: 'set-password', userId, societyId, endsDuty: null } as const
  return issueOneTime(book(), what, new Date(now.getTime() + WEEK), now)
}

function notReadIn(faults: readonly Fault[]) {
  const [first] = faults
  const more = faults.length > 1 ? ` And ${faults.length - 1} more.` : ''
  return refused('not-understood', `Nothing was read in. ${first?.place}: ${first?.sentence}${more}`, faults)
}

function isExport(files: PlainFiles): boolean {
  try {
    return JSON.parse(files.get('export.json') ?? 'null')?.daybookExport === 1
  } catch {
    // Not JSON is not an export either.
    return false
  }
}

function societyOf(tables: Tables, faults: Fault[]): { slug: string; name: string } | null {
  const { columns, rows } = tables.get('society')!
  if (rows.length !== 1) {
    faults.push({ place: 'society.csv', sentence: 'There must be exactly one society in it.' })
    return null
  }
  const of = (name: string) => String(rows[0]![columns.findIndex((column) => column.name === name)])
  return { slug: of('slug'), name: of('name') }
}

function readTable(
  kind: ExportKind,
  text: string,
  ids: ReadonlyMap<string, ReadonlySet<string>>,
  faults: Fault[],
): { columns: readonly Column[]; rows: readonly Row[] } {
  const file = `${kind.name}.csv`
  const columns = exportColumns(kind)
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { delimiter: ',', skipEmptyLines: false })
  for (const error of parsed.errors)
    if (error.type === 'Quotes')
      faults.push({
        place: `${file}, row ${(error.row ?? 0) + 1}`,
        sentence: 'A quotation mark is missing or too many.',
      })
  const [head = [], ...body] = parsed.data
  // The end of the last line makes an empty one.
  if (body.at(-1)?.length === 1 && body.at(-1)?.[0] === '') body.pop()
  const places = columns.map((column) => head.indexOf(column.name))
  columns.forEach((column, at) => {
    if (places[at]! < 0 && column.needed)
      faults.push({ place: `${file}, row 1`, sentence: `The column ${column.name} is missing.` })
  })
  for (const name of head)
    if (!columns.some((column) => column.name === name))
      faults.push({
        place: `${file}, row 1`,
        sentence: `The column ${name.slice(0, 40) || '(without a name)'} is not known here.`,
      })
  if (new Set(head).size < head.length) faults.push({ place: `${file}, row 1`, sentence: 'A column is there twice.' })
  if (faults.length > 0) return { columns, rows: [] }
  const rows = body.map((cells, n): Row => {
    const wrong = (column: string | null, sentence: string) => {
      if (faults.length < MOST_FAULTS)
        faults.push({ place: `${file}, row ${n + 2}${column ? `, ${column}` : ''}`, sentence })
    }
    if (cells.length !== head.length) {
      wrong(null, `This row has ${cells.length} cells, and the first row has ${head.length}.`)
      return []
    }
    return columns.map((column, at) => {
      const cell = places[at]! < 0 ? '' : cells[places[at]!]!
      const read = valueOfCell(cell, column.kind)
      if ('wrong' in read) {
        wrong(column.name, `“${cell.slice(0, 40)}”: ${read.wrong}.`)
        return null
      }
      if (read.value === null && column.needed) wrong(column.name, 'Something must stand here.')
      if (read.value === null) return null
      if (column.names && !ids.get(column.names)?.has(String(read.value)))
        wrong(column.name, `“${cell.slice(0, 40)}” is not in ${column.names}.csv.`)
      const says = kind.json?.[column.name]
      if (says) jsonFault(String(read.value), says, (sentence) => wrong(column.name, sentence))
      return read.value
    })
  })
  return { columns, rows }
}

function jsonFault(text: string, schema: NonNullable<ExportKind['json']>[string], wrong: (sentence: string) => void) {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    wrong('This cell does not hold what it should: it cannot be read as JSON.')
    return
  }
  const read = schema.safeParse(value)
  if (read.success) return
  const [issue] = read.error.issues
  wrong(`This cell does not hold what it should: ${issue?.path.join('.') || 'the whole'}, ${issue?.message}.`)
}
