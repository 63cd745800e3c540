// Matches that end otherwise than on the last green, in parts, between sides and between teams.

import { describe, expect, it } from 'vitest'
import type { Card, Competition, Day, Match } from '@/lib/rules/day'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { matchBetween } from '@/lib/rules/matches/match'
import { teamTotal } from '@/lib/rules/matches/team-match'
import { scoreDay } from '@/lib/rules/score-day'
import { aldermoss } from './aldermoss'

const scratch = ['a', 'b', 'c', 'd'].map((id) => ({ id, name: id, indexTenths: 0, tee: 'yellow-men' }))
const FOURS = new Array<number>(18).fill(4)
const cards: Card[] = [
  { player: 'a', scores: FOURS },
  { player: 'b', scores: FOURS },
  { player: 'c', scores: FOURS.map((n, i) => (i < 3 ? 3 : n)) },
  { player: 'd', scores: FOURS.slice(0, 10) },
]

function played(match: Partial<Match>, more: Partial<Competition> = {}, day: Partial<Day> = {}) {
  const one = { id: 'm', a: 'a', b: 'b', ...match }
  const whole = { players: scratch, cards, closed: false, ...day }
  const competitions = [{ id: 'c', format: 'match', matches: [one], ...more }]
  return scoreDay(aldermoss({ ...whole, competitions }))[0]!.matches![0]!
}

describe('how a match ends', () => {
  it.each<[string, Partial<Match>, string | null, string, boolean]>([
    ['halved', {}, null, 'halved', true],
    ['out in the country', { b: 'c' }, 'c', '3&2', true],
    ['not yet', { b: 'd' }, null, 'level after 10', false],
    ['a conceded hole', { concededHoles: [{ hole: 18, to: 'a' }] }, 'a', '1 up', true],
    ['conceded', { concededBy: 'a' }, 'b', 'conceded', true],
    ['a walkover', { walkover: 'a' }, 'a', 'walkover', true],
    [
      'abandoned',
      { b: 'd', abandoned: true, concededHoles: [{ hole: 1, to: 'b' }] },
      'd',
      'B 1 up after 10, abandoned',
      true,
    ],
    [
      'on an extra hole',
      {
        extraHoles: [
          { a: 4, b: 4 },
          { a: 5, b: 4 },
        ],
      },
      'b',
      'at the 20th',
      true,
    ],
    ['level on the extra holes too', { extraHoles: [{ a: 4, b: 4 }] }, null, 'halved', true],
  ])('%s', (_, match, winner, result, finished) => {
    expect(played(match)).toMatchObject({ winner, result, finished })
  })

  it('gives strokes on extra holes as on the card, or none', () => {
    // Haldane gives Coldbrook 17; hole 1 is index 5.
    const match = { a: 'haldane', b: 'coldbrook', extraHoles: [{ a: 4, b: 5 }] }
    const level: Card[] = ['haldane', 'coldbrook'].map((player) => ({ player, scores: new Array(18).fill('x') }))
    const day = aldermoss({ cards: level })
    const run = (more: Partial<Competition>) =>
      scoreDay({ ...day, competitions: [{ id: 'c', format: 'match', matches: [{ id: 'm', ...match }], ...more }] })[0]!
        .matches![0]!
    expect(run({}).result).toBe('halved')
    expect(run({ extraHoleStrokes: 'none' }).result).toBe('at the 19th')
  })

  it('is three matches at once in the three-part form', () => {
    const { parts, result } = played({ b: 'c' }, { format: 'three-part-match' })
    expect(parts).toEqual([
      { name: 'front nine', winner: 'c', result: '3&2', finished: true },
      { name: 'back nine', winner: null, result: 'halved', finished: true },
      { name: 'whole', winner: 'c', result: '3&2', finished: true },
    ])
    expect(result).toBe('3&2')
  })
})

describe('sides and teams', () => {
  const sides = [
    { id: 's1', players: ['haldane', 'coldbrook'] },
    { id: 's2', players: ['trevennor', 'tarrablane'] },
  ]

  it('takes the difference of a four-ball before the allowance, or after, as the terms say', () => {
    const run = (more: Partial<Competition>) =>
      scoreDay(
        aldermoss({
          sides,
          competitions: [{ id: 'c', format: 'four-ball-match', matches: [{ id: 'm', a: 's1', b: 's2' }], ...more }],
        }),
      )[0]!.matches![0]!.strokes
    // 16.925, 19.469 and 24.594 × 90 %, and one for the par of the red tees.
    expect(run({})).toEqual({ haldane: 0, coldbrook: 15, trevennor: 18, tarrablane: 23 })
    // 0.566, 15.799, 18.088, 22.701, rounded first.
    expect(run({ matchDifference: 'rounded' })).toEqual({ haldane: 0, coldbrook: 15, trevennor: 17, tarrablane: 23 })
  })

  it('makes a four-ball of any four cards', () => {
    const format = formatOf('four-ball-match')!
    const named = matchBetween(aldermoss({ sides }), 's1', 's2', format)!
    const any = matchBetween(aldermoss({}), ['haldane', 'coldbrook'], ['trevennor', 'tarrablane'], format)!
    expect(any.result).toBe(named.result)
    expect(matchBetween(aldermoss({}), 'haldane', 'nobody')).toBeNull()
  })

  it('adds one and a half point over the sessions', () => {
    const teams = [
      { id: 'x', name: 'Gorse', players: ['a', 'c'] },
      { id: 'y', name: 'Heather', players: ['b', 'd'] },
    ]
    const competitions: Competition[] = [
      {
        id: 'first',
        format: 'match',
        matches: [
          { id: '1', a: 'a', b: 'b' },
          { id: '2', a: 'd', b: 'c' },
        ],
      },
      { id: 'second', format: 'match', matches: [{ id: '3', a: 'c', b: 'b' }] },
    ]
    const day = aldermoss({ players: scratch, cards, teams, competitions, closed: false })
    const results = scoreDay(day)
    expect(results[0]!.teams!.map((one) => [one.team, one.points])).toEqual([
      ['x', '½'],
      ['y', '½'],
    ])
    expect(teamTotal(results, day).map((one) => [one.team, one.points, one.won])).toEqual([
      ['x', '1½', 1],
      ['y', '½', 0],
    ])
  })
})
