// What the group does next once a card is handed in: the next card to sign, else the hole that keeps one back.

import type { CardPack } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import type { CardNow } from '@/lib/outbox/card-now'
import type { Place } from './use-place'
import { cardName, shortName } from './words'

export interface NextJob {
  readonly entryId: EntryId
  /** "Freya’s card", "hole 18". */
  readonly words: string
  readonly place: Place
}

/** Null when every card of the group is signed. `after`: whose card was just handed in; the next in the group comes first. */
export function nextJob(pack: CardPack, cards: readonly CardNow[], after: string): NextJob | null {
  const at = cards.findIndex((one) => one.card.entryId === after)
  const open = [...cards.slice(at + 1), ...cards.slice(0, at + 1)].filter((one) => !one.closed && !one.isOver)
  const ready = open.find((one) => one.missing.length === 0 && one.notAgreed.length === 0)
  if (ready) {
    const { entryId } = ready.card
    const whose = ready.card.sharedWith ? cardName(ready.card) : shortName(pack, entryId)
    return { entryId, words: `${whose}’s card`, place: { at: 'card', entryId } }
  }
  const [first] = open
  const hole = first && (first.notAgreed[0] ?? first.missing[0])
  return first && hole !== undefined
    ? { entryId: first.card.entryId, words: `hole ${hole}`, place: { at: 'hole', hole } }
    : null
}
