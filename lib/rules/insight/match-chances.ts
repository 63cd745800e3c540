// What a match still hangs on. Rules of Golf 2023, 3.2a: a match is won by whoever is more holes up than are left; as many
// up as are left is dormie. How far it can still go either way is arithmetic, no source: the match played twice, with
// one side's best cards against the other's worst. A hole more for a side never makes it the loser.

import { countOnHole, countsOf } from '../count/count-on-hole'
import type { Match } from '../day'
import { ballValueOf } from '../formats/format'
import { matchBalls, matchOf } from '../matches/match'
import { holeWon, type MatchBalls } from '../matches/play-match'
import type { DayIndex } from '../score/day-index'
import { type Entrant, entrantOf } from '../score/entrants'
import type { TermsInForce } from '../score/terms-in-force'
import { type Extreme, filledCards, isOpen } from './possible-cards'

export type MatchEnd = 'won' | 'halved' | 'lost'

export interface MatchChances {
  readonly match: string
  readonly a: string
  readonly b: string
  /** Holes A is up on the holes that are finished. */
  readonly up: number
  /** Holes that can still be won, halved or lost; none once the match is over. */
  readonly holesLeft: number
  /** How it can end for A at the best and at the worst, without extra holes. */
  readonly best: MatchEnd
  readonly worst: MatchEnd
  /** As many up as are left: cannot be beaten in the round any more. */
  readonly dormie: 'a' | 'b' | null
  /** Holes each must win more than lose of those left to win the match; null where that is settled. */
  readonly aNeeds: number | null
  readonly bNeeds: number | null
}

export function matchChances(terms: TermsInForce, index: DayIndex): MatchChances[] {
  return (terms.competition.matches ?? []).flatMap((match) => {
    const a = entrantOf(match.a, index)
    const b = entrantOf(match.b, index)
    if (a === null || b === null) return []
    const chances = chancesIn(match, a, b, terms, index)
    return chances === null ? [] : [chances]
  })
}

function chancesIn(match: Match, a: Entrant, b: Entrant, terms: TermsInForce, index: DayIndex): MatchChances | null {
  const played = matchOf(match, terms, index)
  if (played === null) return null
  const head = { match: match.id, a: match.a, b: match.b }
  const stopped = index.day.closed || (played.finished && match.abandoned === true)
  const bestFirst = stopped ? index : filledFor(matchBalls(a, b, terms, index), terms, index, 'best', 'worst')
  const worstFirst = stopped ? index : filledFor(matchBalls(a, b, terms, index), terms, index, 'worst', 'best')
  const best = endFor(match, terms, bestFirst)
  const worst = endFor(match, terms, worstFirst)
  if (best === worst)
    return { ...head, up: lastUp(played.holes), holesLeft: 0, best, worst, dormie: null, aNeeds: null, bNeeds: null }
  const now = holesOf(match, a, b, terms, index)
  const most = holesOf(match, a, b, terms, bestFirst)
  const least = holesOf(match, a, b, terms, worstFirst)
  let up = 0
  let left = 0
  let mostMore = 0
  let leastMore = 0
  now.forEach(({ won, open }, i) => {
    if (!open) {
      up += won ?? 0
      return
    }
    left++
    mostMore += most[i]!.won ?? 0
    leastMore += least[i]!.won ?? 0
  })
  const needs = (more: number, least: number, most: number) => (more > least && more <= most ? more : null)
  return {
    ...head,
    up,
    holesLeft: left,
    best,
    worst,
    dormie: up === left ? 'a' : up === -left ? 'b' : null,
    aNeeds: needs(1 - up, leastMore, mostMore),
    bNeeds: needs(1 + up, -mostMore, -leastMore),
  }
}

function endFor(match: Match, terms: TermsInForce, index: DayIndex): MatchEnd {
  const winner = matchOf(match, terms, index)?.winner ?? null
  return winner === null ? 'halved' : winner === match.a ? 'won' : 'lost'
}

/** The day over, one side at its best and the other at its worst. */
function filledFor({ a, b }: MatchBalls, terms: TermsInForce, index: DayIndex, ofA: Extreme, ofB: Extreme): DayIndex {
  const cards = new Map(index.cards)
  for (const card of [...filledCards(a, terms, ofA), ...filledCards(b, terms, ofB)]) cards.set(card.player, card)
  return { ...index, day: { ...index.day, closed: true }, cards }
}

interface HoleNow {
  readonly won: number | null
  /** A ball on it may still be holed. */
  readonly open: boolean
}

function holesOf(match: Match, a: Entrant, b: Entrant, terms: TermsInForce, index: DayIndex): HoleNow[] {
  const balls = matchBalls(a, b, terms, index)
  const on = ballValueOf(terms.format.value)
  const holes = balls.a[0]?.holes ?? []
  const counts = countsOf(
    terms.format.count,
    on,
    holes.map(({ hole }) => hole),
  )
  const better = on.kind === 'points' || on.kind === 'against-par' ? 'high' : 'low'
  const conceded = new Map(match.concededHoles?.map(({ hole, to }) => [hole, to === 'a' ? 1 : -1]))
  return holes.map(({ hole }, i) => {
    const given = conceded.get(hole)
    if (given !== undefined) return { won: given, open: false }
    const [mine, theirs] = [balls.a, balls.b].map((side) => countOnHole(side, i, counts[i]!, -1, better, []))
    const open = [...balls.a, ...balls.b].some((ball) => isOpen(ball.card, i))
    return { won: holeWon(mine!, theirs!, better, index.day.closed), open }
  })
}

function lastUp(states: readonly { readonly up: number | null }[]): number {
  return states.reduce((last, { up }) => up ?? last, 0)
}
