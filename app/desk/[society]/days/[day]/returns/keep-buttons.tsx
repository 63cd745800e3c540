import type { RefObject } from 'react'
import { useFormNow } from '@/app/desk/_form/act-form'
import type { CardReturn } from '@/lib/boards/returns-view'
import { catchKeys } from './key-ahead'

interface KeepProps {
  readonly open: number
  readonly takeIn: RefObject<HTMLButtonElement | null>
  readonly card: CardReturn
}

export function KeepButtons({ open, card, takeIn }: KeepProps) {
  const { pending } = useFormNow()
  const words = open === card.holes.length ? 'nothing keyed yet' : `${open} ${open === 1 ? 'hole' : 'holes'} to key`
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
        {open === 0 ? 'Take in' : `Take in: ${words}`}
      </button>
      <button type="submit" name="then" value="keep" className="btn">
        Keep what is keyed
      </button>
    </p>
  )
}
