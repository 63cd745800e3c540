'use server'

import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { type ActState, refusedState } from '@/app/desk/_form/act-state'
import { orNotSaved } from '@/lib/society/cannot-save'
import { foundFirstSociety } from '@/lib/society/first-start'
import { noteOutcome } from '@/lib/society/request-log'
import { setFirstPassword } from '@/lib/society/set-first-password'
import { signInWithPassword } from '@/lib/society/sign-in'
import { keepCookies } from './keep-cookies'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()

/** The password is right, so the way in is open; should the limit on tries stand in it, the sign-in page says so. */
async function signInAndGo(email: string, password: string): Promise<never> {
  const signed = await signInWithPassword(await headers(), { email, password })
  if (signed.ok) await keepCookies(signed.value.cookies)
  redirect(signed.ok ? '/desk' : '/sign-in')
}

export async function setOwnPassword(token: string, before: ActState, form: FormData): Promise<ActState> {
  const password = String(form.get('password') ?? '')
  const done = await orNotSaved(() => setFirstPassword(token, password))
  noteOutcome(done.ok ? 'done' : done.code)
  form.delete('password')
  if (!done.ok) return refusedState(before, form, done)
  return signInAndGo(done.value.email, password)
}

export async function foundYourSociety(token: string, before: ActState, form: FormData): Promise<ActState> {
  const password = String(form.get('officer.password') ?? '')
  const year = text(form, 'foundedYear')
  const asked = {
    name: text(form, 'name'),
    slug: text(form, 'slug'),
    foundedYear: year === '' ? null : Number(year),
    officer: { name: text(form, 'officer.name'), email: text(form, 'officer.email'), password },
  }
  const done = await orNotSaved(() => foundFirstSociety(token, asked))
  noteOutcome(done.ok ? 'done' : done.code)
  form.delete('officer.password')
  if (!done.ok) return refusedState(before, form, done)
  return signInAndGo(done.value.email, password)
}
