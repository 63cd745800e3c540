// A signature that no longer covers the card, and why it came off.

import type { CardPack, SignatureOff } from '@/lib/facts/card-pack'
import type { CardNow } from '@/lib/outbox/card-now'
import { figureOf } from './reading'
import { shortName } from './words'

const whose = (pack: CardPack, { entryId, role }: SignatureOff) =>
  entryId === null ? `The ${role}’s signature on paper` : `${shortName(pack, entryId)}’s signature`

function because(card: CardNow, { hole, from, to }: SignatureOff): string {
  if (hole === null) return 'a score was changed meanwhile'
  if (card.notAgreed.includes(hole)) return `there are two different scores on hole ${hole}`
  return to === null
    ? `hole ${hole} has no score now`
    : `hole ${hole} changed from ${from === null ? 'none' : figureOf(from)} to ${figureOf(to)}`
}

/** "Freya’s signature came off because hole 5 changed from 4 to 2: sign again." One sentence a signature; empty where none came off. */
export function signaturesOffInWords(pack: CardPack, card: CardNow): readonly string[] {
  if (card.closed) return []
  return card.signaturesOff.map((off) => `${whose(pack, off)} came off because ${because(card, off)}: sign again.`)
}

/** The same in one short line, on the hole that did it. */
export function signatureOffOnHole(pack: CardPack, cards: readonly CardNow[], hole: number): string | null {
  for (const card of cards) {
    const off = card.closed ? undefined : card.signaturesOff.find((one) => one.hole === hole)
    if (off)
      return `${off.entryId === null ? `The ${off.role}` : shortName(pack, off.entryId)} must sign again: hole ${hole} changed`
  }
  return null
}
