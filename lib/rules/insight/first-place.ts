// What first place still hangs on: exact bounds, from the day counted twice, with everybody's best card and with
// everybody's worst. Arithmetic of the format and of the day's tie rule (Committee Procedures 5A(6)); no source.
//
// Somebody can be first if the own best card stands against the worst cards of all others, and is certain of it if the
// own worst stands against their best: nobody's card moves another's, and best and worst cards are best and worst on
// every step of the tie rule (possible-cards.ts). Cards count as they stand: no ruling, penalty or withdrawal from here.

import type { Entry } from '../score/entry-lines'
import { aheadBy } from '../score/rank'
import type { TermsInForce } from '../score/terms-in-force'

/** First alone; first, but not ahead of everybody even by the tie rule; not first. */
export type First = 'alone' | 'level' | 'no'

export interface PossibleEntry {
  readonly best: Entry
  readonly worst: Entry
}

export interface FirstPlace {
  readonly possible: First
  readonly certain: First
}

export function firstPlaces(field: readonly PossibleEntry[], terms: TermsInForce): FirstPlace[] {
  const worsts = topTwo(
    field.map(({ worst }) => worst),
    terms,
  )
  const bests = topTwo(
    field.map(({ best }) => best),
    terms,
  )
  return field.map(({ best, worst }, at) => ({
    possible: firstAgainst(best, bestOther(worsts, at), terms),
    certain: firstAgainst(worst, bestOther(bests, at), terms),
  }))
}

interface Ranked {
  readonly at: number
  readonly entry: Entry
}

/** The foremost two: whoever is asked about is left out, and the other is the one to beat. */
function topTwo(entries: readonly Entry[], terms: TermsInForce): readonly Ranked[] {
  const foremost: Ranked[] = []
  for (const [at, entry] of entries.entries()) {
    const place = foremost.findIndex((other) => aheadBy(entry, other.entry, terms) > 0)
    foremost.splice(place < 0 ? foremost.length : place, 0, { at, entry })
    foremost.length = Math.min(2, foremost.length)
  }
  return foremost
}

function bestOther(foremost: readonly Ranked[], at: number): Entry | null {
  return foremost.find((one) => one.at !== at)?.entry ?? null
}

function firstAgainst(mine: Entry, other: Entry | null, terms: TermsInForce): First {
  if (mine.noPlace !== undefined) return 'no'
  if (other === null) return 'alone'
  const ahead = aheadBy(mine, other, terms)
  return ahead > 0 ? 'alone' : ahead === 0 ? 'level' : 'no'
}
