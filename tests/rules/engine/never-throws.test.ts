// Days put together at random from every format and every term: whatever the day file lets through is scored, explained
// and written out again without a throw, and every place is a place.

import { describe, expect, it } from 'vitest'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import { wholeHandicap } from '@/lib/rules/exact/fraction'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import { divisionWorkings } from '@/lib/rules/working/division-working'
import { holeWorking } from '@/lib/rules/working/hole-working'
import { workingOfMatch } from '@/lib/rules/working/match-working'
import { RED, YELLOW } from './aldermoss'

function chance(seed: number) {
  let state = seed * 2654435761 + 1
  const next = () => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) + 374761393) | 0
    return (state >>> 8) % 1_000_003
  }
  return {
    below: (n: number) => next() % n,
    oneIn: (n: number) => next() % n === 0,
    pick: <T>(list: readonly T[]): T => list[next() % list.length]!,
  }
}
type Chance = ReturnType<typeof chance>

const NINE = { ...YELLOW, id: 'nine', courseRatingTenths: 345, holes: YELLOW.holes.slice(0, 9) }

function terms({ below, oneIn, pick }: Chance, ids: readonly string[]): Record<string, unknown> {
  const all: Record<string, unknown> = {
    allowance: below(151),
    ties: {
      steps: [
        { kind: 'last', holes: 1 + below(20) },
        pick([
          { kind: 'holes', from: 1 + below(9), to: 9 + below(10) },
          { kind: 'first-nine-last', holes: 1 + below(9) },
          { kind: 'higher-handicap' },
          { kind: 'play-off', order: [] },
        ]),
        pick([{ kind: 'lot', seed: 4 }, { kind: 'lower-handicap' }]),
      ],
      holesCount: 'as-played',
    },
    handicapLimit: { men: below(30) },
    countedHoles: Array.from({ length: 1 + below(18) }, (_, i) => i + 1),
    notPlayed: 'level',
    missing: pick([
      { kind: 'nothing' },
      { kind: 'ghost', overPar: below(3), courseHandicap: 20 },
      { kind: 'lowest-again' },
      { kind: 'drawn', seed: below(9) },
    ]),
    rounds: pick([[1], [1], [2], [1, 2], [2, 1], [3]]),
    namedHoles: [1, 18],
    dividedBy: 1 + below(9),
    matchDifference: 'rounded',
    ballLost: 'side-out',
    entrants: ids.filter(() => oneIn(2)),
    groups: [ids.slice(0, 3)],
    divisions: [{ id: 'd', name: 'D', handicapTo: below(40), gender: 'women' }],
    maximum: pick([{ kind: 'double-par' }, { kind: 'net-double-bogey' }, { kind: 'fixed', strokes: 3 + below(18) }]),
    extraHoleStrokes: pick(['none', 'as-on-the-card']),
    minimumDrives: below(6),
  }
  return Object.fromEntries(Object.entries(all).filter(([key]) => key === 'rounds' || oneIn(8)))
}

const ENDINGS = [
  {},
  { walkover: 'b' },
  { concededBy: 'a' },
  { concededHoles: [{ hole: 4, to: 'b' }] },
  {
    extraHoles: [
      { a: 4, b: 4 },
      { a: 'x', b: 5 },
    ],
  },
]

function randomDay(seed: number): unknown {
  const dice = chance(seed)
  const { below, oneIn, pick } = dice
  const ids = Array.from({ length: 1 + below(9) }, (_, i) => `p${i}`)
  const sides = Array.from({ length: below(4) }, (_, s) => ({
    id: `s${s}`,
    players: ids.filter((_, i) => i % 4 === s),
    ...(oneIn(3) ? { ballLostOn: 1 + below(18) } : {}),
  })).filter(({ players }) => players.length > 0)
  const cards = [...ids, ...sides.map(({ id }) => id)]
    .flatMap((player) => [1, 2].map((round) => ({ player, round })))
    .filter(({ round }) => (round === 1 ? !oneIn(5) : oneIn(3)))
    .map(({ player, round }) => ({
      player,
      ...(round === 2 ? { round, tee: 'nine' } : {}),
      ...(oneIn(9)
        ? { missed: true, scores: [] }
        : { scores: Array.from({ length: below(round === 2 ? 10 : 19) }, () => pick([3, 4, 5, 6, 'x', null])) }),
      ...(oneIn(9) ? { penaltyPoints: below(60), penaltyStrokes: { [1 + below(9)]: 2 } } : {}),
      ...(oneIn(4) ? { drives: Array.from({ length: below(10) }, () => pick([...ids, null])) } : {}),
      ...(oneIn(9) ? { outcome: pick(['withdrawn', 'disqualified', 'no-return']) } : {}),
      ...(oneIn(5) ? { startHole: 1 + below(9) } : {}),
    }))
  const competitions = Array.from({ length: 6 }, (_, c) => {
    const format = pick(FORMATS)
    const ends = format.side.to === 1 ? ids : sides.map(({ id }) => id)
    const matches =
      format.isMatch && ends.length > 1
        ? {
            matches: [
              { id: 'm', a: ends[0], b: ends[1], ...(oneIn(4) ? { abandoned: true } : {}), ...pick(ENDINGS) },
              { id: 'away', a: 'gone', b: ends[1], ...pick([{ walkover: 'b' }, { concededBy: 'b' }]) },
            ],
          }
        : {}
    return { id: `c${c}`, format: format.id, ...matches, ...terms(dice, ends) }
  })
  const players = ids.map((id) => ({
    id,
    name: id,
    handicapIndex: below(500) / 10,
    tee: pick(['yellow-men', 'red-women']),
  }))
  const day = {
    date: '2026-06-13',
    edition: pick(['2024', '2020', '2020-gbi']),
    tees: [YELLOW, RED, NINE],
    closed: oneIn(2),
  }
  const shell = writeDayFile({ ...day, players: [], sides: [], cards: [], competitions: [] }) as Record<string, unknown>
  const absent = [{ id: 'gone', name: 'Gone' }]
  return JSON.parse(JSON.stringify({ ...shell, players, sides, cards, competitions, absent }))
}

/** The same day without the competitions that were complained about, and its sides out of those they do not fit. */
function leftOver(json: unknown, tries = 3): unknown {
  const parsed = parseDayFile(json)
  if (parsed.ok || tries === 0) return json
  const file = json as { competitions: unknown[]; sides: object[] }
  const named = (list: string) => {
    const place = new RegExp(`^${list}\\[(\\d+)\\]`)
    return new Set(parsed.faults.map((fault) => Number(place.exec(fault.place)?.[1] ?? -1)))
  }
  const [bad, alone] = [named('competitions'), named('sides')]
  const competitions = file.competitions.filter((_, i) => !bad.has(i))
  const sides = file.sides.map((side, i) => (alone.has(i) ? { ...side, competitions: [] } : side))
  return leftOver({ ...file, competitions, sides }, tries - 1)
}

describe('a day the file lets through', () => {
  it('is scored without a throw', () => {
    let scored = 0
    let matches = 0
    for (let seed = 1; seed <= 1700; seed++) {
      const parsed = parseDayFile(leftOver(randomDay(seed)))
      if (!parsed.ok) continue
      for (const result of scoreDay(parsed.value)) {
        scored++
        result.standings.forEach((one, i) => {
          if (one.place !== null && !(one.place >= 1 && one.place <= i + 1))
            throw new Error(`seed ${seed}: place ${one.place}`)
          if (one.score !== null && !Number.isSafeInteger(one.score))
            throw new Error(`seed ${seed}: score ${one.score}`)
        })
        const first = result.standings[0]
        if (first?.holes[0] !== undefined)
          holeWorking(parsed.value, result.competition, first.entrant, first.holes[0].hole)
        if (first !== undefined && first.holes.length > 18)
          holeWorking(parsed.value, result.competition, first.entrant, 18)
        const competition = parsed.value.competitions.find((one) => one.id === result.competition)!
        divisionWorkings(parsed.value, competition)
        for (const match of result.matches ?? []) {
          for (const { hole } of match.holes.slice(0, 2)) workingOfMatch(parsed.value, match, hole, competition)
          const working = workingOfMatch(parsed.value, match, null, competition)
          // Given because somebody is not in the day: there is no card to work from, and the board says no strokes.
          if (working === null) {
            expect(match.strokes).toEqual({})
            continue
          }
          const strokes = working.strokes.filter((step) => step.label !== 'Strokes').map(({ figure }) => figure)
          if (strokes.length > 0 && strokes.join() !== Object.values(match.strokes).map(wholeHandicap).join())
            throw new Error(`seed ${seed}: the strokes of ${match.id} are worked out as ${strokes.join()}`)
          matches++
        }
      }
      expect(parseDayFile(JSON.parse(JSON.stringify(writeDayFile(parsed.value))))).toEqual(parsed)
    }
    expect(scored).toBeGreaterThan(2500)
    expect(matches).toBeGreaterThan(50)
  })
})
