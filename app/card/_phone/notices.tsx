'use client'

import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import type { KeptFact } from '@/lib/outbox/kept-fact'
import { figureOf } from './reading'
import { shortName } from './words'

/** What was written, in a line: "Jago, hole 11: 5". */
function written(now: GroupSnapshot, { fact }: KeptFact): string {
  const card = now.cards.find((each) => each.card.cardId === fact.cardId)
  const name = card && now.pack ? shortName(now.pack, card.card.entryId) : 'A card'
  if (fact.kind === 'signature') return `${name}, signed as ${fact.role}`
  if (fact.kind === 'drive') return `A drive on hole ${fact.hole}`
  if (fact.kind === 'ball-lost') return `The named ball on hole ${fact.hole}`
  if (fact.kind === 'concession')
    return `${fact.by === null ? 'Taking back the concession of' : 'Conceding'} ${fact.hole === null ? 'the match' : `hole ${fact.hole}`}`
  return `${name}, hole ${fact.hole}: ${fact.score === null ? 'cleared' : figureOf(fact.score)}`
}

/** Everything the holder has to be told: ended links, what the server would not take, and what a phone will not keep. */
export function Notices({
  now,
  book,
  refusal,
  canKeepPage,
}: {
  now: GroupSnapshot
  book: GroupBook
  refusal: string | null
  canKeepPage: boolean
}) {
  const { answered } = now
  return (
    <>
      {refusal && (
        <div className="notice differs c-notice" role="alert">
          <p className="sc">Not done</p>
          <p>{refusal}</p>
        </div>
      )}
      {now.ended && (
        <div className="notice differs c-notice" role="alert">
          <p className="sc">Link ended</p>
          <p>
            {now.ended.sentence}{' '}
            {now.waitingScores + now.waitingSignatures > 0 &&
              'What is not sent stays on this phone: show it at the desk.'}
          </p>
        </div>
      )}
      {now.inPageOnly > 0 && (
        <div className="notice differs c-notice" role="alert">
          <p className="sc">Only in this page</p>
          <p>
            <b>
              {now.inPageOnly === 1 ? 'One entry is' : `${now.inPageOnly} entries are`} not written down on this phone.
            </b>{' '}
            {now.whyNotKept}
          </p>
        </div>
      )}
      {!now.lasting && (
        <div className="notice waits c-notice">
          <p className="sc">Nothing is kept</p>
          <p>
            This window keeps nothing once it is closed (a private window does that). Open the link in an ordinary
            window, or keep a paper card as well.
          </p>
        </div>
      )}
      {now.lasting && !canKeepPage && (
        <div className="notice waits c-notice">
          <p className="sc">Needs a signal to open</p>
          <p>
            Scores are kept on this phone, but this window can’t open the card again without a signal (a full phone or a
            private window does that). Leave it open during the round.
          </p>
        </div>
      )}
      {answered.length > 0 && (
        <div className="notice differs c-notice" role="alert">
          <p className="sc">Came back</p>
          <ul className="c-answered">
            {answered.map((kept) => (
              <li key={kept.seq}>
                <b>{written(now, kept)}.</b> {kept.sentence}
              </li>
            ))}
          </ul>
          <p className="acts">
            <button type="button" className="btn" onClick={() => void book.markSeen(answered.map((kept) => kept.seq))}>
              Read
            </button>
          </p>
        </div>
      )}
    </>
  )
}
