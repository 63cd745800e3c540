// Divisions: parts of the field with places of their own, by handicap, gender, guests or a group of the society. Society
// custom; the limits are in the terms, published before play.

import type { Division } from '../day'
import type { DivisionResult } from '../standings'
import { handicapOf } from './balls'
import type { DayIndex } from './day-index'
import type { Entry } from './entry-lines'
import { ranked } from './rank'
import type { TermsInForce } from './terms-in-force'

export function divisionsOf(entries: readonly Entry[], terms: TermsInForce, index: DayIndex): DivisionResult[] {
  return (terms.competition.divisions ?? []).map((division) => ({
    id: division.id,
    name: division.name,
    standings: ranked(
      entries.filter((entry) => notIn(entry, division, index) === null),
      terms,
      entries,
    ),
  }))
}

/** The first condition of a division that does not hold, and for whom where it is asked of each player. */
export type NotIn =
  | { readonly kind: 'handicap-from' | 'handicap-to' }
  | { readonly kind: 'gender' | 'guests' | 'group' | 'not-playing'; readonly player: string }

/** Null when every condition that is given holds for everybody of the entry. */
export function notIn(entry: Entry, division: Division, index: DayIndex): NotIn | null {
  const handicap = handicapOf(entry.balls)
  if (division.handicapFrom !== undefined && handicap < division.handicapFrom) return { kind: 'handicap-from' }
  if (division.handicapTo !== undefined && handicap > division.handicapTo) return { kind: 'handicap-to' }
  for (const player of entry.entrant.players) {
    const kind = playerNotIn(player, division, index)
    if (kind !== null) return { kind, player }
  }
  return null
}

function playerNotIn(
  id: string,
  division: Division,
  index: DayIndex,
): 'gender' | 'guests' | 'group' | 'not-playing' | null {
  const line = index.players.get(id)
  if (line === undefined) return 'not-playing'
  const { player, sheet } = line
  if (division.gender !== undefined && sheet.tee.gender !== division.gender) return 'gender'
  if (division.guests !== undefined && (player.guest === true) !== (division.guests === 'only')) return 'guests'
  return division.group === undefined || (player.groups?.includes(division.group) ?? false) ? null : 'group'
}
