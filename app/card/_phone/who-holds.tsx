'use client'

import { use } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import type { CardPack } from '@/lib/facts/card-pack'
import { HomeScreenAdvice } from './home-screen'
import { KeptPage } from './use-kept-page'
import { fullName, HOW_SCORES_GO } from './words'

interface Props {
  readonly pack: CardPack
  readonly holder: string | null
  readonly onHold: (entryId: string) => void
}

export function WhoHolds({ pack, holder, onHold }: Props) {
  const kept = use(KeptPage)
  return (
    <section className="c-sheet" aria-labelledby="who">
      <h1 id="who">Who holds this phone?</h1>
      <p className="lead">What is entered here stands in this player’s name.</p>
      <ul className="c-who">
        {pack.cards.map((card) => (
          <li key={card.entryId}>
            <button
              type="button"
              className="btn"
              aria-current={card.entryId === holder || undefined}
              onClick={() => onHold(card.entryId)}
            >
              {fullName(card)}
              {card.entryId === holder && <span className="small">holds it now</span>}
            </button>
          </li>
        ))}
      </ul>
      <p className="small" role="status">
        {kept === 'kept' ? 'The card is whole on this phone: it opens and works without a signal.' : null}
        {kept === 'keeping' ? 'The card is being put on this phone: keep the signal a moment.' : null}
      </p>
      <p className="small">{HOW_SCORES_GO}</p>
      <HomeScreenAdvice />
      {pack.isDemo ? <DemoMark /> : null}
    </section>
  )
}
