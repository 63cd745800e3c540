'use server'

import { refresh } from 'next/cache'
import { headers } from 'next/headers'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import { keepCookies } from '@/app/sign-in/keep-cookies'
import type { Result } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import { endOwnSessions, removeOwnPasskey } from '@/lib/society/own-account'
import { noteOutcome } from '@/lib/society/request-log'
import { changePassword } from '@/lib/society/sign-in'

function told<T>(before: ActState, form: FormData, done: Result<T>, said: (value: T) => string): ActState {
  noteOutcome(done.ok ? 'done' : done.code)
  if (!done.ok) return refusedState(before, form, done)
  refresh()
  return doneState(before, said(done.value))
}

const sessions = ({ ended }: { ended: number }) => (ended === 1 ? 'One session ended.' : `${ended} sessions ended.`)

export async function endThisOne(before: ActState, form: FormData): Promise<ActState> {
  const from = await headers()
  const done = await orNotSaved(() => endOwnSessions(from, { sessionId: String(form.get('sessionId') ?? '') }))
  return told(before, form, done, sessions)
}

export async function endOthers(before: ActState, form: FormData): Promise<ActState> {
  const from = await headers()
  return told(before, form, await orNotSaved(() => endOwnSessions(from, 'others')), sessions)
}

export async function takePasskeyAway(before: ActState, form: FormData): Promise<ActState> {
  const from = await headers()
  const done = await orNotSaved(() => removeOwnPasskey(from, String(form.get('passkeyId') ?? '')))
  return told(before, form, done, () => 'The passkey opens nothing any more.')
}

export async function newPassword(before: ActState, form: FormData): Promise<ActState> {
  const from = await headers()
  const asked = {
    currentPassword: String(form.get('currentPassword') ?? ''),
    newPassword: String(form.get('newPassword') ?? ''),
  }
  const done = await orNotSaved(() => changePassword(from, asked))
  form.delete('currentPassword')
  form.delete('newPassword')
  if (done.ok) await keepCookies(done.value.cookies)
  return told(before, form, done, () => 'The new password holds. Every other session has ended.')
}
