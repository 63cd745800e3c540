'use client'

import { use } from 'react'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { KeptPage } from './use-kept-page'
import { stateSentence } from './words'

const MOST_STROKES = 5

/** Always there: what is only on this phone, or that all of it is received. */
export function StateLine({ now, says = null }: { readonly now: GroupSnapshot; readonly says?: string | null }) {
  const kept = use(KeptPage)
  const held = now.waitingScores + now.waitingSignatures
  return (
    <p className={held > 0 ? 'c-sent held' : 'c-sent'} role="status">
      {held > 0 && (
        <span className="tally" aria-hidden="true">
          {Array.from({ length: Math.min(held, MOST_STROKES) }, (_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: tally strokes are all alike
            <i key={index} />
          ))}
        </span>
      )}
      <span>
        {says ?? stateSentence(now, kept)}
        {says === null && held > 0 && now.serverSays && `. ${now.serverSays}`}
      </span>
    </p>
  )
}
