// One entrant's holes as the competition reads them: each ball's value (Rules of Golf 21, 23), then the count of the
// side, then the running figures.

import { countOnHole, type HoleCount } from '../count/count-on-hole'
import type { CardOutcome, HoleScore } from '../day'
import type { Format } from '../formats/format'
import { ballValueOf } from '../formats/format'
import type { HoleLine, NoPlace } from '../standings'
import { levelOnHole } from '../values/value-on-hole'
import { type Ball, isStruckOut } from './balls'
import type { Entrant } from './entrants'
import { ownLine, sideLine, wasPlayed } from './hole-lines'
import { placeInPlay, startPlace } from './order-of-play'

/** Everything about an entrant but the place. */
export interface Entry {
  readonly entrant: Entrant
  readonly balls: readonly Ball[]
  readonly holes: readonly HoleLine[]
  /** Which of the holes count. */
  readonly counted: readonly boolean[]
  readonly score: number
  readonly againstLevel: number
  readonly out: number | null
  readonly in: number | null
  readonly holesPlayed: number
  readonly gross: number | null
  readonly complete: boolean
  readonly noPlace: NoPlace | undefined
  /** Games inside a group: its number from 1, and what each hole was worth, in card order; null where that is not known. */
  readonly game?: { readonly group: number; readonly pots: readonly (number | null)[] }
  /** The rounds it is the sum of, last one last. */
  readonly rounds?: readonly { readonly round: number; readonly entry: Entry }[]
}

export interface Reading {
  readonly format: Format
  readonly counts: readonly HoleCount[]
  /** Times a hole's value counts; ones unless the format has named holes. */
  readonly holeTimes: readonly number[]
  readonly counted: readonly boolean[]
  /** Yellow ball: what a lost ball costs. */
  readonly ballLost: 'counts-once' | 'named-score-nothing' | 'side-out' | null
  /** Level par of every hole for a ball, on the common footing. */
  readonly levelsOf: (ball: Ball) => readonly number[]
  /** Level of all the holes that count: the same for every finished card, so that their order is that of their scores. */
  readonly wholeLevel: number
}

export function entryOf(entrant: Entrant, balls: readonly Ball[], reading: Reading): Entry {
  const { format, counted } = reading
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
  let settled = 0
  let due = 0
  let noScore = false
  let gross: number | null = balls.length === 1 ? 0 : null
  const isLost = lostFrom(entrant, balls)
  for (let i = 0; i < size; i++) {
    const count = reading.counts[i]!
    let worth: HoleScore
    if (single) {
      worth = first.values[i]!
      if (typeof worth === 'number') worth *= count.weight
    } else worth = sideWorth(entrant, balls, i, isLost(i), reading, chosen)
    const times = reading.holeTimes[i]!
    if (typeof worth === 'number') worth *= times
    if (!counted[i]) worth = null
    const written = wasPlayed(balls, i)
    holes[i] = single ? ownLine(first, i, worth, written) : sideLine(balls, chosen, i, worth, written)
    if (!counted[i]) continue
    due++
    if (worth === null) continue
    settled++
    if (written) played++
    if (worth === 'x') {
      noScore = true
      continue
    }
    score += worth
    level += levelOnHole(value, levels[i]!) * count.weight * times
    if (i < 9) out = (out ?? 0) + worth
    else back = (back ?? 0) + worth
    if (gross !== null) {
      const strokes = written ? first.gross[i]! : null
      gross = typeof strokes === 'number' ? gross + strokes : null
    }
  }
  const complete = settled === due
  if (complete) level = reading.wholeLevel
  const off = format.unit === 'strokes' ? 0 : penaltyPoints(balls, format)
  const sideOut = reading.ballLost === 'side-out' && entrant.ballLostOn !== undefined
  return {
    entrant,
    balls,
    holes,
    counted,
    score: score - off,
    againstLevel: score - off - level,
    out,
    in: back,
    holesPlayed: played,
    gross: played === 0 ? null : gross,
    complete,
    noPlace: noPlaceOf(balls, played, noScore || sideOut),
  }
}

/** Is the hole at a place of the card one on which the named ball was lost already, in the order of play? */
export function lostFrom(
  { ballLostOn }: Pick<Entrant, 'ballLostOn'>,
  balls: readonly Ball[],
): (place: number) => boolean {
  if (ballLostOn === undefined) return () => false
  const { holes } = balls[0]!
  const on = holes.findIndex(({ hole }) => hole === ballLostOn)
  if (on < 0) return () => false
  const start = startPlace(balls, holes)
  const from = placeInPlay(on, start, holes.length)
  return (place) => placeInPlay(place, start, holes.length) >= from
}

/**
 * Who has the named ball at a place of the card: in turn from the first hole of the card, wherever a group began, so that a
 * start sheet can say it beforehand.
 */
export function namedOn({ players }: Pick<Entrant, 'players'>, place: number): string {
  return players[place % players.length]!
}

function sideWorth(
  { players }: Entrant,
  balls: readonly Ball[],
  i: number,
  lost: boolean,
  { counts, format, ballLost }: Reading,
  chosen: number[],
): HoleScore {
  const count = counts[i]!
  if (count.namedTimes === 0) return countOnHole(balls, i, count, -1, format.better, chosen)
  const named = i % players.length
  if (!lost) return countOnHole(balls, i, count, named, format.better, chosen)
  if (ballLost === 'counts-once')
    return countOnHole(balls, i, { ...count, namedTimes: 1 }, named, format.better, chosen)
  // The named score is worth nothing; where every stroke counts the side has no score without it.
  if (count.none === 'x') return 'x'
  return countOnHole(balls, i, { ...count, namedTimes: 0 }, named, format.better, chosen)
}

function emptyEntry(entrant: Entrant): Entry {
  const nothing = {
    holes: [],
    counted: [],
    score: 0,
    againstLevel: 0,
    out: null,
    in: null,
    holesPlayed: 0,
    gross: null,
  }
  return { entrant, balls: [], ...nothing, complete: false, noPlace: 'not-started' }
}

function penaltyPoints(balls: readonly Ball[], format: Format): number {
  let off = 0
  for (const { filled, card } of balls) if (!filled && !isStruckOut(card, format)) off += card?.penaltyPoints ?? 0
  return off
}

const GRAVITY: readonly CardOutcome[] = ['withdrawn', 'no-return', 'disqualified']

/** A side is out when all its cards are; a player's own trouble leaves the partner in (Rules of Golf 23.4). */
function noPlaceOf(balls: readonly Ball[], played: number, noScore: boolean): NoPlace | undefined {
  let worst = -1
  let anyIn = false
  let started = false
  for (const { card, filled } of balls) {
    if (filled) continue
    if (card?.outcome === undefined) anyIn = true
    else worst = Math.max(worst, GRAVITY.indexOf(card.outcome))
    if (!started && card !== null) started = card.scores.some((score) => score !== null)
  }
  if (!anyIn && worst >= 0) return GRAVITY[worst]
  if (played === 0 || !started) return 'not-started'
  return noScore ? 'no-return' : undefined
}
