// What must hold on every day, whatever the cards say.
import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { Day, HoleScore, Tee } from '@/lib/rules/day'
import { courseHandicap } from '@/lib/rules/handicap/course-handicap'
import { playingHandicap } from '@/lib/rules/handicap/playing-handicap'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult } from '@/lib/rules/standings'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { anyDay, pairsDay, singlesDay } from './days'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

const permutation = (count: number) =>
  fc.shuffledSubarray(
    Array.from({ length: count }, (_, at) => at + 1),
    { minLength: count, maxLength: count },
  )
const handicap = fc.integer({ min: -20, max: 72 })
const RUNS = { numRuns: 500 }

const holesWith = (indexes: readonly number[]) => indexes.map((strokeIndex) => ({ strokeIndex }))
const total = (figures: readonly number[]) => figures.reduce((sum, one) => sum + one, 0)

describe('strokes', () => {
  test('over eighteen holes, or nine, add up to the handicap', () => {
    fc.assert(
      fc.property(handicap, fc.oneof(permutation(18), permutation(9)), (given, indexes) => {
        expect(total(strokesOnHoles(given, holesWith(indexes)))).toBe(given)
      }),
      RUNS,
    )
  })

  test('differ by at most one between holes, and never favour the easier hole', () => {
    fc.assert(
      fc.property(handicap, permutation(18), (given, indexes) => {
        const strokes = strokesOnHoles(given, holesWith(indexes))
        expect(Math.max(...strokes) - Math.min(...strokes)).toBeLessThanOrEqual(1)
        const hardestFirst = indexes.map((_, at) => strokes[indexes.indexOf(at + 1)]!)
        expect(hardestFirst).toEqual([...hardestFirst].sort((a, b) => b - a))
      }),
      RUNS,
    )
  })

  test('one more stroke of handicap is one more stroke on one hole', () => {
    fc.assert(
      fc.property(handicap, permutation(18), (given, indexes) => {
        const now = strokesOnHoles(given, holesWith(indexes))
        const more = strokesOnHoles(given + 1, holesWith(indexes)).map((one, at) => one - now[at]!)
        expect([...more].sort()).toEqual([...Array.from({ length: 17 }, () => 0), 1])
      }),
      RUNS,
    )
  })
})

describe('handicaps', () => {
  const tee = fc.record({
    courseRatingTenths: fc.integer({ min: 600, max: 780 }),
    slopeRating: fc.integer({ min: 55, max: 155 }),
    holes: fc.constant(
      Array.from({ length: 18 }, (_, at) => ({ hole: at + 1, par: 4, strokeIndex: at + 1 })) as Tee['holes'],
    ),
  })

  test('a higher index is never a lower handicap', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -100, max: 539 }),
        tee,
        fc.integer({ min: 0, max: 100 }),
        (index, rated, percent) => {
          const [low, high] = [index, index + 1].map((one) =>
            playingHandicap(courseHandicap(one, rated, '2024'), percent, '2024'),
          )
          expect(high).toBeGreaterThanOrEqual(low!)
        },
      ),
      RUNS,
    )
  })

  test('are whole numbers and never minus nought', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -100, max: 540 }),
        tee,
        fc.integer({ min: 0, max: 100 }),
        (index, rated, percent) => {
          const course = courseHandicap(index, rated, '2024')
          for (const figure of [course.rounded, playingHandicap(course, percent, '2024')]) {
            expect(Number.isInteger(figure) && !Object.is(figure, -0)).toBe(true)
          }
        },
      ),
      RUNS,
    )
  })
})

/** Places and scores by competition and entrant: what does not depend on the order things were written in. */
function gist(results: readonly CompetitionResult[]) {
  return results.map((result) => ({
    competition: result.competition,
    standings: result.standings.map(({ entrant, place, tied, score, noPlace, handicaps, tieBroken }) => ({
      entrant,
      place,
      tied,
      score,
      noPlace,
      handicaps: Object.entries(handicaps).sort(),
      tieBroken,
    })),
    matches: result.matches,
  }))
}

const shuffledDay = (source: fc.Arbitrary<Day>) =>
  source.chain((day) => {
    const mix = <T>(list: readonly T[]) =>
      fc.shuffledSubarray([...list], { minLength: list.length, maxLength: list.length })
    return fc
      .tuple(mix(day.players), mix(day.cards), mix(day.sides), mix(day.tees))
      .map(([players, cards, sides, tees]) => ({ day, mixed: { ...day, players, cards, sides, tees } }))
  })

describe('places', () => {
  test('do not depend on the order of players, cards, sides or tees', () => {
    fc.assert(
      fc.property(fc.oneof(shuffledDay(singlesDay), shuffledDay(pairsDay)), ({ day, mixed }) => {
        expect(gist(scoreDay(mixed))).toEqual(gist(scoreDay(day)))
      }),
      RUNS,
    )
  })

  test('are an order with equals: each place is one more than the number ahead, and level ones say so', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        for (const { standings } of scoreDay(day)) {
          const placed = standings.flatMap(({ place }) => (place === null ? [] : [place]))
          expect(placed).toEqual([...placed].sort((a, b) => a - b))
          for (const standing of standings.filter((one) => one.place !== null)) {
            expect(standing.place).toBe(1 + placed.filter((place) => place < standing.place!).length)
            expect(standing.tied).toBe(placed.filter((place) => place === standing.place).length > 1)
          }
          const firstWithout = standings.findIndex((one) => one.place === null)
          expect(
            standings.slice(firstWithout < 0 ? standings.length : firstWithout).every((one) => one.place === null),
          ).toBe(true)
        }
      }),
      RUNS,
    )
  })

  test('follow the score once the day is closed', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        for (const { standings, better } of scoreDay({ ...day, closed: true })) {
          const scores = standings.flatMap(({ score }) => (score === null ? [] : [score]))
          expect(scores).toEqual([...scores].sort((a, b) => (better === 'high' ? b - a : a - b)))
        }
      }),
      RUNS,
    )
  })

  test('a broken tie names a figure that differs and favours the one above', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        for (const { standings } of scoreDay(day)) {
          for (const { entrant, tieBroken } of standings) {
            if (!tieBroken) continue
            const above = standings.findIndex((one) => one.entrant === entrant)
            const below = standings.findIndex((one) => one.entrant === tieBroken.against)
            expect(above).toBeLessThan(below)
            expect(standings[above]!.score).toBe(standings[below]!.score)
            const last = tieBroken.figures.at(-1)!
            expect(last.mine).not.toBe(last.theirs)
            expect(tieBroken.figures.slice(0, -1).every((one) => one.mine === one.theirs)).toBe(true)
            expect(last.window).toBe(tieBroken.step)
          }
        }
      }),
      RUNS,
    )
  })
})

describe('cards still out on strokes', () => {
  test('are ranked by strokes against par over the holes played, on one tee', () => {
    fc.assert(
      fc.property(singlesDay, (mixed) => {
        const players = mixed.players.map((player) => ({ ...player, tee: mixed.tees[0]!.id }))
        const day = { ...mixed, players, closed: false }
        const medal = scoreDay(day).find((one) => one.competition === 'medal')!
        for (const standing of medal.standings.filter((one) => one.place !== null)) {
          const played = standing.holes.filter((hole) => hole.net !== null)
          expect(standing.holesPlayed).toBe(played.length)
          expect(standing.score).toBe(total(played.map((hole) => hole.net!)))
          expect(standing.againstLevel).toBe(total(played.map((hole) => hole.net! - hole.par)))
        }
        const level = medal.standings.flatMap(({ place, againstLevel }) => (place === null ? [] : [againstLevel!]))
        expect(level).toEqual([...level].sort((a, b) => a - b))
      }),
      RUNS,
    )
  })
})

/** The day with one stroke fewer, if there is one to lose, on one hole of one card. */
function oneStrokeBetter(day: Day, cardAt: number, holeAt: number): { better: Day; player: string } | null {
  const card = day.cards[cardAt % day.cards.length]!
  const hole = holeAt % card.scores.length
  const score = card.scores[hole] ?? null
  if (score === null || score === 1) return null
  const scores: HoleScore[] = card.scores.map((one, at) => (at === hole ? (one === 'x' ? 9 : Number(one) - 1) : one))
  const cards = day.cards.map((one) => (one === card ? { ...one, scores } : one))
  return { better: { ...day, cards }, player: card.player }
}

describe('a better gross score', () => {
  test('never earns less, and never costs its player a place', () => {
    fc.assert(
      fc.property(anyDay, fc.nat(), fc.nat(), (day, cardAt, holeAt) => {
        const change = oneStrokeBetter({ ...day, closed: true }, cardAt, holeAt)
        if (!change) return
        const before = scoreDay({ ...day, closed: true })
        for (const [at, after] of scoreDay(change.better).entries()) {
          const mine = (result: CompetitionResult) =>
            result.standings.find((one) => one.players.includes(change.player))
          const [was, is] = [mine(before[at]!), mine(after)]
          if (!was || !is || was.score === null) continue
          expect(is.score).not.toBeNull()
          if (after.better === 'high') expect(is.score!).toBeGreaterThanOrEqual(was.score)
          else expect(is.score!).toBeLessThanOrEqual(was.score)
          if (is.score !== was.score) expect(is.place!).toBeLessThanOrEqual(was.place!)
        }
      }),
      RUNS,
    )
  })
})

describe('a match', () => {
  test('seen from the other side is its mirror', () => {
    fc.assert(
      fc.property(singlesDay, (day) => {
        const [seen, mirrored] = ['match', 'mirrored'].map(
          (id) => scoreDay(day).find((one) => one.competition === id)!.matches![0],
        )
        expect(mirrored!.winner).toBe(seen!.winner)
        expect(mirrored!.finished).toBe(seen!.finished)
        const swapped = (text: string) => text.replace(/^[AB](?= )/, (side) => (side === 'A' ? 'B' : 'A'))
        expect(mirrored!.result).toBe(swapped(seen!.result))
        expect([mirrored!.strokesA, mirrored!.strokesB]).toEqual([seen!.strokesB, seen!.strokesA])
        expect(mirrored!.holes.map((hole) => hole.up)).toEqual(
          seen!.holes.map((hole) => (hole.up === null ? null : 0 - hole.up)),
        )
      }),
      RUNS,
    )
  })
})

describe('the day file', () => {
  test('written and read back is the same day, with the same results', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const text = JSON.stringify(writeDayFile(day))
        const read = parseDayFile(JSON.parse(text))
        expect(read.ok ? [] : read.faults).toEqual([])
        if (!read.ok) return
        expect(JSON.parse(JSON.stringify(writeDayFile(read.value)))).toEqual(JSON.parse(text))
        expect(scoreDay(read.value)).toEqual(scoreDay(day))
      }),
      RUNS,
    )
  })

  test('every figure of a result is a whole number, and none is minus nought', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const walk = (value: unknown): void => {
          if (typeof value === 'number') expect(Number.isInteger(value) && !Object.is(value, -0)).toBe(true)
          else if (value !== null && typeof value === 'object') for (const one of Object.values(value)) walk(one)
        }
        walk(scoreDay(day))
      }),
      { numRuns: 100 },
    )
  })
})
