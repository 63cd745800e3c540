// A prize while it is being given: what the giving and its working both look at.

import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { OnePrize } from '@/lib/facts/terms'
import type { BoardRow, CompetitionBoard } from './views'

export interface Held {
  readonly prize: string
  readonly competition: string
  readonly division: string | null
  readonly place: number | null
}

/** A prize as it is being given: who may win it, who stands before whom, and what was given before it. */
export interface Giving {
  readonly prize: PrizeRecord
  readonly record: CompetitionRecord
  readonly board: CompetitionBoard
  readonly rule: OnePrize
  readonly division: { readonly name: string; readonly sentence: string } | null
  /** Everybody of the competition or the division with a place. */
  readonly placed: readonly BoardRow[]
  readonly mayWin: readonly BoardRow[]
  readonly held: ReadonlyMap<string, Held>
  readonly isGuest: (entryId: EntryId) => boolean
}

/** Has a prize already, and not as one of those who share the places of this very tie. */
export function isHeldElsewhere(row: BoardRow, { held, record, prize }: Pick<Giving, 'held' | 'record' | 'prize'>) {
  const has = held.get(row.entrant)
  if (has === undefined) return false
  const sameTie = has.competition === record.id && has.division === (prize.division ?? null) && has.place === row.place
  return !(sameTie && row.tied)
}
