// Promise: the expected pace, in minutes written down here and not counted by what is tested. Society custom, no source:
// eighteen holes in 3 h 20 for two-balls, 3 h 50 for threes, 4 h 20 for fours, and nine holes in half of that.
import { describe, expect, it } from 'vitest'
import { minutesToEnd } from '@/lib/boards/pace'

const FOURS = (holes: number) => Array<number>(holes).fill(4)

describe('the expected pace', () => {
  it.each([
    [1, 18, 180],
    [2, 18, 200],
    [3, 18, 230],
    [4, 18, 260],
    [1, 9, 90],
    [2, 9, 100],
    [3, 9, 115],
    [4, 9, 130],
  ])('%i players finish %i holes in %i minutes', (size, holes, minutes) => {
    expect(minutesToEnd(size, FOURS(holes)).at(-1)).toBeCloseTo(minutes, 9)
  })

  it('takes longer over a long hole than over a short one', () => {
    // Fours over nine holes of par 36: 130 minutes, so three fives and three threes take 130 × 5/36 and 130 × 3/36 each.
    const ends = minutesToEnd(4, [5, 3, 4, 4, 5, 3, 4, 3, 5])
    expect(ends[0]).toBeCloseTo(18.0556, 3)
    expect(ends[1]! - ends[0]!).toBeCloseTo(10.8333, 3)
    expect(ends.at(-1)).toBeCloseTo(130, 9)
  })
})
