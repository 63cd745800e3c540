'use client'

import { startRegistration } from '@simplewebauthn/browser'
import { useRouter } from 'next/navigation'
import { ActForm } from '@/app/desk/_form/act-form'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'
import { askSignIn, wordsOfFault } from '@/app/sign-in/passkey-request'
import { refused } from '@/lib/result'

export function AddPasskey() {
  const router = useRouter()

  async function add(before: ActState, form: FormData): Promise<ActState> {
    const name = String(form.get('name') ?? '').trim() || 'Passkey'
    const not = (sentence: string) => refusedState(before, form, refused('no-passkey', sentence))
    try {
      const options = await askSignIn('register/begin', {})
      if (!options.ok) return not(options.sentence)
      const response = await startRegistration({ optionsJSON: options.value })
      const kept = await askSignIn('register', { name, response })
      if (!kept.ok) return not(kept.sentence)
    } catch (fault) {
      return not(wordsOfFault(fault))
    }
    router.refresh()
    return doneState(before, `${name} signs you in from now on.`)
  }

  return (
    <ActForm action={add} label="Add a passkey" className="sheet-form" clears>
      <Field name="name" label="Name of the device" maxLength={60} placeholder="My telephone" required />
      <p className="acts">
        <Send>Add a passkey</Send>
      </p>
    </ActForm>
  )
}
