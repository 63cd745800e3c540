// Promise: a course card in a spreadsheet is understood as it is printed, holes down or across, in one block or two, with
// totals between them and ratings at head or foot; what the card does not have is asked for once a set of tees, and every
// place named is the one the spreadsheet program shows.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { importCourse, previewCourse } from '@/lib/society/import-course'
import { courseById, courseList } from '@/lib/society/keep-course'
import { ownBook } from '../../setup/copy'
import { got, type World, world } from './world'

let close: () => Promise<void>
let w: World
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
})
afterAll(() => close())

const PARS = '4 5 3 4 4 5 4 3 4 4 4 3 4 5 4 3 4 5'.split(' ').map(Number)
const INDEXES = '5 11 17 1 13 7 9 15 3 10 4 18 2 14 8 12 16 6'.split(' ').map(Number)
const yards = (from: number) => PARS.map((_, at) => from + at)
const file = (text: string, choices: object = {}, fileName = 'card.csv') => ({
  fileName,
  bytes: new TextEncoder().encode(text),
  choices,
})
const preview = async (text: string, choices: object = {}) => got(await previewCourse(w.actor, file(text, choices)))

/** Nine, out, nine, in, total. */
const across = (
  label: string,
  cells: readonly (string | number)[],
  sums: readonly (string | number)[],
  foot: string[] = [],
) => [label, ...cells.slice(0, 9), sums[0] ?? '', ...cells.slice(9), sums[1] ?? '', sums[2] ?? '', ...foot].join(',')
const NUMBERS = PARS.map((_, at) => at + 1)

const ACROSS = [
  'Heron Lake',
  '',
  across('Hole', NUMBERS, ['Out', 'In', 'Total'], ['CR', 'Slope']),
  across('White', yards(350), [3186, 3267, 6453], ['70.6', '128']),
  across('Yellow', yards(330), [3006, 3087, 6093], ['69.2', '125']),
  across('Par', PARS, [36, 36, 72]),
  across('Stroke Index', INDEXES, []),
].join('\n')

const DOWN = [
  'Heron Lake,,,,,,,,',
  'Hole,White,Yellow,Red,Men,,Ladies,,',
  ',Yds,Yds,Yds,Par,S.I.,Par,S.I.,',
  ...PARS.flatMap((par, at) => [
    [at + 1, 350 + at, 330 + at, 300 + at, par, INDEXES[at], at === 12 ? 5 : par, INDEXES[17 - at], ''].join(','),
    ...(at === 8 ? ['Out,3186,3006,2736,36,,36,,'] : []),
  ]),
  'In,3267,3087,2817,36,,37,,',
  'Total,6453,6093,5553,72,,73,,',
  'SSS,71,69,71,,,,,',
  'Course Rating,70.6,69.2,,,,,,',
  'Slope,128,125,,,,,,',
  'CR Ladies,,,70.9,,,,,',
  'Slope Ladies,,,124,,,,,',
].join('\n')

const seen = (
  tees: readonly {
    name: string
    gender: string | null
    par: number | null
    courseRating: string
    slopeRating: string
    what: string
  }[],
) =>
  tees
    .filter((tee) => tee.what !== 'left-out')
    .map((tee) => [tee.name, tee.gender, tee.par, tee.courseRating, tee.slopeRating, tee.what])

describe('a card as it is printed', () => {
  it('lies across with out, in and total between, and ratings at the end of each row', async () => {
    const found = await preview(ACROSS)
    expect(found.name).toBe('Heron Lake')
    expect(seen(found.tees)).toEqual([
      ['White', 'men', 72, '70.6', '128', 'new'],
      ['Yellow', 'men', 72, '69.2', '125', 'new'],
    ])
    expect(found.tees[0]).toMatchObject({ place: 'row 4', yards: 6453, holes: 18 })
    expect(found.ready).toBe(true)
  })

  it('stands down with two lines of headings, totals, and rows of ratings for men and ladies at the foot', async () => {
    const found = await preview(DOWN)
    expect(seen(found.tees)).toEqual([
      ['White', 'men', 72, '70.6', '128', 'new'],
      ['Yellow', 'men', 72, '69.2', '125', 'new'],
      ['Red', 'women', 73, '70.9', '124', 'new'],
    ])
    expect(found.tees.find((tee) => tee.what !== 'left-out')).toMatchObject({ place: 'column B' })
    expect(found.ready).toBe(true)
    const { courseId } = got(await importCourse(w.actor, { ...file(DOWN), digest: found.digest }))
    const red = got(await courseById(w.actor, courseId)).tees.find((tee) => tee.name === 'Red')!
    expect(red.holes[12]).toEqual({ hole: 13, par: 5, strokeIndex: INDEXES[5], yards: 312 })
    expect(got(await courseList(w.actor)).find((one) => one.name === 'Heron Lake')?.holes).toBe(18)
  })

  it('has its two nines side by side, or one above the other', async () => {
    const line = (at: number) => [at + 1, 330 + at, PARS[at], INDEXES[at]].join(',')
    const beside = [
      'Hole,Yellow,Par,SI,Hole,Yellow,Par,SI',
      ...PARS.slice(9).map((_, at) => `${line(at)},${line(at + 9)}`),
    ]
    const ratings = ['Course rating,69.2,,,,,,', 'Slope,125,,,,,,']
    expect(seen((await preview([...beside, ...ratings].join('\n'))).tees)).toEqual([
      ['Yellow', 'men', 72, '69.2', '125', 'new'],
    ])
    const half = (label: string, cells: readonly (string | number)[], from: number, sum: number | string) =>
      [label, ...cells.slice(from, from + 9), sum].join(',')
    const above = [0, 9].flatMap((from) => [
      half('Hole', NUMBERS, from, from === 0 ? 'Out' : 'In'),
      half('Yellow', yards(330), from, 3006),
      half('Par', PARS, from, 36),
      half('SI', INDEXES, from, ''),
    ])
    expect(seen((await preview(above.join('\n'))).tees)).toEqual([['Yellow', 'men', 72, '', '', 'look']])
  })

  it('asks once a set of tees for ratings that it does not have, and never takes a scratch score for one', async () => {
    const bare = DOWN.split('\n')
      .filter((line) => !/^(Course Rating|Slope|CR)/.test(line))
      .join('\n')
    const found = await preview(bare)
    const asked = found.tees.filter((tee) => tee.what === 'look')
    expect(asked.map((tee) => [tee.name, tee.sentences.length])).toEqual([
      ['White', 2],
      ['Yellow', 2],
      ['Red', 2],
    ])
    expect(asked[0]!.sentences[0]).toContain('scratch score of 71')
    expect(found.faults).toEqual([])
    const key = (name: string) => asked.find((tee) => tee.name === name)!.key
    const answered = await preview(bare, {
      name: 'Heron Water',
      tees: {
        [key('White')]: { leftOut: true },
        [key('Yellow')]: { courseRating: '69,2', slopeRating: '125', name: 'Gold' },
        [key('Red')]: { courseRating: '70.9', slopeRating: '124' },
      },
    })
    expect(answered).toMatchObject({ ready: true, name: 'Heron Water' })
    expect(seen(answered.tees).map((tee) => tee[0])).toEqual(['Gold', 'Red'])
  })

  it('names the hole whose number is missing or there twice', async () => {
    const gap = await preview(ACROSS.replace('\nPar,4,5,', '\nPar,4,,'))
    expect(gap.tees[0]!.sentences).toEqual(['The par of hole 2 is missing in the file.'])
    const twice = await preview(ACROSS.replace('Stroke Index,5,11,', 'Stroke Index,5,5,'))
    expect(twice.faults[0]).toMatchObject({ place: 'White, men, hole 2, stroke index' })
    expect(twice.ready).toBe(false)
  })
})

describe('a list with a line for each tee and hole', () => {
  const list = (heading: string, cells: (at: number) => string) =>
    [heading, ...PARS.map((_, at) => cells(at))].join('\n')

  it('knows the labels of our own course form', async () => {
    const text = list('Course,Tees,Rated for,Course rating,Slope rating,Hole,Par,Stroke index,Yards', (at) =>
      ['Long Moor', 'Red', 'women', 70.9, 125, at + 1, PARS[at], INDEXES[at], 300 + at].join(','),
    )
    const found = await preview(text)
    expect(seen(found.tees)).toEqual([['Red', 'women', 72, '70.9', '125', 'new']])
    expect(found.tees[0]).toMatchObject({ place: 'rows 2 to 19' })
    expect(found.name).toBe('Long Moor')
  })

  it('says a missing column once, and asks a set of tees, not a row', async () => {
    const text = list('Tees,Hole,Par,SI', (at) => ['Yellow', at + 1, PARS[at], INDEXES[at]].join(','))
    const found = await preview(text)
    expect(found.faults).toEqual([])
    expect(found.tees).toHaveLength(1)
    expect(found.tees[0]!.sentences).toHaveLength(3)
    expect(found.notes).toContain('The file has no column for men and women: it is asked for below.')
    const said = { tees: { [found.tees[0]!.key]: { gender: 'men', courseRating: '69.2', slopeRating: '125' } } }
    expect((await preview(text, said)).ready).toBe(true)
  })
})

it('that is no card is refused in words, and an answer that changed since is not imported', async () => {
  expect(await previewCourse(w.actor, file('just,some,words\nand,more,words'))).toMatchObject({ code: 'no-card' })
  const { digest } = await preview(ACROSS)
  const other = { tees: { x: { leftOut: true } } }
  expect(await importCourse(w.actor, { ...file(ACROSS, other), digest })).toMatchObject({ code: 'file-changed' })
})
