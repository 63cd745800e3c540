import 'server-only'
import { refresh } from 'next/cache'
import { headers } from 'next/headers'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result, refused } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import { noteOutcome } from '@/lib/society/request-log'
import { officerAt } from '@/lib/society/who-is-asking'
import { type ActState, doneState, refusedState } from './act-state'

/** Reads the officer behind an action; signed out is a refusal here, so that nothing typed is lost. */
export async function askedBy(slug: string): Promise<Result<Actor>> {
  const from = await headers()
  const found = await orNotSaved(async () => ok(await officerAt(from, slug)))
  if (!found.ok) return found
  if (found.value) return ok(found.value)
  return refused(
    'signed-out',
    'You are no longer signed in at this desk. Sign in again in another tab, then press the button once more.',
  )
}

/** The way of every act at the desk: who asks, what was meant, do it, say it. */
export async function answer<T>(
  before: ActState,
  form: FormData,
  slug: string,
  act: (actor: Actor) => Promise<Result<T>>,
  said: (value: T) => string,
  whatChanged?: (actor: Actor) => Promise<readonly string[]>,
): Promise<ActState> {
  const who = await askedBy(slug)
  if (!who.ok) {
    noteOutcome(who.code)
    return refusedState(before, form, who)
  }
  const done = await orNotSaved(() => act(who.value))
  noteOutcome(done.ok ? 'done' : done.code)
  if (done.ok) {
    refresh()
    return doneState(before, said(done.value))
  }
  if (done.code !== 'day-moved-on') return refusedState(before, form, done)
  const changed = whatChanged ? await whatChanged(who.value) : []
  // The page is read again, so that the form carries the present version when it is sent once more.
  refresh()
  return refusedState(before, form, done, changed)
}
