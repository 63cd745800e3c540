'use server'

import { refresh } from 'next/cache'
import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import type { Actor } from '@/lib/facts/actor'
import { leaveSociety as leaveSchema } from '@/lib/facts/privacy-commands'
import type { Result } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import { leaveSociety } from '@/lib/society/leave-society'
import { askForCorrection, correctOwnDetails } from '@/lib/society/own-data'
import { renewPageKey } from '@/lib/society/page-key'
import { parseInput } from '@/lib/society/parse-input'
import { noteOutcome } from '@/lib/society/request-log'
import { memberOf } from '@/lib/society/who-is-asking'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()

async function asMember<T>(
  pageKey: string,
  before: ActState,
  form: FormData,
  act: (actor: Extract<Actor, { kind: 'member' }>) => Promise<Result<T>>,
  said: string,
): Promise<ActState> {
  const who = await memberOf(pageKey, await headers())
  const done = who.ok ? await orNotSaved(() => act(who.value)) : who
  noteOutcome(done.ok ? 'done' : done.code)
  if (!done.ok) return refusedState(before, form, done)
  refresh()
  return doneState(before, said)
}

export async function correct(pageKey: string, before: ActState, form: FormData): Promise<ActState> {
  const contact = { email: text(form, 'email') || null, phone: text(form, 'phone') || null }
  return asMember(pageKey, before, form, (actor) => correctOwnDetails(actor, contact), 'Kept.')
}

export async function ask(pageKey: string, before: ActState, form: FormData): Promise<ActState> {
  const asked = { what: text(form, 'what') }
  return asMember(
    pageKey,
    before,
    form,
    (actor) => askForCorrection(actor, asked),
    'The officers read it in the record.',
  )
}

export async function leave(pageKey: string, before: ActState, form: FormData): Promise<ActState> {
  return asMember(
    pageKey,
    before,
    form,
    async (actor) => {
      const asked = parseInput(leaveSchema, { shownAs: form.get('shownAs') ?? undefined })
      return asked.ok ? leaveSociety(actor, asked.value) : asked
    },
    'You have left. The sheets show you as you chose.',
  )
}

export async function renewOwnLink(pageKey: string, before: ActState, form: FormData): Promise<ActState> {
  let path = ''
  const state = await asMember(
    pageKey,
    before,
    form,
    async (actor) => {
      const done = await renewPageKey(actor, { personId: actor.personId })
      if (done.ok) path = done.value.path
      return done
    },
    'The link is new.',
  )
  if (path) redirect(path)
  return state
}
