// The R&A, Pace of Play Manual, section 2: starting intervals by the size of the groups. Too short an interval is the
// main cause of a long round.

const SHORTEST: Readonly<Record<number, number>> = { 2: 8, 3: 10, 4: 11 }

/** What is proposed for groups of this size. */
export const intervalFor = (group: 2 | 3 | 4): number => SHORTEST[group] ?? 11

/** A caution for the desk, null when the interval is long enough for the largest group. */
export function intervalCaution(largestGroup: number, intervalMinutes: number): string | null {
  const needed = SHORTEST[largestGroup]
  if (needed === undefined || intervalMinutes >= needed) return null
  const called = largestGroup === 2 ? 'two-balls' : largestGroup === 3 ? 'three-balls' : 'four-balls'
  return `${intervalMinutes} minutes between ${called} is short: published advice is ${needed} or more. A shorter one makes the round longer for everybody.`
}
