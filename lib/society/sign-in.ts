// Officers sign in with e-mail and password; the library keeps the sessions.

import type { UserId } from '@/lib/facts/ids'
import { readAtMost } from '@/lib/facts/read-body'
import { ok, type Result, refused } from '@/lib/result'
import { recordOfAccount } from '@/lib/store/account-record'
import { type CookieToSet, cookiesIn, signIn } from '@/lib/store/sign-in'
import { cameFrom } from './came-from'

/** Bytes. A passkey's answer is the longest thing signed in with, and far below it. */
const MOST_BYTES = 64 * 1024

export const signInHandlers = {
  GET: (request: Request): Promise<Response> => signIn().handler(request),
  /** The library reads a body of any length: it is given one that has been counted. */
  POST: async (request: Request): Promise<Response> => {
    const body = await readAtMost(request, MOST_BYTES)
    if (body === 'too-long')
      return Response.json(refused('too-long', 'That is more than signing in needs.'), { status: 413 })
    const { url, method, headers } = request
    return signIn().handler(new Request(url, { method, headers, body }))
  },
}

export type { CookieToSet }

export interface SignedIn {
  readonly userId: UserId
  readonly sessionToken: string
  readonly name: string
  readonly email: string
}

export async function signedInUser(headers: Headers): Promise<SignedIn | null> {
  const session = await signIn().api.getSession({ headers })
  if (!session) return null
  const { id, name, email } = session.user
  return { userId: id as UserId, name, email, sessionToken: session.session.token }
}

/** The same way in as the library's own address, so that its limits on tries hold for a form without script too. */
export async function signInWithPassword(
  headers: Headers,
  input: { email: string; password: string },
): Promise<Result<{ cookies: readonly CookieToSet[] }, 'wrong-sign-in' | 'too-many-tries'>> {
  const answer = await signIn().handler(ownRequest(headers, '/api/auth/sign-in/email', input))
  if (answer.status === 429)
    return refused('too-many-tries', 'Too many tries. Wait a quarter of an hour, then try again.')
  if (!answer.ok)
    return refused(
      'wrong-sign-in',
      'That e-mail address and password do not belong together. Check both and try again.',
    )
  return ok({ cookies: cookiesIn(answer) })
}

/** A new password for whoever is signed in; every other session of theirs ends. */
export async function changePassword(
  headers: Headers,
  input: { currentPassword: string; newPassword: string },
): Promise<Result<{ cookies: readonly CookieToSet[] }, 'wrong-password' | 'weak-password' | 'too-many-tries'>> {
  if (input.newPassword.length < 12 || input.newPassword.length > 128)
    return refused('weak-password', 'A password needs at least 12 characters.')
  // Asked before: the present session ends with the change.
  const user = await signedInUser(headers)
  const answer = await signIn().handler(
    ownRequest(headers, '/api/auth/change-password', { ...input, revokeOtherSessions: true }),
  )
  if (answer.status === 429) return refused('too-many-tries', 'Too many tries. Wait a minute, then try again.')
  if (!answer.ok) return refused('wrong-password', 'The present password is not right. Nothing was changed.')
  if (user) await recordOfAccount(user, { Password: 'changed, other sessions ended' }, cameFrom(headers))
  return ok({ cookies: cookiesIn(answer) })
}

/** Ends the session in the book; the cookies to clear come back. */
export async function signOut(headers: Headers): Promise<readonly CookieToSet[]> {
  return cookiesIn(await signIn().handler(ownRequest(headers, '/api/auth/sign-out', {})))
}

function ownRequest(headers: Headers, path: string, body: unknown): Request {
  const host = headers.get('host') ?? 'localhost'
  const origin = headers.get('origin') ?? `${headers.get('x-forwarded-proto') ?? 'http'}://${host}`
  const sent = new Headers({ 'content-type': 'application/json', host, origin })
  for (const kept of ['cookie', 'x-forwarded-for', 'user-agent']) {
    const value = headers.get(kept)
    if (value) sent.set(kept, value)
  }
  return new Request(`http://${host}${path}`, { method: 'POST', headers: sent, body: JSON.stringify(body) })
}
