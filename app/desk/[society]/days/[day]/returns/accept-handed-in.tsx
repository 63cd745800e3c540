'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'
import type { DayId } from '@/lib/facts/ids'
import { lineOf } from './keying'

interface Props {
  readonly dayId: DayId
  readonly cards: readonly CardReturn[]
  readonly action: FormAction
}

/** Cards that came in complete, agreed and signed are accepted together; the word that it is done stays behind them. */
export function AcceptHandedIn({ dayId, cards, action }: Props) {
  const ready = cards.filter((card) => card.isReady)
  return (
    <ActForm action={action} label="Accept the cards handed in" className="accept-all">
      {ready.length === 0 ? null : (
        <>
          <input type="hidden" name="dayId" value={dayId} />
          {ready.map((card) => (
            <input
              key={card.cardId}
              type="hidden"
              name="card"
              value={`${card.cardId} ${lineOf(card.holes.map((hole) => hole.score))}`}
            />
          ))}
          <p className="acts">
            <Send>
              {ready.length === 1
                ? '1 handed in, nothing open: accept it'
                : `${ready.length} handed in, nothing open: accept them`}
            </Send>
          </p>
        </>
      )}
    </ActForm>
  )
}
