'use client'

import { type ReactNode, useId, useState } from 'react'

/** Beside the card on a wide screen; on a narrow one folded away, so that the card comes first. */
export function FoldOnPhone({ line, children }: { readonly line: string; readonly children: ReactNode }) {
  const [isOpen, setIsOpen] = useState(false)
  const id = useId()
  return (
    <div className={isOpen ? 'cards-fold open' : 'cards-fold'}>
      <button
        type="button"
        className="fold-act"
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setIsOpen(!isOpen)}
      >
        <span>{line}</span>
        <span className="fold-word">{isOpen ? 'fold' : 'all cards'}</span>
      </button>
      <div id={id} className="folded">
        {children}
      </div>
    </div>
  )
}
