'use client'

import { Notice } from '@/app/_parts/notice'
import { scoreInWords } from '@/lib/boards/in-words'
import type { CardReturn } from '@/lib/boards/returns-view'
import type { Keying } from './keying'
import type { Replaced } from './use-keying'

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

/** Somebody else has handed in or accepted the card while it was entered here: what stood in the fields is not lost. */
export function AcceptedMeanwhile({ replaced }: { readonly replaced: readonly Replaced[] }) {
  if (replaced.length === 0) return null
  return (
    <Notice kind="differs" word="Finished by somebody else" announced>
      <p>This card was handed in or accepted while you were entering it. What you had entered reads otherwise there:</p>
      <ul>
        {replaced.map(({ hole, entered, counts }) => (
          <li key={hole}>
            Hole {hole}: {scoreInWords(entered)} in your field, {scoreInWords(counts)} on the card.
          </li>
        ))}
      </ul>
      <p>If yours is right, open the card again and enter it.</p>
    </Notice>
  )
}
