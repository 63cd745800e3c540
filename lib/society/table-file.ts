// A table somebody saved from a spreadsheet, as rows of trimmed text: CSV in the ways it comes, or XLSX with the values
// its formulas had. The file is judged by what is in it, not by its name.

import { createHash } from 'node:crypto'
import Papa from 'papaparse'
import { cleanLine, hasNoSign } from '@/lib/facts/typed-text'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { notATable, spreadsheetRows } from './spreadsheet-file'

const MOST_BYTES = 2 * 1024 * 1024
const MOST_ROWS = 1000
const MOST_COLUMNS = 100

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
  const rows = await spreadsheetRows(bytes, { rows: MOST_ROWS * 2, columns: MOST_COLUMNS })
  return rows.ok ? ok({ rows: rows.value, faults: [] }) : rows
}

/** "H'cap Index" and "hcap_index" are the same heading. */
export function plainHeading(heading: string): string {
  return heading
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '')
}
