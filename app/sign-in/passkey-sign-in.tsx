'use client'

import { startAuthentication } from '@simplewebauthn/browser'
import { useState } from 'react'
import { askSignIn, wordsOfFault } from './passkey-request'

export function PasskeySignIn({ next }: { readonly next: string }) {
  const [wrong, setWrong] = useState('')
  const [busy, setBusy] = useState(false)

  async function enter(): Promise<void> {
    const options = await askSignIn('sign-in/begin', {})
    if (!options.ok) return setWrong(options.sentence)
    const response = await startAuthentication({ optionsJSON: options.value })
    const signed = await askSignIn('sign-in', { response })
    if (!signed.ok) return setWrong(signed.sentence)
    // A full load: the server reads the new session.
    window.location.assign(next)
  }

  return (
    <div className="passkey-sign-in">
      <p className="acts">
        <button
          type="button"
          className="btn"
          aria-disabled={busy || undefined}
          onClick={() => {
            if (busy) return
            setBusy(true)
            setWrong('')
            enter()
              .catch((fault: unknown) => setWrong(wordsOfFault(fault)))
              .finally(() => setBusy(false))
          }}
        >
          Sign in with a passkey
        </button>
      </p>
      <p role="alert" className="why">
        {wrong}
      </p>
    </div>
  )
}
