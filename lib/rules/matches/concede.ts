// A hole or the match conceded while it is played: Rules of Golf 2023, 3.2b. A concession is final (3.2b(2)); what is taken
// back here is what was written by mistake.

import type { MatchToCount } from './match-now'

export interface Concession {
  /** Hole number; null: the match. */
  readonly hole: number | null
  /** The end that concedes; null: what was written is taken back. */
  readonly by: 'a' | 'b' | null
}

/** The match once this is written. */
export function withConcession(match: MatchToCount, { hole, by }: Concession): MatchToCount {
  if (hole !== null) {
    const others = match.conceded.filter(([each]) => each !== hole)
    return { ...match, conceded: by === null ? others : [...others, [hole, by === 'a' ? -1 : 1] as const] }
  }
  const { ended, concededBy, ...open } = match
  // Taken back: whatever else ended it stays as it is.
  if (by === null) return concededBy === undefined && ended !== undefined ? { ...open, ended } : open
  const up = by === 'a' ? -1 : 1
  return { ...open, concededBy: by, ended: { up, finished: true, result: 'conceded', takes: 'undecided' } }
}

/** Ended off the course by something else than a concession: nothing is left to concede. */
export const isEndedOtherwise = ({ ended, concededBy, abandoned }: MatchToCount): boolean =>
  abandoned === true || (ended !== undefined && concededBy === undefined)
