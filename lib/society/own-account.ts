// An officer's own account: where one is signed in, and ending those sessions.

import 'server-only'
import { deviceInWords } from '@/lib/boards/device-in-words'
import { ok, type Result, refused } from '@/lib/result'
import { recordOfAccountIn } from '@/lib/store/account-record'
import { passkeysOf, removePasskey } from '@/lib/store/passkeys'
import { endSessionsOf, sessionsOf } from '@/lib/store/sessions'
import { write } from '@/lib/store/write'
import { cameFrom } from './came-from'
import { signedInUser } from './sign-in'

export interface OwnSession {
  readonly sessionId: string
  readonly device: string
  readonly from: string | null
  readonly since: string
  readonly lastSeen: string
  readonly here: boolean
}

export interface OwnAccount {
  readonly name: string
  readonly email: string
  readonly sessions: readonly OwnSession[]
  readonly passkeys: readonly { readonly passkeyId: string; readonly name: string; readonly since: string | null }[]
}

type SignedOut = 'signed-out'
const signedOut = () => refused('signed-out', 'You are signed out. Sign in again first.')

export async function ownAccount(headers: Headers, now: Date = new Date()): Promise<Result<OwnAccount, SignedOut>> {
  const user = await signedInUser(headers)
  if (!user) return signedOut()
  const sessions = await sessionsOf(user.userId, now)
  const passkeys = await passkeysOf(user.userId)
  return ok({
    name: user.name,
    email: user.email,
    sessions: sessions.map((one) => ({
      sessionId: one.id,
      device: deviceInWords(one.userAgent),
      from: one.from,
      since: one.createdAt.toISOString(),
      lastSeen: one.updatedAt.toISOString(),
      here: one.token === user.sessionToken,
    })),
    passkeys,
  })
}

/** One session, or all but the one that asks. */
export async function endOwnSessions(
  headers: Headers,
  which: { readonly sessionId: string } | 'others',
  now: Date = new Date(),
): Promise<Result<{ readonly ended: number }, SignedOut | 'not-found'>> {
  const user = await signedInUser(headers)
  if (!user) return signedOut()
  const ended = await write(async (tx) => {
    const asked = which === 'others' ? { butToken: user.sessionToken } : { only: which.sessionId }
    const count = await endSessionsOf(tx, user.userId, asked)
    if (count > 0) await recordOfAccountIn(tx, user, { 'Own sessions ended': count }, cameFrom(headers), now)
    return count
  })
  if (ended === 0 && which !== 'others') return refused('not-found', 'That session has ended already.')
  return ok({ ended })
}

export async function removeOwnPasskey(
  headers: Headers,
  passkeyId: string,
  now: Date = new Date(),
): Promise<Result<void, SignedOut | 'not-found'>> {
  const user = await signedInUser(headers)
  if (!user) return signedOut()
  return write<Result<void, 'not-found'>>(async (tx) => {
    if (!(await removePasskey(tx, user.userId, passkeyId))) return refused('not-found', 'That passkey is gone already.')
    await recordOfAccountIn(tx, user, { Passkey: 'removed' }, cameFrom(headers), now)
    return ok()
  })
}
