'use client'

import { useId, useState, useSyncExternalStore } from 'react'
import Link from '@/app/_parts/link'

const never = () => () => undefined

/** The private address as a whole, to be copied into a message: whoever has it can read the page. */
export function PageAddress({ path, to }: { readonly path: string; readonly to: string }) {
  const host = useSyncExternalStore(
    never,
    () => window.location.origin,
    () => '',
  )
  const [said, setSaid] = useState('')
  const id = useId()

  async function copy(): Promise<void> {
    // Without a secure connection a browser has no clipboard; the marked address can still be copied by hand.
    try {
      await navigator.clipboard.writeText(`${host}${path}`)
      setSaid('Copied.')
    } catch {
      const field = document.getElementById(id)
      if (field instanceof HTMLInputElement) field.select()
      setSaid('The address is marked: copy it from the field.')
    }
  }

  return (
    <div className="page-address">
      <div className="field">
        <label htmlFor={id}>Address of the page</label>
        <input
          id={id}
          className="address"
          readOnly
          value={`${host}${path}`}
          onFocus={(event) => event.target.select()}
          aria-describedby={`${id}-hint`}
        />
        <p className="hint" id={`${id}-hint`}>
          Whoever has this address can read results, figures and cards there. Send it to {to} only.
        </p>
      </div>
      <p className="acts">
        <button type="button" className="btn" onClick={copy}>
          Copy the address
        </button>
        <Link href={path}>Open the page</Link>
      </p>
      <p role="status" className="said">
        {said}
      </p>
    </div>
  )
}
