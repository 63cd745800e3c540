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
  const up: number[] = []
  for (let at = 0; at < count; at += 1) {
    const [a, b] = [net(side(match.a), strokes, at), net(side(match.b), strokes, at)]
    if (a === null || b === null) break
    const before = up.at(-1) ?? 0
    up.push(before + (a < b ? 1 : a > b ? -1 : 0))
    if (Math.abs(up.at(-1)!) > count - up.length) break
  }
  const lead = Math.abs(up.at(-1) ?? 0)
  const left = count - up.length
  const finished = lead > left || left === 0
  const winner = finished && lead > 0 ? (up.at(-1)! > 0 ? match.a : match.b) : null
  const result = lead === 0 ? 'halved' : left === 0 ? `${lead} up` : `${lead}&${left}`
  return { id: match.id, winner, result, finished, up }
}
