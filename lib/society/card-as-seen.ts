// A card is entered and accepted as an officer saw it. What another desk or a phone has changed since is named, hole by
// hole, instead of being written over.

import type { CurrentCard, CurrentHole } from '@/lib/boards/current-card'
import { listed, scoreInWords } from '@/lib/boards/in-words'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type Refused, refused } from '@/lib/result'

interface Seen {
  /** The card as it stood when the officer began. */
  readonly was: readonly WrittenScore[]
  /** What is to stand on it now. */
  readonly scores: readonly WrittenScore[]
  readonly isAccepted: boolean
}

/** Null where nothing was changed, or where both came to the same. */
export function changedSince(card: CurrentCard, { was, scores, isAccepted }: Seen): Refused<'card-moved-on'> | null {
  const changed = card.holes.flatMap((line, at) => {
    const [before = null, mine = null] = [was[at], scores[at]]
    return line.score === before || line.score === mine ? [] : [{ line, mine }]
  })
  if (changed.length === 0) return null
  const holes = `${changed.length === 1 ? 'hole' : 'holes'} ${listed(changed.map(({ line }) => String(line.hole)))}`
  return refused(
    'card-moved-on',
    isAccepted
      ? `Another desk has accepted this card since you opened it, with something else on ${holes}. To change it, open the card again.`
      : `Since you opened this card, ${holes} ${changed.length === 1 ? 'was' : 'were'} changed by somebody else. Look at the card as it is now, then press again.`,
    changed.map(({ line, mine }) => ({
      place: `hole ${line.hole}`,
      sentence: `Hole ${line.hole}: ${scoreInWords(mine)} from you, ${scoreInWords(line.score)} ${from(line)}.`,
    })),
  )
}

function from({ ruledBy, opinions }: CurrentHole): string {
  if (ruledBy !== null) return `by ruling ${ruledBy}`
  const [last] = opinions
  if (!last) return 'now'
  return last.writer === 'desk' ? 'from another desk' : 'from a phone'
}
