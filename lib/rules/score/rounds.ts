// Several rounds added up, over one course or more: 9 and 18, 36 holes. Committee Procedures 5A(6): the last round is the
// first thing a tie looks at, and the windows of a countback are those of the last round.

import type { NoPlace } from '../standings'
import type { Entry } from './entry-lines'
import type { TermsInForce } from './terms-in-force'

export interface RoundEntries {
  readonly round: number
  readonly entries: readonly Entry[]
}

export function addedUp(rounds: readonly RoundEntries[], terms: TermsInForce, closed: boolean): Entry[] {
  const last = rounds[rounds.length - 1]!
  return last.entries.map((one, at) => {
    const parts = rounds.map(({ round, entries }) => ({ round, entry: entries[at]! }))
    const sum = (of: (entry: Entry) => number) => parts.reduce((all, { entry }) => all + of(entry), 0)
    return {
      ...one,
      holes: parts.flatMap(({ entry }) => entry.holes),
      score: sum((entry) => (entry.noPlace === 'not-started' ? 0 : entry.score)),
      againstLevel: sum((entry) => (entry.noPlace === 'not-started' ? 0 : entry.againstLevel)),
      out: null,
      in: null,
      holesPlayed: sum((entry) => entry.holesPlayed),
      gross: parts.some(({ entry }) => entry.gross === null) ? null : sum((entry) => entry.gross ?? 0),
      complete: parts.every(({ entry }) => entry.complete),
      noPlace: noPlaceOf(
        parts.map(({ entry }) => entry.noPlace),
        terms,
        closed || parts.some(({ entry }) => isMissed(entry)),
      ),
      rounds: parts,
    }
  })
}

/** Nobody of the entry was in the round: it will not be played any more. */
export function isMissed({ balls }: Entry): boolean {
  const own = balls.filter((ball) => !ball.filled)
  return own.length > 0 && own.every((ball) => ball.card?.missed === true)
}

/** Out of one round, out of the whole. A round not played at all is a missing card, and only points can do without one. */
function noPlaceOf(
  each: readonly (NoPlace | undefined)[],
  { format }: TermsInForce,
  over: boolean,
): NoPlace | undefined {
  const out = each.find((one) => one !== undefined && one !== 'not-started')
  if (out !== undefined) return out
  const played = each.filter((one) => one !== 'not-started').length
  if (played === 0) return 'not-started'
  if (played === each.length || !over || format.unit !== 'strokes') return undefined
  return played === 1 ? 'one-round-only' : 'rounds-missing'
}
