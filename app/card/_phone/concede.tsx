'use client'

// A hole or the match conceded on the phone, and what was written by mistake taken back. Rules of Golf 3.2b.

import { useEffect, useId, useRef, useState } from 'react'
import type { PackMatch } from '@/lib/facts/card-pack'
import { type CardNow, scoresIn } from '@/lib/outbox/card-now'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { isOpenMatch } from '@/lib/outbox/matches-now'
import { isEndedOtherwise } from '@/lib/rules/matches/concede'
import { matchNow, playsIn } from '@/lib/rules/matches/match-now'
import { concededOn, concedes } from './match-words'

interface Props {
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly hole: number
  readonly refuse: (sentence: string | null) => void
}

type End = 'a' | 'b'

export function Concessions(props: Props) {
  const { matches, cards } = props.now
  return matches.map((one) => {
    const card = cards.find((each) => playsIn(one.match, each.card.entryId))
    const isOpen = card && props.now.pack?.status !== 'closed' && isOpenMatch(one, cards)
    return isOpen && !isEndedOtherwise(one.match) ? (
      <OneMatch key={one.match.id} {...props} one={one} card={card} />
    ) : null
  })
}

function OneMatch({ one, card, now, book, hole, refuse }: Props & { readonly one: PackMatch; readonly card: CardNow }) {
  const [asks, setAsks] = useState(false)
  const stands = matchNow(one.match, scoresIn(now.cards))
  const here = concededOn(one, hole)
  const { concededBy } = one.match
  // A hole that both have finished is not conceded any more.
  const isPlayed = here === null && stands.states.some((state) => state.hole === hole && state.up !== null)
  const isNeeded = here === null && !isPlayed && !stands.notNeeded.includes(hole)

  async function write(by: End | null, on: number | null) {
    setAsks(false)
    const done = await book.concede({ cardId: card.card.cardId, matchId: one.match.id, hole: on, by })
    refuse(done.ok ? null : done.sentence)
  }

  const back = concededBy ? { by: concededBy, on: null } : here ? { by: here, on: hole } : null
  if (back === null && stands.finished) return null
  return (
    <section className="c-ball c-concede" aria-label={`${one.a} against ${one.b}: concessions`}>
      {back && (
        <p className="c-ball-said" role="status">
          <b>{concedes(one, back.by, back.on)}.</b>{' '}
          <button type="button" className="btn plain" onClick={() => void write(null, back.on)}>
            Take it back
          </button>
        </p>
      )}
      {!stands.finished && (
        <button type="button" className="btn plain" onClick={() => setAsks(true)}>
          {now.matches.length > 1 ? `Concede: ${one.a} against ${one.b}` : 'Concede'}
        </button>
      )}
      {asks && (
        <AskWho
          one={one}
          hole={isNeeded ? hole : null}
          onWho={(by, on) => void write(by, on)}
          onClose={() => setAsks(false)}
        />
      )}
    </section>
  )
}

interface Asking {
  readonly one: PackMatch
  /** Null where the hole is over, or needs no score. */
  readonly hole: number | null
  readonly onWho: (by: End, hole: number | null) => void
  readonly onClose: () => void
}

function AskWho({ one, hole, onWho, onClose }: Asking) {
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  useEffect(() => dialog.current?.showModal(), [])
  const what = hole === null ? [null] : [hole, null]
  return (
    <dialog className="c-ask" ref={dialog} aria-labelledby={title} onClose={onClose}>
      <h2 id={title}>Who concedes?</h2>
      <p>A concession counts at once and is final (Rule 3.2b). Only what was written by mistake is taken back.</p>
      <div className="c-pad-acts c-concede-acts">
        {what.flatMap((on) =>
          (['a', 'b'] as const).map((end) => (
            <button type="button" className="btn" key={`${on} ${end}`} onClick={() => onWho(end, on)}>
              {concedes(one, end, on)}
            </button>
          )),
        )}
        <button type="button" className="btn" onClick={onClose}>
          Back
        </button>
      </div>
    </dialog>
  )
}
