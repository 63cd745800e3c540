// What is keyed and not yet saved, for as long as the tab lives: a card left by a slip of the hand is found as it was.

import type { CardId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { beginKeying, type Keying, NO_PAPER, readKeyed, shownKeyed, withPaper } from './keying'

const key = (cardId: CardId) => `daybook-keyed ${cardId}`

/** The scores and the totals of the paper, as they stood in the fields. */
export function draftOf(cardId: CardId, holes: number): Keying | null {
  try {
    const [scores = '', out = '', back = '', total = ''] = (sessionStorage.getItem(key(cardId)) ?? '').split('|')
    const read = scores.split(' ').map((text) => readKeyed(text === '_' ? '' : text))
    if (scores === '' || read.length !== holes || read.includes('unreadable')) return null
    const begun = beginKeying(read as readonly WrittenScore[], NO_PAPER)
    return withPaper(withPaper(withPaper(begun, 'out', out), 'in', back), 'total', total)
  } catch {
    // A browser that keeps nothing for the tab: what is keyed lives as long as the page.
    return null
  }
}

/** Null forgets it. */
export function keepDraft(cardId: CardId, now: Pick<Keying, 'scores' | 'paper'> | null): void {
  try {
    if (now === null) sessionStorage.removeItem(key(cardId))
    else {
      const { out, in: back, total } = now.paper
      const scores = now.scores.map((score) => shownKeyed(score) || '_').join(' ')
      sessionStorage.setItem(key(cardId), [scores, out, back, total].join('|'))
    }
  } catch {
    // As above.
  }
}
