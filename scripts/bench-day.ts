// The day every bench counts: 144 invented cards on two tees of one course, singles and pairs, the same on every machine.
import type { Card, Day, Hole, HoleScore, Player, Side, Tee } from '../lib/rules/day'

const PAR = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const INDEX_MEN = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const INDEX_WOMEN = [7, 3, 15, 9, 17, 1, 11, 13, 5, 12, 6, 16, 14, 2, 8, 10, 18, 4]
const OVER_PAR = [-1, 0, 0, 0, 1, 1, 1, 1, 2, 2, 3]

function holes(indexes: readonly number[], par13: number): Hole[] {
  return PAR.map((par, at) => ({ hole: at + 1, par: at === 12 ? par13 : par, strokeIndex: indexes[at]! }))
}

const TEES: readonly Tee[] = [
  {
    id: 'yellow',
    name: 'Yellow',
    gender: 'men',
    courseRatingTenths: 692,
    slopeRating: 125,
    holes: holes(INDEX_MEN, 4),
  },
  { id: 'red', name: 'Red', gender: 'women', courseRatingTenths: 709, slopeRating: 125, holes: holes(INDEX_WOMEN, 5) },
]

/** A number from 0 up to, but not including, `below`; the sequence is always the same. */
function sequence(): (below: number) => number {
  let state = 20260613
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return (state >>> 8) % below
  }
}

export function benchDay(cards = 144): Day {
  const next = sequence()
  const players: Player[] = []
  const written: Card[] = []
  const sides: Side[] = []
  for (let at = 0; at < cards; at += 1) {
    const id = `p${at + 1}`
    const tee = TEES[next(4) === 0 ? 1 : 0]!
    const indexTenths = 20 + next(300)
    players.push({ id, name: `Player ${at + 1}`, indexTenths, tee: tee.id })
    const scores = tee.holes.map((hole): HoleScore => {
      if (next(40) === 0) return 'x'
      const stroke = next(18) < Math.trunc(indexTenths / 20) ? 1 : 0
      return Math.max(1, hole.par + OVER_PAR[next(OVER_PAR.length)]! - 1 + stroke)
    })
    written.push({ player: id, scores })
    if (at % 2 === 1) sides.push({ id: `s${(at + 1) / 2}`, players: [`p${at}`, id] })
  }
  return {
    date: '2026-06-13',
    edition: '2024',
    tees: TEES,
    players,
    sides,
    cards: written,
    competitions: [
      { id: 'singles', format: 'stableford', allowance: 95 },
      { id: 'pairs', format: 'four-ball-stableford', allowance: 85 },
    ],
    closed: true,
  }
}
