// Promise: the phone says how a match stands as golfers say it. Invented players.

import { describe, expect, it } from 'vitest'
import { concededSaid, concedes, holeSoFar, isOverBefore, matchSoFar } from '@/app/card/_phone/match-words'
import { differsFromDots, strokesHere, strokesInWords } from '@/lib/boards/match-strokes'
import { type MatchToCount, matchNow } from '@/lib/rules/matches/match-now'

const both = { a: 'Storrey', b: 'Haldane' }
const ball = (id: string, gross: readonly (number | 'x' | null)[]) => ({
  players: [id],
  gross: Array.from({ length: 18 }, (_, at) => gross[at] ?? null),
  strokes: Array.from({ length: 18 }, () => 0),
  pars: Array.from({ length: 18 }, () => 4),
})
function match(
  a: readonly (number | 'x' | null)[],
  b: readonly (number | 'x' | null)[],
  more: Partial<MatchToCount> = {},
) {
  const one: MatchToCount = {
    id: 'm',
    a: [ball('a', a)],
    b: [ball('b', b)],
    holes: Array.from({ length: 18 }, (_, at) => at + 1),
    count: { kind: 'best', take: [1] },
    on: { kind: 'strokes' },
    maximum: { kind: 'net-double-bogey' },
    startHole: 1,
    over: false,
    conceded: [],
    ...more,
  }
  return matchNow(one, () => undefined)
}
const fours = (holes: number) => Array.from({ length: holes }, () => 4)
const fives = (holes: number) => Array.from({ length: holes }, () => 5)

describe('how a match stands', () => {
  it('while it is on', () => {
    expect(matchSoFar(both, match([], []))).toBe('Storrey against Haldane: not started')
    expect(matchSoFar(both, match([4, 4], [4, 4]))).toBe('Storrey and Haldane: all square after 2')
    expect(matchSoFar(both, match([4, 5], [4, 4]))).toBe('Haldane 1 up after 2')
    const dormie = match(
      [...fives(1), ...fours(15)],
      [...fours(2), ...fours(14)].map((one, at) => (at === 9 || at === 10 || at === 11 ? 5 : one)),
    )
    expect(matchSoFar(both, dormie)).toBe('Storrey 2 up, dormie: two holes to play')
  })

  it('when it is over', () => {
    const early = match(fours(16), [...fours(13), ...fives(3)])
    expect(matchSoFar(both, early)).toBe('Storrey wins 3 and 2')
    expect(matchSoFar(both, match(fours(18), [...fours(17), 5]))).toBe('Storrey wins 1 up')
    expect(matchSoFar(both, match(fours(18), fours(18)))).toBe(
      'Storrey and Haldane: all square at the end, the match is shared',
    )
    expect(matchSoFar({ a: 'Storrey and Verrow', b: 'Haldane' }, early)).toBe('Storrey and Verrow win 3 and 2')
  })

  it('when it was given or abandoned', () => {
    const given = { up: -1, finished: true, result: 'conceded', takes: 'undecided' } as const
    expect(matchSoFar(both, match([4], [4], { ended: given }))).toBe('Haldane wins by concession')
    expect(matchSoFar(both, match([4], [5], { abandoned: true }))).toBe('Storrey 1 up when the match was abandoned')
  })

  it('hole by hole', () => {
    const now = match([4, 4, 5], [4, 5, 4])
    expect([1, 2, 3, 4].map((hole) => holeSoFar(both, now, hole))).toEqual([
      'hole 1 shared',
      'Storrey wins hole 2',
      'Haldane wins hole 3',
      null,
    ])
    const over = match(fours(10), fives(10))
    expect([10, 11].map((hole) => isOverBefore(over, hole))).toEqual([false, true])
  })
})

describe('what was conceded', () => {
  it('names the side, the holes and the match', () => {
    const conceded = [
      [7, -1],
      [4, -1],
      [9, 1],
    ] as const
    expect(concededSaid({ ...both, match: { conceded, concededBy: 'b' } })).toEqual([
      'Storrey conceded holes 4 and 7.',
      'Haldane conceded hole 9 and the match.',
    ])
    expect(concedes(both, 'a', 4)).toBe('Storrey concedes hole 4')
    expect(concedes({ ...both, b: 'Verrow and Ashgill' }, 'b', null)).toBe('Verrow and Ashgill concede the match')
  })
})

describe('strokes of a match beside the dots', () => {
  const holes = Array.from({ length: 18 }, (_, at) => at + 1)
  const on = (...at: number[]) => holes.map((hole) => at.filter((one) => one === hole).length)

  it('on the card: on which holes, how many', () => {
    expect(strokesInWords(on(), holes)).toBe('no strokes')
    expect(strokesInWords(on(5), holes)).toBe('one stroke on hole 5')
    expect(strokesInWords(on(2, 5, 7, 7), holes)).toBe('two strokes on hole 7, one stroke on holes 2 and 5')
    expect(strokesInWords(on(1, 2, 3, 4, 6, 8, 9), holes)).toBe('one stroke on holes 1 to 4, 6, 8 and 9')
    expect(strokesInWords(on(...holes), holes)).toBe('one stroke on every hole')
    expect(strokesInWords(on(...holes, 4, 13), holes)).toBe('one stroke on every hole, one more on holes 4 and 13')
    expect(strokesInWords([-1, ...Array<number>(17).fill(0)], holes)).toBe('one stroke given back on hole 1')
    expect(differsFromDots(on(2), on(2))).toBe(false)
    expect(differsFromDots(on(2), on(3))).toBe(true)
  })

  it('on the hole: who has one', () => {
    expect(strokesHere([{ name: 'Ada', strokes: 0 }])).toBe('no strokes here')
    expect(
      strokesHere([
        { name: 'Ada', strokes: 1 },
        { name: 'Ben', strokes: 0 },
        { name: 'Cai', strokes: 2 },
      ]),
    ).toBe('strokes here: Ada, Cai two')
  })
})
