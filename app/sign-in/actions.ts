'use server'

import { cookies, headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { type ActState, refusedState } from '@/app/desk/_form/act-state'
import { type CookieToSet, signInWithPassword, signOut } from '@/lib/society/sign-in'

/** Only addresses of this desk: a link in a mail must not send an officer elsewhere after signing in. */
function nextPage(form: FormData): string {
  const next = String(form.get('next') ?? '')
  return /^\/desk(\/[\w/?=&.-]*)?$/.test(next) ? next : '/desk'
}

async function keepCookies(sent: readonly CookieToSet[]): Promise<void> {
  const jar = await cookies()
  for (const { name, value, ...rest } of sent) jar.set(name, value, rest)
}

export async function enterDesk(before: ActState, form: FormData): Promise<ActState> {
  const answer = await signInWithPassword(await headers(), {
    email: String(form.get('email') ?? '').trim(),
    password: String(form.get('password') ?? ''),
  })
  if (!answer.ok) {
    form.delete('password')
    return refusedState(before, form, answer)
  }
  await keepCookies(answer.value.cookies)
  redirect(nextPage(form))
}

export async function leaveDesk(): Promise<void> {
  await keepCookies(await signOut(await headers()))
  redirect('/sign-in')
}
