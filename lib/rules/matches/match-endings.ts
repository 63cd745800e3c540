// How a match ends other than on the course: Rules of Golf 2023, 3.2b (conceded; whoever withdraws concedes), 1.3c
// (disqualified: out of the match), 3.2a (tied after the round: extra holes one at a time, strokes as in the round unless
// the terms say none); a walkover and an abandoned match are the committee's.

import type { Match } from '../day'
import { modulo, ordinal } from '../exact/fraction'
import type { Ball } from '../score/balls'
import type { TermsInForce } from '../score/terms-in-force'
import { holeWon, type MatchBalls, type MatchPlayed, type MatchSettings, resultInWords } from './play-match'

export interface MatchEnding {
  readonly up: number
  readonly finished: boolean
  readonly result: string
  /** Which parts of a match in parts end with it: none when it was played out, those not decided yet, or every one. */
  readonly takes: 'nothing' | 'undecided' | 'everything'
}

export function endingOf(
  match: Match,
  balls: MatchBalls,
  round: MatchPlayed,
  settings: MatchSettings,
  terms: TermsInForce,
): MatchEnding {
  const given = givenEnding(match)
  if (given !== null) return given
  const out = endedByOutcome(balls)
  if (out !== null) return { ...out, finished: true, takes: out.result === 'disqualified' ? 'everything' : 'undecided' }
  const played: MatchEnding = { ...stoodAt(round, match), takes: 'nothing' }
  if (round.finished && round.up === 0 && match.extraHoles !== undefined) {
    return extraHoles(match.extraHoles, balls, settings, terms) ?? played
  }
  return played
}

/** Decided whatever was played, and even when one of the two never was there. */
export function givenEnding({ walkover, concededBy, result }: Match): MatchEnding | null {
  if (walkover !== undefined)
    return { up: walkover === 'a' ? 1 : -1, finished: true, result: 'walkover', takes: 'everything' }
  if (concededBy !== undefined)
    return { up: concededBy === 'a' ? -1 : 1, finished: true, result: 'conceded', takes: 'undecided' }
  if (result !== undefined) {
    const up = result.winner === null ? 0 : result.winner === 'a' ? result.up : -result.up
    return { up, finished: true, result: resultInWords(up, result.left, true, 0), takes: 'undecided' }
  }
  return null
}

/** A match, or a part of one, that was abandoned before it was decided is over as it stood. */
export function stoodAt(
  { up, finished, result }: Pick<MatchPlayed, 'up' | 'finished' | 'result'>,
  { abandoned }: Pick<Match, 'abandoned'>,
): Omit<MatchEnding, 'takes'> {
  if (finished || abandoned !== true) return { up, finished, result }
  return { up, finished: true, result: `${result}, abandoned` }
}

/** One extra hole: both scores as they are compared, and who won it: 1 for A, -1 for B, 0 halved. */
export interface ExtraHole {
  /** Number on the card. */
  readonly hole: number
  readonly a: number | 'x'
  readonly b: number | 'x'
  readonly won: number
}

/** The extra holes up to the first that is won, in the order of play, from the first hole of the match on. */
export function extraHolesPlayed(
  extra: NonNullable<Match['extraHoles']>,
  balls: MatchBalls,
  { startHole }: Pick<MatchSettings, 'startHole'>,
  terms: TermsInForce,
): readonly ExtraHole[] {
  const { holes } = balls.a[0]!
  const none = terms.competition.extraHoleStrokes === 'none'
  const played: ExtraHole[] = []
  for (let at = 0; at < extra.length; at++) {
    const i = modulo(startHole - 1 + at, holes.length)
    // With several balls a side the score written is the better net already.
    const net = (side: readonly Ball[], score: number | 'x') =>
      score === 'x' || none || side.length > 1 ? score : score - side[0]!.strokes[i]!
    const a = net(balls.a, extra[at]!.a)
    const b = net(balls.b, extra[at]!.b)
    const won = holeWon(a, b, 'low', true) ?? 0
    played.push({ hole: holes[i]!.hole, a, b, won })
    if (won !== 0) break
  }
  return played
}

/** The first extra hole that is won decides; level on all of them, the match is still level. */
export function extraHoles(
  extra: NonNullable<Match['extraHoles']>,
  balls: MatchBalls,
  settings: MatchSettings,
  terms: TermsInForce,
): MatchEnding | null {
  const played = extraHolesPlayed(extra, balls, settings, terms)
  const won = played[played.length - 1]?.won ?? 0
  if (won === 0) return null
  const length = balls.a[0]!.holes.length
  return { up: won, finished: true, result: `at the ${ordinal(length + played.length)}`, takes: 'nothing' }
}

export function endedByOutcome({ a, b }: MatchBalls): { readonly up: number; readonly result: string } | null {
  const outA = sideOut(a)
  const outB = sideOut(b)
  if (outA !== null && outB !== null) return { up: 0, result: 'no result' }
  if (outA !== null) return { up: -1, result: outA }
  return outB !== null ? { up: 1, result: outB } : null
}

/** A side goes on with one partner. */
function sideOut(balls: readonly Ball[]): 'conceded' | 'disqualified' | null {
  let word: 'conceded' | 'disqualified' = 'conceded'
  for (const { card } of balls) {
    if (card?.outcome === 'disqualified') word = 'disqualified'
    else if (card?.outcome !== 'withdrawn') return null
  }
  return balls.length === 0 ? null : word
}
