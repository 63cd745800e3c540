// How a match stands by the cards somebody has before them, a phone or the board, and which holes of a card need no score.
// Rules of Golf 2023, 3.2a(3): a match is over when a side leads by more holes than are left; 3.2b: what is conceded is
// not played out.

import { countsOf } from '../count/count-on-hole'
import type { HoleScore, MaximumScore } from '../day'
import type { BallValue, CountChoice, MatchPart } from '../formats/format'
import type { MatchState } from '../standings'
import { valueOnHole } from '../values/value-on-hole'
import { type MatchEnding, stoodAt } from './match-endings'
import { stretchesOf } from './match-parts'
import { type BallInMatch, type MatchPlayed, type MatchSettings, playMatch } from './play-match'

export interface BallToCount {
  /** Whose cards the ball may be written on: of a side's one ball every player's, in the side's order. */
  readonly players: readonly string[]
  /** As it stood when this was made; counts where the reader has none of the cards. */
  readonly gross: readonly HoleScore[]
  /** Strokes received in this match. */
  readonly strokes: readonly number[]
  readonly pars: readonly number[]
  /** Strokes added by the committee, by hole number. */
  readonly penalties?: Readonly<Record<number, number>>
  /** Counts as it stood, whatever the reader has: which card is the side's was settled elsewhere. */
  readonly isFixed?: true
  /** Its scores are no use to the side. */
  readonly isStruckOut?: true
}

export interface MatchToCount {
  readonly id: string
  readonly a: readonly BallToCount[]
  readonly b: readonly BallToCount[]
  /** Numbers of the holes, in the order of the card. */
  readonly holes: readonly number[]
  readonly count: CountChoice
  readonly on: BallValue
  readonly maximum: MaximumScore
  readonly startHole: number
  readonly over: boolean
  /** Hole number, and 1 where it was conceded to A, -1 where to B. */
  readonly conceded: readonly (readonly [number, 1 | -1])[]
  readonly parts?: readonly MatchPart[]
  /** Ended off the course, or by extra holes. */
  readonly ended?: MatchEnding
  readonly abandoned?: true
  /** The end that conceded the match. */
  readonly concededBy?: 'a' | 'b'
}

/** The card of one player as the reader has it; undefined where the reader has none. */
export type ScoresOf = (player: string) => readonly HoleScore[] | undefined

export interface MatchNow {
  /** Holes A is up; negative: B is. */
  readonly up: number
  /** Holes still to play while it is on. */
  readonly left: number
  readonly played: number
  readonly finished: boolean
  readonly result: string
  /** Up by as many as are left. */
  readonly isDormie: boolean
  /** Numbers of the holes that this match needs no score on. */
  readonly notNeeded: readonly number[]
  /** Hole by hole in the order of play. */
  readonly states: readonly MatchState[]
}

export function matchNow(match: MatchToCount, scoresOf: ScoresOf): MatchNow {
  const { holes, ended } = match
  const whole = playedNow(match, scoresOf, 0, holes.length - 1)
  // Extra holes decide a match whose every hole was played.
  const isOff = ended !== undefined && (ended.takes !== 'nothing' || (whole.finished && whole.up === 0))
  const { up, finished, result } = isOff ? ended : stoodAt(whole, match)
  const left = holes.length - whole.holesPlayed
  const everything = match.abandoned === true || (isOff && ended.takes !== 'nothing')
  return {
    up,
    left,
    played: whole.holesPlayed,
    finished,
    result,
    isDormie: !finished && up !== 0 && Math.abs(up) === left,
    notNeeded: everything ? holes : notNeededIn(match, scoresOf, whole),
    states: whole.states,
  }
}

/** A hole is needed as long as the whole, or a part of it, is not decided before it. */
function notNeededIn(match: MatchToCount, scoresOf: ScoresOf, whole: MatchPlayed): readonly number[] {
  const { parts, holes } = match
  if (parts === undefined) return whole.notNeeded
  const needed = new Set<number>(holes.filter((hole) => !whole.notNeeded.includes(hole)))
  for (const { first, last } of stretchesOf(
    parts,
    holes.map((hole) => ({ hole })),
  )) {
    const { notNeeded } = playedNow(match, scoresOf, first, last)
    for (const hole of holes.slice(first, last + 1)) if (!notNeeded.includes(hole)) needed.add(hole)
  }
  return holes.filter((hole) => !needed.has(hole))
}

function playedNow(match: MatchToCount, scoresOf: ScoresOf, from: number, to: number): MatchPlayed {
  const { count, on, holes, startHole, over, conceded } = match
  const settings: MatchSettings = {
    counts: countsOf(count, on, holes),
    better: on.kind === 'points' || on.kind === 'against-par' ? 'high' : 'low',
    from,
    to,
    startHole,
    over,
    conceded: new Map(conceded),
  }
  const inPlay = (balls: readonly BallToCount[]) => balls.map((ball) => ballNow(ball, match, scoresOf))
  return playMatch(inPlay(match.a), inPlay(match.b), settings)
}

function ballNow(ball: BallToCount, { holes, on, maximum }: MatchToCount, scoresOf: ScoresOf): BallInMatch {
  const gross = grossNow(ball, holes, scoresOf)
  const values = gross.map((score, at) => valueOnHole(on, score, ball.strokes[at] ?? 0, ball.pars[at] ?? 0, maximum))
  return { holes: holes.map((hole) => ({ hole })), gross, values }
}

/** The strokes of a ball by the cards the reader has, with what the committee added. */
export function grossNow(ball: BallToCount, holes: readonly number[], scoresOf: ScoresOf): readonly HoleScore[] {
  if (ball.isStruckOut) return holes.map((): HoleScore => 'x')
  const cards = (ball.isFixed ? [] : ball.players).flatMap((player) => {
    const scores = scoresOf(player)
    return scores === undefined ? [] : [scores]
  })
  // Of a side's cards the first on which anything is written is the side's.
  const scores = cards.find((card) => card.some((score) => score !== null)) ?? cards[0]
  if (scores === undefined) return holes.map((_, at) => ball.gross[at] ?? null)
  return holes.map((hole, at) => {
    const score = scores[at] ?? null
    return typeof score === 'number' ? score + (ball.penalties?.[hole] ?? 0) : score
  })
}

/** Is the player, or the side of the player, one of the two? */
export const playsIn = (match: Pick<MatchToCount, 'a' | 'b'>, player: string): boolean =>
  [...match.a, ...match.b].some((ball) => ball.players.includes(player))

/** What the matches of a player leave of the card. */
export interface HolesToPlay {
  /** Numbers of the holes that need no score. */
  readonly notNeeded: readonly number[]
  /** Holes the matches do not need any more, where another competition of the player's does. */
  readonly onlyFor: { readonly competition: string; readonly holes: readonly number[] } | null
}

/**
 * A card is complete when its matches are. `beside`: a competition of the same player that is no match, which needs every
 * hole; who plays in no match at all needs every hole too.
 */
export function holesToPlay(
  matches: readonly MatchToCount[],
  player: string,
  beside: string | null,
  scoresOf: ScoresOf,
): HolesToPlay {
  const own = matches.filter((match) => playsIn(match, player))
  const [first, ...others] = own.map((match) => matchNow(match, scoresOf).notNeeded)
  const over = first?.filter((hole) => others.every((each) => each.includes(hole))) ?? []
  if (beside === null) return { notNeeded: over, onlyFor: null }
  return { notNeeded: [], onlyFor: over.length > 0 ? { competition: beside, holes: over } : null }
}
