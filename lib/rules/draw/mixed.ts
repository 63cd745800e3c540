// House practice: the mixed draw. Every group has a low and a high handicap and what lies between, whoever brings guests.
//
// The field is cut by handicap into as many bands as the largest group has places: the lowest of every group, the highest
// of every group, and those between. A group gets at most one of each band. What is left over when groups differ in size
// is taken from a middle band, so that a three has a low and a high as well. Two of one band meet only where they must: a
// host and a guest of one band, and then at most one more pair elsewhere, because another group goes short of that band.

import { shuffled } from './lot'

export interface MixedParty {
  readonly ids: readonly string[]
}

interface Slot {
  readonly size: number
  readonly ids: string[]
}

/** The band of each player, from 0 for the lowest; `ids` stand in order of handicap. */
export function bandsOf(ids: readonly string[], groups: number, largest: number): ReadonlyMap<string, number> {
  const sizes = Array.from({ length: largest }, () => 0)
  let left = ids.length
  for (const band of [0, largest - 1, ...middle(largest)]) {
    sizes[band] = Math.min(groups, left)
    left -= sizes[band]!
  }
  const band = new Map<string, number>()
  let from = 0
  for (const [at, size] of sizes.entries()) {
    for (const id of ids.slice(from, from + size)) band.set(id, at)
    from += size
  }
  return band
}

const middle = (largest: number) => Array.from({ length: Math.max(0, largest - 2) }, (_, at) => at + 1)

/** `ids` in order of handicap; those who belong together (a host with guests) stand in `together`. */
export function mixed(
  ids: readonly string[],
  together: readonly MixedParty[],
  slots: readonly Slot[],
  lot: (below: number) => number,
): void {
  const largest = Math.max(0, ...slots.map((slot) => slot.size))
  const bandOf = bandsOf(ids, slots.length, largest)
  const bandAt = (id: string) => bandOf.get(id) ?? 0
  const forced = new Set(together.flatMap((party) => party.ids))
  seatParties(together, slots, bandAt, lot)

  const table = new Table(
    slots.map((slot) => ({ room: slot.size - slot.ids.length, fixed: new Set(slot.ids.map(bandAt)) })),
  )
  // The bands at the ends first: whoever must give way is found in the middle.
  const order = [...new Set([0, largest - 1, ...middle(largest)])].filter((band) => band >= 0)
  const alone = order.map((band) => ({
    band,
    ids: shuffled(
      ids.filter((id) => bandAt(id) === band && !forced.has(id)),
      lot,
    ),
  }))
  for (const { band, ids: of } of alone) for (const _ of of) table.seat(band)
  for (const { band, ids: of } of alone)
    for (const [at, slot] of table.groupsOf(band).entries()) {
      const id = of[at]
      if (id !== undefined) slots[slot]!.ids.push(id)
    }
  const rank = new Map(ids.map((id, at) => [id, at]))
  for (const slot of slots) slot.ids.splice(0, slot.ids.length, ...inOrder(slot.ids, together, rank))
}

/** The largest first, each into a full-sized group where nobody of its bands is seated yet, by lot among those. */
function seatParties(
  together: readonly MixedParty[],
  slots: readonly Slot[],
  bandAt: (id: string) => number,
  lot: (below: number) => number,
): void {
  const turn = shuffled(slots, lot)
  for (const party of [...together].sort((a, b) => b.ids.length - a.ids.length)) {
    const fitting = turn.filter((slot) => slot.size - slot.ids.length >= party.ids.length)
    const best = leastBy(fitting, (slot) => {
      const there = new Set(slot.ids.map(bandAt))
      return party.ids.filter((id) => there.has(bandAt(id))).length * 100 + slot.ids.length * 10 - slot.size
    })
    if (best) best.ids.push(...party.ids)
    // No group has room for all of them any more: they are seated one by one.
    else for (const id of party.ids) turn.find((slot) => slot.ids.length < slot.size)?.ids.push(id)
  }
}

function leastBy<T>(values: readonly T[], cost: (value: T) => number): T | undefined {
  let best: T | undefined
  for (const value of values) if (best === undefined || cost(value) < cost(best)) best = value
  return best
}

interface Seats {
  room: number
  readonly fixed: ReadonlySet<number>
}

/** Which group gets somebody of which band: at most one each, as many as can be seated that way (augmenting paths). */
class Table {
  private readonly given: { readonly bands: Set<number>; readonly twice: number[] }[]

  constructor(private readonly seats: readonly Seats[]) {
    this.given = seats.map(() => ({ bands: new Set(), twice: [] }))
  }

  seat(band: number): void {
    if (this.give(band, new Set())) return
    // Nowhere without a second of the band: where fewest of it are.
    const open = this.seats.flatMap((seat, at) => (seat.room > 0 ? [at] : []))
    const many = (at: number) =>
      (this.seats[at]!.fixed.has(band) ? 1 : 0) +
      (this.given[at]!.bands.has(band) ? 1 : 0) +
      this.given[at]!.twice.filter((one) => one === band).length
    const at = leastBy(open, many)
    if (at === undefined) return
    this.given[at]!.twice.push(band)
    this.seats[at]!.room -= 1
  }

  groupsOf(band: number): readonly number[] {
    return this.given.flatMap(({ bands, twice }, at) => [
      ...(bands.has(band) ? [at] : []),
      ...twice.filter((one) => one === band).map(() => at),
    ])
  }

  private give(band: number, asked: Set<number>): boolean {
    const mayTake = this.given.flatMap((given, at) =>
      given.bands.has(band) || this.seats[at]!.fixed.has(band) || asked.has(at) ? [] : [at],
    )
    const open = leastBy(
      mayTake.filter((at) => this.seats[at]!.room > 0),
      (at) => -this.seats[at]!.room,
    )
    if (open !== undefined) {
      this.given[open]!.bands.add(band)
      this.seats[open]!.room -= 1
      return true
    }
    for (const at of mayTake) {
      if (asked.has(at)) continue
      asked.add(at)
      for (const other of [...this.given[at]!.bands]) {
        this.given[at]!.bands.delete(other)
        if (this.give(other, asked)) {
          this.given[at]!.bands.add(band)
          return true
        }
        this.given[at]!.bands.add(other)
      }
    }
    return false
  }
}

/** From the lowest to the highest, a guest beside the host. */
function inOrder(ids: readonly string[], together: readonly MixedParty[], rank: ReadonlyMap<string, number>): string[] {
  const here = new Set(ids)
  const at = (id: string) => rank.get(id) ?? 0
  const parties = together.map((party) => party.ids.filter((id) => here.has(id))).filter((party) => party.length > 0)
  const inParty = new Set(parties.flat())
  return [...parties, ...ids.filter((id) => !inParty.has(id)).map((id) => [id])]
    .sort((a, b) => at(a[0]!) - at(b[0]!))
    .flat()
}
