'use server'

import { refresh } from 'next/cache'
import { headers } from 'next/headers'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import { keepCookies } from '@/app/sign-in/keep-cookies'
import type { Result } from '@/lib/result'
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
  const done = await endOwnSessions(await headers(), { sessionId: String(form.get('sessionId') ?? '') })
  return told(before, form, done, sessions)
}

export async function endOthers(before: ActState, form: FormData): Promise<ActState> {
  return told(before, form, await endOwnSessions(await headers(), 'others'), sessions)
}

export async function takePasskeyAway(before: ActState, form: FormData): Promise<ActState> {
  const done = await removeOwnPasskey(await headers(), String(form.get('passkeyId') ?? ''))
  return told(before, form, done, () => 'The passkey opens nothing any more.')
}

export async function newPassword(before: ActState, form: FormData): Promise<ActState> {
  const done = await changePassword(await headers(), {
    currentPassword: String(form.get('currentPassword') ?? ''),
    newPassword: String(form.get('newPassword') ?? ''),
  })
  form.delete('currentPassword')
  form.delete('newPassword')
  if (done.ok) await keepCookies(done.value.cookies)
  return told(before, form, done, () => 'The new password holds. Every other session has ended.')
}
