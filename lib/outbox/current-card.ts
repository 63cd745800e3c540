// Which card somebody means who opens "the card" from the home screen.

import type { CardHere } from './on-this-phone'

/** "2026-06-13" on the phone's own calendar. */
export const dateOnPhone = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-')

/** A card of today or of a day to come, and any that still has something to send. */
export const isCurrent = (card: CardHere, today: string): boolean =>
  card.waitingScores + card.waitingSignatures > 0 || (!card.ended && card.date >= today)

/** The only one it can be; null where there is none, or more than one. */
export function onlyCurrent(cards: readonly CardHere[], today: string): CardHere | null {
  const current = cards.filter((card) => isCurrent(card, today))
  return current.length === 1 ? (current[0] ?? null) : null
}
