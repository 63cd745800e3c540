// A side short of a player, by the society's own terms: a ghost, the best score of the others again, or somebody else's card
// drawn by lot. Nothing is published for it; the terms of the competition say which. On one ball the handicap is filled up
// instead (score/handicap-of-ball.ts).

import type { CountedBall } from '../count/count-on-hole'
import type { HoleScore, MaximumScore, MissingPlayer } from '../day'
import { type BallValue, ballValueOf, type Format } from '../formats/format'
import { lotOf } from '../ties/break-ties'
import { valueOnHole } from '../values/value-on-hole'
import type { Ball } from './balls'
import type { Entrant } from './entrants'
import type { TermsInForce } from './terms-in-force'

/** The balls of a side with those of its missing players behind them. `field` is everybody in the competition. */
export function filledUp(
  entrant: Entrant,
  balls: readonly Ball[],
  terms: TermsInForce,
  field: readonly string[],
  ballOfPlayer: (player: string) => Ball,
): readonly Ball[] {
  const { missing } = terms.competition
  const { format } = terms
  const short = format.side.to - balls.length
  if (
    missing === undefined ||
    missing.kind === 'nothing' ||
    format.ball === 'one' ||
    short <= 0 ||
    balls.length === 0
  ) {
    return balls
  }
  if (missing.kind === 'drawn') {
    const found = drawn(entrant, missing.seed, short, field, ballOfPlayer)
    return [...balls, ...found.map((one) => behind(one, balls))]
  }
  const one = missing.kind === 'ghost' ? ghost(balls[0]!, missing, terms) : bestAgain(balls, format)
  return [...balls, ...new Array<Ball>(short).fill(behind(one, balls))]
}

/** How a competition counts a side that is short: what a phone is told beside the cards of the side. */
export interface Shortage {
  readonly missing: Exclude<MissingPlayer, { kind: 'nothing' | 'drawn' }>
  /** Players a whole side has. */
  readonly size: number
  readonly on: BallValue
  readonly better: 'high' | 'low'
  readonly maximum: MaximumScore
}

/** The same from the scores of the side's own cards alone; a card drawn by lot is of another group. */
export function filledFrom(
  { missing, size, on, better, maximum }: Shortage,
  balls: readonly CountedBall[],
  pars: readonly number[],
): readonly CountedBall[] {
  const short = size - balls.length
  if (short <= 0 || balls.length === 0) return balls
  const best = pars.map((_, i) => balls[bestOn(balls, i, better)]!)
  const filler: CountedBall =
    missing.kind === 'ghost'
      ? ghostOver(missing.overPar, pars, on, maximum)
      : { gross: best.map((ball, i) => ball.gross[i]!), values: best.map((ball, i) => ball.values[i]!) }
  return [...balls, ...new Array<CountedBall>(short).fill(behind(filler, balls))]
}

/** A missing player is never ahead of the side: no score yet on a hole that nobody of it has played. */
function behind<B extends CountedBall>(filler: B, own: readonly CountedBall[]): B & { readonly filled: true } {
  const waits = (i: number) => own.every((ball) => ball.gross[i] === null)
  return {
    ...filler,
    filled: true,
    gross: filler.gross.map((score, i) => (waits(i) ? null : score)),
    values: filler.values.map((value, i) => (waits(i) ? null : value)),
  }
}

/** A ghost has no card and no handicap: so many over par everywhere, already net. */
function ghost(like: Ball, missing: Extract<MissingPlayer, { kind: 'ghost' }>, terms: TermsInForce): Ball {
  const pars = like.holes.map(({ par }) => par)
  return {
    ...like,
    id: 'ghost',
    card: null,
    course: null,
    handicap: 0,
    has: 0,
    strokes: like.holes.map(() => 0),
    ...ghostOver(missing.overPar, pars, ballValueOf(terms.format.value), terms.maximum),
  }
}

function ghostOver(over: number, pars: readonly number[], on: BallValue, maximum: MaximumScore): CountedBall {
  const gross = pars.map((par): HoleScore => par + over)
  return { gross, values: gross.map((score, i) => valueOnHole(on, score, 0, pars[i]!, maximum)) }
}

/**
 * On every hole the best score of the others counts once more: the most points, the fewest strokes. While one of them is
 * still to finish the hole nobody knows which that is.
 */
function bestAgain(balls: readonly Ball[], format: Format): Ball {
  const best = balls[0]!.holes.map((_, i) => balls[bestOn(balls, i, format.better)]!)
  return {
    ...balls[0]!,
    id: 'the best again',
    card: null,
    strokes: best.map((ball, i) => ball.strokes[i]!),
    gross: best.map((ball, i) => ball.gross[i]!),
    values: best.map((ball, i) => ball.values[i]!),
  }
}

function bestOn(balls: readonly CountedBall[], i: number, better: Format['better']): number {
  let found = 0
  for (let b = 1; b < balls.length; b++) if (isAhead(balls[b]!.values[i]!, balls[found]!.values[i]!, better)) found = b
  return found
}

/** A hole still to be played goes before every score, and a score before none. */
function isAhead(a: HoleScore, b: HoleScore, better: Format['better']): boolean {
  if (a === null || b === null) return a === null && b !== null
  if (a === 'x' || b === 'x') return b === 'x' && a !== 'x'
  return better === 'high' ? a > b : a < b
}

function drawn(
  entrant: Entrant,
  seed: number,
  short: number,
  field: readonly string[],
  ballOfPlayer: (player: string) => Ball,
): Ball[] {
  return field
    .filter((player) => !entrant.players.includes(player))
    .map((player) => ({ player, lot: lotOf(`${entrant.id} ${player}`, seed) }))
    .sort((a, b) => a.lot - b.lot || (a.player < b.player ? -1 : 1))
    .slice(0, short)
    .map(({ player }) => ballOfPlayer(player))
}
