// Promise: what the engine says of first place, of the bounds and of what is needed is what comes of writing every score
// that can still come. Small days with a few holes open, every ending counted by the engine's ordinary way.
import { describe, expect, it } from 'vitest'
import type { Competition, Day, HoleScore } from '@/lib/rules/day'
import { type CompetitionChances, chancesOf } from '@/lib/rules/insight/chances'
import { firstByEverything, matchByEverything, neededByEverything, openPlaces } from './every-ending'
import { smallDay } from './small-days'

const UP_AND_DOWN = { best: -1, points: [1, 4, 2, 3, 0], beyond: 0, noScore: 1 }
const singly = { side: { from: 1, to: 1 }, ball: 'own', strokes: { kind: 'each-player', off: 'own' } } as const
const paired = { ...singly, side: { from: 2, to: 2 } } as const

const SINGLES: readonly Competition[] = [
  ...['stableford', 'medal', 'gross', 'par', 'maximum-score', 'modified-points'].map((format) => ({ id: 'c', format })),
  {
    id: 'c',
    format: 'odd',
    custom: { ...singly, value: { kind: 'points', table: UP_AND_DOWN }, count: { kind: 'best', take: [1] } },
  },
]
const SIDES: readonly Competition[] = [
  ...['four-ball-stableford', 'four-ball-medal', 'pairs-aggregate-medal', 'best-and-aggregate-stableford'].map(
    (format) => ({ id: 'c', format }),
  ),
  { id: 'c', format: 'odd', custom: { ...paired, value: { kind: 'strokes' }, count: { kind: 'best', take: [2, 1] } } },
  { id: 'c', format: 'greensomes-stableford' },
]

function bounds(day: Day): Extract<CompetitionChances, { kind: 'bounds' }> {
  const chances = chancesOf(day, 'c')
  if (chances?.kind !== 'bounds') throw new Error(`No bounds: ${JSON.stringify(chances)}`)
  return chances
}

/** A format of the society's own is read back for every count, and that takes its time. */
const days = ({ custom }: Competition) => (custom === undefined ? 14 : 8)

describe.each([
  ['singles', SINGLES, 1],
  ['sides', SIDES, 2],
] as const)('first place in %s', (_, competitions, size) => {
  it.each(competitions.map((one) => [one.format, one] as const))('%s', (_format, competition) => {
    let settled = 0
    for (let seed = 1; seed <= days(competition); seed++) {
      const day = smallDay(seed, competition, size, 3)
      const open = openPlaces(day).length
      // A table that goes up and down has its best and worst anywhere.
      if (open > (competition.custom?.value.kind === 'points' ? 2 : 4)) continue
      const scores: HoleScore[] = open > 2 ? [1, 4, 'x', null] : [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 'x', null]
      const seen = firstByEverything(day, scores)
      for (const { entrant, possible, certain, best, worst } of bounds(day).entrants) {
        expect({ seed, entrant, possible, certain, best, worst }).toEqual({ seed, entrant, ...seen.get(entrant) })
        if (possible !== 'alone' || certain !== 'no') settled++
      }
    }
    expect(settled).toBeGreaterThan(0)
  })
})

describe('what is needed', () => {
  it.each([
    ...SINGLES.map((one) => [one.format, one, 1] as const),
    ...SIDES.map((one) => [one.format, one, 2] as const),
  ])('%s', (_, competition, size) => {
    let asked = 0
    for (let seed = 500; seed < 500 + 3 * days(competition); seed++) {
      const day = smallDay(seed, competition, size, 4)
      for (const one of bounds(day).entrants) {
        const players = new Set(day.sides.find(({ id }) => id === one.entrant)?.players ?? [one.entrant])
        // One ball has one card: that of the first player.
        if (competition.format.startsWith('greensomes')) players.delete([...players][1]!)
        if (openPlaces(day, players).length > 2) continue
        for (const needed of one.needed) {
          // A single hole may have to be written up to the whole of the total.
          const most = Math.max(9, needed.ties ?? 0, needed.wins ?? 0) + 4
          if (most > 30) continue
          const scores = [...Array.from({ length: most }, (_, at) => at + 1), 'x' as const, null]
          const seen = neededByEverything(
            day,
            { entrant: one.entrant, players },
            { entrant: needed.against, full: needed.full },
            scores,
          )
          const { ties, wins, already, countback } = needed
          expect({ seed, entrant: one.entrant, ties, wins, already, countback }).toEqual({
            seed,
            entrant: one.entrant,
            ...seen,
          })
          asked++
        }
      }
    }
    expect(asked).toBeGreaterThan(0)
  })
})

describe('matches', () => {
  it.each(['match', 'four-ball-match', 'total-of-two-match'])('%s', (format) => {
    const size = format === 'match' ? 1 : 2
    let open = 0
    for (let seed = 1; seed <= 16; seed++) {
      const [a, b] = size === 1 ? ['p1', 'p2'] : ['s1', 's2']
      const competition = { id: 'c', format, matches: [{ id: 'm', a: a!, b: b! }] }
      const day = smallDay(seed, competition, size, 3)
      if (openPlaces(day).length > 3) continue
      const chances = chancesOf(day, 'c')
      if (chances?.kind !== 'matches') throw new Error('no matches')
      const { best, worst } = chances.matches[0]!
      const ends = matchByEverything(day, [1, 2, 4, 6, 'x'])
      const order = ['lost', 'halved', 'won']
      const sorted = [...ends].sort((one, other) => order.indexOf(one) - order.indexOf(other))
      expect({ seed, best, worst }).toEqual({ seed, best: sorted.at(-1), worst: sorted[0] })
      if (best !== worst) open++
    }
    expect(open).toBeGreaterThan(0)
  })
})
