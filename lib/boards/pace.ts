// Expected pace. Society custom, not published: eighteen holes in 3 h 20 for two-balls, 3 h 50 for threes, 4 h 20 for
// fours, shared out over the holes by their par; the interval on the tee is kept all the way round. Time during which
// play was suspended does not count (Rules of Golf 5.7).

import { type PlayStopRecord, stoppedBetween } from '@/lib/facts/play-stop'

const MINUTES_FOR_18: Readonly<Record<number, number>> = { 1: 180, 2: 200, 3: 230, 4: 260 }

/** Minutes from the start to the end of each hole, in the order in which the group plays them. */
export function minutesToEnd(size: number, parsInOrder: readonly number[]): readonly number[] {
  const all = ((MINUTES_FOR_18[Math.min(Math.max(size, 1), 4)] ?? 260) * parsInOrder.length) / 18
  const par = parsInOrder.reduce((sum, one) => sum + one, 0) || 1
  let sum = 0
  return parsInOrder.map((one) => {
    sum += one
    return (all * sum) / par
  })
}

/** Minutes of play between two moments. */
export function minutesPlayed(from: Date, to: Date, stops: readonly PlayStopRecord[]): number {
  const [a, b] = [from.getTime(), to.getTime()]
  return (b - a - (b > a ? stoppedBetween(stops, a, b) : 0)) / 60_000
}
