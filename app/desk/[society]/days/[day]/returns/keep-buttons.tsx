import type { RefObject } from 'react'
import { useFormNow } from '@/app/desk/_form/act-form'
import type { CardReturn } from '@/lib/boards/returns-view'
import { catchKeys } from './key-ahead'

interface KeepProps {
  readonly open: number
  /** A total of the paper differs: what accepting the holes as they are comes to, such as "34 points". */
  readonly although: string | null
  readonly takeIn: RefObject<HTMLButtonElement | null>
  readonly card: CardReturn
  /** Handed in from phones: nothing to save, only to accept. */
  readonly acceptOnly: boolean
}

export function KeepButtons({ open, although, card, takeIn, acceptOnly }: KeepProps) {
  const { pending } = useFormNow()
  const words = open === card.holes.length ? 'nothing entered yet' : `${open} ${open === 1 ? 'hole' : 'holes'} to enter`
  const label = open > 0 ? `Accept: ${words}` : although ? `The holes are right: accept ${although}` : 'Accept'
  return (
    <p className="acts">
      <button
        ref={takeIn}
        type="submit"
        name="then"
        value="take-in"
        className={open === 0 ? 'btn first' : 'btn'}
        aria-disabled={pending || open > 0 || undefined}
        onClick={(event) => {
          if (open > 0) event.preventDefault()
          else catchKeys(card.cardId)
        }}
      >
        {label}
      </button>
      {acceptOnly ? null : (
        <button type="submit" name="then" value="keep" className="btn" data-saves="">
          Save what is entered
        </button>
      )}
    </p>
  )
}
