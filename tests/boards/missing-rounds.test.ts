// Promise: a competition over several days shows everybody who played one of them. Whoever misses a round has no total on
// strokes and the points of the rounds played on points, with the round named; nobody vanishes, nobody's score moves
// because of somebody who was not there, and the exported day file counts the same.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { figuresOf } from '@/lib/boards/handicap-table'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { DayRecord } from '@/lib/facts/day-record'
import { scoreDay } from '@/lib/rules/score-day'
import { holes, type Small, smallRecord } from './small-record'

const NOW = new Date('2031-06-14T16:00:00Z')

const firstDay = (over: Partial<Small> = {}) =>
  smallRecord({
    id: 'fri',
    name: 'Friday',
    status: 'closed',
    people: ['Ashgill', 'Verrow', 'Coldbrook'],
    scores: { Ashgill: holes(18, 4), Verrow: holes(18, 3), Coldbrook: holes(18, 5) },
    competitions: [{ format: 'medal' }],
    ...over,
  })

const secondDay = (over: Partial<Small> = {}, earlier = firstDay()) =>
  smallRecord({
    id: 'sat',
    name: 'Saturday',
    people: ['Storrey', 'Coldbrook', 'Ashgill'],
    scores: { Ashgill: holes(18, 4), Coldbrook: holes(18, 4), Storrey: holes(18, 4) },
    competitions: [
      { format: 'medal', counted: ['fri'] },
      { format: 'stableford', counted: ['fri'] },
      { format: 'stableford' },
    ],
    earlier: [earlier],
    ...over,
  })

function countedAlike(record: DayRecord) {
  const board = boardOf(record, NOW)
  const read = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(dayOfRecord(record)))))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  expect(board.competitions.map((one) => one.rows.map((row) => [row.entrant, row.place, row.score]))).toEqual(
    scoreDay(read.value).map((one) => one.standings.map(({ entrant, place, score }) => [entrant, place, score])),
  )
  return board
}

const lines = (record: DayRecord, at: number) =>
  countedAlike(record).competitions[at]!.rows.map(({ name, place, score, noPlace, rounds }) => [
    name,
    place,
    score,
    noPlace,
    rounds?.map((round) => round.score),
  ])

describe('a round that was missed', () => {
  it('leaves no total on strokes, from the moment it is known', () => {
    expect(lines(secondDay(), 0)).toEqual([
      ['A Ashgill', 1, 144, null, [72, 72]],
      ['C Coldbrook', 2, 162, null, [90, 72]],
      ['V Verrow', null, null, 'one-round-only', [54, null]],
      ['S Storrey', null, null, 'one-round-only', [null, 72]],
    ])
  })

  it('counts nothing on points, and the others stand', () => {
    expect(lines(secondDay(), 1)).toEqual([
      ['A Ashgill', 1, 72, null, [36, 36]],
      ['V Verrow', 2, 54, null, [54, null]],
      ['C Coldbrook', 2, 54, null, [18, 36]],
      ['S Storrey', 4, 36, null, [null, 36]],
    ])
  })

  it('is said beside the name, with no card of this day to open', () => {
    const rows = boardOf(secondDay(), NOW).competitions[1]!.rows
    const told = (name: string) => rows.find((row) => row.name === name)!
    expect([told('V Verrow').note, told('V Verrow').away]).toEqual(['did not play Saturday', true])
    expect([told('S Storrey').note, told('S Storrey').away]).toEqual(['did not play Friday', undefined])
    expect([told('A Ashgill').note, told('A Ashgill').away]).toEqual([null, undefined])
  })

  it('puts nobody into a competition of this day alone, nor into its figures and counts', () => {
    const board = boardOf(secondDay(), NOW)
    expect(board.competitions[2]!.rows).toHaveLength(3)
    expect(board.players).toBe(3)
    expect([...figuresOf(secondDay()).keys()].sort()).toEqual(['sat-Ashgill', 'sat-Coldbrook', 'sat-Storrey'])
  })

  it('is somebody’s who withdrew from this day too, and nobody’s while entries are open', () => {
    const people = ['Storrey', 'Coldbrook', 'Ashgill', 'Verrow']
    expect(lines(secondDay({ people, withdrawn: ['Verrow'] }), 1).map(([name]) => name)).toContain('V Verrow')
    expect(lines(secondDay({ status: 'called' }), 0).map(([name]) => name)).not.toContain('V Verrow')
  })

  it('stands on the sheet', () => {
    const sheet = resultSheetOf(secondDay({ status: 'closed' }), { number: 1, reason: null, by: 'D', at: NOW })
    expect(sheet.board.competitions[0]!.rows.map((row) => row.name)).toContain('V Verrow')
  })
})

describe('a pair that missed the second day', () => {
  it('stays as it was, without a total', () => {
    const sides = [
      ['Ashgill', 'Verrow'],
      ['Coldbrook', 'Storrey'],
    ]
    const people = sides.flat()
    const scores = Object.fromEntries(people.map((one) => [one, holes(18, 4)]))
    const friday = firstDay({ people, scores, competitions: [{ format: 'four-ball-medal', sides }] })
    const record = secondDay(
      {
        people: ['Coldbrook', 'Storrey'],
        scores,
        competitions: [{ format: 'four-ball-medal', sides: sides.slice(1), counted: ['fri'] }],
      },
      friday,
    )
    expect(lines(record, 0)).toEqual([
      ['Coldbrook and Storrey', 1, 144, null, [72, 72]],
      ['Ashgill and Verrow', null, null, 'one-round-only', [72, null]],
    ])
  })
})

describe('rounds on courses of another par', () => {
  it('give nobody strokes because of somebody who was not there: RoH 2024, 6.2b looks at the field of the round', () => {
    // Storrey plays only on Saturday, from tees of par 54: Friday was par 72 for everybody who was there.
    const saturday = secondDay({ par: 3, scores: { Ashgill: holes(18, 3), Storrey: holes(18, 3) } })
    const friday = boardOf(firstDay(), NOW).competitions[0]!.rows.find((row) => row.name === 'A Ashgill')!
    const both = boardOf(saturday, NOW).competitions[0]!.rows.find((row) => row.name === 'A Ashgill')!
    expect(both.rounds!.map((round) => round.score)).toEqual([friday.score, 54])
  })
})
