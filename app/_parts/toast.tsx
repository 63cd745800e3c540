'use client'

import type { ReactNode } from 'react'

/** Words that are read out when they change and shown to nobody: the board's changes, the card's state. */
export function Said({ words }: { words: string }) {
  return (
    <p className="unseen" role="status" aria-live="polite" aria-atomic="true">
      {words}
    </p>
  )
}

/**
 * What has just been done, with the act that takes it back. It stays until it is answered or replaced: passing words
 * that vanish by a clock cannot be read by everybody.
 */
export function Toast({ words, act }: { words: string | null; act?: ReactNode }) {
  return (
    <div className="toasts" role="status" aria-live="polite">
      {words ? (
        <div className="toast settles">
          <span>{words}</span>
          {act}
        </div>
      ) : null}
    </div>
  )
}
