'use server'

import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { type ActState, refusedState } from '@/app/desk/_form/act-state'
import { orNotSaved } from '@/lib/society/cannot-save'
import { noteOutcome } from '@/lib/society/request-log'
import { signInWithPassword, signOut } from '@/lib/society/sign-in'
import { keepCookies } from './keep-cookies'
import { nextAddress } from './next-address'

export async function enterDesk(before: ActState, form: FormData): Promise<ActState> {
  const from = await headers()
  const asked = { email: String(form.get('email') ?? '').trim(), password: String(form.get('password') ?? '') }
  const answer = await orNotSaved(() => signInWithPassword(from, asked))
  noteOutcome(answer.ok ? 'done' : answer.code)
  if (!answer.ok) {
    form.delete('password')
    return refusedState(before, form, answer)
  }
  await keepCookies(answer.value.cookies)
  redirect(nextAddress(String(form.get('next') ?? '')))
}

/** The form is empty, and asked for: what is sent to an act without one is refused at the door. */
export async function leaveDesk(form: FormData): Promise<void> {
  if (!(form instanceof FormData)) return
  await keepCookies(await signOut(await headers()))
  redirect('/sign-in')
}
