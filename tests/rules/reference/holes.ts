// What a side makes of a hole, from Rules of Golf 2023, Rules 21 and 23, and the terms of the competition.
import type { Competition } from '@/lib/rules/day'
import type { Ball, Entrant } from './balls'
import { type Form, formOf, isGame, stablefordPoints } from './forms'
import { holeValue, type Worth } from './worth'

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
  const weights = form.weights(hole)
  let holed = 0
  let open = false
  const values: number[] = []
  for (const ball of balls) {
    if (ball === named) continue
    if (ball.gross[at] === null) open = true
    else if (ball.gross[at] !== 'x') holed += 1
    const worth = ball.worth[at]!
    if (typeof worth === 'number') values.push(worth)
  }
  if (open && holed < weights.length) return null
  let sum = 0
  if (named) {
    const own = named.worth[at]!
    if (own === null) return null
    const isLost = holesWithoutBall(balls, side?.ballLostOn).includes(hole)
    sum += Number(own) * timesNamed(competition, form, isLost)
  }
  const bestFirst = values.sort(higherIsBetter(competition.format) ? (a, b) => b - a : (a, b) => a - b)
  for (let place = 0; place < weights.length; place += 1) {
    const value = bestFirst[place] ?? worthOfNone(form)
    if (typeof value !== 'number') return value
    sum += weights[place]! * value
  }
  return sum * holeTimes(competition, hole)
}

/** Numbers of the holes in the order a group played them, from the one all its cards begin on. */
export function orderPlayed(balls: readonly Ball[]): number[] {
  const numbers = balls[0]!.tee.holes.map(({ hole }) => hole)
  const own = balls.filter((ball) => !ball.standIn)
  const starts = new Set(own.flatMap(({ card }) => card?.startHole ?? []))
  if (starts.size !== 1) return numbers
  while (!starts.has(numbers[0]!)) numbers.push(numbers.shift()!)
  return numbers
}

function holesWithoutBall(balls: readonly Ball[], lostOn: number | undefined): number[] {
  if (lostOn === undefined) return []
  const played = orderPlayed(balls)
  return played.slice(played.indexOf(lostOn))
}

/** From the hole where the ball was lost the named score counts once only, or not at all. */
function timesNamed(competition: Competition, form: Form, isLost: boolean): number {
  if (!isLost) return form.named!
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
  const asStandIn = (ball: Ball): Ball => ({
    ...ball,
    gross: ball.gross.map((score, at) => (waiting(at) ? null : score)),
    worth: ball.worth.map((worth, at) => (waiting(at) ? null : worth)),
    standIn: true,
  })
  if (missing.kind === 'drawn') {
    const others = field.filter((one) => !own.some((ball) => ball.id === one))
    const lots = others.map((one) => ({ one, lot: lotOf(`${id} ${one}`, missing.seed) })).sort((a, b) => a.lot - b.lot)
    return lots.slice(0, short).map(({ one }) => asStandIn(ofPlayer(one)))
  }
  const first = own[0]!
  if (missing.kind === 'lowest-again') return Array<Ball>(short).fill(bestAgain(competition, own))
  const { holes } = first.tee
  const gross = holes.map(({ par }) => par + missing.overPar)
  const worth = holes.map(({ par }, at) => holeValue(competition, form, gross[at]!, par, 0))
  return Array<Ball>(short).fill(asStandIn({ ...first, gross, worth }))
}

/** Hole by hole the ball that scored best; one still to be played makes the best of the hole unknown. */
function bestAgain({ format }: Competition, own: readonly Ball[]): Ball {
  const bestFirst = own[0]!.tee.holes.map((_, at) => {
    const open = own.find(({ worth }) => worth[at] === null)
    const holed = own.filter(({ worth }) => typeof worth[at] === 'number')
    holed.sort((a, b) => (Number(b.worth[at]) - Number(a.worth[at])) * (higherIsBetter(format) ? 1 : -1))
    return open ?? holed[0] ?? own[0]!
  })
  const gross = bestFirst.map((ball, at) => ball.gross[at]!)
  const worth = bestFirst.map((ball, at) => ball.worth[at]!)
  return { ...own[0]!, gross, worth, standIn: true }
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
