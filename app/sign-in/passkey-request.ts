// What the browser asks of the sign-in address about passkeys, and what it says when that fails.

import type {
  PublicKeyCredentialCreationOptionsJSON,
  PublicKeyCredentialRequestOptionsJSON,
} from '@simplewebauthn/browser'
import { ok, type Result, refused } from '@/lib/result'

interface Answers {
  readonly 'register/begin': PublicKeyCredentialCreationOptionsJSON
  readonly register: { readonly kept: true }
  readonly 'sign-in/begin': PublicKeyCredentialRequestOptionsJSON
  readonly 'sign-in': { readonly signedIn: true }
}

export async function askSignIn<A extends keyof Answers>(
  what: A,
  body: object,
): Promise<Result<Answers[A], 'not-accepted'>> {
  const answer = await fetch(`/api/auth/passkey/${what}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
  if (answer.ok) return ok((await answer.json()) as Answers[A])
  if (answer.status === 429) return refused('not-accepted', 'Too many tries. Wait a minute, then try again.')
  const said = (await answer.json().catch(() => null)) as { code?: string; message?: string } | null
  if (said?.code === 'SESSION_NOT_FRESH')
    return refused(
      'not-accepted',
      'You signed in more than a day ago. Sign out and in again first: a passkey is a key.',
    )
  return refused('not-accepted', said?.message ?? 'The passkey was not accepted. Try again.')
}

/** The browser tells why only roughly, and rightly so. */
export function wordsOfFault(fault: unknown): string {
  const name = fault instanceof Error ? fault.name : ''
  if (name === 'NotAllowedError') return 'Nothing was done: the device did not confirm it in time, or you cancelled.'
  if (name === 'InvalidStateError') return 'This device holds a passkey for you already.'
  if (name === 'SecurityError')
    return 'A passkey needs an address with a name, over https. It cannot be kept for this address.'
  return 'This browser cannot use passkeys here.'
}
