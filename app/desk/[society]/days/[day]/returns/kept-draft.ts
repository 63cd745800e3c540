// What is keyed and not yet saved, for as long as the tab lives: a card left by a slip of the hand is found as it was.

import type { CardId } from '@/lib/facts/ids'
import { beginKeying, type Keying, lineOf, NO_PAPER, readLine, withPaper } from './keying'

const key = (cardId: CardId) => `daybook-keyed ${cardId}`

/** The scores and the totals of the paper, as they stood in the fields, with the card they were written over. */
export function draftOf(cardId: CardId, holes: number): Keying | null {
  try {
    const [scores = '', out = '', back = '', total = '', under = ''] = (
      sessionStorage.getItem(key(cardId)) ?? ''
    ).split('|')
    const [read, base] = [readLine(scores, holes), readLine(under, holes)]
    if (read === null || base === null) return null
    const begun = { ...beginKeying(read, NO_PAPER), base }
    return withPaper(withPaper(withPaper(begun, 'out', out), 'in', back), 'total', total)
  } catch {
    // A browser that keeps nothing for the tab: what is keyed lives as long as the page.
    return null
  }
}

/** Null forgets it. */
export function keepDraft(cardId: CardId, now: Pick<Keying, 'scores' | 'paper' | 'base'> | null): void {
  try {
    if (now === null) sessionStorage.removeItem(key(cardId))
    else {
      const { out, in: back, total } = now.paper
      sessionStorage.setItem(key(cardId), [lineOf(now.scores), out, back, total, lineOf(now.base)].join('|'))
    }
  } catch {
    // As above.
  }
}
