// The four cards of Aldermoss Park as a team, under every way to count a team.

import { describe, expect, it } from 'vitest'
import type { Card, Competition, Day } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import { aldermoss, CARDS } from './aldermoss'

const TEAM = ['haldane', 'coldbrook', 'trevennor', 'tarrablane']

/** Points of each player on each hole, read from the singles at the same allowance. */
function pointsAt(allowance: number): number[][] {
  const [singles] = scoreDay(aldermoss({ competitions: [{ id: 's', format: 'stableford', allowance }] }))
  return TEAM.map((id) => singles!.standings.find((one) => one.entrant === id)!.holes.map((hole) => hole.value!))
}

function team(format: string, more: Partial<Competition> = {}, day: Partial<Day> = {}) {
  const sides = [{ id: 'team', players: TEAM }]
  const result = scoreDay(aldermoss({ sides, competitions: [{ id: 't', format, allowance: 85, ...more }], ...day }))[0]!
  return result.standings[0]!
}

const best = (points: number[][], hole: number, count: number) =>
  points
    .map((player) => player[hole]!)
    .sort((a, b) => b - a)
    .slice(0, count)
    .reduce((sum, one) => sum + one, 0)

describe('a team of four', () => {
  const points = pointsAt(85)
  const counted = (count: (hole: number) => number) => points[0]!.map((_, i) => best(points, i, count(i + 1)))

  it.each<[string, (hole: number) => number]>([
    ['best-1-of-4-stableford', () => 1],
    ['best-2-of-4-stableford', () => 2],
    ['best-4-of-4-stableford', () => 4],
    ['waltz', (hole) => [1, 2, 3][(hole - 1) % 3]!],
    ['thirds', (hole) => (hole <= 6 ? 1 : hole <= 12 ? 2 : 3)],
    ['one-two-three-four', (hole) => (hole <= 6 ? 1 : hole <= 11 ? 2 : hole <= 15 ? 3 : 4)],
  ])('%s', (format, count) => {
    expect(team(format).holes.map((hole) => hole.value)).toEqual(counted(count))
  })

  const yellow = (times: number, from: number) =>
    points[0]!.map((_, i) => {
      const named = i % 4
      const others = points.filter((_, p) => p !== named)
      return points[named]![i]! * (i + 1 >= from ? Math.min(times, 1) : times) + best(others, i, 1)
    })

  it('yellow ball: the named player in turn and the best of the others', () => {
    expect(team('yellow-ball').holes.map((hole) => hole.value)).toEqual(yellow(1, 19))
    expect(team('yellow-ball-doubled').holes.map((hole) => hole.value)).toEqual(yellow(2, 19))
  })

  it('a lost yellow ball costs what the terms say', () => {
    const sides = [{ id: 'team', players: TEAM, ballLostOn: 10 }]
    expect(team('yellow-ball-doubled', {}, { sides }).holes.map((hole) => hole.value)).toEqual(yellow(2, 10))
    const nothing = team('yellow-ball', {}, { sides }).holes.map((hole) => hole.value)
    expect(nothing.slice(0, 9)).toEqual(yellow(1, 19).slice(0, 9))
    expect(nothing[9]).toBe(
      best(
        points.filter((_, p) => p !== 1),
        9,
        1,
      ),
    )
    // House rule (common practice, no source): the player in turn stays named, counted once; where that is how often the ball
    // counted before, the loss costs nothing.
    const once = team('yellow-ball', { ballLost: 'counts-once' }, { sides }).holes.map((hole) => hole.value)
    expect(once).toEqual(yellow(1, 19))
    expect(team('yellow-ball', { ballLost: 'side-out' }, { sides }).noPlace).toBe('no-return')
  })

  it('counts nothing for a missing player unless the terms say otherwise', () => {
    const sides = [{ id: 'team', players: TEAM.slice(0, 3), competitions: ['t'] }]
    const three = points.slice(0, 3)
    const values = (more: Partial<Competition>) =>
      team('best-4-of-4-stableford', more, { sides }).holes.map((hole) => hole.value)
    expect(values({})).toEqual(points[0]!.map((_, i) => best(three, i, 3)))
    const ghost = { kind: 'ghost', overPar: 1, courseHandicap: 20 } as const
    expect(values({ missing: ghost })).toEqual(points[0]!.map((_, i) => best(three, i, 3) + 1))
    expect(values({ missing: { kind: 'lowest-again' } })).toEqual(
      points[0]!.map((_, i) => best(three, i, 3) + Math.max(...three.map((one) => one[i]!))),
    )
    // Nobody else is in the competition: there is no card to draw (the second way draws from larger fields).
    expect(values({ missing: { kind: 'drawn', seed: 3 } })).toEqual(points[0]!.map((_, i) => best(three, i, 3)))
  })
})

describe('one ball', () => {
  const card: Card = {
    player: 'team',
    scores: CARDS[0]!.scores,
    drives: TEAM.concat(TEAM, TEAM, TEAM, 'haldane', 'haldane'),
  }

  it('takes the weights of a scramble low to high and rounds once', () => {
    const standing = team('scramble-4', { allowance: undefined, minimumDrives: 5 }, { cards: [card] })
    // 0.629 × 25 % + 17.554 × 20 % + 20.098 × 15 % + 25.223 × 10 % = 9.205; the tee is the first player's.
    expect(standing.playingHandicap).toBe(9)
    expect(standing.score).toBe(77 - 9)
    expect(standing.drives).toEqual({ haldane: 6, coldbrook: 4, trevennor: 4, tarrablane: 4 })
    expect(standing.drivesShort).toEqual(['coldbrook', 'trevennor', 'tarrablane'])
  })

  it('divides the combined handicaps where the house does', () => {
    // 63.504 ÷ 8 = 7.938
    expect(team('scramble-4', { allowance: undefined, dividedBy: 8 }, { cards: [card] }).playingHandicap).toBe(8)
  })

  it('fills a short side up with the handicap the terms give', () => {
    const sides = [{ id: 'team', players: TEAM.slice(1), competitions: ['t'] }]
    const ghost = { kind: 'ghost', overPar: 0, courseHandicap: 20 } as const
    // 17.554 × 25 % + 20 × 20 % + 20.098 × 15 % + 25.223 × 10 % = 13.925
    const standing = team('scramble-4', { allowance: undefined, missing: ghost }, { sides, cards: [card] })
    expect(standing.playingHandicap).toBe(14)
  })
})
