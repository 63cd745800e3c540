// How many scores of a side count on a hole, in words for the phone and in figures for the printed card.

import { countsOf } from '@/lib/rules/count/count-on-hole'
import type { CountChoice, Take } from '@/lib/rules/formats/format'
import { capital, inWords, listed } from './in-words'

/** The format counts so many of several scores: with one ball a side, or one player, nothing is chosen. */
export function takeOnHole(count: CountChoice, hole: number): Take {
  return countsOf(count, { kind: 'strokes' }, [hole])[0]!.take
}

const RANKS = ['the best', 'the second', 'the third', 'the fourth', 'the fifth', 'the sixth']
const TIMES = ['not at all', 'once', 'twice', 'three times']

/** "The best score counts here", "The best two scores count here", "All three scores count here". */
export function scoresThatCount(count: CountChoice, hole: number, size: number, isBallLost = false): string {
  const take = takeOnHole(count, hole)
  if (count.kind === 'named-player') {
    const others = take.length === 1 ? 'the best score of the others' : `the best ${inWords(take.length)} of the others`
    if (isBallLost && count.lost === 'side-out') return 'The side is out'
    if (isBallLost && count.lost === 'named-score-nothing')
      return take.length === 1 ? 'The best score of the others counts here' : `${capital(others)} count here`
    if (isBallLost) return `The score of the player in turn and ${others} count here`
    const times = count.times === 1 ? '' : `, ${TIMES[count.times] ?? `${count.times} times`},`
    return `The yellow ball’s score${times} and ${others} count here`
  }
  if (take.some((weight) => weight !== 1))
    return `${capital(listed(take.map((weight, at) => `${RANKS[at] ?? `number ${at + 1}`} ${TIMES[weight] ?? `${weight} times`}`)))} count here`
  if (take.length >= size)
    return size === 2 ? 'Both scores count here' : `All ${inWords(take.length)} scores count here`
  return take.length === 1 ? 'The best score counts here' : `The best ${inWords(take.length)} scores count here`
}

/** The same where several competitions share one line of a small screen: "best two", "the ball and the best other". */
export function countsInShort(count: CountChoice, hole: number, size: number, isBallLost = false): string {
  const take = takeOnHole(count, hole)
  if (count.kind === 'named-player') {
    const others = take.length === 1 ? 'the best other' : `the best ${inWords(take.length)} others`
    if (!isBallLost)
      return `the ball${count.times === 1 ? '' : ` ${TIMES[count.times] ?? `${count.times} times`}`} and ${others}`
    if (count.lost === 'side-out') return 'the side is out'
    return count.lost === 'named-score-nothing' ? `only ${others}` : `the player in turn and ${others}`
  }
  if (take.some((weight) => weight !== 1))
    return listed(take.map((weight, at) => `${RANKS[at] ?? `number ${at + 1}`} ${TIMES[weight] ?? `${weight} times`}`))
  if (take.length >= size) return `all ${inWords(take.length)}`
  return take.length === 1 ? 'the best' : `the best ${inWords(take.length)}`
}

/** Does it change from hole to hole? */
export const variesByHole = (count: CountChoice): boolean => count.kind === 'by-turn' || count.kind === 'by-stretch'
