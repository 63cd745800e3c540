// Rules of Golf 2023, 3.2, with strokes by RoH 2024, Appendix C: each plays off the difference from the lowest, on the
// stroke indexes of the own tee. Also for any two cards of a day, or any four as a four-ball, after the event.

import { countsOf } from '../count/count-on-hole'
import type { Competition, Day, Match } from '../day'
import { editionOf } from '../editions/editions'
import { formatOf } from '../formats/catalogue'
import { ballValueOf, type Format } from '../formats/format'
import { type DifferenceOf, type MatchHandicap, matchStrokes } from '../handicap/match-strokes'
import { type Ball, type BallSeed, ballOf, lowestParOf, seedsOf } from '../score/balls'
import { type DayIndex, indexOf } from '../score/day-index'
import { type Entrant, entrantOf } from '../score/entrants'
import { handicapInFull, ownHandicap } from '../score/handicap-of-ball'
import { type TermsInForce, termsInForce } from '../score/terms-in-force'
import type { MatchResult } from '../standings'
import { endingOf, givenEnding } from './match-endings'
import { partResult, partsPlayed, partsUnplayed, winnerOf } from './match-parts'
import { type MatchBalls, type MatchSettings, playMatch } from './play-match'

/** A player or a side of the day by id, or any players put together for the occasion. */
export type MatchEnd = string | readonly string[]

/** Any two cards as a match, or any four as a four-ball with that format; null when somebody is not in the day. */
export function matchBetween(
  day: Day,
  a: MatchEnd,
  b: MatchEnd,
  format: Format = formatOf('match')!,
  /** Beyond what is published for it: the handicaps of a side’s ball as its own competition has them. */
  given: Omit<Competition, 'id' | 'format'> = {},
): MatchResult | null {
  const index = indexOf(day)
  const sideA = endOf(a, index)
  const sideB = endOf(b, index)
  if (sideA === null || sideB === null) return null
  const id = `${sideA.id}-${sideB.id}`
  const terms = termsInForce({ ...given, id, format: format.id }, day, [format])
  return terms === null ? null : played({ id, a: sideA.id, b: sideB.id }, sideA, sideB, terms, index)
}

function endOf(end: MatchEnd, index: DayIndex): Entrant | null {
  if (typeof end === 'string') return entrantOf(end, index)
  return end.length > 0 && end.every((id) => index.players.has(id)) ? { id: end.join(' and '), players: end } : null
}

export function matchOf(match: Match, terms: TermsInForce, index: DayIndex): MatchResult | null {
  const a = entrantOf(match.a, index)
  const b = entrantOf(match.b, index)
  return (a === null || b === null ? null : played(match, a, b, terms, index)) ?? decidedWithout(match, terms, index)
}

/** A match that was given although one of the two, or both, have no ball in the day: Rules of Golf 3.2b(1). */
function decidedWithout(match: Match, { format, competition }: TermsInForce, index: DayIndex): MatchResult | null {
  const ending = givenEnding(match)
  const { day } = index
  const isKnown = (id: string) => entrantOf(id, index) !== null || day.absent?.some((one) => one.id === id) === true
  if (ending === null || !isKnown(match.a) || !isKnown(match.b)) return null
  const parts = format.value.kind === 'against-opponent' ? format.value.parts : undefined
  return {
    id: match.id,
    a: match.a,
    b: match.b,
    strokesA: 0,
    strokesB: 0,
    winner: winnerOf(match, ending.up, ending.finished),
    result: ending.result,
    finished: ending.finished,
    holes: [],
    strokes: {},
    ...(parts === undefined ? {} : { parts: partsUnplayed(match, parts, day.tees[0]?.holes ?? [], ending) }),
    ...wholeAlone(competition),
  }
}

const wholeAlone = ({ partPoints }: Competition): Pick<MatchResult, 'wholeForTeams'> =>
  partPoints === 'whole' ? { wholeForTeams: true } : {}

/** What the strokes of a match are taken from. */
export interface MatchFooting {
  /** Balls of A, then those of B. */
  readonly seeds: readonly BallSeed[]
  /** How many of them are A's. */
  readonly ofA: number
  readonly lowestPar: number
  /** Handicaps of the balls in the same order, the allowance applied and nothing rounded. */
  readonly full: readonly MatchHandicap[]
  readonly fromLowest: boolean
  readonly difference: DifferenceOf
}

export function footingOf(a: Entrant, b: Entrant, terms: TermsInForce, index: DayIndex): MatchFooting {
  const { format, competition } = terms
  const one = format.ball === 'one'
  const seedsA = seedsOf(a.id, a.players, one, index, competition.sideTee)
  const seeds = [...seedsA, ...seedsOf(b.id, b.players, one, index, competition.sideTee)]
  const { edition } = index.day
  const lowestPar = lowestParOf(seeds)
  const usual = editionOf(edition).matchDifference
  return {
    seeds,
    ofA: seedsA.length,
    lowestPar,
    full: seeds.map((seed) => handicapInFull(seed, terms, lowestPar, edition)),
    fromLowest: format.strokes.kind !== 'none' && format.strokes.off === 'lowest',
    difference: competition.matchDifference ?? (format.side.to > 1 ? usual.sides : usual.players),
  }
}

/** Balls of both sides with their strokes in this match. */
export function matchBalls(a: Entrant, b: Entrant, terms: TermsInForce, index: DayIndex): MatchBalls {
  return ballsOn(footingOf(a, b, terms, index), terms)
}

export function ballsOn(footing: MatchFooting, terms: TermsInForce): MatchBalls {
  const { seeds, ofA, full, fromLowest, difference } = footing
  const strokes = fromLowest ? matchStrokes(full, difference) : full.map(ownHandicap)
  const balls = seeds.map((seed, i) => ballOf(seed, strokes[i]!, terms, false))
  return { a: balls.slice(0, ofA), b: balls.slice(ofA) }
}

function played(match: Match, a: Entrant, b: Entrant, terms: TermsInForce, index: DayIndex): MatchResult | null {
  const balls = matchBalls(a, b, terms, index)
  if (balls.a.length === 0 || balls.b.length === 0) return null
  const settings = settingsOf(match, balls, terms, index.day.closed)
  const round = playMatch(balls.a, balls.b, settings)
  const ending = endingOf(match, balls, round, settings, terms)
  const { up, finished, result } = ending
  const parts = partsPlayed(match, balls, settings, terms, ending)
  return {
    id: match.id,
    a: match.a,
    b: match.b,
    strokesA: sum(balls.a),
    strokesB: sum(balls.b),
    winner: winnerOf(match, up, finished),
    result,
    finished,
    holes: round.states,
    strokes: Object.fromEntries([...balls.a, ...balls.b].map((ball) => [ball.id, ball.handicap])),
    ...(parts === null ? {} : { parts: parts.map((part) => partResult(match, part)) }),
    ...wholeAlone(terms.competition),
  }
}

/** How the whole round of a match is played: what counts on each hole, from which hole, what was conceded. */
export function settingsOf(match: Match, balls: MatchBalls, { format }: TermsInForce, over: boolean): MatchSettings {
  const on = ballValueOf(format.value)
  const holes = balls.a[0]!.holes
  return {
    counts: countsOf(
      format.count,
      on,
      holes.map(({ hole }) => hole),
    ),
    better: on.kind === 'points' || on.kind === 'against-par' ? 'high' : 'low',
    from: 0,
    to: holes.length - 1,
    startHole: startOf(balls),
    over,
    conceded: new Map(match.concededHoles?.map(({ hole, to }) => [hole, to === 'a' ? 1 : -1])),
  }
}

/** Where the match began: the cards' own hole when they agree, the only one said, else the first. */
function startOf({ a, b }: MatchBalls): number {
  const starts = new Set<number>()
  for (const ball of [...a, ...b]) if (ball.card?.startHole !== undefined) starts.add(ball.card.startHole)
  return starts.size === 1 ? [...starts][0]! : 1
}

function sum(balls: readonly Ball[]): number {
  return balls.reduce((all, ball) => all + ball.handicap, 0)
}
