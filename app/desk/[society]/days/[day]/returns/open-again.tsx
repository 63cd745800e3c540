'use client'

import { useEffect } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'
import { keepDraft } from './kept-draft'

interface Props {
  readonly card: Pick<CardReturn, 'cardId' | 'name'>
  readonly action: FormAction
  /** Not asked for beside the word that a card is accepted; needed once a result is out. */
  readonly reason: 'none' | 'optional' | 'needed'
}

/** A slip of the hand needs no decision of the committee: the card is opened, entered again, and the record says so. */
export function OpenAgain({ card, action, reason }: Props) {
  // It is in the book now: what the tab remembers of entering it is out of date.
  useEffect(() => keepDraft(card.cardId, null), [card.cardId])
  return (
    <ActForm action={action} className="open-again" label={`Open the card of ${card.name} again`}>
      <input type="hidden" name="cardId" value={card.cardId} />
      {reason === 'none' ? null : (
        <Field
          name="reason"
          label={reason === 'needed' ? 'Why, a result is out already' : 'Why (optional)'}
          required={reason === 'needed'}
          maxLength={400}
        />
      )}
      <Send kind="plain">Open this card again</Send>
    </ActForm>
  )
}
