// A prize while it is being given: what the giving and its working both look at.

import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { PrizeRule } from './prize-rule'
import type { BoardRow, CompetitionBoard } from './views'

/** What somebody holds, and as one of which tie that stands; one object for all who share in it. */
export interface Held {
  /** What was won first. */
  readonly prize: string
  readonly competition: string
  readonly division: string | null
  readonly place: number | null
  /** How many shared: so many prizes are theirs together at the most. */
  readonly sharers: number
  /** Places of the prizes they have shared so far. */
  readonly places: Set<number>
}

/** A prize as it is being given: who may win it, who stands before whom, and what was given before it. */
export interface Giving {
  readonly prize: PrizeRecord
  readonly record: CompetitionRecord
  readonly board: CompetitionBoard
  readonly rule: PrizeRule
  readonly division: { readonly name: string; readonly sentence: string } | null
  /** Everybody of the competition or the division with a place. */
  readonly placed: readonly BoardRow[]
  readonly mayWin: readonly BoardRow[]
  readonly held: ReadonlyMap<string, Held>
  readonly isGuest: (entryId: EntryId) => boolean
  /** A player of a side, by name. */
  readonly nameOf: (entryId: EntryId) => string
}

/** Whose prize it is: the players where a side's prize counts for each of them, otherwise the entrant as such. */
export const holdersOf = (row: BoardRow, { sides }: PrizeRule): readonly string[] =>
  sides === 'counted' ? row.entryIds : [row.entrant]

export interface HeldBy {
  /** The player of a side who has it; null where the entrant itself has it. */
  readonly player: string | null
  readonly prize: string
}

/**
 * The prize that keeps this row from another. Those who share the places of a tie that stands take the prizes of these
 * places together: one prize of each place, and no more prizes than there are of them.
 */
export function heldElsewhere(
  row: BoardRow,
  { held, record, prize, rule, nameOf }: Pick<Giving, 'held' | 'record' | 'prize' | 'rule' | 'nameOf'>,
): HeldBy | null {
  if (rule.onePrize === 'as-many') return null
  const blocks = (has: Held) => {
    const sameTie =
      row.tied && has.competition === record.id && has.division === (prize.division ?? null) && has.place === row.place
    return !(sameTie && has.places.size < has.sharers && !has.places.has(prize.place))
  }
  for (const holder of holdersOf(row, rule)) {
    const has = held.get(holder)
    if (has === undefined || !blocks(has)) continue
    const player = row.entryIds.length > 1 ? row.entryIds.find((id) => id === holder) : undefined
    return { player: player === undefined ? null : nameOf(player), prize: has.prize }
  }
  return null
}

/** Notes who has it now; whoever shares another prize of the same tie holds what was held before. */
export function nowHeld(
  shared: readonly BoardRow[],
  { prize, record, rule }: Pick<Giving, 'prize' | 'record' | 'rule'>,
  held: Map<string, Held>,
): void {
  const first: Held = {
    prize: prize.name,
    competition: record.id,
    division: prize.division ?? null,
    place: shared[0]?.place ?? null,
    sharers: shared.length,
    places: new Set([prize.place]),
  }
  for (const row of shared)
    for (const holder of holdersOf(row, rule)) {
      const has = held.get(holder)
      if (has === undefined) held.set(holder, first)
      else has.places.add(prize.place)
    }
}
