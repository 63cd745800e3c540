// From one hole's working to the next one's, and to the total's.

import type { CardWorking } from '@/lib/boards/card-views'
import { lastHoleOf } from '@/lib/rules/hole-numbers'
import { cardAt } from './addresses'

export function NextHoles({ working, c }: { working: CardWorking; c: number }) {
  const { societySlug, daySlug, entryId, hole } = working
  const first = working.round.firstHole
  const last = lastHoleOf(working.round)
  const to = (next: number | 'all') => cardAt(societySlug, daySlug, entryId, { c, hole: next })
  return (
    <nav className="wk-next no-print" aria-label="Other figures of this card">
      {hole !== null && hole > first && <a href={to(hole - 1)}>Hole {hole - 1}</a>}
      {hole !== null && hole < last && <a href={to(hole + 1)}>Hole {hole + 1}</a>}
      {hole !== null ? <a href={to('all')}>The total</a> : <a href={to(first)}>Hole by hole</a>}
    </nav>
  )
}
