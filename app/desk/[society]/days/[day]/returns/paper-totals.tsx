'use client'

import { type RefObject, useId } from 'react'

export interface Paper {
  readonly all: number | null
  readonly out: number | null
  readonly in: number | null
}

export const NO_PAPER: Paper = { all: null, out: null, in: null }

interface Props {
  readonly onPaper: (paper: Partial<Paper>) => void
  readonly halves: boolean
  readonly said: readonly string[]
  /** Under the hand when the last hole is keyed. */
  readonly first: RefObject<HTMLInputElement | null>
}

const total = (text: string) => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : null)

/** The totals written on the paper, asked for to find a slip while the card is still in the hand; they are not kept. */
export function PaperTotals({ onPaper, halves, said, first }: Props) {
  const id = useId()
  const fields = halves ? (['all', 'out', 'in'] as const) : (['all'] as const)
  return (
    <div className="check-paper">
      <p className="paper-fields">
        <b>On the paper:</b>
        {fields.map((part) => (
          <span key={part}>
            <label htmlFor={`${id}-${part}`}>{part === 'all' ? 'total' : part}</label>{' '}
            <input
              id={`${id}-${part}`}
              ref={part === 'all' ? first : undefined}
              className="cell fig"
              inputMode="numeric"
              maxLength={3}
              data-paper={part}
              onChange={(event) => onPaper({ [part]: total(event.target.value) })}
            />
          </span>
        ))}
      </p>
      <p role="status">{said.join(' ')}</p>
    </div>
  )
}
