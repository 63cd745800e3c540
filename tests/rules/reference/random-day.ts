// Days nobody would plan, from a seed: mixed tees of different par, plus players, holes without a score, no returns,
// rulings, guests, short sides, a second round, and cards that shadow one another so that ties are common. The same seed
// is the same day for ever.
import type { Card, CardOutcome, Competition, Day, Hole, HoleScore, Match, Player, Side, Tee } from '@/lib/rules/day'
import { type Chance, chanceFrom } from './chance'
import { formOf } from './forms'
import { randomTeams, randomTerms, tieRule } from './random-terms'

function tee(chance: Chance, id: string, pars: readonly number[], first: number): Tee {
  const count = pars.length
  // Nine holes keep the odd indexes of the whole card, or are numbered afresh.
  const kept = count === 9 && chance.oneIn(2)
  const indexes = chance.shuffled(pars.map((_, at) => (kept ? at * 2 + 1 : at + 1)))
  const holes: Hole[] = pars.map((par, at) => ({ hole: first + at, par, strokeIndex: indexes[at]! }))
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
  const first = count === 9 && chance.oneIn(6) ? 10 : 1
  return [tee(chance, 'yellow', pars, first), tee(chance, 'red', otherPars, first)]
}

const ABOUT_PAR = [-2, -1, -1, 0, 0, 0, 0, 1, 1, 1, 2, 3, 5]

export function scoresLike(chance: Chance, own: Tee, indexTenths: number, blobs: number): HoleScore[] {
  const extra = Math.floor(indexTenths / 180)
  return own.holes.map((hole) => {
    if (blobs > 0 && chance.oneIn(blobs)) return 'x'
    return Math.max(1, hole.par + extra + chance.pick(ABOUT_PAR))
  })
}

function outcome(chance: Chance): CardOutcome | undefined {
  return chance.oneIn(25) ? chance.pick(['no-return', 'disqualified', 'withdrawn'] as const) : undefined
}

export interface Wanted {
  readonly competitions: readonly Omit<Competition, 'ties'>[]
  /** Players in a side; 1 when everybody stands alone. */
  readonly sideSize: number
  /** Closed or in play, where it is not left to chance. */
  readonly closed?: boolean
  /** As many players as that; some when absent. */
  readonly players?: number
  /** Sides may lack a player; they are then named for the competitions. */
  readonly shortSides?: boolean
  /** The rarer terms too, whatever the format takes, and now and then a second round. */
  readonly everything?: boolean
  /** What is rare among them is usual: groups of a game, two rounds, sides short of a player and who stands for them. */
  readonly often?: boolean
}

export function randomDay(seed: number, wanted: Wanted): Day {
  const chance = chanceFrom(seed)
  const { sideSize } = wanted
  const everything = wanted.everything === true
  const count = chance.oneIn(everything ? 5 : 3) ? 18 : 9
  const own = tees(chance, count)
  const many =
    wanted.players ??
    (sideSize === 1 ? chance.between(2, everything ? 4 : 5) : sideSize * (everything ? 2 : chance.between(2, 3)))
  const rounds = everything && chance.oneIn(wanted.often ? 2 : 10) ? 2 : 1
  const blobs = chance.pick([0, 0, 7, 20])
  const players: Player[] = []
  const cards: Card[] = []
  for (let at = 0; at < many; at += 1) {
    const shadow = at > 0 && chance.oneIn(3) ? chance.between(0, at - 1) : null
    const index =
      shadow === null ? chance.pick([chance.between(-60, 20), chance.between(0, 540)]) : players[shadow]!.indexTenths
    const teeOf = shadow === null ? chance.pick(own) : own.find((one) => one.id === players[shadow]!.tee)!
    const hand = chance.oneIn(15) ? { playingHandicap: { '*': chance.between(-6, 40) } } : {}
    const kind = everything ? { guest: chance.oneIn(3), groups: chance.oneIn(2) ? ['seniors'] : [] } : {}
    const id = `p${at + 1}`
    players.push({ id, name: `Player ${at + 1}`, indexTenths: index, tee: teeOf.id, ...hand, ...kind })
    // Now and then somebody who never came.
    if (everything && chance.oneIn(30)) continue
    const like = shadow === null ? undefined : cards.find(({ player }) => player === players[shadow]!.id)
    cards.push(cardOf(chance, id, teeOf, index, like, blobs))
  }
  const numbers = own[0]!.holes.map(({ hole }) => hole)
  const sides = sidesOf(chance, wanted, players, numbers)
  const second = rounds === 2 ? secondRound(chance, cards, players, own) : []
  if (everything && sideSize > 1) for (const side of sides) cards.push(...ownCardOf(chance, side, wanted, players, own))
  const day = {
    date: '2026-06-13',
    // Mostly the rules in force; now and then an old day counted again.
    edition: chance.oneIn(4) ? chance.pick(['2020', '2020-gbi']) : '2024',
    tees: own,
    players: chance.shuffled(players),
    sides: chance.shuffled(sides),
    cards: chance.shuffled([...(everything ? withStarts(chance, cards, sides, numbers) : cards), ...second]),
    closed: wanted.closed ?? (everything ? !chance.oneIn(4) : true),
  }
  return { ...day, ...competitionsOf(chance, day, wanted, rounds) }
}

function cardOf(chance: Chance, player: string, own: Tee, index: number, like: Card | undefined, blobs: number): Card {
  const count = own.holes.length
  const copied = like ? [...like.scores] : null
  // A shadow plays the same strokes, sometimes with two holes changed about: level, or parted by a window only.
  if (copied && chance.oneIn(2)) {
    const [one, two] = [chance.between(0, count - 1), chance.between(0, count - 1)]
    ;[copied[one], copied[two]] = [copied[two]!, copied[one]!]
  }
  const scores = copied ?? scoresLike(chance, own, index, blobs)
  if (chance.oneIn(12)) for (let at = chance.between(1, count); at < count; at += 1) scores[at] = null
  const ruled = outcome(chance)
  const hole = () => own.holes[chance.between(0, count - 1)]!.hole
  return {
    player,
    scores,
    ...(ruled ? { outcome: ruled } : {}),
    ...(chance.oneIn(10) ? { penaltyStrokes: { [hole()]: chance.between(1, 2) } } : {}),
    ...(chance.oneIn(12) ? { penaltyPoints: chance.between(1, 4) } : {}),
    ...(chance.oneIn(3) ? { startHole: hole() } : {}),
  }
}

/** The same players once more: other scores, now and then another tee, another figure, or no card at all. */
function secondRound(chance: Chance, first: readonly Card[], players: readonly Player[], own: readonly Tee[]): Card[] {
  return players.flatMap((player) => {
    if (chance.oneIn(20)) return []
    const moved = chance.oneIn(4) ? chance.pick(own) : null
    const teeOf = moved ?? own.find((one) => one.id === player.tee)!
    const like = chance.oneIn(3) ? first.find((card) => card.player === player.id) : undefined
    return {
      ...cardOf(chance, player.id, teeOf, player.indexTenths, like, 12),
      round: 2,
      ...(moved ? { tee: moved.id } : {}),
      ...(chance.oneIn(3) ? { indexTenths: chance.between(-20, 300) } : {}),
      ...(chance.oneIn(15) ? { playingHandicap: chance.between(-4, 30) } : {}),
    }
  })
}

/** Groups go off together: a side, or everybody, on one hole; now and then the cards say different ones. */
function withStarts(
  chance: Chance,
  cards: readonly Card[],
  sides: readonly Side[],
  numbers: readonly number[],
): Card[] {
  if (chance.oneIn(3)) return [...cards]
  const whole = chance.pick(numbers)
  const start = new Map(sides.map((side) => [side.id, chance.oneIn(2) ? chance.pick(numbers) : whole]))
  return cards.map((card) => {
    const side = sides.find(({ id, players }) => id === card.player || players.includes(card.player))
    return { ...card, startHole: side ? start.get(side.id)! : whole }
  })
}

function sidesOf(chance: Chance, wanted: Wanted, players: readonly Player[], numbers: readonly number[]): Side[] {
  const { sideSize, competitions, shortSides } = wanted
  const sides: Side[] = []
  for (let at = 0; sideSize > 1 && at < players.length; at += sideSize) {
    const short =
      shortSides === true && (wanted.often || chance.oneIn(3)) ? chance.between(1, Math.max(1, sideSize - 2)) : 0
    const inIt = players.slice(at, at + sideSize - short).map((one) => one.id)
    const named = shortSides === true ? { competitions: competitions.map(({ id }) => id) } : {}
    const lost = wanted.everything === true && chance.oneIn(4) ? { ballLostOn: chance.pick(numbers) } : {}
    sides.push({ id: `s${sides.length + 1}`, players: inIt, ...named, ...lost })
  }
  return sides
}

/** A side that plays one ball may have a card of its own, which says whose drive was taken. */
function ownCardOf(
  chance: Chance,
  side: Side,
  wanted: Wanted,
  players: readonly Player[],
  own: readonly Tee[],
): Card[] {
  const isOneBall = wanted.competitions.some(({ format }) => formOf(format).oneBall)
  if (!isOneBall || chance.oneIn(3)) return []
  const first = players.find(({ id }) => id === side.players[0])!
  const teeOf = own.find(({ id }) => id === first.tee)!
  const card = cardOf(chance, side.id, teeOf, first.indexTenths, undefined, 15)
  const drives = card.scores.map(() => (chance.oneIn(6) ? null : chance.pick(side.players)))
  return [{ ...card, drives, ...(chance.oneIn(15) ? { playingHandicap: chance.between(0, 20) } : {}) }]
}

function competitionsOf(
  chance: Chance,
  day: Omit<Day, 'competitions'>,
  { competitions, everything, sideSize, often = false }: Wanted,
  rounds: number,
): Pick<Day, 'competitions' | 'teams'> {
  const players = day.players.map(({ id }) => id)
  const entrants = sideSize === 1 ? players : day.sides.map(({ id }) => id)
  if (everything !== true) {
    const withTies = competitions.map((one) => {
      const ties = tieRule(chance, entrants)
      return { ...one, ...(ties ? { ties } : {}) }
    })
    return { competitions: withTies }
  }
  const numbers = day.tees[0]!.holes.map(({ hole }) => hole)
  const tees = day.tees.map(({ id }) => id)
  const around = { numbers, entrants, players, tees, closed: day.closed, rounds, often }
  const all = competitions.map((one) => {
    const matches = one.matches && randomMatches(chance, entrants)
    return randomTerms(chance, matches ? { ...one, matches } : one, around)
  })
  const sides = sideSize === 1 ? players.map((id) => [id]) : day.sides.map((side) => side.players)
  return { competitions: all, ...(all.some((one) => one.matches) ? { teams: randomTeams(chance, sides) } : {}) }
}

/** Everybody against the next one, in a random order. */
function randomMatches(chance: Chance, entrants: readonly string[]): Match[] {
  const order = chance.shuffled(entrants)
  return order.flatMap((a, at) => (at % 2 === 1 ? [{ id: `m${at}`, a: order[at - 1]!, b: a }] : []))
}
