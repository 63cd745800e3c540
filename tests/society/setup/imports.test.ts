// Promise: a list saved from any spreadsheet is understood or refused with the row that is wrong; the preview says what
// will happen and the import does exactly that, or nothing.
import ExcelJS from 'exceljs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { importCourse, previewCourse } from '@/lib/society/import-course'
import { importMembers, previewMembers } from '@/lib/society/import-members'
import { courseById, courseList } from '@/lib/society/keep-course'
import { memberList } from '@/lib/society/keep-person'
import { figureIn } from '@/lib/society/member-sheet'
import { readTable } from '@/lib/society/table-file'
import { ownBook } from '../../setup/copy'
import { got, type World, world } from './world'

let close: () => Promise<void>
let w: World
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
})
afterAll(() => close())

const bytes = (text: string) => new TextEncoder().encode(text)
const csv = (text: string, fileName = 'members.csv') => ({ fileName, bytes: bytes(text) })

async function xlsx(rows: readonly (readonly ExcelJS.CellValue[])[]): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook()
  const sheet = workbook.addWorksheet('Members')
  for (const row of rows) sheet.addRow([...row])
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer)
}

const figures = async () =>
  Object.fromEntries(got(await memberList(w.actor)).map((one) => [one.familyName, one.figure] as const))

describe('a figure as people write it', () => {
  it.each([
    ['18.4', 184],
    ['18.4*', 184],
    [' 18,4 ', 184],
    ['18.40', 184],
    ['18', 180],
    ['18.4 R', 184],
    ['+2.1', -21],
    ['-2.1', -21],
    ['−2.1', -21],
    ['0', 0],
    ['+0', 0],
    ['54', 540],
    ['', null],
    ['n/a', null],
    ['-', null],
    ['54.1', 'fault'],
    ['+15.1', 'fault'],
    ['18.45', 'fault'],
    ['eighteen', 'fault'],
    ['1e2', 'fault'],
  ] as const)('%j', (written, tenths) => {
    expect(figureIn(written)).toBe(tenths)
  })
})

describe('a messy member list', () => {
  const messy = [
    '\uFEFFFernbrake list;;;;',
    ';;;;',
    " Surname ;First name;H'CAP;m/f;E-Mail",
    'Zephyrine;Ondine;18.4*;F;ondine@example.org',
    ';;;;',
    '"O’Varrow; of Reed";Tam;+2.1;M;',
    'Haldane;Corin;3.1;;',
    'COLDBROOK;emrys;17.9;;emrys@example.org',
    'Zephyrine;Ondine;18.4*;F;ondine@example.org',
    'Nofigure;Nan;;W;',
  ].join('\r\n')

  const choices = { handicap: 'society' }

  it('is shown row by row with the numbers of the file', async () => {
    const preview = got(await previewMembers(w.actor, { ...csv(messy), choices }))
    expect(preview.headingRow).toBe(3)
    expect(preview.columns.map((column) => column.as)).toEqual(['familyName', 'firstName', 'figure', 'gender', 'email'])
    expect(preview.rows.map((row) => [row.row, row.what, row.figure])).toEqual([
      [4, 'new', '18.4'],
      [6, 'new', '+2.1'],
      [7, 'unchanged', '3.1'],
      [8, 'changed', '17.9'],
      [10, 'new', 'none yet'],
    ])
    expect(preview.rows[3]!.sentence).toContain('Handicap 18.4 becomes 17.9')
    expect(preview.leftOut).toEqual([{ row: 9, reads: 'Ondine Zephyrine', why: 'the same as row 4', byItself: true }])
    expect(preview.notes).toContain('1 blank row is passed over.')
    expect(preview.ready).toBe(true)
    expect(await figures()).not.toHaveProperty('Zephyrine')
  })

  it('is imported as it was shown, once; the same file again changes nothing', async () => {
    const file = { ...csv(messy), choices }
    const { digest } = got(await previewMembers(w.actor, file))
    expect(await importMembers(w.actor, { ...csv(`${messy}\r\nLate;Larry;9;M;`), choices, digest })).toMatchObject({
      code: 'file-changed',
    })
    expect(
      await importMembers(w.actor, { ...csv(messy), choices: { ...choices, leftOut: [4] }, digest }),
    ).toMatchObject({
      code: 'file-changed',
    })
    const done = got(await importMembers(w.actor, { ...file, digest }))
    expect(done).toEqual({ added: 3, changed: 1, unchanged: 1, leftOut: 1 })
    expect(await figures()).toMatchObject({
      Zephyrine: '18.4',
      'O’Varrow; of Reed': '+2.1',
      Coldbrook: '17.9',
      Nofigure: 'none yet',
    })
    // What was looked at is no longer what would happen.
    expect(await importMembers(w.actor, { ...file, digest })).toMatchObject({ code: 'file-changed' })
    const again = got(await previewMembers(w.actor, file))
    const nothing = got(await importMembers(w.actor, { ...file, digest: again.digest }))
    expect(nothing).toEqual({ added: 0, changed: 0, unchanged: 5, leftOut: 1 })
  })

  it('headed just “handicap” leaves whose figure it is to the list, and brings tags', async () => {
    const sources = Object.fromEntries(
      got(await memberList(w.actor)).map((one) => [one.familyName, one.handicapSource]),
    )
    expect(sources).toMatchObject({ Coldbrook: 'home-club', Haldane: 'home-club', Zephyrine: 'society' })
    const file = csv('Name,Handicap,Group\nUna Tarrablane,24.0,"Senior, first-timer"\nFreya Holmgarth,20.1,')
    const preview = got(await previewMembers(w.actor, file))
    expect(preview.questions).toEqual([])
    expect(preview.rows.map((row) => [row.what, row.sentence])).toEqual([
      ['changed', 'Handicap 24.7 becomes 24.0; tagged senior, first-timer.'],
      ['unchanged', 'As in the member list.'],
    ])
    got(await importMembers(w.actor, { ...file, digest: preview.digest }))
    const una = got(await memberList(w.actor)).find((one) => one.familyName === 'Tarrablane')
    expect(una).toMatchObject({ figure: '24.0', handicapSource: 'home-club', labels: ['senior', 'first-timer'] })
  })

  it('is not imported at all while one row is wrong; every wrong row is named, mended or left out', async () => {
    const bad = [
      'Name,Index,Sex',
      'Good Soul,12.0,M',
      'Bad Figure,120,M',
      'Nobody,5,M',
      'Odd One,9,X',
      'Good Soul,13.0,M',
      'Who Knows,3,',
    ].join('\n')
    const file = csv(bad)
    const preview = got(await previewMembers(w.actor, file))
    expect(preview.ready).toBe(false)
    expect(preview.look.map((one) => [one.row, one.cells.map((cell) => cell.cell), one.who !== null])).toEqual([
      [3, ['figure'], false],
      [4, ['firstName'], false],
      [5, ['gender'], false],
      [6, [], true],
      [7, ['gender'], false],
    ])
    expect(await importMembers(w.actor, { ...file, digest: preview.digest })).toMatchObject({ code: 'file-has-faults' })
    expect(await figures()).not.toHaveProperty('Soul')
    const choices = {
      mended: { 3: { figure: '12,0' }, 5: { gender: 'women' }, 6: { knownAs: 'junior' }, 7: { gender: 'men' } },
      leftOut: [4],
      who: { 6: 'new' },
    }
    const mended = got(await previewMembers(w.actor, { ...file, choices }))
    expect(mended).toMatchObject({ ready: true, look: [] })
    const done = got(await importMembers(w.actor, { ...file, choices, digest: mended.digest }))
    expect(done).toEqual({ added: 5, changed: 0, unchanged: 0, leftOut: 1 })
    const souls = got(await memberList(w.actor)).filter((one) => one.familyName === 'Soul')
    expect(souls.map((one) => one.figure).sort()).toEqual(['12.0', '13.0'])
  })

  it('is cleaned of signs that show nothing, and a row with one that no keyboard makes is named', async () => {
    const list = 'Name,Index,Sex\nIv\u200Bo \u202EHollowmere,12.0,M\nEna\u001B Quillby,9.0,F'
    const file = csv(list, 'the \u202Elist.csv')
    const preview = got(await previewMembers(w.actor, file))
    expect(preview.look.map((one) => [one.row, one.sentences])).toEqual([
      [3, ['There is a sign in it that cannot be shown. Delete it and write it again by hand.']],
    ])
    const choices = { mended: { 3: { firstName: 'Ena' } } }
    const mended = got(await previewMembers(w.actor, { ...file, choices }))
    got(await importMembers(w.actor, { ...file, choices, digest: mended.digest }))
    const names = got(await memberList(w.actor)).map((one) => `${one.firstName} ${one.familyName}`)
    expect(names).toEqual(expect.arrayContaining(['Ivo Hollowmere', 'Ena Quillby']))
  })

  it('reads older letters, tabs, UTF-16 and names in one column', async () => {
    const latin = new Uint8Array([...'Name\tHcp\tM/F\nLefèvre, Zoë\t20.0\tL\n'].map((letter) => letter.charCodeAt(0)))
    const old = { fileName: 'old.txt', bytes: latin, choices: { handicap: 'society' } }
    expect(got(await previewMembers(w.actor, old)).rows[0]).toMatchObject({
      firstName: 'Zoë',
      familyName: 'Lefèvre',
      gender: 'women',
      figure: '20.0',
    })
    const wide = new Uint8Array(Buffer.from('\uFEFFPlayer,Handicap,Gender\nMr Sam Sedgeway,7.5,Male\n', 'utf16le'))
    expect(got(await previewMembers(w.actor, { fileName: 'wide.csv', bytes: wide })).rows[0]).toMatchObject({
      firstName: 'Sam',
      familyName: 'Sedgeway',
      figure: '7.5',
    })
  })

  it('leaves a figure of somebody in the book to the handicap secretary', async () => {
    const captain = { ...w.actor, duties: ['captain' as const] }
    const preview = got(await previewMembers(captain, csv('Name,Index\nMagnus Storrey,20.0\nPetra Ashgill,9.9')))
    expect(preview.look.map((row) => row.row)).toEqual([2])
    expect(preview.rows.map((row) => row.what)).toEqual(['unchanged'])
  })
})

describe('an XLSX', () => {
  it('gives the values of its formulas and hides no row', async () => {
    const file = {
      fileName: 'list.xlsx',
      bytes: await xlsx([
        ['Forename', 'Surname', 'WHS Index', 'Gender'],
        ['Ada', 'Quillfern', { formula: '10+8.4', result: 18.400000000000002 }, 'W'],
        [],
        ['Bo', { richText: [{ text: 'Sedge' }, { text: 'moor' }] }, '+1.3', 'M'],
      ]),
    }
    const preview = got(await previewMembers(w.actor, file))
    expect(preview.rows.map((row) => [row.row, `${row.firstName} ${row.familyName}`, row.figure, row.what])).toEqual([
      [2, 'Ada Quillfern', '18.4', 'new'],
      [4, 'Bo Sedgemoor', '+1.3', 'new'],
    ])
    expect(got(await importMembers(w.actor, { ...file, digest: preview.digest })).added).toBe(2)
  })
})

describe('what is no list', () => {
  it.each([
    ['empty-file', new Uint8Array()],
    ['empty-file', bytes('\n\n , ,\n')],
    ['not-a-table', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13])],
    ['not-a-table', bytes('%PDF-1.7 whatever')],
    ['not-a-table', new Uint8Array([0x50, 0x4b, 3, 4, 1, 2, 3, 4])],
    ['old-spreadsheet', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1])],
    ['file-too-large', new Uint8Array(2 * 1024 * 1024 + 1).fill(65)],
    ['file-too-large', bytes(`Name,Index\n${'A B,1\n'.repeat(1001)}`)],
  ] as const)('is refused as %s', async (code, content) => {
    const answer = await previewMembers(w.actor, { fileName: 'file.csv', bytes: content })
    expect(answer).toMatchObject({ ok: false, code })
  })

  it('names the row whose quotation mark is left open', async () => {
    const table = got(await readTable(bytes('Name,Index\n"Open,1\nNext,2\n')))
    expect(table.faults).toHaveLength(1)
  })
})

const PARS = '4 5 3 4 4 5 4 3 4 4 4 3 4 5 4 3 4 5'.split(' ')
const INDEXES = '5 11 17 1 13 7 9 15 3 10 4 18 2 14 8 12 16 6'.split(' ')

describe('a course card', () => {
  const upright = [
    'Course,Gorse Hill',
    'Hole,Par,S.I.,White,Yellow yds,Red,Par W',
    ...PARS.map((par, at) => [at + 1, par, INDEXES[at], 350 + at, 330 + at, 300 + at, at === 12 ? 5 : par].join(',')),
    'Total,72,,6453,6093,5553,73',
    'Course rating men,,,70.6,69.2,,',
    'Slope men,,,128,125,,',
    'Course rating women,,,,,70.9,',
    'Slope women,,,,,125,',
  ].join('\n')

  it('is read with its holes below one another, its totals left aside', async () => {
    const file = csv(upright, 'card.csv')
    const preview = got(await previewCourse(w.actor, file))
    expect(preview.faults).toEqual([])
    const rows = preview.tees.filter((row) => row.what !== 'left-out')
    expect(
      rows.map((row) => [row.name, row.gender, row.par, row.courseRating, Number(row.slopeRating), row.what]),
    ).toEqual([
      ['White', 'men', 72, '70.6', 128, 'new'],
      ['Yellow', 'men', 72, '69.2', 125, 'new'],
      ['Red', 'women', 73, '70.9', 125, 'new'],
    ])
    const { courseId } = got(await importCourse(w.actor, { ...file, digest: preview.digest }))
    const kept = got(await courseById(w.actor, courseId))
    expect(kept.name).toBe('Gorse Hill')
    expect(kept.tees.find((tee) => tee.name === 'Red')?.holes[12]).toEqual({
      hole: 13,
      par: 5,
      strokeIndex: 2,
      yards: 312,
    })
    const again = got(await previewCourse(w.actor, file)).tees.map((row) => row.what)
    expect(again.filter((what) => what !== 'left-out')).toEqual(['unchanged', 'unchanged', 'unchanged'])
  })

  it('is read lying on its side, from the name of the file, and as one line for each tee and hole', async () => {
    const lying = [
      ['Hole', ...PARS.map((_, at) => at + 1), 'Course rating', 'Slope rating'].join(';'),
      ['Par', ...PARS, '', ''].join(';'),
      ['Stroke Index', ...INDEXES, '', ''].join(';'),
      ['Yellow', ...PARS.map((_, at) => 330 + at), '69,2', '125'].join(';'),
    ].join('\n')
    const aside = got(await previewCourse(w.actor, csv(lying, 'moss-end.csv')))
    expect(aside.faults).toEqual([])
    expect(aside.sentence).toBe('moss end: 1 set of tees, a new course.')
    expect(aside.tees[0]).toMatchObject({ name: 'Yellow', par: 72, courseRating: '69,2', slopeRating: '125' })
    const long = [
      'Course,Tee,M/F,Rating,Slope,Hole,Par,SI,Yards',
      ...PARS.map((par, at) => ['Long Moor', 'Red', 'W', 70.9, 125, at + 1, par, INDEXES[at], ''].join(',')),
    ].join('\n')
    const lines = got(await previewCourse(w.actor, csv(long, 'x.csv')))
    expect(lines.faults).toEqual([])
    expect(lines.tees[0]).toMatchObject({ name: 'Red', gender: 'women', par: 72, yards: null })
  })

  it('is not imported when a stroke index is there twice, a hole is missing or a rating stands alone', async () => {
    const before = got(await courseList(w.actor)).length
    for (const [from, to, said] of [
      ['\n2,5,11,', '\n2,5,5,', 'White, men, hole 2, stroke index'],
      ['Slope men,,,128,125', 'Slope men,,,,125', 'The slope rating is missing'],
      ['\n2,5,11,', '\n2,,11,', 'The par of hole 2 is missing'],
    ] as const) {
      const file = csv(upright.replace('Gorse Hill', 'Thistle Hill').replace(from, to), 'card.csv')
      const preview = got(await previewCourse(w.actor, file))
      expect(JSON.stringify([preview.faults, preview.tees])).toContain(said)
      expect(await importCourse(w.actor, { ...file, digest: preview.digest })).toMatchObject({
        code: 'file-has-faults',
      })
    }
    const gap = csv(upright.replace('\n18,5,6,367,347,317,5', ''), 'card.csv')
    expect(await previewCourse(w.actor, gap)).toMatchObject({ code: 'no-card' })
    expect(got(await courseList(w.actor))).toHaveLength(before)
  })
})
