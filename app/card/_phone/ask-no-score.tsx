'use client'

import { useEffect, useId, useRef } from 'react'

interface Props {
  readonly firstName: string
  readonly hole: number
  readonly onYes: () => void
  readonly onClose: () => void
}

/** In stroke play a hole without a score ends the card: one question first. */
export function AskNoScore({ firstName, hole, onYes, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog className="c-ask" ref={dialog} aria-labelledby={title} onClose={onClose}>
      <h2 id={title}>No score on hole {hole}?</h2>
      <p>
        This is stroke play: without a score on every hole {firstName}’s card does not count. Other competitions on the
        same card may go on.
      </p>
      <div className="c-pad-acts">
        <button type="button" className="btn" onClick={onClose}>
          Back
        </button>
        <button type="button" className="btn" onClick={onYes}>
          No score for {firstName}
        </button>
      </div>
    </dialog>
  )
}
