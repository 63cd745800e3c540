// Rules of Golf 2023, 3.2, with strokes by RoH 2024, Appendix C: each plays off the difference from the lowest, on the
// stroke indexes of the own tee. Also for any two cards of a day after the event.

import { countsOf } from '../count/count-on-hole'
import type { Day, Match } from '../day'
import { editionOf } from '../editions/editions'
import { formatOf } from '../formats/catalogue'
import { ballValueOf, type Format } from '../formats/format'
import { matchStrokes } from '../handicap/match-strokes'
import { type Ball, ballOf, handicapInFull, lowestParOf, seedsOf } from '../score/balls'
import { type DayIndex, indexOf } from '../score/day-index'
import { entrantOf } from '../score/entrants'
import { type TermsInForce, termsInForce } from '../score/terms-in-force'
import type { MatchResult } from '../standings'
import { playMatch } from './play-match'

const NONE: ReadonlyMap<number, number> = new Map()

/** Any two players' cards as a singles match, or any two sides' as the format given; null when one of them is unknown. */
export function matchBetween(day: Day, a: string, b: string, format: Format = formatOf('match')!): MatchResult | null {
  const competition = { id: `${a}-${b}`, format: format.id }
  const terms = termsInForce(competition, day, [format])
  return terms === null ? null : matchOf({ id: competition.id, a, b }, terms, indexOf(day))
}

export interface MatchBalls {
  readonly a: readonly Ball[]
  readonly b: readonly Ball[]
}

/** Balls of both sides with their strokes in this match. */
export function matchBalls(match: Match, terms: TermsInForce, index: DayIndex): MatchBalls | null {
  const { format } = terms
  const sideA = entrantOf(match.a, index)
  const sideB = entrantOf(match.b, index)
  if (sideA === null || sideB === null) return null
  const one = format.ball === 'one'
  const seedsA = seedsOf(sideA.id, sideA.players, one, index)
  const seeds = [...seedsA, ...seedsOf(sideB.id, sideB.players, one, index)]
  const { edition } = index.day
  const lowestPar = lowestParOf(seeds)
  const usual = editionOf(edition).matchDifference
  const difference = format.side.to > 1 ? usual.sides : usual.players
  const full = seeds.map((seed) => handicapInFull(seed, terms, lowestPar, edition))
  const strokes = matchStrokes(full, difference)
  const balls = seeds.map((seed, i) => ballOf(seed, strokes[i]!, terms, false))
  return { a: balls.slice(0, seedsA.length), b: balls.slice(seedsA.length) }
}

export function matchOf(match: Match, terms: TermsInForce, index: DayIndex): MatchResult | null {
  const balls = matchBalls(match, terms, index)
  if (balls === null) return null
  const { format } = terms
  const holes = balls.a[0]!.holes
  const counts = countsOf(
    format.count,
    holes.map(({ hole }) => hole),
  )
  const on = ballValueOf(format.value)
  const played = playMatch(balls.a, balls.b, {
    counts,
    better: on.kind === 'points' || on.kind === 'against-par' ? 'high' : 'low',
    from: 0,
    to: holes.length - 1,
    startHole: startOf(balls),
    over: index.day.closed,
    conceded: NONE,
  })
  const ended = endedByOutcome(balls)
  const up = ended?.up ?? played.up
  const finished = ended !== null || played.finished
  return {
    id: match.id,
    a: match.a,
    b: match.b,
    strokesA: sum(balls.a),
    strokesB: sum(balls.b),
    winner: finished && up !== 0 ? (up > 0 ? match.a : match.b) : null,
    result: ended?.result ?? played.result,
    finished,
    holes: played.states,
  }
}

/** Where the match began: the cards' own hole when they agree, the only one said, else the first. */
function startOf({ a, b }: MatchBalls): number {
  const starts = new Set<number>()
  for (const ball of [...a, ...b]) if (ball.card?.startHole !== undefined) starts.add(ball.card.startHole)
  return starts.size === 1 ? [...starts][0]! : 1
}

/** Who withdraws concedes (3.2b); who is disqualified is out of the match (1.3c). A side goes on with one partner. */
function endedByOutcome({ a, b }: MatchBalls): { readonly up: number; readonly result: string } | null {
  const outA = sideOut(a)
  const outB = sideOut(b)
  if (outA !== null && outB !== null) return { up: 0, result: 'no result' }
  if (outA !== null) return { up: -1, result: outA }
  return outB !== null ? { up: 1, result: outB } : null
}

function sideOut(balls: readonly Ball[]): 'conceded' | 'disqualified' | null {
  let word: 'conceded' | 'disqualified' = 'conceded'
  for (const { card } of balls) {
    if (card?.outcome === 'disqualified') word = 'disqualified'
    else if (card?.outcome !== 'withdrawn') return null
  }
  return balls.length === 0 ? null : word
}

function sum(balls: readonly Ball[]): number {
  return balls.reduce((all, ball) => all + ball.handicap, 0)
}
