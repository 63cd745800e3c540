// A shotgun: a group plays the same round from another hole. Whatever is carried from hole to hole, or counts from a hole
// on, must come out as if the holes had been numbered in the order they were played.
import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import type { Card, Day, Side, Tee } from '@/lib/rules/day'
import { scoreDay } from '@/lib/rules/score-day'
import { holeWorking } from '@/lib/rules/working/hole-working'
import { aldermoss } from './engine/aldermoss'
import { randomDay } from './reference/random-day'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

const turned = <T>(list: readonly T[], by: number): T[] => [...list.slice(by), ...list.slice(0, by)]

/** The day as it is, everybody from the hole at one place of the card, and the same holes numbered from that one. */
function bothWays(day: Day, place: number): { shotgun: Day; renumbered: Day } {
  const numbers = day.tees[0]!.holes.map(({ hole }) => hole)
  const played = turned(numbers, place)
  const newNumber = (hole: number) => numbers[played.indexOf(hole)]!
  const shotgun = { ...day, cards: day.cards.map((card): Card => ({ ...card, startHole: numbers[place]! })) }
  const tees = day.tees.map(
    (tee): Tee => ({ ...tee, holes: turned(tee.holes, place).map((hole, at) => ({ ...hole, hole: numbers[at]! })) }),
  )
  const cards = day.cards.map(({ startHole: _, penaltyStrokes, ...card }): Card => {
    const full = numbers.map((_hole, at) => card.scores[at] ?? null)
    const strokes = Object.entries(penaltyStrokes ?? {}).map(([hole, more]) => [newNumber(Number(hole)), more])
    return { ...card, scores: turned(full, place), penaltyStrokes: Object.fromEntries(strokes) }
  })
  const sides = day.sides.map(
    ({ ballLostOn, ...side }): Side =>
      ballLostOn === undefined ? side : { ...side, ballLostOn: newNumber(ballLostOn) },
  )
  return { shotgun, renumbered: { ...day, tees, cards, sides } }
}

function seen(day: Day, turnBy: number) {
  return scoreDay(day).map(({ competition, standings, matches }) => ({
    competition,
    standings: standings.map((one) => ({
      entrant: one.entrant,
      place: one.place,
      tied: one.tied,
      score: one.score,
      noPlace: one.noPlace,
      holesPlayed: one.holesPlayed,
      values: turned(
        one.holes.map(({ value }) => value),
        turnBy,
      ),
    })),
    matches: matches?.map(({ winner, result, holes }) => ({ winner, result, up: holes.map(({ up }) => up) })),
  }))
}

const NO_TIES = { steps: [], holesCount: 'by-number', fractions: 'kept' } as const
const seed = fc.integer({ min: 1, max: 1_000_000_000 })

test('games inside a group and matches: a shotgun is the same holes renumbered', () => {
  const ids = ['skins', 'skins-not-carried', 'split-sixes', 'split-sixes-clear-win'] as const
  const competitions = [
    ...ids.map((format) => ({ id: format, format, ties: NO_TIES })),
    { id: 'match', format: 'match', matches: [{ id: 'm', a: 'p1', b: 'p2' }] },
  ]
  fc.assert(
    fc.property(seed, fc.boolean(), fc.nat(), (from, closed, at) => {
      const made = randomDay(from, { competitions, sideSize: 1, players: 3, closed })
      const day = { ...made, competitions }
      const place = at % day.tees[0]!.holes.length
      const { shotgun, renumbered } = bothWays(day, place)
      expect(seen(shotgun, place)).toEqual(seen(renumbered, 0))
    }),
    { numRuns: 400 },
  )
})

test('a yellow ball that was lost: a shotgun is the same holes renumbered', () => {
  const terms = ['counts-once', 'named-score-nothing', 'side-out'] as const
  const competitions = ['yellow-ball', 'yellow-ball-doubled'].flatMap((format) =>
    terms.map((ballLost) => ({ id: `${format} ${ballLost}`, format, ballLost, ties: NO_TIES })),
  )
  fc.assert(
    fc.property(seed, fc.boolean(), fc.nat(), fc.nat(), (from, closed, at, lost) => {
      const made = randomDay(from, { competitions, sideSize: 3, closed })
      const numbers = made.tees[0]!.holes.map(({ hole }) => hole)
      const sides = made.sides.map((side, s) => ({ ...side, ballLostOn: numbers[(lost + s) % numbers.length]! }))
      // Who has the ball goes by number: with three players the turn begins again on every third hole of a card.
      const place = (3 * at) % numbers.length
      const { shotgun, renumbered } = bothWays({ ...made, sides, competitions }, place)
      expect(seen(shotgun, place)).toEqual(seen(renumbered, 0))
    }),
    { numRuns: 400 },
  )
})

test('the working of a hole says who has the named ball, and where it was lost', () => {
  const started = aldermoss({})
  const day = aldermoss({
    sides: [{ id: 's', players: ['haldane', 'coldbrook', 'trevennor'], ballLostOn: 2 }],
    cards: started.cards.map((card) => ({ ...card, startHole: 10 })),
    competitions: [{ id: 'c', format: 'yellow-ball' }],
  })
  const said = (hole: number) => holeWorking(day, 'c', 's', hole)!.steps.at(-1)!.sentence
  expect(said(18)).toMatch(/^trevennor has the named ball on this hole\. /)
  expect(said(2)).toMatch(/^The named ball was lost on hole 2: the score of coldbrook, in turn here, counts nothing\. /)
})
