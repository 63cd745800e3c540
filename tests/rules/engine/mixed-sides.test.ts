// One ball of two partners on different tees, worked by hand. Common practice, no source: the committee names the tees
// whose card a side plays to; Rules of Handicapping 2024, Appendix C, for the strokes (60 % and 40 % in greensomes).
import fc from 'fast-check'
import { describe, expect, it, test, vi } from 'vitest'
import type { Competition, Day } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import { holeWorking } from '@/lib/rules/working/hole-working'
import { randomDay } from '../reference/random-day'
import { aldermoss, RED, YELLOW } from './aldermoss'

vi.setConfig({ testTimeout: 600_000 })

// A bogey on every hole of the yellow card: 90.
const BOGEYS = YELLOW.holes.map(({ par }) => par + 1)

const player = (id: string, indexTenths: number, tee: string) => ({ id, name: id, indexTenths, tee })

/** m 10.0 on yellow: 8.262; w 20.0 on red: 20.024. 60 % and 40 %: 4.957 + 8.010 = 12.967, 13 strokes. */
function day(sides: readonly (readonly string[])[], more: Partial<Competition> = {}): Day {
  return aldermoss({
    players: [
      player('m1', 100, YELLOW.id),
      player('w1', 200, RED.id),
      player('m2', 100, YELLOW.id),
      player('w2', 200, RED.id),
    ],
    sides: sides.map((players, at) => ({ id: `s${at + 1}`, players })),
    cards: sides.map((_, at) => ({ player: `s${at + 1}`, scores: BOGEYS })),
    competitions: ['greensomes-stableford', 'greensomes-medal'].map((format) => ({ id: format, format, ...more })),
  })
}

const figures = (one: Day) =>
  scoreDay(one).map(({ standings }) => standings.map(({ score, playingHandicap }) => [playingHandicap, score]))

describe('two mixed pairs with the same card', () => {
  it('are level whoever is named first: 13 holes of two points and five of one; 90 less 13', () => {
    const level = [
      [
        [13, 31],
        [13, 31],
      ],
      [
        [13, 77],
        [13, 77],
      ],
    ]
    expect(
      figures(
        day([
          ['m1', 'w1'],
          ['w2', 'm2'],
        ]),
      ),
    ).toEqual(level)
  })

  it('play to the red card where the terms name it: the 13th is a par five there, level without a stroke', () => {
    // Index 14 on the 13th: thirteen other holes with a stroke 26, the 13th 2, four without a stroke 4.
    const red = figures(
      day(
        [
          ['m1', 'w1'],
          ['w2', 'm2'],
        ],
        { sideTee: RED.id },
      ),
    )
    expect(red[0]).toEqual([
      [13, 32],
      [13, 32],
    ])
    expect(red[1]).toEqual([
      [13, 77],
      [13, 77],
    ])
  })

  it('say in the working whose card it is', () => {
    const said = (one: Day) =>
      holeWorking(one, 'greensomes-medal', 's1', 1)!.steps.find(({ label }) => label === 'Par of the side’s card')
    expect(said(day([['w1', 'm1']]))).toMatchObject({ figure: '72', clause: 'House rule, no source' })
    expect(said(day([['m1', 'w1']], { sideTee: RED.id }))).toMatchObject({
      figure: '73',
      clause: 'Terms of the competition',
    })
    expect(said(day([['m1', 'm2']]))).toBeUndefined()
  })
})

it('a pair on red alone gets the stroke for the higher par in strokes: 20.024 is 20, and one more', () => {
  const [points, strokes] = scoreDay(
    day([
      ['w1', 'w2'],
      ['m1', 'm2'],
    ]),
  )
  const handicapOf = (result: typeof points) =>
    result!.standings.find(({ entrant }) => entrant === 's1')!.playingHandicap
  expect([handicapOf(points), handicapOf(strokes)]).toEqual([20, 21])
})

test('the order of the names of a side changes nothing where it plays one ball', () => {
  const formats = ['foursomes-stableford', 'greensomes-medal', 'scramble-2', 'greensomes-match']
  const competitions = formats.map((format) => ({
    id: format,
    format,
    ...(format.endsWith('match') ? { matches: [{ id: 'm', a: 's1', b: 's2' }] } : {}),
  }))
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000_000 }), fc.boolean(), (seed, closed) => {
      const made = randomDay(seed, { competitions, sideSize: 2, closed })
      // The card of the side is its own, not that of whoever is named first.
      const cards = made.sides.map(({ id, players }) => ({
        ...made.cards.find(({ player: one }) => one === players[0])!,
        player: id,
      }))
      const one = { ...made, cards }
      const swapped = { ...one, sides: one.sides.map((side) => ({ ...side, players: [...side.players].reverse() })) }
      const sorted = (text: Day) =>
        scoreDay(text).map((result) => ({
          ...result,
          standings: result.standings.map((standing) => ({ ...standing, players: [...standing.players].sort() })),
        }))
      expect(sorted(swapped)).toEqual(sorted(one))
    }),
    { numRuns: 400 },
  )
})
