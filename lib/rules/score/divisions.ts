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
      entries.filter((entry) => belongs(entry, division, index)),
      terms,
    ),
  }))
}

function belongs(entry: Entry, division: Division, index: DayIndex): boolean {
  const handicap = handicapOf(entry.balls)
  if (division.handicapFrom !== undefined && handicap < division.handicapFrom) return false
  if (division.handicapTo !== undefined && handicap > division.handicapTo) return false
  return entry.entrant.players.every((id) => {
    const line = index.players.get(id)
    if (line === undefined) return false
    const { player, sheet } = line
    if (division.gender !== undefined && sheet.tee.gender !== division.gender) return false
    if (division.guests !== undefined && (player.guest === true) !== (division.guests === 'only')) return false
    return division.group === undefined || (player.groups?.includes(division.group) ?? false)
  })
}
