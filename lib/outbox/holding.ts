// Whose phone this is, and whether another phone says it is the same person's. A name is taken over on purpose only;
// the scores the other phone had sent by then may be corrected from here, later ones stay its own.

import type { CardPack, PackHolder } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import type { TakenOver } from './kept-fact'

/** A name on a phone: the writer of what is entered here. */
export interface Me {
  readonly holder: EntryId | null
  /** Mark of this phone in its group. */
  readonly phone: string
  readonly tookOver: readonly TakenOver[]
}

export type Holding =
  | { readonly kind: 'alone' }
  /** Another phone had the name before, and nobody has been asked on this one. */
  | { readonly kind: 'asked'; readonly since: string }
  /** Another phone has taken the name over since. */
  | { readonly kind: 'taken'; readonly since: string }

const holds = (one: PackHolder, { entryId, phone }: Pick<PackHolder, 'entryId' | 'phone'>) =>
  one.entryId === entryId && one.phone === phone

/** The other phone that says it is this player's, the newest first; null when there is none. */
export function otherPhoneOf(pack: CardPack, entryId: EntryId, phone: string): PackHolder | null {
  const others = (pack.holders ?? []).filter((one) => one.entryId === entryId && one.phone !== phone)
  return others.reduce<PackHolder | null>((last, one) => (last && last.since >= one.since ? last : one), null)
}

/** What taking the name means for the other phones of it: each up to what it has sent by now. */
export function takingOver(pack: CardPack | null, entryId: EntryId, me: Me): readonly TakenOver[] {
  const others = (pack?.holders ?? []).filter((one) => one.entryId === entryId && one.phone !== me.phone)
  const now = others.map(({ phone, since, lastSeq }) => ({ entryId, phone, since, seq: lastSeq }))
  return [...me.tookOver.filter((one) => !now.some((fresh) => holds({ ...one, lastSeq: one.seq }, fresh))), ...now]
}

export function holdingNow(pack: CardPack | null, me: Me): Holding {
  const { holder, phone, tookOver } = me
  const all = pack?.holders ?? []
  const mine = all.find((one) => one.entryId === holder && one.phone === phone)
  const others = all.filter((one) => one.entryId === holder && one.phone !== phone)
  const open = others.filter((one) => !tookOver.some((taken) => holds(one, taken) && taken.since === one.since))
  const since = open
    .map((one) => one.since)
    .sort()
    .at(-1)
  if (since === undefined) return { kind: 'alone' }
  return mine && mine.since < since ? { kind: 'taken', since } : { kind: 'asked', since }
}
