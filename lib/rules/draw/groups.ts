// House practice: the draw. By lot, mixed by handicap, banded by handicap, or in order of entry; a guest goes with the
// host. Pure: the lot is an argument.

import { groupSizes } from './group-sizes'
import { lotFrom, shuffled } from './lot'
import { mixed } from './mixed'

export interface Drawn {
  readonly id: string
  /** Lower is better; whoever has none yet is drawn as the highest. */
  readonly handicap: number | null
  /** Id of the entry whose guest this is. */
  readonly hostId: string | null
}

export type DrawWay = 'random' | 'by-handicap-mixed' | 'by-handicap-banded' | 'entry-order'

export interface DrawTerms {
  readonly way: DrawWay
  readonly groupSize: 2 | 3 | 4
  readonly seed: number
  readonly smaller: 'first' | 'last'
  /** Two of a group are partners or opponents: as few odd players as can be. */
  readonly inPairs?: boolean
}

/** A host with guests, or a player alone: drawn as one. */
interface Party {
  readonly ids: readonly string[]
  readonly handicap: number
}

interface Slot {
  readonly size: number
  readonly ids: string[]
}

/** Groups in starting order. `players` come in order of entry. */
export function drawGroups(players: readonly Drawn[], terms: DrawTerms): readonly (readonly string[])[] {
  const sizes = groupSizes(players.length, terms.groupSize, terms.smaller, terms.inPairs)
  const slots: Slot[] = sizes.map((size) => ({ size, ids: [] }))
  const lot = lotFrom(terms.seed)
  const largest = Math.max(0, ...sizes)
  const parties = ordered(partiesOf(players, largest), terms.way, lot)
  // Parties first: once the single places are gone, two who belong together find no room.
  const together = parties.filter((party) => party.ids.length > 1)
  const alone = parties.filter((party) => party.ids.length === 1)
  if (terms.way === 'by-handicap-mixed') {
    mixed(byHandicap(players), together, slots, lot)
  } else if (terms.way === 'random') {
    inTurn(together, shuffled(slots, lot))
    inTurn(alone, slots)
    for (const slot of slots) slot.ids.splice(0, slot.ids.length, ...seated(slot.ids, players, lot))
  } else {
    atTheirPlace(parties, slots)
  }
  return slots.map((slot) => slot.ids)
}

/** Hosts with their guests in order of the host's entry. A party larger than the largest group is cut to fit. */
function partiesOf(players: readonly Drawn[], largest: number): readonly Party[] {
  const known = new Set(players.map((player) => player.id))
  const isGuest = (player: Drawn) => player.hostId !== null && player.hostId !== player.id && known.has(player.hostId)
  return players
    .filter((player) => !isGuest(player))
    .flatMap((host) => {
      const party = [host, ...players.filter((player) => isGuest(player) && player.hostId === host.id)]
      const cut: Party[] = []
      for (let from = 0; from < party.length; from += largest) {
        const part = party.slice(from, from + largest)
        cut.push({
          ids: part.map((player) => player.id),
          handicap: part[0]!.handicap ?? Number.MAX_SAFE_INTEGER,
        })
      }
      return cut
    })
}

function ordered(parties: readonly Party[], way: DrawWay, lot: (below: number) => number): readonly Party[] {
  if (way === 'random') return shuffled(parties, lot)
  if (way === 'entry-order') return parties
  return parties
    .map((party, entered) => ({ party, entered }))
    .sort((a, b) => a.party.handicap - b.party.handicap || a.entered - b.entered)
    .map(({ party }) => party)
}

/** Ids from the lowest handicap to the highest, in order of entry where they are level. */
function byHandicap(players: readonly Drawn[]): readonly string[] {
  const of = ({ handicap }: Drawn) => handicap ?? Number.MAX_SAFE_INTEGER
  return players
    .map((player, entered) => ({ player, entered }))
    .sort((a, b) => of(a.player) - of(b.player) || a.entered - b.entered)
    .map(({ player }) => player.id)
}

const room = (slot: Slot) => slot.size - slot.ids.length

/** Seats a party, in one group if any has the room, otherwise wherever there is a place. */
function seat(party: Party, slots: readonly Slot[]): void {
  const fitting = slots.find((slot) => room(slot) >= party.ids.length)
  if (fitting) {
    fitting.ids.push(...party.ids)
    return
  }
  for (const id of party.ids) slots.find((slot) => room(slot) > 0)?.ids.push(id)
}

function inTurn(parties: readonly Party[], slots: readonly Slot[]): void {
  for (const party of [...parties].sort((a, b) => b.ids.length - a.ids.length)) seat(party, slots)
}

/** Keeps the order as far as parties allow: the next party that still fits goes into the group that is being filled. */
function atTheirPlace(parties: readonly Party[], slots: readonly Slot[]): void {
  const waiting = [...parties]
  for (const slot of slots) {
    while (room(slot) > 0) {
      const at = waiting.findIndex((party) => party.ids.length <= room(slot))
      if (at < 0) break
      slot.ids.push(...waiting.splice(at, 1)[0]!.ids)
    }
  }
  for (const party of waiting) seat(party, slots)
}

/** Order inside a group by lot, a guest staying beside the host: the order makes the pairs. */
function seated(ids: readonly string[], players: readonly Drawn[], lot: (below: number) => number): readonly string[] {
  const here = players.filter((player) => ids.includes(player.id))
  return shuffled(partiesOf(here, here.length), lot).flatMap((party) => party.ids)
}
