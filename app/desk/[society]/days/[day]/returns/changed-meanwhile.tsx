'use client'

import { Notice } from '@/app/_parts/notice'
import { scoreInWords } from '@/lib/boards/in-words'
import type { CardReturn } from '@/lib/boards/returns-view'
import type { Keying } from './keying'

interface Props {
  readonly card: CardReturn
  readonly now: Keying
  readonly places: readonly number[]
  readonly onSettle: (whose: 'mine' | 'theirs') => void
}

/** Another desk or a phone has written on holes that stand otherwise in the fields: nothing is chosen for the officer. */
export function ChangedMeanwhile({ card, now, places, onSettle }: Props) {
  if (places.length === 0) return null
  return (
    <Notice kind="differs" word="Changed by somebody else" announced>
      <p>Since you began to enter this card, these holes were changed:</p>
      <ul>
        {places.map((place) => {
          const hole = card.holes[place]
          if (!hole) return null
          const by = hole.ruled ? 'a ruling' : (hole.written[0]?.name ?? 'another desk')
          return (
            <li key={hole.hole}>
              Hole {hole.hole}: {scoreInWords(now.scores[place] ?? null)} in your field, {scoreInWords(hole.score)} by{' '}
              {by === 'the desk' ? 'another desk' : by}.
            </li>
          )
        })}
      </ul>
      <p className="acts">
        <button type="button" className="btn" onClick={() => onSettle('mine')}>
          Keep mine
        </button>
        <button type="button" className="btn" onClick={() => onSettle('theirs')}>
          Take theirs
        </button>
      </p>
    </Notice>
  )
}
