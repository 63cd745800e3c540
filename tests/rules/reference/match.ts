// Matches of players and of sides hole by hole, from Rules of Golf 2023, Rules 3.2 and 23.2a, and Rules of Handicapping,
// Appendix C: the lowest plays off nought, the others off the difference. How a match ends: 3.2b, 1.3c, and the terms.
import type { Card, Competition, Day, Match, Player, Tee } from '@/lib/rules/day'
import { grossOn, handicapInFull, type Owner, ownerOf, ownerOfSide, type Round, roundOf } from './balls'
import { compare, fraction, halfUp, minus, plus } from './exact'
import { formOf } from './forms'
import { parOf, strokesDealt } from './handicaps'

export interface MatchLine {
  readonly id: string
  readonly winner: string | null
  readonly result: string
  readonly finished: boolean
  /** After each hole played, up to the one that settled it. */
  readonly up: readonly number[]
  /** Strokes of each ball. */
  readonly strokes: Readonly<Record<string, number>>
  readonly parts: readonly { name: string; winner: string | null; result: string; finished: boolean }[]
}

interface Ball {
  readonly id: string
  readonly card: Card | undefined
  readonly tee: Tee
  readonly received: number
  readonly strokes: readonly number[]
  /** A disqualified partner has no score on any hole. */
  readonly outOfIt: boolean
}

function playersOf(day: Day, entrant: string): readonly Player[] {
  const ids = day.sides.find((side) => side.id === entrant)?.players ?? [entrant]
  return ids.map((id) => day.players.find((one) => one.id === id)!)
}

/** Net of a side on a hole, its scores by weight; endless when it has none, null while it may still have one. */
function net(competition: Competition, balls: readonly Ball[], at: number): number | null {
  const scores = balls.map(({ card, tee, outOfIt }) => (outOfIt ? 'x' : grossOn(card, tee, at)))
  const nets = scores
    .flatMap((score, ball) => (typeof score === 'number' ? [score - balls[ball]!.strokes[at]!] : []))
    .sort((x, y) => x - y)
  const counting = formOf(competition.format).weights(at + 1)
  if (nets.length < counting.length) return scores.includes(null) ? null : Number.POSITIVE_INFINITY
  return counting.reduce((sum, weight, place) => sum + weight * nets[place]!, 0)
}

/** Both sides' balls with the strokes they have in this match. */
function ballsOf(round: Round, competition: Competition, ids: readonly string[]): Ball[][] {
  const { size, oneBall } = formOf(competition.format)
  const owners = ids.map((id): Owner[] => {
    const players = playersOf(round.day, id)
    return oneBall
      ? [ownerOfSide(round, id, players, competition.sideTee)]
      : players.map((player) => ownerOf(round, player))
  })
  const lowestPar = Math.min(...owners.flat().map(({ tee }) => parOf(tee)))
  // Singles: the difference of rounded handicaps. Sides: of handicaps in full, rounded last, from the 2024 edition on.
  const usual = size === 1 || round.day.edition !== '2024' ? 'rounded' : 'unrounded'
  const rounded = (competition.matchDifference ?? usual) === 'rounded'
  const figures = owners.map((side) =>
    side.map((owner) => {
      const { full, extra } = handicapInFull(round, competition, owner, lowestPar)
      return plus(rounded ? fraction(halfUp(full)) : full, fraction(extra))
    }),
  )
  const lowest = figures.flat().reduce((low, one) => (compare(one, low) < 0 ? one : low))
  return owners.map((side, s) =>
    side.map(({ id, tee, card }, at) => {
      const received = halfUp(minus(figures[s]![at]!, lowest))
      const outOfIt = size > 1 && !oneBall && card?.outcome === 'disqualified'
      return { id, card, tee, received, strokes: strokesDealt(received, tee.holes), outOfIt }
    }),
  )
}

interface Sides {
  readonly match: Match
  readonly competition: Competition
  readonly a: readonly Ball[]
  readonly b: readonly Ball[]
  /** Hole indexes in the order of play. */
  readonly order: readonly number[]
  readonly closed: boolean
}

interface Played {
  readonly up: readonly number[]
  readonly lead: number
  readonly result: string
  readonly finished: boolean
}

function play({ match, competition, a, b, order, closed }: Sides): Played {
  const up: number[] = []
  for (const at of order) {
    const { hole } = a[0]!.tee.holes[at]!
    const given = match.concededHoles?.find((one) => one.hole === hole)?.to
    const conceded = given === undefined ? null : given === 'a' ? 1 : -1
    const result = conceded ?? holeResult(net(competition, a, at), net(competition, b, at), closed)
    if (result === null) continue
    up.push((up.at(-1) ?? 0) + result)
    if (Math.abs(up.at(-1)!) > order.length - up.length) break
  }
  const lead = up.at(-1) ?? 0
  const left = order.length - up.length
  const finished = Math.abs(lead) > left || left === 0
  return { up, lead, finished, result: inWords(Math.abs(lead), left, finished, lead > 0, up.length) }
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

/** Who goes through when the match is over: +1 for a, −1 for b, 0 for nobody; and the word for it. */
function endOf(sides: Sides, round: Played): { winner: number; finished: boolean; result: string } {
  const { match, a, b } = sides
  const toward = (end: 'a' | 'b') => (end === 'a' ? 1 : -1)
  if (match.walkover) return { winner: toward(match.walkover), finished: true, result: 'walkover' }
  if (match.concededBy) return { winner: -toward(match.concededBy), finished: true, result: 'conceded' }
  const [outA, outB] = [out(a), out(b)]
  if (outA && outB) return { winner: 0, finished: true, result: 'no result' }
  if (outA || outB) return { winner: outA ? -1 : 1, finished: true, result: (outA ?? outB)! }
  const stopped = match.abandoned === true && !round.finished
  if (stopped) return { winner: Math.sign(round.lead), finished: true, result: `${round.result}, abandoned` }
  const extra = round.finished && round.lead === 0 ? onExtraHoles(sides) : null
  return extra ?? { winner: round.finished ? Math.sign(round.lead) : 0, finished: round.finished, result: round.result }
}

/** Rule 3.2b: a side that withdraws concedes the match; Rule 1.3c: a disqualified one is out of it. */
function out(balls: readonly Ball[]): string | null {
  const outcomes = balls.map((one) => one.card?.outcome)
  if (!outcomes.every((one) => one === 'withdrawn' || one === 'disqualified')) return null
  return outcomes.includes('disqualified') ? 'disqualified' : 'conceded'
}

const ENDINGS = ['th', 'st', 'nd', 'rd']

/** Hole by hole once more from where the match began, until one is won; better net scores are written as they are. */
function onExtraHoles({ match, competition, a, b, order }: Sides) {
  for (const [at, scores] of (match.extraHoles ?? []).entries()) {
    const hole = order[at % order.length]!
    const after = ([balls, score]: readonly [readonly Ball[], number | 'x']) => {
      if (score === 'x') return Number.POSITIVE_INFINITY
      const free = competition.extraHoleStrokes === 'none' || balls.length > 1
      return score - (free ? 0 : balls[0]!.strokes[hole]!)
    }
    const [netA, netB] = [after([a, scores.a]), after([b, scores.b])]
    if (netA === netB) continue
    const number = order.length + at + 1
    const ending = number > 10 && number < 14 ? 'th' : (ENDINGS[number % 10] ?? 'th')
    return { winner: netA < netB ? 1 : -1, finished: true, result: `at the ${number}${ending}` }
  }
  return null
}

export function referenceMatch(day: Day, competition: Competition, match: Match): MatchLine {
  const round = roundOf(day, competition.rounds?.at(-1) ?? 1)
  const [a, b] = ballsOf(round, competition, [match.a, match.b]) as [Ball[], Ball[]]
  const { holes } = a[0]!.tee
  // By the hole they started from if the cards do not contradict one another, else by number.
  const said = [...new Set([...a, ...b].flatMap((one) => one.card?.startHole ?? []))]
  const first = said.length === 1 ? holes.findIndex(({ hole }) => hole === said[0]) : 0
  const order = [...holes.keys()].map((step) => (first + step) % holes.length)
  const sides: Sides = { match, competition, a, b, order, closed: day.closed }
  const played = play(sides)
  const { winner, finished, result } = endOf(sides, played)
  const named = (who: number) => (who === 0 ? null : who > 0 ? match.a : match.b)
  const parts = (formOf(competition.format).parts ?? []).flatMap(({ name, from, to }) => {
    const inPart = order.filter((at) => holes[at]!.hole >= from && holes[at]!.hole <= to)
    // A round of nine has no other nine.
    if (inPart.length === 0) return []
    if (inPart.length === holes.length) return [{ name, winner: named(winner), result, finished }]
    return [{ name, ...partOf({ ...sides, order: inPart }, { winner, result }, named) }]
  })
  const strokes = Object.fromEntries([...a, ...b].map((ball) => [ball.id, ball.received]))
  return { id: match.id, winner: named(winner), result, finished, up: played.up, strokes, parts }
}

/**
 * A part that was won before the match was given up stands, the others go with it (3.2b). A walkover and a disqualification
 * (1.3c) take them all. Common practice, no source, as far as it is about parts.
 */
function partOf(sides: Sides, whole: { winner: number; result: string }, named: (who: number) => string | null) {
  const all = { winner: named(whole.winner), result: whole.result, finished: true }
  if (whole.result === 'walkover' || whole.result === 'disqualified') return all
  if (whole.result === 'conceded' || whole.result === 'no result') {
    const before = play({ ...sides, closed: false })
    if (!before.finished) return all
    return { winner: named(Math.sign(before.lead)), result: before.result, finished: true }
  }
  const { lead, result, finished } = play(sides)
  if (!finished && sides.match.abandoned)
    return { winner: named(Math.sign(lead)), result: `${result}, abandoned`, finished: true }
  return { winner: named(finished ? Math.sign(lead) : 0), result, finished }
}

/** One point for a match won, a half for one halved, counted in halves: only for a side that is all of one team. */
export function halfPointsOf(
  day: Day,
  competition: Competition,
  team: string,
  lines: readonly MatchLine[],
  matches: readonly Match[],
): number {
  const { players } = day.teams!.find(({ id }) => id === team)!
  const isOurs = (entrant: string) => playersOf(day, entrant).every(({ id }) => players.includes(id))
  return lines.reduce((sum, line, at) => {
    const [a, b] = [isOurs(matches[at]!.a), isOurs(matches[at]!.b)]
    if (a === b) return sum
    const own = a ? matches[at]!.a : matches[at]!.b
    const games = competition.partPoints === 'whole' || line.parts.length === 0 ? [line] : line.parts
    for (const { finished, result, winner } of games) {
      if (finished && result !== 'no result') sum += winner === null ? 1 : winner === own ? 2 : 0
    }
    return sum
  }, 0)
}
