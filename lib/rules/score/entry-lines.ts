// One entrant's holes as the competition reads them: each ball's value (Rules of Golf 21, 23), then the count of the
// side, then the running figures.

import { countOnHole, type HoleCount } from '../count/count-on-hole'
import type { CardOutcome, HoleScore } from '../day'
import type { Format } from '../formats/format'
import { ballValueOf } from '../formats/format'
import type { HoleLine, NoPlace } from '../standings'
import { levelOnHole } from '../values/value-on-hole'
import type { Ball } from './balls'
import type { Entrant } from './entrants'

/** Everything about an entrant but the place. */
export interface Entry {
  readonly entrant: Entrant
  readonly balls: readonly Ball[]
  readonly holes: readonly HoleLine[]
  readonly score: number
  readonly againstLevel: number
  readonly out: number | null
  readonly in: number | null
  readonly holesPlayed: number
  readonly gross: number | null
  readonly complete: boolean
  readonly noPlace: NoPlace | undefined
}

export interface Reading {
  readonly format: Format
  readonly counts: readonly HoleCount[]
  /** Times a hole's value counts; ones unless the format has named holes. */
  readonly holeTimes: readonly number[]
  /** Level par of every hole for a ball, on the common footing. */
  readonly levelsOf: (ball: Ball) => readonly number[]
}

export function entryOf(entrant: Entrant, balls: readonly Ball[], reading: Reading): Entry {
  const { format } = reading
  const first = balls[0]
  if (first === undefined) return emptyEntry(entrant)
  const value = ballValueOf(format.value)
  const levels = reading.levelsOf(first)
  const size = first.holes.length
  const single = balls.length === 1 && format.side.to === 1
  const holes = new Array<HoleLine>(size)
  const chosen: number[] = []
  let score = 0
  let level = 0
  let out: number | null = null
  let back: number | null = null
  let played = 0
  let noScore = false
  let gross: number | null = balls.length === 1 ? 0 : null
  for (let i = 0; i < size; i++) {
    const times = reading.holeTimes[i]!
    const count = reading.counts[i]!
    let worth: HoleScore
    if (single) {
      worth = first.values[i]!
      if (typeof worth === 'number') worth *= count.weight
    } else {
      const named = count.namedTimes > 0 ? i % entrant.players.length : -1
      worth = countOnHole(balls, i, count, named, format.better, chosen)
    }
    if (typeof worth === 'number') worth *= times
    holes[i] = single ? ownLine(first, i, worth) : sideLine(balls, chosen, i, worth)
    if (worth === null) continue
    played++
    if (worth === 'x') {
      noScore = true
      continue
    }
    score += worth
    level += levelOnHole(value, levels[i]!) * count.weight * times
    if (i < 9) out = (out ?? 0) + worth
    else back = (back ?? 0) + worth
    if (gross !== null) {
      const strokes = first.gross[i]!
      gross = typeof strokes === 'number' ? gross + strokes : null
    }
  }
  const off = format.unit === 'strokes' ? 0 : penaltyPoints(balls)
  const complete = played === size
  return {
    entrant,
    balls,
    holes,
    score: score - off,
    againstLevel: score - off - level,
    out,
    in: back,
    holesPlayed: played,
    gross: played === 0 ? null : gross,
    complete,
    noPlace: noPlaceOf(balls, played, noScore),
  }
}

function emptyEntry(entrant: Entrant): Entry {
  const nothing = { holes: [], score: 0, againstLevel: 0, out: null, in: null, holesPlayed: 0, gross: null }
  return { entrant, balls: [], ...nothing, complete: false, noPlace: 'not-started' }
}

function penaltyPoints(balls: readonly Ball[]): number {
  let off = 0
  for (const ball of balls) off += ball.card?.penaltyPoints ?? 0
  return off
}

const GRAVITY: readonly CardOutcome[] = ['withdrawn', 'no-return', 'disqualified']

/** A side is out when all its cards are; a player's own trouble leaves the partner in (Rules of Golf 23.4). */
function noPlaceOf(balls: readonly Ball[], played: number, noScore: boolean): NoPlace | undefined {
  let worst = -1
  let anyIn = false
  for (const ball of balls) {
    const outcome = ball.card?.outcome
    if (outcome === undefined) anyIn = true
    else worst = Math.max(worst, GRAVITY.indexOf(outcome))
  }
  if (!anyIn && worst >= 0) return GRAVITY[worst]
  const started = balls.some((ball) => ball.card?.scores.some((score) => score !== null))
  if (played === 0 || !started) return 'not-started'
  return noScore ? 'no-return' : undefined
}

function ownLine(ball: Ball, i: number, worth: HoleScore): HoleLine {
  const hole = ball.holes[i]!
  const gross = ball.gross[i]!
  const strokes = ball.strokes[i]!
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    strokes,
    gross,
    net: typeof gross === 'number' ? gross - strokes : null,
    value: typeof worth === 'number' ? worth : null,
  }
}

function sideLine(balls: readonly Ball[], chosen: readonly number[], i: number, worth: HoleScore): HoleLine {
  const shown = balls[chosen[0] ?? 0]!
  const hole = shown.holes[i]!
  let gross = 0
  let strokes = 0
  for (const b of chosen) {
    gross += balls[b]!.gross[i] as number
    strokes += balls[b]!.strokes[i]!
  }
  const counted = worth !== null && chosen.length > 0
  return {
    hole: hole.hole,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    strokes: counted ? strokes : shown.strokes[i]!,
    gross: counted ? gross : worth === null ? null : 'x',
    net: counted ? gross - strokes : null,
    value: typeof worth === 'number' ? worth : null,
    by: counted ? chosen.map((b) => balls[b]!.id) : [],
  }
}
