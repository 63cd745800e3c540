// A game inside a group, skins or split sixes, as it stands by the cards somebody has before them: a phone counts it by
// itself, by the rule by which the board counts it (shares.ts).

import type { HoleScore, MaximumScore } from '../day'
import type { BallValue, Shares } from '../formats/format'
import { type BallToCount, grossNow, type ScoresOf } from '../matches/match-now'
import { valueOnHole } from '../values/value-on-hole'
import { sharesOf } from './shares'

export interface GameToCount {
  readonly balls: readonly BallToCount[]
  /** Numbers of the holes, in the order of the card. */
  readonly holes: readonly number[]
  readonly on: BallValue
  readonly maximum: MaximumScore
  readonly shares: Shares
  /** Place on the card of the hole the group begins on. */
  readonly start: number
  /** How often each hole counts; 0: not at all. */
  readonly times: readonly number[]
}

export interface GameNow {
  /** By ball, then by hole; null while the hole is not shared out. */
  readonly shares: readonly (readonly HoleScore[])[]
  /** What each hole is played for; null where that is not known yet, or where it does not count. */
  readonly pots: readonly (number | null)[]
  /** By ball, all that has been won. */
  readonly won: readonly number[]
  /** Holes that were shared out. */
  readonly played: number
}

export function gameNow(game: GameToCount, scoresOf: ScoresOf): GameNow {
  const { balls, holes, on, maximum, times, start } = game
  const values = balls.map((ball) =>
    grossNow(ball, holes, scoresOf).map((score, at) =>
      valueOnHole(on, score, ball.strokes[at] ?? 0, ball.pars[at] ?? 0, maximum),
    ),
  )
  const counted = times.map((each) => each > 0)
  const { shares, pots } = sharesOf(values, start, game.shares, counted)
  const timed = (list: readonly HoleScore[]) =>
    list.map((one, at) => (typeof one === 'number' ? one * times[at]! : one))
  const all = shares.map(timed)
  return {
    shares: all,
    pots: pots.map((pot, at) => (pot === null ? null : pot * times[at]!)),
    won: all.map((list) => list.reduce<number>((sum, one) => sum + (typeof one === 'number' ? one : 0), 0)),
    played: holes.filter((_, at) => (all[0]?.[at] ?? null) !== null).length,
  }
}
