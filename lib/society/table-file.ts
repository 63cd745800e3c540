// A table somebody saved from a spreadsheet, as rows of trimmed text: CSV in the ways it comes, or XLSX with the values
// its formulas had. The file is judged by what is in it, not by its name.

import { createHash } from 'node:crypto'
import { inflateRawSync } from 'node:zlib'
import ExcelJS from 'exceljs'
import Papa from 'papaparse'
import { cleanLine, hasNoSign } from '@/lib/facts/typed-text'
import { type Fault, ok, type Result, refused } from '@/lib/result'

const MOST_BYTES = 2 * 1024 * 1024
const MOST_ROWS = 1000
const MOST_COLUMNS = 100
/** A small XLSX may unpack to gigabytes. */
const MOST_UNPACKED = 40 * 1024 * 1024

export interface TableFile {
  readonly digest: string
  /** Every row of the file, blank ones too, so that row numbers are those the officer sees. */
  readonly rows: readonly (readonly string[])[]
  readonly faults: readonly Fault[]
}

type Refusals = 'file-too-large' | 'not-a-table' | 'old-spreadsheet' | 'empty-file'

export async function readTable(bytes: Uint8Array): Promise<Result<TableFile, Refusals>> {
  if (bytes.byteLength === 0) return refused('empty-file', 'The file is empty.')
  if (bytes.byteLength > MOST_BYTES)
    return refused('file-too-large', 'The file is larger than 2 MB. Save the one sheet that is needed.')
  const read = begins(bytes, [0x50, 0x4b]) ? await fromXlsx(bytes) : fromText(bytes)
  if (!read.ok) return read
  const rows = read.value.rows.map((row) =>
    row.slice(0, MOST_COLUMNS).map((cell) => (hasNoSign(cell) ? cell : cleanLine(cell)).trim()),
  )
  const filled = rows.filter((row) => row.some((cell) => cell !== '')).length
  if (filled === 0) return refused('empty-file', 'There is nothing in the file.')
  if (filled > MOST_ROWS)
    return refused('file-too-large', `The file has ${filled} rows. At most ${MOST_ROWS} are read at once.`)
  return ok({ digest: createHash('sha256').update(bytes).digest('hex'), rows, faults: read.value.faults })
}

interface Rows {
  readonly rows: readonly (readonly string[])[]
  readonly faults: readonly Fault[]
}

function begins(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, at) => bytes[at] === byte)
}

const notATable = () =>
  refused('not-a-table', 'That is not a table. Save it from the spreadsheet as CSV or as XLSX and choose it again.')

function fromText(bytes: Uint8Array): Result<Rows, Refusals> {
  if (begins(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return refused('old-spreadsheet', 'That is a spreadsheet of the old kind. Save it as XLSX or as CSV.')
  const text = decoded(bytes)
  // Text has no NUL in it; pictures, PDFs and programs nearly always do.
  if (text === null || text.includes('\0') || text.startsWith('%PDF')) return notATable()
  // A first line "sep=;" is for the spreadsheet program, which does not count it as a row.
  const said = /^sep=(.)\r?\n/i.exec(text)
  const parsed = Papa.parse<string[]>(said ? text.slice(said[0].length) : text, {
    delimiter: said?.[1] ?? delimiterOf(text),
    skipEmptyLines: false,
  })
  return ok({
    rows: parsed.data,
    faults: parsed.errors
      .filter((error) => error.type === 'Quotes')
      .map((error) => ({
        place: `row ${(error.row ?? 0) + 1}`,
        sentence: 'A quotation mark is opened and not closed.',
      })),
  })
}

/** The sign that is on most lines outside quotation marks: "12,4" between semicolons is one cell. */
function delimiterOf(text: string): string {
  const lines = text
    .slice(0, 100_000)
    .replace(/"[^"]*"/g, '')
    .split(/\r\n|\r|\n/)
  const signs = ['\t', ';', '|', ','].map((sign) => ({
    sign,
    lines: lines.filter((line) => line.includes(sign)).length,
  }))
  return signs.reduce((most, one) => (one.lines > most.lines ? one : most)).sign
}

/** UTF-8 if it is, UTF-16 if it says so, else the western European letters of older programs. */
function decoded(bytes: Uint8Array): string | null {
  if (begins(bytes, [0xff, 0xfe])) return new TextDecoder('utf-16le').decode(bytes)
  if (begins(bytes, [0xfe, 0xff])) return new TextDecoder('utf-16be').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault
    return new TextDecoder('windows-1252').decode(bytes)
  }
}

async function fromXlsx(bytes: Uint8Array): Promise<Result<Rows, Refusals>> {
  const unpacked = unpackedSize(bytes, MOST_UNPACKED)
  if (unpacked === null) return notATable()
  if (unpacked === 'more')
    return refused('file-too-large', 'The spreadsheet unpacks to more than 40 MB. Save the one sheet that is needed.')
  const workbook = new ExcelJS.Workbook()
  try {
    // The library names the Node buffer of its own time; any array buffer is read.
    await workbook.xlsx.load(bytes.slice().buffer as unknown as Parameters<typeof workbook.xlsx.load>[0])
  } catch {
    // Whatever the reader stumbles over, to the officer it is a file that cannot be read.
    return notATable()
  }
  const sheet = workbook.worksheets.find((one) => one.actualRowCount > 0)
  if (!sheet) return refused('empty-file', 'There is nothing in the spreadsheet.')
  const rows: string[][] = []
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    if (number > MOST_ROWS * 2) return
    const cells: string[] = []
    row.eachCell({ includeEmpty: true }, (cell, column) => {
      if (column <= MOST_COLUMNS) cells[column - 1] = cellText(cell.value)
    })
    rows[number - 1] = Array.from(cells, (cell) => cell ?? '')
  })
  return ok({ rows: Array.from(rows, (row) => row ?? []), faults: [] })
}

function cellText(value: ExcelJS.CellValue): string {
  if (value === null || value === undefined) return ''
  if (typeof value === 'number') return numberText(value)
  if (value instanceof Date) return value.toISOString().slice(0, 10)
  if (typeof value !== 'object') return String(value)
  if ('result' in value) return cellText(value.result as ExcelJS.CellValue)
  if ('richText' in value) return value.richText.map((part) => part.text).join('')
  if ('text' in value) return cellText(value.text as ExcelJS.CellValue)
  return ''
}

/** 18.400000000000002 is what a sum of tenths leaves behind; it was 18.4. */
function numberText(value: number): string {
  return String(Number(value.toFixed(6)))
}

/**
 * What the parts of the package come to when they are unpacked, none further than `most` bytes in all: what its directory
 * says of their size may be anything. Null when it is no such package.
 */
function unpackedSize(bytes: Uint8Array, most: number): number | 'more' | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let end = -1
  for (let at = bytes.byteLength - 22; at >= 0 && at > bytes.byteLength - 66_000; at--)
    if (view.getUint32(at, true) === 0x06054b50) {
      end = at
      break
    }
  if (end < 0) return null
  const entries = view.getUint16(end + 10, true)
  let at = view.getUint32(end + 16, true)
  let total = 0
  for (let entry = 0; entry < entries; entry++) {
    if (at + 46 > bytes.byteLength || view.getUint32(at, true) !== 0x02014b50) return null
    const packed = packedPart(bytes, view, view.getUint32(at + 42, true), view.getUint32(at + 20, true))
    if (packed === null) return null
    const size = view.getUint16(at + 10, true) === 0 ? packed.byteLength : inflatedSize(packed, most - total)
    if (size === null) return null
    if (size === 'more' || total + size > most) return 'more'
    total += size
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return total
}

function packedPart(bytes: Uint8Array, view: DataView, at: number, size: number): Uint8Array | null {
  if (at + 30 > bytes.byteLength || view.getUint32(at, true) !== 0x04034b50) return null
  const begins = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true)
  return begins + size > bytes.byteLength ? null : bytes.subarray(begins, begins + size)
}

function inflatedSize(packed: Uint8Array, most: number): number | 'more' | null {
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, most) }).byteLength
  } catch (fault) {
    if (!(fault instanceof Error) || !('code' in fault)) throw fault
    return fault.code === 'ERR_BUFFER_TOO_LARGE' ? 'more' : null
  }
}

/** "H'cap Index" and "hcap_index" are the same heading. */
export function plainHeading(heading: string): string {
  return heading
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '')
}
