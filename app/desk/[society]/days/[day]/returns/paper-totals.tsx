'use client'

import { useId } from 'react'

interface Props {
  readonly paper: readonly [number | null, number | null]
  readonly onPaper: (paper: readonly [number | null, number | null]) => void
  readonly halves: boolean
  readonly said: readonly string[]
}

const total = (text: string) => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : null)

/** The totals written on the paper, asked for to find a slip while the card is still in the hand; they are not kept. */
export function PaperTotals({ paper, onPaper, halves, said }: Props) {
  const id = useId()
  return (
    <div className="check-paper">
      <p className="paper-fields">
        <b>On the paper:</b>
        <label htmlFor={`${id}-out`}>{halves ? 'out' : 'all'}</label>
        <input
          id={`${id}-out`}
          className="cell fig"
          inputMode="numeric"
          maxLength={3}
          onChange={(event) => onPaper([total(event.target.value), paper[1]])}
        />
        {halves ? (
          <>
            <label htmlFor={`${id}-in`}>in</label>
            <input
              id={`${id}-in`}
              className="cell fig"
              inputMode="numeric"
              maxLength={3}
              onChange={(event) => onPaper([paper[0], total(event.target.value)])}
            />
          </>
        ) : null}
        {paper[0] !== null && paper[1] !== null ? <span>all {paper[0] + paper[1]}</span> : null}
      </p>
      <p role="status">{said.join(' ')}</p>
    </div>
  )
}
