// Days nobody would plan, from a seed: mixed tees of different par, plus players, holes without a score, no returns,
// rulings, and cards that shadow one another so that ties are common. The same seed is the same day for ever.
import type {
  Card,
  CardOutcome,
  Competition,
  Day,
  Hole,
  HoleScore,
  Player,
  Side,
  Tee,
  TieRule,
  TieStep,
} from '@/lib/rules/day'

export interface Chance {
  /** A whole number from low to high, both included. */
  between(low: number, high: number): number
  /** True once in so many times. */
  oneIn(times: number): boolean
  pick<T>(from: readonly T[]): T
  shuffled<T>(from: readonly T[]): T[]
}

export function chanceFrom(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  const between = (low: number, high: number) => low + Math.floor(next() * (high - low + 1))
  return {
    between,
    oneIn: (times) => between(1, times) === 1,
    pick: (from) => from[between(0, from.length - 1)]!,
    shuffled: (from) => {
      const left = [...from]
      const out: (typeof left)[number][] = []
      while (left.length > 0) out.push(...left.splice(between(0, left.length - 1), 1))
      return out
    },
  }
}

function tee(chance: Chance, id: string, count: number, pars: readonly number[]): Tee {
  // Nine holes keep the odd indexes of the whole card, or are numbered afresh.
  const kept = count === 9 && chance.oneIn(2)
  const indexes = chance.shuffled(pars.map((_, at) => (kept ? at * 2 + 1 : at + 1)))
  const holes: Hole[] = pars.map((par, at) => ({ hole: at + 1, par, strokeIndex: indexes[at]! }))
  const par = pars.reduce((sum, one) => sum + one, 0)
  return {
    id,
    name: id,
    gender: chance.pick(['men', 'women'] as const),
    // Rarely a course far from its par; slope 113 often, where exact halves live.
    courseRatingTenths: par * 10 + chance.between(-45, 45),
    slopeRating: chance.oneIn(3) ? 113 : chance.between(55, 155),
    holes,
  }
}

function tees(chance: Chance, count: number): Tee[] {
  const pars = Array.from({ length: count }, () => chance.pick([3, 4, 4, 4, 5]))
  const otherPars = pars.map((par) => (par < 5 && chance.oneIn(9) ? par + 1 : par))
  return [tee(chance, 'yellow', count, pars), tee(chance, 'red', count, otherPars)]
}

export function scoresLike(chance: Chance, own: Tee, indexTenths: number, blobs: number): HoleScore[] {
  const extra = indexTenths / 180
  return own.holes.map((hole) => {
    if (blobs > 0 && chance.oneIn(blobs)) return 'x'
    return Math.max(1, hole.par + Math.floor(extra) + chance.pick([-2, -1, -1, 0, 0, 0, 0, 1, 1, 1, 2, 3, 5]))
  })
}

function tieRule(chance: Chance): TieRule | undefined {
  if (chance.oneIn(3)) return undefined
  const windows: TieStep[] = [9, 6, 3, 1].map((holes) => ({ kind: 'last', holes }))
  const firstNine: TieStep[] = [6, 3, 1].map((holes) => ({ kind: 'first-nine-last', holes }))
  const last: TieStep[] = chance.pick([[], [], [{ kind: 'lower-handicap' }], [{ kind: 'higher-handicap' }]])
  return {
    steps: [...chance.pick([windows, [...windows, ...firstNine], windows.slice(0, 1), []]), ...last],
    holesCount: chance.pick(['by-number', 'as-played']),
    fractions: chance.pick(['kept', 'rounded']),
  }
}

function outcome(chance: Chance): CardOutcome | undefined {
  return chance.oneIn(25) ? chance.pick(['no-return', 'disqualified', 'withdrawn'] as const) : undefined
}

export interface Wanted {
  readonly competitions: readonly Omit<Competition, 'ties'>[]
  /** Players in a side; 1 when everybody stands alone. */
  readonly sideSize: number
  readonly closed?: boolean
  /** As many players as that; some when absent. */
  readonly players?: number
  /** Sides may lack a player; they are then named for the competitions. */
  readonly shortSides?: boolean
}

export function randomDay(seed: number, wanted: Wanted): Day {
  const chance = chanceFrom(seed)
  const count = chance.oneIn(3) ? 18 : 9
  const own = tees(chance, count)
  const some = wanted.sideSize === 1 ? chance.between(2, 5) : wanted.sideSize * chance.between(2, 3)
  const many = wanted.players ?? some
  const blobs = chance.pick([0, 0, 7, 20])
  const players: Player[] = []
  const cards: Card[] = []
  for (let at = 0; at < many; at += 1) {
    const shadow = at > 0 && chance.oneIn(3) ? chance.between(0, at - 1) : null
    const index =
      shadow === null ? chance.pick([chance.between(-60, 20), chance.between(0, 540)]) : players[shadow]!.indexTenths
    const teeOf = shadow === null ? chance.pick(own) : own.find((one) => one.id === players[shadow]!.tee)!
    const hand = chance.oneIn(15) ? { playingHandicap: { '*': chance.between(-6, 40) } } : {}
    players.push({ id: `p${at + 1}`, name: `Player ${at + 1}`, indexTenths: index, tee: teeOf.id, ...hand })
    const copied = shadow === null ? null : [...cards[shadow]!.scores]
    // A shadow plays the same strokes, sometimes with two holes changed about: level, or parted by a window only.
    if (copied && chance.oneIn(2)) {
      const [one, two] = [chance.between(0, count - 1), chance.between(0, count - 1)]
      ;[copied[one], copied[two]] = [copied[two]!, copied[one]!]
    }
    const scores = copied ?? scoresLike(chance, teeOf, index, blobs)
    if (chance.oneIn(12)) for (let hole = chance.between(1, count); hole < count; hole += 1) scores[hole] = null
    const ruled = outcome(chance)
    cards.push({
      player: `p${at + 1}`,
      scores,
      ...(ruled ? { outcome: ruled } : {}),
      ...(chance.oneIn(10) ? { penaltyStrokes: { [chance.between(1, count)]: chance.between(1, 2) } } : {}),
      ...(chance.oneIn(12) ? { penaltyPoints: chance.between(1, 4) } : {}),
      ...(chance.oneIn(3) ? { startHole: chance.between(1, count) } : {}),
    })
  }
  const sides: Side[] = []
  for (let at = 0; wanted.sideSize > 1 && at < many; at += wanted.sideSize) {
    const short = wanted.shortSides === true && chance.oneIn(4) ? 1 : 0
    const inIt = players.slice(at, at + wanted.sideSize - short).map((one) => one.id)
    const named = wanted.shortSides === true ? { competitions: wanted.competitions.map(({ id }) => id) } : {}
    sides.push({ id: `s${sides.length + 1}`, players: inIt, ...named })
  }
  const competitions = wanted.competitions.map((one) => {
    const ties = tieRule(chance)
    return { ...one, ...(ties ? { ties } : {}) }
  })
  return {
    date: '2026-06-13',
    // Mostly the rules in force; now and then an old day counted again.
    edition: chance.oneIn(4) ? chance.pick(['2020', '2020-gbi']) : '2024',
    tees: own,
    players: chance.shuffled(players),
    sides: chance.shuffled(sides),
    cards: chance.shuffled(cards),
    competitions,
    closed: wanted.closed ?? true,
  }
}
