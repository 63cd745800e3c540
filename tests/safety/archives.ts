// Archives byte by byte, so that what they say of themselves can be wrong.
import { deflateRawSync } from 'node:zlib'

export interface Part {
  readonly name: string
  readonly data: Uint8Array | string
  /** What the archive says of it, where that is not so. */
  readonly saysSize?: number
  readonly saysPacked?: number
  readonly saysName?: string
  readonly method?: number
  readonly flags?: number
}

export interface Lies {
  readonly entries?: number
  readonly directoryAt?: number
  readonly directorySize?: number
  /** Every entry of the directory points to the bytes of the first part. */
  readonly allTheSame?: number
  readonly after?: Uint8Array
  readonly cutAt?: number
}

function record(length: number, fields: readonly (readonly [at: number, size: 2 | 4, value: number])[]): Buffer {
  const bytes = Buffer.alloc(length)
  for (const [at, size, value] of fields)
    if (size === 2) bytes.writeUInt16LE(value & 0xffff, at)
    else bytes.writeUInt32LE(value >>> 0, at)
  return bytes
}

export function archive(parts: readonly Part[], lies: Lies = {}): Uint8Array {
  const body: Buffer[] = []
  const directory: Buffer[] = []
  let at = 0
  let first = 0
  for (const part of parts) {
    const data = Buffer.from(part.data)
    const method = part.method ?? 8
    const packed = method === 8 ? deflateRawSync(data, { level: 9 }) : data
    const name = Buffer.from(part.name)
    const size = part.saysSize ?? data.length
    const packedSize = part.saysPacked ?? packed.length
    const flags = part.flags ?? 0
    body.push(
      record(30, [
        [0, 4, 0x04034b50],
        [4, 2, 20],
        [6, 2, flags],
        [8, 2, method],
        [18, 4, packedSize],
        [22, 4, size],
        [26, 2, name.length],
      ]),
      name,
      packed,
    )
    const told = Buffer.from(part.saysName ?? part.name)
    const entry = (n: string) => {
      const called = n === '' ? told : Buffer.from(`${told}${n}`)
      return [
        record(46, [
          [0, 4, 0x02014b50],
          [6, 2, 20],
          [8, 2, flags],
          [10, 2, method],
          [20, 4, packedSize],
          [24, 4, size],
          [28, 2, called.length],
          [42, 4, lies.allTheSame ? first : at],
        ]),
        called,
      ]
    }
    directory.push(...entry(''))
    for (let n = 1; n < (lies.allTheSame ?? 1); n++) directory.push(...entry(String(n)))
    at += 30 + name.length + packed.length
    if (!lies.allTheSame) first = at
  }
  const whole = Buffer.concat(directory)
  const between = lies.after ?? new Uint8Array()
  const entries = lies.entries ?? parts.length * (lies.allTheSame ?? 1)
  const end = record(22, [
    [0, 4, 0x06054b50],
    [8, 2, entries],
    [10, 2, entries],
    [12, 4, lies.directorySize ?? whole.length],
    [16, 4, lies.directoryAt ?? at],
  ])
  const bytes = Buffer.concat([...body, whole, between, end])
  return new Uint8Array(lies.cutAt === undefined ? bytes : bytes.subarray(0, Math.floor(bytes.length * lies.cutAt)))
}

const TYPES =
  '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/></Types>'
const RELS =
  '<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>'
const workbook = (more: string) =>
  `<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Members" sheetId="1" r:id="rId1"/></sheets>${more}</workbook>`
const WORKBOOK_RELS =
  '<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>'

export interface SheetText {
  readonly rows: string
  readonly after?: string
  readonly inWorkbook?: string
}

/** The parts of a spreadsheet whose one sheet has these rows, as text of the file format (ECMA-376, part 1). */
export function sheetParts({ rows, after = '', inWorkbook = '' }: SheetText): readonly Part[] {
  return [
    { name: '[Content_Types].xml', data: TYPES },
    { name: '_rels/.rels', data: RELS },
    { name: 'xl/workbook.xml', data: workbook(inWorkbook) },
    { name: 'xl/_rels/workbook.xml.rels', data: WORKBOOK_RELS },
    {
      name: 'xl/worksheets/sheet1.xml',
      data: `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData>${after}</worksheet>`,
    },
  ]
}

export const cell = (at: string, text: string) => `<c r="${at}" t="inlineStr"><is><t>${text}</t></is></c>`
