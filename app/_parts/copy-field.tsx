'use client'

import { useId, useState } from 'react'

interface Props {
  readonly label: string
  readonly value: string
  readonly hint?: string
}

/** An address to be copied into a message, with its button. */
export function CopyField({ label, value, hint }: Props) {
  const [said, setSaid] = useState('')
  const id = useId()

  async function copy(): Promise<void> {
    // Without a secure connection a browser has no clipboard; the marked address can still be copied by hand.
    try {
      await navigator.clipboard.writeText(value)
      setSaid('Copied.')
    } catch {
      const field = document.getElementById(id)
      if (field instanceof HTMLInputElement) field.select()
      setSaid('The link is marked: copy it from the field.')
    }
  }

  return (
    <>
      <div className="field">
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          className="address"
          readOnly
          value={value}
          onFocus={(event) => event.target.select()}
          aria-describedby={hint ? `${id}-hint` : undefined}
        />
        {hint ? (
          <p className="hint" id={`${id}-hint`}>
            {hint}
          </p>
        ) : null}
      </div>
      <p className="acts">
        <button type="button" className="btn" onClick={copy}>
          Copy the link
        </button>
      </p>
      <p role="status" className="said">
        {said}
      </p>
    </>
  )
}
