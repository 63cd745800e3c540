// Sides in every form: pairs that add up, one ball for a side, teams of which some scores count, and sides that lack a
// player. The engine and the second way agree on every random day.
import { describe, expect, test, vi } from 'vitest'
import { DAYS, disagreements } from './agreement'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

/** The engine plays these by the same few choices as the first formats: a quarter of the days each. */
const SOME = Math.ceil(DAYS / 4)

const named = (formats: readonly string[]) => formats.map((format) => ({ id: format, format }))
const READINGS = ['stableford', 'medal', 'par'] as const

describe(`${SOME} random days`, () => {
  test('pairs that add up, and the other pairs', () => {
    const competitions = named([
      'pairs-aggregate-stableford',
      'pairs-aggregate-medal',
      'pairs-aggregate-par',
      'best-and-aggregate-stableford',
      'four-ball-maximum-score',
    ])
    expect(disagreements({ competitions, sideSize: 2 }, SOME)).toEqual([])
  })

  test('one ball for two: foursomes, greensomes, Pinehurst, scramble', () => {
    const ways = ['foursomes', 'greensomes', 'pinehurst'].flatMap((way) => [`${way}-stableford`, `${way}-medal`])
    const competitions = named([...ways, 'scramble-2', 'scramble-2-stableford'])
    expect(disagreements({ competitions, sideSize: 2 }, SOME)).toEqual([])
  })

  test('a scramble of three and of four', () => {
    for (const size of [3, 4]) {
      const competitions = named([`scramble-${size}`, `scramble-${size}-stableford`])
      expect(disagreements({ competitions, sideSize: size }, SOME)).toEqual([])
    }
  })

  test('a changing number of scores, and the yellow ball', () => {
    const competitions = named(['waltz', 'thirds', 'one-two-three-four', 'yellow-ball', 'yellow-ball-doubled'])
    expect(disagreements({ competitions, sideSize: 4, shortSides: true }, SOME)).toEqual([])
  })

  // The same rule for every number of every size: the days are shared out among them.
  const counts = [3, 4, 5, 6].flatMap((of) => Array.from({ length: of }, (_, at) => ({ of, best: at + 1 })))
  test.each(READINGS)('the best scores of a team, %s', (reading) => {
    for (const { best, of } of counts) {
      const competitions = named([`best-${best}-of-${of}-${reading}`])
      const days = Math.ceil(DAYS / counts.length)
      expect(disagreements({ competitions, sideSize: of, shortSides: true }, days, best * 1000 + of)).toEqual([])
    }
  })
})
