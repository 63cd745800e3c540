'use client'

import { countsInShort, scoresThatCount } from '@/lib/boards/scores-that-count'
import type { CardPack } from '@/lib/facts/card-pack'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { allBallsLost } from './side-ball'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly hole: number
}

/** How many scores count on the hole: one sentence, or one line for all competitions, so that four players stay in sight. */
export function CountsHere({ pack: { counting = [] }, now, hole }: Props) {
  const [first] = counting
  if (!first) return null
  const isLost = allBallsLost(now, hole)
  if (counting.length === 1)
    return (
      <p className="c-other">
        <b>{scoresThatCount(first.count, hole, first.size, isLost)}</b>
      </p>
    )
  return (
    <p className="c-other">
      {counting.map(({ competition, count, size }, at) => (
        <span key={competition}>
          {competition}: <b>{countsInShort(count, hole, size, isLost)}</b>
          {at < counting.length - 1 ? '; ' : ''}
        </span>
      ))}
    </p>
  )
}
