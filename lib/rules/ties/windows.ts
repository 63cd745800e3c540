// Committee Procedures 5A(6): which holes a step of the countback looks at. Shares of the handicap in net stroke play:
// a half, a third, a sixth and an eighteenth of it; kept as fractions unless the terms round them.

import type { TieRule, TieStep } from '../day'
import { modulo } from '../exact/fraction'

export type WindowStep = Extract<TieStep, { kind: 'last' | 'first-nine-last' | 'holes' }>

const NUMBERS = ['', '', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

export function stepInWords(step: TieStep): string {
  switch (step.kind) {
    case 'last':
      return step.holes === 1 ? 'last hole' : `last ${NUMBERS[step.holes] ?? step.holes}`
    case 'first-nine-last':
      return step.holes === 1 ? 'ninth hole' : `last ${NUMBERS[step.holes] ?? step.holes} of the first nine`
    case 'holes':
      return step.from === step.to ? `hole ${step.from}` : `holes ${step.from} to ${step.to}`
    case 'lower-handicap':
      return 'lower handicap'
    case 'higher-handicap':
      return 'higher handicap'
    case 'lot':
      return 'lot'
    case 'play-off':
      return 'play-off'
  }
}

/**
 * Indexes of the holes of a window, in a round of `holes` holes that this entrant began at index `start`. Null where the
 * round is too short for the step, or the window is the whole round and so level already.
 */
export function windowOf(
  step: WindowStep,
  holes: number,
  start: number,
  count: TieRule['holesCount'],
  /** Their numbers on the card, where it does not begin with the first or not every hole counts. */
  numbers?: readonly number[],
): number[] | null {
  if (step.kind === 'holes') return namedWindow(step, holes, numbers)
  const end = step.kind === 'last' ? holes : 9
  if (step.kind === 'first-nine-last' && (holes <= 9 || step.holes > 9)) return null
  if (step.kind === 'last' && step.holes >= holes) return null
  const shift = count === 'as-played' ? start : 0
  const window: number[] = []
  for (let at = end - step.holes; at < end; at++) window.push(modulo(at + shift, holes))
  return window
}

/** By number whatever the terms say of the other windows: a hole that is named is that hole. */
function namedWindow(
  { from, to }: Extract<WindowStep, { kind: 'holes' }>,
  holes: number,
  numbers?: readonly number[],
): number[] | null {
  const window: number[] = []
  for (let at = 0; at < holes; at++) {
    const hole = numbers?.[at] ?? at + 1
    if (hole >= from && hole <= to) window.push(at)
  }
  return window.length === 0 || window.length === holes ? null : window
}
