// A society's whole book as plain files: a table a kind of row, and a day file a day. What another installation needs to
// have the same book; nothing of another society, nothing of signing in.
import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import JSZip from 'jszip'
import Papa from 'papaparse'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import type { Actor } from '@/lib/facts/actor'
import { writeDayFile } from '@/lib/facts/day-file'
import { cellOf } from '@/lib/facts/export-cells'
import { EXPORT_KINDS } from '@/lib/facts/export-kinds'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { mayTry } from '@/lib/store/attempts'
import { readDayRecord } from '@/lib/store/day-record'
import { readSociety, type Tables } from '@/lib/store/society-rows'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'

/** File names and what is in them, in the order they are written. */
export type PlainFiles = ReadonlyMap<string, string>

const MARK = '\uFEFF'
const TAKEN_AN_HOUR = 12

/** The export for a desk: recorded, and packed into one file. */
export async function exportSociety(
  actor: Actor,
  now: Date = new Date(),
): Promise<Result<{ fileName: string; bytes: Uint8Array }, 'not-allowed' | 'not-found' | 'too-many-tries'>> {
  const officer = deskOnly(actor, 'take-export')
  if (!officer.ok) return officer
  if (!(await mayTry(`export ${officer.value.societyId}`, TAKEN_AN_HOUR, 3_600_000, now)))
    return refused('too-many-tries', 'The book was taken away several times within this hour. Wait a while.')
  const made = await societyFiles({ id: officer.value.societyId })
  if (!made) return notFound('society')
  await write((tx) =>
    recordAct(tx, officer.value, { act: 'take-export', area: 'book', subject: 'The whole book as plain files' }, now),
  )
  return ok({ fileName: `${made.slug}-${now.toISOString().slice(0, 10)}.zip`, bytes: await packed(made.files) })
}

/** The same for whoever runs the server. */
export async function societyFiles(
  which: { id: string } | { slug: string },
): Promise<{ slug: string; files: PlainFiles } | null> {
  const tables = readSociety(which)
  if (!tables) return null
  const slug = String(only(tables, 'society', 'slug')[0])
  const files = new Map<string, string>()
  for (const { name } of EXPORT_KINDS) files.set(`${name}.csv`, tableText(tables, name))
  const dayIds = only(tables, 'days', 'id').map((id) => String(id) as DayId)
  const days: [string, string][] = []
  for (const dayId of dayIds) {
    const record = await readDayRecord({ societyId: String(only(tables, 'society', 'id')[0]) as SocietyId, dayId })
    if (!record) continue
    const dayFile = writeDayFile(dayOfRecord(record))
    days.push([`days/${record.date}-${record.slug}.json`, `${JSON.stringify(dayFile, null, 2)}\n`])
  }
  for (const [name, text] of days.sort(([a], [b]) => (a < b ? -1 : 1))) files.set(name, text)
  const rows = Object.fromEntries(EXPORT_KINDS.map(({ name }) => [name, tables.get(name)!.rows.length]))
  files.set('export.json', `${JSON.stringify({ daybookExport: 1, society: slug, rows }, null, 2)}\n`)
  return { slug, files }
}

function only(tables: Tables, kind: string, column: string) {
  const table = tables.get(kind)!
  const at = table.columns.findIndex((one) => one.name === column)
  return table.rows.map((row) => row[at]!)
}

function tableText(tables: Tables, kind: string): string {
  const { columns, rows } = tables.get(kind)!
  const cells = rows.map((row) => row.map((value, at) => cellOf(value, columns[at]!.kind)))
  // The mark tells a spreadsheet that names with accents are in UTF-8.
  return `${MARK}${csvOf([columns.map((column) => column.name), ...cells])}`
}

/** Lines end as RFC 4180 says; a row of one empty cell is quoted, or it would be a blank line. */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse(rows as string[][], { newline: '\r\n', quotes: (value) => value === '' && rows[0]?.length === 1 })}\r\n`
}

// One moment for all files and nothing else that changes: the same book makes the same bytes.
const THEN = new Date(Date.UTC(2000, 0, 1))

export async function packed(files: PlainFiles): Promise<Uint8Array> {
  const zip = new JSZip()
  for (const [name, text] of files) zip.file(name, text, { date: THEN, createFolders: false })
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE', platform: 'UNIX' })
}
