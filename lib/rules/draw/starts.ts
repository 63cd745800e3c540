// House practice: when and where each group starts. From the first tee at an interval, or all at once from different
// holes, second groups on the par fives and fours and never on a par three.

import { floorDiv, modulo, wholeIn } from '../exact/fraction'
import { shownHole } from '../hole-numbers'

export interface Start {
  /** HH:MM */
  readonly time: string
  readonly hole: number
}

export interface StartTerms {
  readonly kind: 'tee-times' | 'shotgun'
  readonly firstTee: string
  readonly intervalMinutes: number
  /** Pars in hole order. */
  readonly pars: readonly number[]
  /** Number on the first flag of the card: 10 where the second nine is played. */
  readonly firstHole: number
}

/** Null when a shotgun start has more groups than two to a hole allow. */
export function starts(groups: number, terms: StartTerms): readonly Start[] | null {
  if (terms.kind === 'tee-times')
    return Array.from({ length: groups }, (_, at) => ({
      time: later(terms.firstTee, at * terms.intervalMinutes),
      hole: terms.firstHole,
    }))
  const holes = shotgunHoles(groups, terms)
  return holes === null ? null : holes.map((hole) => ({ time: terms.firstTee, hole }))
}

/** Number of each group's hole, in the order of the groups. A hole with two groups has them one after the other. */
export function shotgunHoles(groups: number, on: Pick<StartTerms, 'pars' | 'firstHole'>): readonly number[] | null {
  const holes = on.pars.map((par, place) => ({ par, hole: shownHole(on, place) }))
  const first = holes.slice(0, groups).map(({ hole }) => hole)
  const over = groups - first.length
  const longest = holes
    .filter(({ par }) => par > 3)
    .sort((a, b) => b.par - a.par || a.hole - b.hole)
    .map(({ hole }) => hole)
  if (over > longest.length) return null
  return [...first, ...longest.slice(0, Math.max(0, over))].sort((a, b) => a - b)
}

function later(clock: string, minutes: number): string {
  const [hour = 0, minute = 0] = clock.split(':').map(wholeIn)
  const total = modulo(hour * 60 + minute + minutes, 1440)
  return `${String(floorDiv(total, 60)).padStart(2, '0')}:${String(modulo(total, 60)).padStart(2, '0')}`
}
