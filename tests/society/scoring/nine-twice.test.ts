// Promise: a course of nine holes carries a day of eighteen: its nine holes twice, with stroke indexes that are each number
// from 1 to 18 once, the rating doubled and the slope kept, through freezing, cards, board, sheets and the day file. House
// rule, common practice, no source; that a nine goes by the order of its indexes is Rules of Handicapping, Appendix E.
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { groupPack } from '@/lib/boards/group-pack'
import { printedCards } from '@/lib/boards/printed-cards'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { startSheetOf } from '@/lib/boards/start-sheet'
import { indexesTwice, twiceRound } from '@/lib/boards/twice-round'
import type { KeepCourse } from '@/lib/facts/commands'
import { parseDayFile } from '@/lib/facts/day-file'
import { roundOfPack } from '@/lib/outbox/card-now'
import { scoreDay } from '@/lib/rules/score-day'
import { proposeDay } from '@/lib/society/call-day'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { importCourse, previewCourse } from '@/lib/society/import-course'
import { courseById, courseList, keepCourse } from '@/lib/society/keep-course'
import { ownBook } from '../../setup/copy'
import { got, type World, world } from '../setup/world'
import { type DayInPlay, published } from './day-in-play'

const PARS = [4, 3, 4, 5, 4, 3, 4, 4, 3]
const ODD = [1, 15, 7, 11, 3, 17, 5, 9, 13]
const nine = (indexes: readonly number[], name = 'Moss End'): KeepCourse => ({
  name,
  place: null,
  tees: (['men', 'women'] as const).map((gender) => ({
    name: gender === 'men' ? 'Yellow' : 'Red',
    gender,
    courseRatingTenths: gender === 'men' ? 331 : 343,
    slopeRating: 118,
    holes: PARS.map((par, at) => ({ hole: at + 1, par, strokeIndex: indexes[at]!, yards: 300 + at })),
  })),
})

let close: () => Promise<void>
let w: World
let day: Omit<DayInPlay, 'close'>
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
})
afterAll(() => close())

describe('the indexes of nine holes played twice', () => {
  const permutation = (numbers: readonly number[]) =>
    fc.shuffledSubarray([...numbers], { minLength: numbers.length, maxLength: numbers.length })
  const odd = permutation([1, 3, 5, 7, 9, 11, 13, 15, 17])
  const even = permutation([2, 4, 6, 8, 10, 12, 14, 16, 18])
  const plain = permutation([1, 2, 3, 4, 5, 6, 7, 8, 9])
  const numbers = (twice: readonly (readonly [number, number])[]) => twice.flat().sort((a, b) => a - b)
  const all = Array.from({ length: 18 }, (_, at) => at + 1)

  it('are every number from 1 to 18 once, one half odd and the other even', () => {
    fc.assert(
      fc.property(fc.oneof(odd, even, plain), (indexes) => {
        const twice = indexesTwice(indexes)
        expect(numbers(twice)).toEqual(all)
        for (const time of [0, 1] as const) expect(new Set(twice.map((one) => one[time] % 2)).size).toBe(1)
      }),
    )
  })

  it('keep what is printed, and keep the order of the holes in both rounds', () => {
    fc.assert(
      fc.property(fc.oneof(odd, even), (indexes) => {
        expect(indexesTwice(indexes).map(([first]) => first)).toEqual(indexes)
      }),
    )
    fc.assert(
      fc.property(fc.oneof(odd, even, plain), (indexes) => {
        const order = (of: readonly number[]) => of.map((one) => of.filter((other) => other < one).length)
        const twice = indexesTwice(indexes)
        for (const time of [0, 1] as const) expect(order(twice.map((one) => one[time]))).toEqual(order(indexes))
      }),
    )
  })

  it('make a set of eighteen with every hole twice', () => {
    const tee = twiceRound(nine(ODD).tees[0]!)
    expect(tee.courseRatingTenths).toBe(662)
    expect(tee.holes.map((hole) => hole.hole)).toEqual(all)
    expect(tee.holes.slice(9).map((hole) => hole.par)).toEqual(PARS)
    expect(tee.holes.slice(9).map((hole) => hole.strokeIndex)).toEqual(ODD.map((index) => index + 1))
  })
})

describe('the card of a nine-hole course', () => {
  it('takes the odd or the even indexes of eighteen, and no others beyond nine', async () => {
    got(
      await keepCourse(
        w.actor,
        nine(
          ODD.map((one) => one + 1),
          'Even End',
        ),
      ),
    )
    got(await keepCourse(w.actor, nine([1, 2, 3, 4, 5, 6, 7, 8, 9], 'Plain End')))
    const mixed = await keepCourse(w.actor, nine([1, 2, 3, 4, 5, 6, 7, 8, 12], 'Mixed End'))
    expect(JSON.stringify(mixed)).toContain('from 1 to 9, or are the odd numbers to 17 or the even ones to 18')
  })

  it('does not take a rating of eighteen holes for nine', async () => {
    const { tees, ...card } = nine(ODD, 'Wrong End')
    const wrong = await keepCourse(w.actor, { ...card, tees: tees.map((tee) => ({ ...tee, courseRatingTenths: 662 })) })
    expect(JSON.stringify(wrong)).toContain('66.2 is no course rating for nine holes')
  })

  it('comes in from a file as it is printed, and says what becomes of it', async () => {
    const lines = PARS.map((par, at) => [at + 1, 300 + at, par, ODD[at]].join(','))
    const text = [
      'Fir End',
      'Hole,Yellow,Par,SI',
      ...lines,
      'Total,2736,34,',
      'Course rating,33.1,,',
      'Slope,118,,',
    ].join('\n')
    const file = { fileName: 'fir.csv', bytes: new TextEncoder().encode(text) }
    const { digest } = got(await previewCourse(w.actor, file))
    got(await importCourse(w.actor, { ...file, digest }))
    const row = got(await courseList(w.actor)).find((one) => one.name === 'Fir End')!
    expect(row.holes).toBe(9)
    expect(row.tees[0]!.twice).toEqual({
      courseRating: '66.2',
      said: 'Nine holes played twice: course rating 66.2, twice 33.1; slope 118 as for the nine; the printed odd stroke indexes the first time round, the even ones the second. House rule, common practice.',
    })
  })
})

describe('a day of eighteen holes on it', () => {
  beforeAll(async () => {
    const { courseId } = got(await keepCourse(w.actor, nine(ODD)))
    const { tees } = got(await courseById(w.actor, courseId))
    const tee = (gender: string) => tees.find((one) => one.gender === gender)!.teeId
    day = await published(w, 'fernbrake', { courseId, holes: 18, teeMen: tee('men'), teeWomen: tee('women') })
  })

  it('is drawn up, frozen and printed with eighteen holes', async () => {
    const record = await day.record()
    expect(record.round).toMatchObject({ holes: 18, firstHole: 1, courseName: 'Moss End, nine holes twice' })
    // Index 20.7: 20.7 × 118 ÷ 113 + (66.2 − 68) = 19.816.
    const row = got(await handicapTable(w.actor, day.dayId)).rows.find((one) => one.index === '20.7')
    expect(row).toMatchObject({ unrounded: '19.816' })
    expect(printedCards(record).cards[0]!.holes).toHaveLength(18)
    expect(roundOfPack(groupPack(record, record.groups[0]!))).toEqual({ holes: 18, firstHole: 1 })
    expect(startSheetOf(record, { withCodes: false }).groups.length).toBeGreaterThan(0)
  })

  it('is scored, and its day file is taken by the engine with the same result', async () => {
    const record = await day.record()
    const scores = [...PARS, ...PARS]
    for (const { id: cardId } of record.cards)
      got(await keyCard(w.actor, { dayId: day.dayId, cardId, scores, signed: { player: true, marker: true } }))
    const board = boardOf(await day.record(), new Date('2031-06-14T17:00:00Z'))
    const places = board.competitions[0]!.rows.map((row) => [row.place, row.score])
    expect(places).toHaveLength(8)
    expect(board.competitions[0]!.rows[0]!.holes.map((one) => one.hole)).toEqual(scores.map((_, at) => at + 1))
    const { dayFile } = got(await dayFileOf(w.actor, day.dayId))
    const read = got(parseDayFile(JSON.parse(JSON.stringify(dayFile))))
    const counted = scoreDay(read)
    expect(counted).toEqual(scoreDay(dayOfRecord(await day.record())))
    const sheet = resultSheetOf(await day.record(), { number: 1, reason: null, by: 'P', at: new Date(0) })
    expect(sheet.course.map((one) => one.hole)).toEqual(scores.map((_, at) => at + 1))
  })

  it('is proposed again with eighteen holes', async () => {
    expect(got(await proposeDay(w.actor, w.seasonId))).toMatchObject({ holes: 18 })
  })
})
