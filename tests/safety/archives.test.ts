// Promise: a spreadsheet that lies about itself, or is made to keep its reader busy, gets an answer within seconds and
// within bounds of memory: it is read for what it is, or refused in a sentence. ARCHIVES says how many are drawn.
import { describe, expect, it } from 'vitest'
import { readTable } from '@/lib/society/table-file'
import { archive, cell, type Lies, type Part, sheetParts } from './archives'
import { dice } from './http/malformed'

const MANY = Number(process.env.ARCHIVES ?? 60)
const MB = 1024 * 1024
const REFUSALS = ['not-a-table', 'file-too-large', 'empty-file']
const ROWS = `<row r="1">${cell('A1', 'Name')}${cell('B1', 'Index')}</row><row r="2">${cell('A2', 'Ada Wren')}<c r="B2"><v>12.4</v></c></row>`
const good = sheetParts({ rows: ROWS })
const zeros = (megabytes: number) => new Uint8Array(megabytes * MB)

/** The answer, and by how much the memory of this process grew at the most while it was worked out. */
async function read(bytes: Uint8Array) {
  const before = process.memoryUsage().rss
  let most = before
  const watch = setInterval(() => {
    most = Math.max(most, process.memoryUsage().rss)
  }, 5)
  const began = performance.now()
  const answer = await readTable(bytes)
  clearInterval(watch)
  most = Math.max(most, process.memoryUsage().rss)
  return { answer, grew: (most - before) / MB, took: performance.now() - began }
}

async function expectRefused(bytes: Uint8Array, code?: string) {
  const { answer, grew, took } = await read(bytes)
  expect(answer.ok ? 'read' : answer.code).toBe(code ?? 'not-a-table')
  expect(grew).toBeLessThan(150)
  // Hours, where it is not bounded; a busy machine takes a second or two.
  expect(took).toBeLessThan(10_000)
}

const rowsOf = async (bytes: Uint8Array) => {
  const { answer } = await read(bytes)
  if (!answer.ok) throw new Error(answer.sentence)
  return answer.value.rows
}

describe('an archive', () => {
  it('that tells the truth is read', async () => {
    expect(await rowsOf(archive(good))).toEqual([
      ['Name', 'Index'],
      ['Ada Wren', '12.4'],
    ])
  })

  it.each([
    [
      'says that 150 MB are ten bytes',
      [{ name: 'xl/sharedStrings.xml', data: zeros(150), saysSize: 10 }],
      {},
      'file-too-large',
    ],
    ['holds the same 30 MB a thousand times', [{ name: 'a', data: zeros(30) }], { allTheSame: 1000 }, 'file-too-large'],
    ['has another directory behind a gap', [{ name: 'a', data: 'a' }], { after: new Uint8Array(500) }, 'not-a-table'],
    ['says that it has 65,535 parts', good, { entries: 65_535 }, 'not-a-table'],
    ['has its directory beyond its end', good, { directoryAt: 0xfffffff0 }, 'not-a-table'],
    [
      'says that a part is packed into four gigabytes',
      [{ name: 'a', data: 'a', saysPacked: 0xfffffffe }],
      {},
      'not-a-table',
    ],
    ['is packed in a way nobody knows', [{ name: 'a', data: 'aaaa', method: 99 }], {}, 'not-a-table'],
    ['is locked with a password', good.map((part) => ({ ...part, flags: 1 })), {}, 'not-a-table'],
    ['is cut off in the middle', good, { cutAt: 0.6 }, 'not-a-table'],
  ] satisfies [string, readonly Part[], Lies, string][])('that %s is refused', async (_, parts, lies, code) => {
    const before = parts === good || 'allTheSame' in lies ? [] : good
    await expectRefused(archive([...before, ...parts], lies), code)
  })

  it('of archives is not opened further than its first level', async () => {
    let inner = archive([{ name: '0.bin', data: zeros(30) }])
    for (let level = 0; level < 4; level++)
      inner = archive(Array.from({ length: 12 }, (_, n) => ({ name: `${level}-${n}.zip`, data: inner })))
    expect(inner.byteLength).toBeLessThan(2 * MB)
    await expectRefused(inner, 'empty-file')
    expect(await rowsOf(archive([...good, { name: 'xl/embeddings/more.xlsx', data: inner }]))).toHaveLength(2)
  })

  it('with names that climb out of it or spell objects of the language is read for its table', async () => {
    const odd = ['../../etc/passwd', '__proto__', 'constructor', 'xl/worksheets/../../x', 'a'.repeat(60_000), '\0']
    expect(await rowsOf(archive([...good, ...odd.map((name) => ({ name, data: 'x' }))]))).toHaveLength(2)
  })
})

describe('a sheet', () => {
  const all = 'A1:XFD1048576'
  it.each([
    ['merges all its cells', `<mergeCells count="1"><mergeCell ref="${all}"/></mergeCells>`, ''],
    [
      'asks for a choice in all its cells',
      `<dataValidations count="1"><dataValidation type="list" sqref="${all}"><formula1>"a,b"</formula1></dataValidation></dataValidations>`,
      '',
    ],
    ['has a link on all its cells', `<hyperlinks><hyperlink ref="${all}" location="x"/></hyperlinks>`, ''],
    [
      'has a name for all its cells',
      '',
      `<definedNames><definedName name="n">Members!$A$1:$XFD$1048576</definedName></definedNames>`,
    ],
    ['points at a drawing that is not there', '<drawing r:id="rId9"/><legacyDrawing r:id="rId8"/>', ''],
  ])('that %s is read for its rows', async (_, after, inWorkbook) => {
    const { answer, took, grew } = await read(archive(sheetParts({ rows: ROWS, after, inWorkbook })))
    expect(answer.ok && answer.value.rows).toHaveLength(2)
    expect(grew).toBeLessThan(150)
    expect(took).toBeLessThan(10_000)
  })

  it('whose one row is the thousand-millionth is refused', async () => {
    await expectRefused(archive(sheetParts({ rows: '<row r="999999999"><c r="A999999999"><v>1</v></c></row>' })))
  })

  it('of millions of cells is refused before they are made', async () => {
    const { answer, grew } = await read(
      archive(sheetParts({ rows: `<row r="1">${'<c r="A1"/>'.repeat(3_000_000)}</row>` })),
    )
    expect(answer).toMatchObject({ ok: false, code: 'file-too-large' })
    expect(grew).toBeLessThan(400)
  })

  it('with an entity that names itself over and over is refused', async () => {
    const bomb = `<!DOCTYPE x [${Array.from({ length: 20 }, (_, n) => `<!ENTITY e${n + 1} "&e${n};&e${n};">`).join('')}]>`
    const parts = sheetParts({ rows: `<row r="1"><c r="A1" t="inlineStr"><is><t>&e20;</t></is></c></row>` })
    const spoilt = parts.map((part) =>
      part.name.endsWith('sheet1.xml') ? { ...part, data: `${bomb}${part.data}` } : part,
    )
    const { answer, grew } = await read(archive(spoilt))
    expect(answer.ok ? 'read' : REFUSALS.includes(answer.code)).toBe(true)
    expect(grew).toBeLessThan(150)
  })
})

it(`any of ${MANY} archives spoilt by chance gets an answer`, async () => {
  const answers = new Map<string, number>()
  for (let seed = 0; seed < MANY; seed++) {
    const d = dice(20_260_613 + seed)
    const parts = good.map((part): Part => {
      if (!d.chance(0.25)) return part
      const text = String(part.data)
      return d.of<() => Part>([
        () => ({ ...part, data: text.slice(0, d.below(text.length)) }),
        () => ({ ...part, data: Buffer.from(text).map((byte) => (d.chance(0.02) ? d.below(256) : byte)) }),
        () => ({ ...part, saysSize: d.of([0, 1, 0x7fffffff, 0xffffffff]) }),
        () => ({ ...part, saysPacked: d.of([0, 1, 100, 0xffffffff]) }),
        () => ({ ...part, saysName: d.of(['', '/', '\0', 'xl/worksheets/sheet1.xml', '__proto__']) }),
        () => ({ ...part, method: d.of([0, 12]) }),
        () => ({ ...part, flags: d.of([1, 8, 0x800, 0xffff]) }),
      ])()
    })
    const bytes = archive(parts, {
      ...(d.chance(0.1) ? { entries: d.below(65_536) } : {}),
      ...(d.chance(0.1) ? { directoryAt: d.below(4000) } : {}),
      ...(d.chance(0.1) ? { directorySize: d.below(4000) } : {}),
      ...(d.chance(0.1) ? { cutAt: d.below(100) / 100 } : {}),
    })
    if (d.chance(0.3) && bytes.length > 0)
      for (let n = d.below(20); n >= 0; n--) bytes[d.below(bytes.length)] = d.below(256)
    const { answer, grew } = await read(bytes)
    expect(grew, `seed ${seed}`).toBeLessThan(150)
    const said = answer.ok ? 'read' : answer.code
    answers.set(said, (answers.get(said) ?? 0) + 1)
    if (!answer.ok) expect(answer.sentence, `seed ${seed}`).toMatch(/^[A-Z].*\.$/)
  }
  if (MANY >= 60) expect([...answers.keys()].length).toBeGreaterThan(1)
})
