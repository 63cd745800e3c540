// Promise: a match that the desk decided is on the board whoever of it withdrew; the team has its point, the desk still
// sees it, and the exported day file counts the same.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { deskMatchesOf } from '@/lib/boards/desk-matches-view'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { DayRecord } from '@/lib/facts/day-record'
import { scoreDay } from '@/lib/rules/score-day'
import { holes, smallRecord } from './small-record'

const NOW = new Date('2031-06-14T16:00:00Z')
const PEOPLE = ['Ashgill', 'Verrow', 'Coldbrook', 'Storrey']

function countedAlike(record: DayRecord) {
  const board = boardOf(record, NOW)
  const read = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(dayOfRecord(record)))))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const results = scoreDay(read.value)
  expect(board.competitions.map((one) => one.matches.map(({ id, winner }) => [id, winner]))).toEqual(
    results.map((one) => (one.matches ?? []).map(({ id, winner }) => [id, winner])),
  )
  return board
}

const singles = (ending: object, withdrawn: readonly string[], format = 'match') =>
  smallRecord({
    people: PEOPLE,
    withdrawn,
    scores: { Ashgill: holes(18, 4), Coldbrook: holes(18, 4), Storrey: holes(18, 5) },
    competitions: [
      {
        format,
        pairings: [
          { a: 'Ashgill', b: 'Verrow', ending },
          { a: 'Coldbrook', b: 'Storrey' },
        ],
      },
      { format: 'stableford' },
    ],
    teams: { Heath: ['Ashgill', 'Coldbrook'], Links: ['Verrow', 'Storrey'] },
  })

describe('a match against somebody who withdrew', () => {
  it('stays as won by walkover, with its point for the team', () => {
    const board = countedAlike(singles({ walkover: 'a' }, ['Verrow']))
    const [match] = board.competitions[0]!.matches
    expect(match).toMatchObject({ winner: 'd-Ashgill', result: 'walkover', finished: true, holes: [] })
    expect(board.competitions[0]!.names['d-Verrow']).toBe('V Verrow')
    expect(board.teams!.map(({ name, won, lost }) => [name, won, lost])).toEqual([
      ['Heath', 2, 0],
      ['Links', 0, 2],
    ])
    // Whoever withdrew is in nothing else.
    expect(board.competitions[1]!.rows.map((row) => row.entrant)).not.toContain('d-Verrow')
  })

  it('stays as conceded, also by the one who is still there', () => {
    expect(countedAlike(singles({ concededBy: 'b' }, ['Verrow'])).competitions[0]!.matches[0]).toMatchObject({
      winner: 'd-Ashgill',
      result: 'conceded',
    })
    expect(countedAlike(singles({ walkover: 'b' }, ['Verrow', 'Ashgill'])).competitions[0]!.matches[0]).toMatchObject({
      winner: 'd-Verrow',
    })
  })

  it('takes its parts with it', () => {
    expect(
      countedAlike(singles({ walkover: 'a' }, ['Verrow'], 'three-part-match')).competitions[0]!.matches[0]!.parts,
    ).toEqual(
      ['front nine', 'back nine', 'whole'].map((name) => ({
        name,
        winner: 'd-Ashgill',
        result: 'walkover',
        finished: true,
      })),
    )
  })

  it('is off the board until the desk decides it, and the desk is told why', () => {
    const record = singles({}, ['Verrow'])
    const board = countedAlike(record)
    expect(board.competitions[0]!.matches.map((match) => match.a)).toEqual(['d-Coldbrook'])
    const [first] = deskMatchesOf(record, board).competitions[0]!.matches!
    expect(first).toMatchObject({
      a: 'Ashgill',
      b: 'Verrow',
      result: 'Verrow has withdrawn: give a walkover, or pair anew',
    })
  })

  it('can still be seen and kept in the list of pairings', () => {
    const record = singles({ walkover: 'a' }, ['Verrow'])
    const { ends } = deskMatchesOf(record, boardOf(record, NOW)).competitions[0]!
    expect(ends).toContainEqual({ id: 'd-Verrow', name: 'V Verrow (withdrawn)' })
  })
})

describe('a side that withdrew', () => {
  it('loses by the walkover that was given', () => {
    const board = countedAlike(
      smallRecord({
        people: PEOPLE,
        withdrawn: ['Coldbrook', 'Storrey'],
        competitions: [
          {
            format: 'four-ball-match',
            sides: [
              ['Ashgill', 'Verrow'],
              ['Coldbrook', 'Storrey'],
            ],
            pairings: [{ a: 's1', b: 's2', ending: { walkover: 'a' } }],
          },
        ],
        teams: { Heath: ['Ashgill', 'Verrow'], Links: ['Coldbrook', 'Storrey'] },
      }),
    )
    expect(board.competitions[0]!.matches[0]).toMatchObject({ winner: 'd-c0-s1', result: 'walkover' })
    expect(board.competitions[0]!.names['d-c0-s2']).toBe('Coldbrook and Storrey')
    expect(board.teams!.map(({ name, won, lost }) => [name, won, lost])).toEqual([
      ['Heath', 1, 0],
      ['Links', 0, 1],
    ])
  })
})
