// Rules of Golf 2023, 3.2: a hole is won by the better score, the match by whoever is more holes up than are left. 23.2a
// for sides: the better ball counts; no score by either side halves the hole.

import { type CountedBall, countOnHole, type HoleCount } from '../count/count-on-hole'
import type { HoleScore } from '../day'
import { modulo } from '../exact/fraction'
import type { Ball } from '../score/balls'
import type { MatchState } from '../standings'

export interface MatchBalls {
  readonly a: readonly Ball[]
  readonly b: readonly Ball[]
}

/** What a match looks at of a ball. */
export interface BallInMatch extends CountedBall {
  readonly holes: readonly { readonly hole: number }[]
}

export interface MatchPlayed {
  /** Holes A is up at the end of what counts. */
  readonly up: number
  readonly holesPlayed: number
  readonly finished: boolean
  readonly result: string
  readonly states: readonly MatchState[]
  /** Numbers of the holes that need no score: conceded ones, and those left when it was decided. */
  readonly notNeeded: readonly number[]
}

export interface MatchSettings {
  readonly counts: readonly HoleCount[]
  /** Which value of a ball is the better one. */
  readonly better: 'high' | 'low'
  /** First and last hole index of the match. */
  readonly from: number
  readonly to: number
  readonly startHole: number
  /** The day is over: a hole on which only one side has a score is won by it. */
  readonly over: boolean
  /** Hole numbers conceded before anybody holed out: to A above zero, to B below. */
  readonly conceded: ReadonlyMap<number, number>
}

/** 1 when A wins the hole, -1 when B does, 0 halved, null not played. */
export function holeWon(a: HoleScore, b: HoleScore, better: 'high' | 'low', over: boolean): number | null {
  if (a === null && b === null) return null
  if (a === null || b === null) {
    // A hole one side never finished is won by the other's score; without a score by either it was not played.
    if (!over || a === 'x' || b === 'x') return null
    return a === null ? -1 : 1
  }
  if (a === 'x') return b === 'x' ? 0 : -1
  if (b === 'x') return 1
  const ahead = better === 'low' ? b - a : a - b
  return ahead > 0 ? 1 : ahead < 0 ? -1 : 0
}

export function playMatch(a: readonly BallInMatch[], b: readonly BallInMatch[], settings: MatchSettings): MatchPlayed {
  const { counts, better, from, to, startHole, over, conceded } = settings
  const holes = a[0]?.holes ?? b[0]?.holes ?? []
  const length = to - from + 1
  const chosen: number[] = []
  const states: MatchState[] = []
  const notNeeded: number[] = []
  let up = 0
  let left = length
  let decided = false
  for (let at = 0; at < holes.length; at++) {
    const i = modulo(startHole - 1 + at, holes.length)
    if (i < from || i > to) continue
    const { hole } = holes[i]!
    const given = conceded.get(hole)
    if (decided || given !== undefined) notNeeded.push(hole)
    const won = decided
      ? null
      : (given ??
        holeWon(
          countOnHole(a, i, counts[i]!, -1, better, chosen),
          countOnHole(b, i, counts[i]!, -1, better, chosen),
          better,
          over,
        ))
    if (won === null) {
      states.push({ hole, up: null })
      continue
    }
    up += won
    left--
    states.push({ hole, up })
    const lead = up < 0 ? -up : up
    if (lead > left) decided = true
  }
  const finished = decided || left === 0
  const result = resultInWords(up, left, finished, length - left)
  return { up, holesPlayed: length - left, finished, result, states, notNeeded }
}

/** "2&1", "1 up", "halved"; before the end "A 2 up after 11", "level after 7". */
export function resultInWords(up: number, left: number, finished: boolean, played: number): string {
  const lead = up < 0 ? -up : up
  if (finished) {
    if (up === 0) return 'halved'
    return left === 0 ? `${lead} up` : `${lead}&${left}`
  }
  if (played === 0) return 'not started'
  return up === 0 ? `level after ${played}` : `${up > 0 ? 'A' : 'B'} ${lead} up after ${played}`
}
