// Matches of players and of sides hole by hole, from Rules of Golf 2023, Rules 3.2a and 23.2a, and Rules of Handicapping,
// Appendix C: the lowest plays off nought, the others off the difference.
import type { Card, Competition, Day, Match, Player, Tee } from '@/lib/rules/day'
import { grossOn, parOf, teeOf } from './count'
import { compare, type Fraction, fraction, halfUp, minus, plus, times } from './exact'
import { formOf } from './forms'
import { courseHandicapOf, strokesDealt } from './handicaps'

export interface MatchLine {
  readonly id: string
  readonly winner: string | null
  readonly result: string
  readonly finished: boolean
  /** After each hole played, up to the one that settled it. */
  readonly up: readonly number[]
}

function players(day: Day, entrant: string): readonly string[] {
  return day.sides.find((side) => side.id === entrant)?.players ?? [entrant]
}

/** Net of a side on a hole, its scores by weight; endless when it has none, null while it may still have one. */
function net(competition: Competition, balls: readonly Ball[], at: number): number | null {
  const { weights } = formOf(competition.format)
  const scores = balls.map(({ card, tee, outOfIt }) => (outOfIt ? 'x' : grossOn(card, at, tee.holes[at]!)))
  const nets = scores
    .flatMap((score, ball) => (typeof score === 'number' ? [score - balls[ball]!.strokes[at]!] : []))
    .sort((x, y) => x - y)
  const counting = weights(at + 1)
  if (nets.length < counting.length) return scores.includes(null) ? null : Number.POSITIVE_INFINITY
  return counting.reduce((sum, weight, place) => sum + weight * nets[place]!, 0)
}

interface Ball {
  readonly id: string
  readonly card: Card | undefined
  readonly tee: Tee
  readonly strokes: readonly number[]
  /** A disqualified partner has no score on any hole. */
  readonly outOfIt: boolean
}

/** Allowance taken, nothing rounded, par of the tee included. */
function handicapInFull(day: Day, competition: Competition, player: Player, lowestPar: number): Fraction {
  const byHand = player.playingHandicap?.[competition.id] ?? player.playingHandicap?.['*']
  if (byHand !== undefined) return fraction(byHand)
  const tee = teeOf(day, player)
  const percent = (competition.allowance ?? formOf(competition.format).allowance) as number
  const course = courseHandicapOf(player.indexTenths, tee, day.edition)
  return plus(times(course, fraction(percent, 100)), fraction(parOf(tee) - lowestPar))
}

/** One ball for each side: its handicap from the shares of the partners, on the tee of the first. */
function sideInFull(day: Day, competition: Competition, side: readonly Player[], lowestPar: number): Fraction {
  const weights = (competition.allowance ?? formOf(competition.format).allowance) as readonly number[]
  const courses = side.map((one) => courseHandicapOf(one.indexTenths, teeOf(day, one), day.edition)).sort(compare)
  const shares = courses.map((course, at) => times(course, fraction(weights[at]!, 100)))
  return plus(shares.reduce(plus, fraction(0)), fraction(parOf(teeOf(day, side[0]!)) - lowestPar))
}

/** Both sides' balls with the strokes they have in this match: the lowest plays off nought. */
function ballsOf(day: Day, competition: Competition, sides: readonly (readonly Player[])[], ids: readonly string[]) {
  const { size, oneBall } = formOf(competition.format)
  const owners = oneBall ? sides.map((side) => [side[0]!]) : sides
  const lowestPar = Math.min(...owners.flat().map((one) => parOf(teeOf(day, one))))
  const exact = owners.map((side, s) =>
    side.map((one) =>
      oneBall ? sideInFull(day, competition, sides[s]!, lowestPar) : handicapInFull(day, competition, one, lowestPar),
    ),
  )
  // Singles: the difference of rounded handicaps. Sides: of handicaps in full, rounded last, from the 2024 edition on.
  const rounded = size === 1 || day.edition !== '2024'
  const figures = exact.map((side) => side.map((one) => (rounded ? fraction(halfUp(one)) : one)))
  const lowest = figures.flat().reduce((low, one) => (compare(one, low) < 0 ? one : low))
  return owners.map((side, s) =>
    side.map((one, at): Ball => {
      const tee = teeOf(day, one)
      const wanted = oneBall ? [ids[s]!, ...sides[s]!.map((player) => player.id)] : [one.id]
      const card = wanted.flatMap((id) => day.cards.find(({ player }) => player === id) ?? [])[0]
      const strokes = strokesDealt(halfUp(minus(figures[s]![at]!, lowest)), tee.holes)
      return { id: one.id, card, tee, strokes, outOfIt: size > 1 && !oneBall && card?.outcome === 'disqualified' }
    }),
  )
}

export function referenceMatch(day: Day, competition: Competition, match: Match): MatchLine {
  const player = (id: string) => day.players.find((one) => one.id === id)!
  const sides = [match.a, match.b].map((entrant) => players(day, entrant).map(player))
  const [sideA, sideB] = ballsOf(day, competition, sides, [match.a, match.b]) as [Ball[], Ball[]]
  const all = [...sideA, ...sideB]
  const count = all[0]!.tee.holes.length
  // By the hole they started from if the cards do not contradict one another, else by number.
  const said = [...new Set(all.flatMap((one) => one.card?.startHole ?? []))]
  const first = said.length === 1 ? said[0]! - 1 : 0
  const up: number[] = []
  const order = [...Array(count).keys()].map((step) => (first + step) % count)
  for (const at of order) {
    const a = net(competition, sideA, at)
    const b = net(competition, sideB, at)
    const result = holeResult(a, b, day.closed)
    if (result === null) continue
    up.push((up.at(-1) ?? 0) + result)
    if (Math.abs(up.at(-1)!) > count - up.length) break
  }
  const [outA, outB] = [out(sideA), out(sideB)]
  if (outA && outB) return { id: match.id, winner: null, result: 'no result', finished: true, up }
  if (outA) return { id: match.id, winner: match.b, result: outA, finished: true, up }
  if (outB) return { id: match.id, winner: match.a, result: outB, finished: true, up }
  const lead = Math.abs(up.at(-1) ?? 0)
  const left = count - up.length
  const finished = lead > left || left === 0
  const ahead = (up.at(-1) ?? 0) > 0
  const winner = finished && lead > 0 ? (ahead ? match.a : match.b) : null
  return { id: match.id, winner, result: inWords(lead, left, finished, ahead, up.length), finished, up }
}

/** Rule 3.2b: a side that withdraws concedes the match; Rule 1.3c: a disqualified one is out of it. */
function out(cards: readonly Ball[]): string | null {
  const outcomes = cards.map((one) => one.card?.outcome)
  if (!outcomes.every((one) => one === 'withdrawn' || one === 'disqualified')) return null
  return outcomes.includes('disqualified') ? 'disqualified' : 'conceded'
}

/** Fewer strokes win; on a closed day a side that never finished the hole loses it to one that did. */
function holeResult(a: number | null, b: number | null, closed: boolean): number | null {
  if (a === null || b === null) {
    const holed = [a, b].some((one) => one !== null && one !== Number.POSITIVE_INFINITY)
    return closed && holed ? (a === null ? -1 : 1) : null
  }
  return a < b ? 1 : a > b ? -1 : 0
}

function inWords(lead: number, left: number, finished: boolean, ahead: boolean, played: number): string {
  if (finished) return lead === 0 ? 'halved' : left === 0 ? `${lead} up` : `${lead}&${left}`
  if (played === 0) return 'not started'
  return lead === 0 ? `level after ${played}` : `${ahead ? 'A' : 'B'} ${lead} up after ${played}`
}
