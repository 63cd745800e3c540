'use client'

import type { CardPack } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { hashOf } from './use-place'
import { clock, shortName } from './words'

interface Props {
  readonly pack: CardPack
  readonly now: GroupSnapshot
  readonly book: GroupBook
  readonly holder: EntryId
}

/** Another phone has this player's name: the earlier one is told, the later one is asked. */
export function TwoPhones({ pack, now, book, holder }: Props) {
  const { holding } = now
  if (holding.kind === 'alone' || now.takenRead) return null
  const name = shortName(pack, holder)
  const since = clock(holding.since)
  return (
    <div className="notice waits c-notice" role="alert">
      <p className="sc">Two phones</p>
      {holding.kind === 'taken' ? (
        <p>
          {name} is on another phone as well, since {since}. Scores you still enter here are shown beside those of the
          other phone.
        </p>
      ) : (
        <p>
          {name} is on another phone as well, since {since}. Which of the two keeps the scores?
        </p>
      )}
      <p className="acts">
        {holding.kind === 'taken' ? (
          <button type="button" className="btn" onClick={() => void book.readTaken(holding.since)}>
            I have read it
          </button>
        ) : (
          <button type="button" className="btn" onClick={() => void book.hold(holder)}>
            This phone
          </button>
        )}
        <a className="btn" href={hashOf({ at: 'phone' })}>
          {holding.kind === 'taken' ? 'Whose phone is this?' : 'The other one'}
        </a>
      </p>
    </div>
  )
}
