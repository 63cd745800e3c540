// What is still to do on a card, or how far it has come, in the words every screen uses.

import { cardProgress, progressInWords } from '@/lib/boards/card-progress'
import type { CardPack } from '@/lib/facts/card-pack'
import { type CardNow, holesInPlay } from '@/lib/outbox/card-now'
import { holeList, shortName } from './words'

const FEW = 3

export function standing(pack: CardPack, card: CardNow): string {
  const order = holesInPlay(pack).filter((hole) => !card.notNeeded.includes(hole))
  const progress = cardProgress({ state: card.state, order, missing: card.missing })
  const words = progressInWords(progress)
  if (card.state !== 'out') return words
  if (card.isOver) return 'not handed in: the day is closed'
  if (card.closed) return 'signed by both, not yet sent'
  if (card.notAgreed.length > 0) return `two different scores on ${holeList(card.notAgreed)}`
  if (progress.state === 'on-hole') {
    const last = order.findLastIndex((hole) => !card.missing.includes(hole))
    const gaps = order.slice(0, last).filter((hole) => card.missing.includes(hole))
    if (gaps.length > 0 && gaps.length <= FEW) return `missing: ${holeList(gaps)}`
    return card.missing.length <= FEW ? `next: hole ${progress.hole}` : words
  }
  if (progress.state !== 'finished') return words
  const [off] = card.signaturesOff
  if (off) return `${off.entryId ? shortName(pack, off.entryId) : 'the desk'} to sign again`
  const [signed] = card.signatures
  return signed ? `finished, signed by the ${signed.role}` : words
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

/** The same at the beginning of a line. */
export const standingFirst = (pack: CardPack, card: CardNow) => capital(standing(pack, card))
