// What a ball and a side make of a hole, from Rules of Golf 2023, Rules 3.1c, 21 and 23, and the terms of the competition.
import type { Competition, HoleScore } from '@/lib/rules/day'
import type { Ball, Entrant } from './balls'
import { type Form, formOf, isGame, stablefordPoints } from './forms'

/** A figure; no score where one is needed; or not known yet. */
export type Worth = number | 'no score' | null

export function holeValue(competition: Competition, form: Form, gross: number | 'x', par: number, strokes: number) {
  switch (form.kind) {
    case 'points':
      return gross === 'x' ? (form.noScore ?? 0) : (form.points ?? stablefordPoints)(par - (gross - strokes))
    case 'against par':
      return gross === 'x' ? -1 : Math.sign(par - (gross - strokes))
    case 'maximum': {
      const cap = competition.maximum ?? { kind: 'net-double-bogey' }
      const most = cap.kind === 'fixed' ? cap.strokes : cap.kind === 'double-par' ? 2 * par : par + 2 + strokes
      return (gross === 'x' || gross > most ? most : gross) - strokes
    }
    case 'gross':
    case 'strokes':
      return gross === 'x' ? ('no score' as const) : gross - strokes
  }
}

export function ballWorth(competition: Competition, form: Form, ball: Ball, at: number): Worth {
  const gross = ball.gross[at]!
  return gross === null ? null : holeValue(competition, form, gross, ball.tee.holes[at]!.par, ball.strokes[at]!)
}

export function higherIsBetter(format: string): boolean {
  const { kind } = formOf(format)
  return isGame(format) || kind === 'points' || kind === 'against par'
}

/** What a score that must count and is not there is worth: nothing, a lost hole, or no result at all. */
function worthOfNone({ kind, noScore }: Form): Worth {
  return kind === 'points' ? (noScore ?? 0) : kind === 'against par' ? -1 : 'no score'
}

export function counts(competition: Competition, hole: number): boolean {
  return competition.countedHoles?.includes(hole) ?? true
}

/** The best of the side's scores by weight, with the named player's own where there is one. */
export function sideWorth(competition: Competition, { balls, side }: Entrant, at: number): Worth {
  const form = formOf(competition.format)
  const { hole } = balls[0]!.tee.holes[at]!
  const named = form.named === undefined ? null : balls[at % side!.players.length]!
  const others = balls.filter((ball) => ball !== named)
  const weights = form.weights(hole)
  const holed = others.filter((ball) => typeof ball.gross[at] === 'number').length
  if (others.some((ball) => ball.gross[at] === null) && holed < weights.length) return null
  let sum = 0
  if (named) {
    const own = ballWorth(competition, form, named, at)
    if (own === null) return null
    sum += Number(own) * timesNamed(competition, form, side?.ballLostOn, hole)
  }
  const values = others.map((ball) => ballWorth(competition, form, ball, at)).filter((one) => typeof one === 'number')
  const bestFirst = values.sort(higherIsBetter(competition.format) ? (a, b) => b - a : (a, b) => a - b)
  for (const [place, weight] of weights.entries()) {
    const value = bestFirst[place] ?? worthOfNone(form)
    if (typeof value !== 'number') return value
    sum += weight * value
  }
  return sum * holeTimes(competition, hole)
}

/** From the hole where the ball was lost the named score counts once only, or not at all. */
function timesNamed(competition: Competition, form: Form, lostOn: number | undefined, hole: number): number {
  if (lostOn === undefined || hole < lostOn) return form.named!
  return (competition.ballLost ?? form.lost) === 'counts-once' ? 1 : 0
}

export function holeTimes({ format, namedHoles }: Competition, hole: number): number {
  return format === 'double-point-stableford' && namedHoles?.includes(hole) ? 2 : 1
}

/** How much level scores everywhere make on a hole: par, two points, nothing lost or won, times what counts of it. */
export function levelOn(competition: Competition, hole: number, par: number): number {
  const form = formOf(competition.format)
  const scores = form.weights(hole).reduce((sum, weight) => sum + weight, 0) + (form.named ?? 0)
  const level = form.kind === 'points' ? (form.points ?? stablefordPoints)(0) : form.kind === 'against par' ? 0 : par
  return level * scores * holeTimes(competition, hole)
}

/** Level par on the footing of the tee with the lowest par: the strokes a longer par is given come off where it is longer. */
export function footing(ball: Ball, lowest: Ball['tee']): readonly number[] {
  const pars = ball.tee.holes.map(({ par }) => par)
  const others = lowest.holes.map(({ par }) => par)
  let more = pars.reduce((sum, par) => sum + par, 0) - others.reduce((sum, par) => sum + par, 0)
  pars.forEach((par, at) => {
    const here = Math.min(more, Math.max(0, par - others[at]!))
    pars[at] = par - here
    more -= here
  })
  const hardestFirst = [...pars.keys()].sort((a, b) => ball.tee.holes[a]!.strokeIndex - ball.tee.holes[b]!.strokeIndex)
  for (const at of hardestFirst.slice(0, more)) pars[at]! -= 1
  return pars
}

/** Somebody else's score for the missing one, never on a hole that nobody of the side has played. */
export function standIns(
  competition: Competition,
  id: string,
  own: readonly Ball[],
  field: readonly string[],
  ofPlayer: (id: string) => Ball,
): Ball[] {
  const form = formOf(competition.format)
  const { missing } = competition
  const short = form.size - own.length
  if (!missing || missing.kind === 'nothing' || form.oneBall || form.size === 1 || short <= 0) return []
  const waiting = (at: number) => own.every((ball) => ball.gross[at] === null)
  const asStandIn = (ball: Ball, gross: readonly HoleScore[]): Ball => ({
    ...ball,
    gross: gross.map((score, at) => (waiting(at) ? null : score)),
    standIn: true,
  })
  if (missing.kind === 'drawn') {
    const others = field.filter((one) => !own.some((ball) => ball.id === one))
    const lots = others.map((one) => ({ one, lot: lotOf(`${id} ${one}`, missing.seed) })).sort((a, b) => a.lot - b.lot)
    return lots.slice(0, short).map(({ one }) => {
      const ball = ofPlayer(one)
      return asStandIn(ball, ball.gross)
    })
  }
  const first = own[0]!
  if (missing.kind === 'ghost') {
    const noStrokes = { ...first, strokes: first.strokes.map(() => 0) }
    return Array<Ball>(short).fill(
      asStandIn(
        noStrokes,
        first.tee.holes.map(({ par }) => par + missing.overPar),
      ),
    )
  }
  return Array<Ball>(short).fill(lowestAgain(competition, form, own))
}

/** Hole by hole the ball whose value is the poorest: a hole still to be played before one without a score before a figure. */
function lowestAgain(competition: Competition, form: Form, own: readonly Ball[]): Ball {
  const poorest = own[0]!.tee.holes.map((_, at) => {
    const goodness = own.map((ball) => {
      const value = ballWorth(competition, form, ball, at)
      if (value === null) return Number.NEGATIVE_INFINITY
      if (value === 'no score') return -1e9
      return higherIsBetter(competition.format) ? value : -value
    })
    return own[goodness.indexOf(Math.min(...goodness))]!
  })
  const gross = poorest.map((ball, at) => ball.gross[at]!)
  // What counts is the value on the partner's own tee: the par of that tee goes with the score.
  const holes = poorest.map((ball, at) => ({ ...own[0]!.tee.holes[at]!, par: ball.tee.holes[at]!.par }))
  const strokes = poorest.map((ball, at) => ball.strokes[at]!)
  return { ...own[0]!, tee: { ...own[0]!.tee, holes }, gross, strokes, standIn: true }
}

/** The lot of lib/rules/day.ts, from its recipe: mixed byte by byte with the seed, shuffled twice, the lowest ahead. */
export function lotOf(text: string, seed: number): number {
  let mixed = (((seed % 4294967291) + 4294967291) % 4294967291) ^ 2166136261
  for (const sign of text) mixed = Math.imul(mixed ^ sign.charCodeAt(0), 16777619)
  for (const [shift, factor] of [
    [15, 2246822507],
    [13, 3266489909],
  ] as const) {
    mixed = Math.imul(mixed ^ (mixed >>> shift), factor)
  }
  return (mixed ^ (mixed >>> 16)) >>> 0
}
