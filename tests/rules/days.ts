// Days for properties: from a seed of fast-check, made by the same hand as the days of the second way.
import fc from 'fast-check'
import type { Day, Match } from '@/lib/rules/day'
import { randomDay } from './reference/random-day'

const SINGLES = ['stableford', 'medal', 'gross', 'par', 'maximum-score'].map((format) => ({ id: format, format }))
const PAIRS = ['four-ball-stableford', 'four-ball-medal', 'four-ball-par'].map((format) => ({ id: format, format }))
const MATCH: readonly Match[] = [{ id: 'm', a: 'p1', b: 'p2' }]
const MIRRORED: readonly Match[] = [{ id: 'm', a: 'p2', b: 'p1' }]

const seed = fc.integer({ min: 1, max: 1_000_000_000 })

/** Everybody alone in five formats and in a match, seen from either side, finished or not. */
export const singlesDay: fc.Arbitrary<Day> = fc.tuple(seed, fc.boolean()).map(([from, closed]) =>
  randomDay(from, {
    competitions: [
      ...SINGLES,
      { id: 'match', format: 'match', matches: MATCH },
      { id: 'mirrored', format: 'match', matches: MIRRORED },
    ],
    sideSize: 1,
    closed,
  }),
)

export const pairsDay: fc.Arbitrary<Day> = fc
  .tuple(seed, fc.boolean())
  .map(([from, closed]) => randomDay(from, { competitions: PAIRS, sideSize: 2, closed }))

export const anyDay = fc.oneof(singlesDay, pairsDay)
