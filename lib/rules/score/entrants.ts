// Who is in a competition: players, or sides of the right size. An entrant is told, never guessed: the terms may name
// them; otherwise everybody of the day who fits.

import type { DayIndex } from './day-index'
import type { TermsInForce } from './terms-in-force'

export interface Entrant {
  readonly id: string
  readonly players: readonly string[]
  /** Yellow ball: hole on which the named ball was lost. */
  readonly ballLostOn?: number
}

export function entrantsOf(terms: TermsInForce, index: DayIndex): Entrant[] {
  const { format, competition } = terms
  const { day } = index
  if (format.side.to === 1) {
    const wanted = competition.entrants === undefined ? null : new Set(competition.entrants)
    const found: Entrant[] = []
    for (const { id } of day.players) {
      if (index.players.has(id) && (wanted === null || wanted.has(id))) found.push({ id, players: [id] })
    }
    return found
  }
  const wanted = competition.entrants === undefined ? null : new Set(competition.entrants)
  const found: Entrant[] = []
  for (const side of day.sides) {
    if (side.competitions !== undefined && !side.competitions.includes(competition.id)) continue
    const size = side.players.length
    const fits =
      side.competitions !== undefined || wanted !== null || (size >= format.side.from && size <= format.side.to)
    if (fits && (wanted === null || wanted.has(side.id))) found.push(side)
  }
  return found
}

/** One entrant by id: a side of the day, or a player alone. */
export function entrantOf(id: string, index: DayIndex): Entrant | null {
  const side = index.sides.get(id)
  if (side !== undefined) return side
  return index.players.has(id) ? { id, players: [id] } : null
}
