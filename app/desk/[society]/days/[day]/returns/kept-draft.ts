// What is keyed and not yet kept, for as long as the tab lives: a card left by a slip of the hand is found as it was.

import type { WrittenScore } from '@/lib/facts/score-fact'
import { readKeyed, shownKeyed } from './keying'

const key = (cardId: string) => `daybook-keyed ${cardId}`

export function draftOf(cardId: string, holes: number): readonly WrittenScore[] | null {
  try {
    const kept = sessionStorage.getItem(key(cardId))
    const scores = kept?.split(' ').map((text) => readKeyed(text === '_' ? '' : text))
    if (scores?.length !== holes || scores.includes('unreadable')) return null
    return scores as readonly WrittenScore[]
  } catch {
    // A browser that keeps nothing for the tab: what is keyed lives as long as the page.
    return null
  }
}

/** Null forgets it. */
export function keepDraft(cardId: string, scores: readonly WrittenScore[] | null): void {
  try {
    if (scores === null) sessionStorage.removeItem(key(cardId))
    else sessionStorage.setItem(key(cardId), scores.map((score) => shownKeyed(score) || '_').join(' '))
  } catch {
    // As above.
  }
}
