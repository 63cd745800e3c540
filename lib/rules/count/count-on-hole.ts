// Which balls of a side count on a hole, and for how much. Rules of Golf 2023, 23.2 for the better of two; for larger
// sides the number that counts is the format's own.

import type { HoleScore } from '../day'
import { modulo } from '../exact/fraction'
import type { BallValue, CountChoice, Take } from '../formats/format'

/** The part of a ball that the count looks at. */
export interface CountedBall {
  readonly gross: readonly HoleScore[]
  readonly values: readonly HoleScore[]
}

export interface HoleCount {
  /** Weight of the best score, the second best and so on, among the balls that are not named. */
  readonly take: Take
  /** Times the named player's score counts; 0 when nobody is named. */
  readonly namedTimes: number
  /** Everything that counts added up: how many level scores make the side level. */
  readonly weight: number
  /** What a score that is not there counts as: 'x' where every stroke counts, and then the side has none. */
  readonly none: number | 'x'
}

function plain(take: Take, none: number | 'x'): HoleCount {
  return { take, namedTimes: 0, weight: take.reduce((sum, one) => sum + one, 0), none }
}

/** What a side short of a score gets for it: no points, a lost hole, or nothing that can be counted. */
export function worthOfNone(value: BallValue): number | 'x' {
  switch (value.kind) {
    case 'points':
      return value.table.noScore
    case 'against-par':
      return -1
    case 'strokes':
    case 'maximum':
      return 'x'
  }
}

/** The count of every hole of a round, worked out once a competition. */
export function countsOf(count: CountChoice, on: BallValue, holeNumbers: readonly number[]): HoleCount[] {
  const none = worthOfNone(on)
  switch (count.kind) {
    case 'best': {
      const same = plain(count.take, none)
      return holeNumbers.map(() => same)
    }
    case 'by-turn':
      return holeNumbers.map((hole) => plain(count.turn[modulo(hole - 1, count.turn.length)]!, none))
    case 'by-stretch': {
      const last = count.stretches[count.stretches.length - 1]!
      return holeNumbers.map((hole) => plain((count.stretches.find(({ to }) => hole <= to) ?? last).take, none))
    }
    case 'named-player': {
      const others = plain(count.others, none)
      const same = { ...others, namedTimes: count.times, weight: others.weight + count.times }
      return holeNumbers.map(() => same)
    }
  }
}

/**
 * The side's value on hole `i`; `chosen` is filled with the balls that count, best first. Null while too few scores are
 * in; 'x' when a score that must count is missing and the format has no figure for that.
 */
export function countOnHole(
  balls: readonly CountedBall[],
  i: number,
  count: HoleCount,
  named: number,
  better: 'high' | 'low',
  chosen: number[],
): HoleScore {
  chosen.length = 0
  let sum = 0
  let pending = 0
  let scored = 0
  for (let b = 0; b < balls.length; b++) {
    if (b === named) continue
    const gross = balls[b]!.gross[i]!
    if (gross === null) pending++
    else if (gross !== 'x') scored++
  }
  if (named >= 0) {
    const value = balls[named]?.values[i] ?? null
    if (typeof value !== 'number') return value
    sum += value * count.namedTimes
    if (count.namedTimes > 0 && balls[named]!.gross[i] !== 'x') chosen.push(named)
  }
  const { take } = count
  if (pending > 0 && scored < take.length) return null
  const from = chosen.length
  const used: boolean[] = []
  for (let k = 0; k < take.length; k++) {
    const best = bestLeft(balls, i, named, better, used)
    if (best < 0) {
      if (count.none === 'x') return 'x'
      sum += count.none * take[k]!
      continue
    }
    used[best] = true
    sum += (balls[best]!.values[i] as number) * take[k]!
    if (balls[best]!.gross[i] !== 'x') chosen.splice(from + k, 0, best)
  }
  return sum
}

function bestLeft(
  balls: readonly CountedBall[],
  i: number,
  named: number,
  better: 'high' | 'low',
  used: readonly boolean[],
): number {
  let best = -1
  let bestValue = 0
  for (let b = 0; b < balls.length; b++) {
    if (b === named || used[b]) continue
    const value = balls[b]!.values[i]!
    if (typeof value !== 'number') continue
    if (best < 0 || (better === 'high' ? value > bestValue : value < bestValue)) {
      best = b
      bestValue = value
    }
  }
  return best
}
