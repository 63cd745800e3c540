'use client'

import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { HOW_SCORES_GO } from './words'

/** Before the first pack is on the phone: opening, no signal, or a link that leads nowhere. */
export function NoPackYet({ now, retry }: { now: GroupSnapshot | null; retry: () => void }) {
  if (now?.ended) {
    return (
      <section className="c-sheet" role="alert">
        <p className="sc second">The card</p>
        <h1>This link opens no card</h1>
        <p>{now.ended.sentence}</p>
        <p>
          <a className="btn first" href="/card#code">
            Type the group’s code
          </a>
        </p>
      </section>
    )
  }
  if (now?.outOfReach) {
    return (
      <section className="c-sheet" role="alert">
        <p className="sc second">The card</p>
        <h1>No signal yet</h1>
        <p>
          This phone has not had this card before, and can’t reach it now. Once it has opened with a signal it works
          without one. Until then, write on the paper card.
        </p>
        <p>
          <button type="button" className="btn first" onClick={retry}>
            Try again
          </button>
        </p>
      </section>
    )
  }
  return (
    <section className="c-sheet" aria-busy="true">
      <p className="sc second">The card</p>
      <h1>Opening the card</h1>
      {/* In the page itself, so that somebody with one bar of signal has it to read while the scripts travel. */}
      <p>{HOW_SCORES_GO}</p>
      <noscript>
        <p>The card needs scripts, which this browser has switched off. Please use the paper card.</p>
      </noscript>
    </section>
  )
}
