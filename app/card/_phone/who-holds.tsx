'use client'

import { use, useEffect, useId, useRef, useState } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import type { CardPack, PackPartner } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { type Me, otherPhoneOf } from '@/lib/outbox/holding'
import { HomeScreenAdvice } from './home-screen'
import { KeptPage } from './use-kept-page'
import { clock, fullName, HOW_SCORES_GO, playersIn } from './words'

interface Props {
  readonly pack: CardPack
  readonly me: Me
  /** Null until somebody has said whose phone this is. */
  readonly holder: string | null
  readonly onHold: (entryId: EntryId) => void
}

interface Asking {
  readonly card: PackPartner
  readonly since: string
}

/** Whose phone this is. A name that is on another phone already is taken over on purpose only. */
export function WhoHolds({ pack, me, holder, onHold }: Props) {
  const kept = use(KeptPage)
  const [asking, setAsking] = useState<Asking | null>(null)
  return (
    <section className="c-sheet" aria-labelledby="who">
      <h1 id="who">Whose phone is this?</h1>
      <p className="lead">Scores typed here count as written by this player.</p>
      <ul className="c-who">
        {playersIn(pack).map((card) => {
          const other = otherPhoneOf(pack, card.entryId, me.phone)
          const isHere = card.entryId === holder
          return (
            <li key={card.entryId}>
              <button
                type="button"
                className="btn"
                aria-current={isHere || undefined}
                onClick={() => (other ? setAsking({ card, since: other.since }) : onHold(card.entryId))}
              >
                {fullName(card)}
                {(isHere || other) && (
                  <span className="small">
                    {isHere && 'this phone'}
                    {isHere && other && ', and '}
                    {other && `on another phone since ${clock(other.since)}`}
                  </span>
                )}
              </button>
            </li>
          )
        })}
      </ul>
      <p className="small" role="status">
        {kept === 'kept' ? 'The card is saved on this phone and works without a signal.' : null}
        {kept === 'keeping' ? 'The card is being saved on this phone: keep the signal a moment.' : null}
      </p>
      <p className="small">{HOW_SCORES_GO}</p>
      <HomeScreenAdvice />
      {pack.isDemo ? <DemoMark /> : null}
      {asking && (
        <AskTakeOver
          asking={asking}
          onClose={() => setAsking(null)}
          onYes={() => {
            setAsking(null)
            onHold(asking.card.entryId)
          }}
        />
      )}
    </section>
  )
}

function AskTakeOver({
  asking: { card, since },
  onYes,
  onClose,
}: {
  readonly asking: Asking
  readonly onYes: () => void
  readonly onClose: () => void
}) {
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog className="c-ask" ref={dialog} aria-labelledby={title} onClose={onClose}>
      <h2 id={title}>Does this phone take over from the other one?</h2>
      <p>
        {fullName(card)} is on another phone since {clock(since)}. Say yes only when that phone is no longer used for
        the scores. It is told so, and anything still entered on it is shown beside yours.
      </p>
      <div className="c-pad-acts">
        <button type="button" className="btn" onClick={onClose}>
          No, go back
        </button>
        <button type="button" className="btn" onClick={onYes}>
          Yes, use this phone now
        </button>
      </div>
    </dialog>
  )
}
