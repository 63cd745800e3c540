'use client'

import { ordinal } from '@/lib/boards/in-words'
import type { CardPack } from '@/lib/facts/card-pack'
import type { CardNow } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import { nextJob } from './next-job'
import { TOTAL_WORD, totalFigure, totalOf } from './reading'
import { standing } from './standing'
import { StateLine } from './state-line'
import { hashOf } from './use-place'
import { cardName, clock, placeWords, shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly card: CardNow
  readonly onWhole: () => void
}

/** A receipt, and the next job of the group as the one large button. */
export function HandedIn({ pack, now, card, onWhole }: Props) {
  const total = totalOf(pack.reading, card.holes)
  const place = pack.position?.places[card.card.entryId]
  const job = nextJob(pack, now.cards, card.card.entryId)
  const board = `/${pack.societySlug}/days/${pack.daySlug}`
  const name = card.card.sharedWith ? cardName(card.card) : shortName(pack, card.card.entryId)
  return (
    <>
      <section className="c-sheet" aria-labelledby="in">
        <div>
          <h1 id="in">
            {name}’s card is{' '}
            {card.state === 'taken-in' ? 'accepted' : card.state === 'handed-in' ? 'handed in' : 'signed'}
          </h1>
          <p className="second" role="status">
            {receipt(card, now)}
          </p>
        </div>
        <dl className="c-heroes">
          <div>
            <dt>{TOTAL_WORD[pack.reading]}</dt>
            <dd className="fig trim">{totalFigure(pack.reading, total)}</dd>
          </div>
          {pack.reading !== 'gross' && (
            <div>
              <dt>gross</dt>
              <dd className="fig trim lesser">{total.gross ?? '–'}</dd>
            </div>
          )}
          {place && (
            <div>
              <dt>place so far</dt>
              <dd className="fig trim lesser">{ordinal(place.place)}</dd>
            </div>
          )}
        </dl>
        {pack.position && <p className="small second">{placeWords(pack, card.card.entryId, now.packAt)}</p>}
        <ul className="c-four">
          {now.cards.map((each) => (
            <li key={each.card.cardId} className={job?.entryId === each.card.entryId ? 'next' : undefined}>
              <span>{cardName(each.card)}</span>
              <span>{standing(pack, each)}</span>
            </li>
          ))}
        </ul>
      </section>
      <footer className="c-foot">
        <StateLine now={now} />
        <div className="c-act">
          <a className="btn first wide" href={job ? hashOf(job.place) : board}>
            {job ? `Next: ${job.words}` : 'See the board'}
          </a>
          <p>
            <button type="button" className="btn plain" onClick={onWhole}>
              The whole card
            </button>
            {job && <a href={board}>See the board</a>}
          </p>
        </div>
      </footer>
    </>
  )
}

function receipt(card: CardNow, now: GroupSnapshot): string {
  if (card.state === 'taken-in') return 'The desk has checked it. Only the committee can change it now.'
  if (card.state === 'handed-in') {
    const at = now.lastReceivedAt ? ` at ${clock(now.lastReceivedAt)}` : ''
    return `Received at the desk${at}. Keep the paper card until the result is out.`
  }
  return 'Both have signed. It is handed in when this phone has a signal: leave the card open.'
}
