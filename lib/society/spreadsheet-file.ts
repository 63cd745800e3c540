// An XLSX as rows of text, with the values its formulas had. It is an archive that somebody else packed: what it says of
// itself may be anything, and what it holds may be made to keep the reader busy for ever. So its real size is measured
// first, only the parts that a table needs are read, and what the reader would carry out over whole sheets is left out.

import { inflateRawSync } from 'node:zlib'
import ExcelJS from 'exceljs'
import JSZip from 'jszip'
import { ok, type Result, refused } from '@/lib/result'

/** A small XLSX may unpack to gigabytes. */
const MOST_UNPACKED = 40 * 1024 * 1024
/** Each becomes an object several hundred bytes large. */
const MOST_ELEMENTS = 600_000

/** The last row a sheet has in the programs that write them (from memory). */
const LAST_ROW = 1_048_576

export interface SheetLimits {
  readonly rows: number
  readonly columns: number
}

type Refusals = 'file-too-large' | 'not-a-table' | 'empty-file'

export const notATable = () =>
  refused('not-a-table', 'That is not a table. Save it from the spreadsheet as CSV or as XLSX and choose it again.')

const tooLarge = () =>
  refused(
    'file-too-large',
    'There is more in the spreadsheet than can be read at once. Copy the rows that are needed into a new one, or save it as CSV.',
  )

/** The first sheet with anything in it. */
export async function spreadsheetRows(
  bytes: Uint8Array,
  limits: SheetLimits,
): Promise<Result<readonly (readonly string[])[], Refusals>> {
  const unpacked = unpackedSize(bytes, MOST_UNPACKED)
  if (unpacked === null) return notATable()
  if (unpacked === 'more')
    return refused('file-too-large', 'The spreadsheet unpacks to more than 40 MB. Save the one sheet that is needed.')
  const workbook = new ExcelJS.Workbook()
  try {
    const plain = await onlyTheTable(bytes)
    if (plain === 'more') return tooLarge()
    // The library names the Node buffer of its own time; any array buffer is read.
    await workbook.xlsx.load(plain as unknown as Parameters<typeof workbook.xlsx.load>[0])
  } catch {
    // Whatever the reader stumbles over, to the officer it is a file that cannot be read.
    return notATable()
  }
  // Looked at before anything that goes from row to row: a sheet may say that its one row is the thousand-millionth.
  if (workbook.worksheets.some((one) => one.rowCount > LAST_ROW)) return notATable()
  const sheet = workbook.worksheets.find((one) => one.actualRowCount > 0)
  if (!sheet) return refused('empty-file', 'There is nothing in the spreadsheet.')
  const rows: string[][] = []
  sheet.eachRow((row, number) => {
    if (number > limits.rows) return
    const cells: string[] = []
    row.eachCell((cell, column) => {
      if (column <= limits.columns) cells[column - 1] = cellText(cell.value)
    })
    rows[number - 1] = Array.from(cells, (cell) => cell ?? '')
  })
  return ok(Array.from(rows, (row) => row ?? []))
}

const NEEDED =
  /^(\[Content_Types\]\.xml|_rels\/\.rels|xl\/workbook\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/sharedStrings\.xml|xl\/styles\.xml|xl\/worksheets\/[^/]+\.xml)$/i

/** Carried out cell by cell over whatever area they name, or pointing at parts that are left out. No table needs them. */
const LEFT_OUT =
  /(<\/?)(mergeCells?|dataValidations?|conditionalFormatting|definedNames?|hyperlinks?|drawing|legacyDrawing|tableParts?|picture|extLst)(?=[\s/>])/g

async function onlyTheTable(bytes: Uint8Array): Promise<ArrayBuffer | 'more'> {
  const packed = await JSZip.loadAsync(bytes)
  const plain = new JSZip()
  let elements = 0
  for (const part of Object.values(packed.files)) {
    const name = part.name.replace(/^\//, '')
    if (part.dir || !NEEDED.test(name)) continue
    const text = await part.async('string')
    for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at + 1)) elements++
    if (elements > MOST_ELEMENTS) return 'more'
    plain.file(name, text.replace(LEFT_OUT, '$1leftOut'))
  }
  return plain.generateAsync({ type: 'arraybuffer', compression: 'STORE' })
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
  // With a gap between directory and end there are two places where a reader may look for the directory.
  if (view.getUint32(end + 16, true) + view.getUint32(end + 12, true) !== end) return null
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
