// Singles and four-ball matches hole by hole, from Rules of Golf 2023, Rules 3.2a and 23.2a, and Rules of Handicapping,
// Appendix C: the lowest plays off nought, the others off the difference.
import type { Competition, Day, Match } from '@/lib/rules/day'
import { grossOn, type PlayerCard, playerCards } from './count'
import { strokesDealt } from './handicaps'

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

/** Net of a side's better ball; a ball without a score does not count; null until somebody has finished the hole. */
function net(cards: readonly PlayerCard[], strokes: ReadonlyMap<string, readonly number[]>, at: number) {
  const gross = cards.map((one) => ({ one, score: grossOn(one.card, at, one.tee.holes[at]!) }))
  const nets = gross.flatMap(({ one, score }) =>
    typeof score === 'number' ? [score - strokes.get(one.player.id)![at]!] : [],
  )
  if (nets.length > 0) return Math.min(...nets)
  return gross.some(({ score }) => score === null) ? null : Number.POSITIVE_INFINITY
}

export function referenceMatch(day: Day, competition: Competition, match: Match): MatchLine {
  const ids = [...players(day, match.a), ...players(day, match.b)]
  const all = playerCards(
    day,
    competition,
    ids.map((id) => day.players.find((player) => player.id === id)!),
  )
  const lowest = Math.min(...all.map((one) => one.handicap))
  const strokes = new Map(all.map((one) => [one.player.id, strokesDealt(one.handicap - lowest, one.tee.holes)]))
  const side = (entrant: string) => all.filter((one) => players(day, entrant).includes(one.player.id))
  const count = all[0]!.tee.holes.length
  // By the hole they started from if the cards do not contradict one another, else by number.
  const said = [...new Set(all.flatMap((one) => one.card?.startHole ?? []))]
  const first = said.length === 1 ? said[0]! - 1 : 0
  const up: number[] = []
  const order = [...Array(count).keys()].map((step) => (first + step) % count)
  for (const at of order) {
    const a = net(side(match.a), strokes, at)
    const b = net(side(match.b), strokes, at)
    const result = holeResult(a, b, day.closed)
    if (result === null) continue
    up.push((up.at(-1) ?? 0) + result)
    if (Math.abs(up.at(-1)!) > count - up.length) break
  }
  const [outA, outB] = [out(side(match.a)), out(side(match.b))]
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
function out(cards: readonly PlayerCard[]): string | null {
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
