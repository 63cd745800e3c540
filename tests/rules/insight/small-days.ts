// Small days near their end, from a seed: two or three cards close to each other, a few holes open, every kind of trouble
// a card can have. The same seed is the same day for ever.
import type { Card, Competition, Day, Hole, HoleScore, Player, Side, Tee, TieRule } from '@/lib/rules/day'

export interface Dice {
  between(low: number, high: number): number
  oneIn(times: number): boolean
  pick<T>(from: readonly T[]): T
}

export function diceFrom(seed: number): Dice {
  let state = Math.imul(seed, 2654435761) >>> 0
  const between = (low: number, high: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return low + ((state >>> 10) % (high - low + 1))
  }
  return {
    between,
    oneIn: (times) => between(1, times) === 1,
    pick: (from) => from[between(0, from.length - 1)]!,
  }
}

function teeOf(dice: Dice, id: string, pars: readonly number[]): Tee {
  const indexes = pars.map((_, at) => at + 1).sort(() => (dice.oneIn(2) ? 1 : -1))
  const holes = pars.map((par, at): Hole => ({ hole: at + 1, par, strokeIndex: indexes[at]! }))
  const par = pars.reduce((sum, one) => sum + one, 0)
  return { id, name: id, gender: 'men', courseRatingTenths: par * 10, slopeRating: 113, holes }
}

const WINDOWS = [3, 2, 1].map((holes) => ({ kind: 'last', holes }) as const)

function tiesOf(dice: Dice): { ties?: TieRule } {
  if (dice.oneIn(3)) return {}
  const after = dice.pick([
    [],
    [{ kind: 'lower-handicap' } as const],
    [{ kind: 'lot', seed: 7 } as const],
    [{ kind: 'holes', from: 2, to: 5 } as const],
  ])
  return {
    ties: {
      steps: dice.oneIn(6) ? [] : [...WINDOWS, ...after],
      holesCount: dice.pick(['by-number', 'by-number', 'as-played']),
      fractions: dice.pick(['kept', 'rounded']),
    },
  }
}

/** `most` holes open at the most; now and then one player has not begun, and then only three holes count. */
export function smallDay(seed: number, competition: Competition, sideSize: number, most: number): Day {
  const dice = diceFrom(seed)
  const count = dice.oneIn(5) ? 18 : 9
  const pars = Array.from({ length: count }, () => dice.pick([3, 4, 4, 5]))
  const longer = pars.map((par, at) => (at === 0 && par < 5 ? par + 1 : par))
  const tees = [teeOf(dice, 'yellow', pars), teeOf(dice, 'red', dice.oneIn(3) ? longer : pars)]
  const many = sideSize === 1 ? dice.between(2, 3) : 4
  const players: Player[] = []
  const cards: Card[] = []
  for (let at = 0; at < many; at++) {
    const id = `p${at + 1}`
    const indexTenths = dice.pick([-20, 0, 40, 90, 180, 200])
    const tee = dice.pick(tees)
    players.push({ id, name: id, indexTenths, tee: tee.id })
    const like = at > 0 && dice.oneIn(3) ? [...cards[at - 1]!.scores] : null
    const scores = (like ??
      tee.holes.map(({ par }): HoleScore => {
        if (dice.oneIn(25)) return 'x'
        return Math.max(1, par + (indexTenths > 100 ? 1 : 0) + dice.pick([-1, 0, 0, 0, 1, 1]))
      })) as HoleScore[]
    cards.push({
      player: id,
      scores,
      ...(dice.oneIn(20) ? { outcome: dice.pick(['withdrawn', 'no-return', 'disqualified'] as const) } : {}),
      ...(dice.oneIn(10) ? { penaltyStrokes: { [dice.between(1, count)]: 1 } } : {}),
      ...(dice.oneIn(12) ? { penaltyPoints: 1 } : {}),
      ...(dice.oneIn(3) ? { startHole: dice.between(1, count) } : {}),
    })
  }
  const notBegun = dice.oneIn(5) ? dice.between(0, many - 1) : null
  const counted = [3, 6, count]
  for (const [at, card] of cards.entries()) {
    if (at !== notBegun) continue
    cards[at] = { ...card, scores: card.scores.map(() => null) }
  }
  const late = dice.oneIn(2)
  if (notBegun === null) {
    for (let n = dice.between(1, most); n > 0; n--) {
      const hole = late ? count - dice.between(1, 4) : dice.between(0, count - 1)
      ;(cards[dice.between(0, many - 1)]!.scores as HoleScore[])[hole] = null
    }
  }
  const sides: Side[] = []
  for (let at = 0; sideSize > 1 && at < many; at += sideSize) {
    sides.push({ id: `s${sides.length + 1}`, players: players.slice(at, at + sideSize).map(({ id }) => id) })
  }
  return {
    date: '2026-06-13',
    edition: '2024',
    tees,
    players,
    sides,
    cards,
    competitions: [
      {
        ...competition,
        ...tiesOf(dice),
        ...(notBegun === null || competition.matches ? {} : { countedHoles: counted }),
      },
    ],
    closed: false,
  }
}
