'use client'

import { startRegistration } from '@simplewebauthn/browser'
import { useRouter } from 'next/navigation'
import { useId, useState } from 'react'
import { askSignIn, wordsOfFault } from '@/app/sign-in/passkey-request'

export function AddPasskey() {
  const id = useId()
  const router = useRouter()
  const [said, setSaid] = useState<{ readonly wrong: boolean; readonly words: string } | null>(null)
  const [busy, setBusy] = useState(false)

  async function add(name: string): Promise<void> {
    const options = await askSignIn('register/begin', {})
    if (!options.ok) return setSaid({ wrong: true, words: options.sentence })
    const response = await startRegistration({ optionsJSON: options.value })
    const kept = await askSignIn('register', { name, response })
    if (!kept.ok) return setSaid({ wrong: true, words: kept.sentence })
    setSaid({ wrong: false, words: `${name} signs you in from now on.` })
    router.refresh()
  }

  return (
    <form
      aria-label="Add a passkey"
      className="sheet-form"
      onSubmit={(event) => {
        event.preventDefault()
        if (busy) return
        const name = String(new FormData(event.currentTarget).get('name') ?? '').trim() || 'Passkey'
        setBusy(true)
        setSaid(null)
        add(name)
          .catch((fault: unknown) => setSaid({ wrong: true, words: wordsOfFault(fault) }))
          .finally(() => setBusy(false))
      }}
    >
      <div className="field">
        <label htmlFor={id}>Name of the device</label>
        <input id={id} name="name" maxLength={60} placeholder="My telephone" required />
      </div>
      <p className="acts">
        <button type="submit" className="btn" aria-disabled={busy || undefined}>
          Add a passkey
        </button>
      </p>
      <p role={said?.wrong ? 'alert' : 'status'} className="said">
        {said?.words}
      </p>
    </form>
  )
}
