'use server'

import { refresh } from 'next/cache'
import type { ActState } from '@/app/desk/_form/act-state'
import { answer, askedBy } from '@/app/desk/_form/answer'
import type { Actor } from '@/lib/facts/actor'
import { giveDuty as giveSchema } from '@/lib/facts/commands'
import { handOver as handSchema } from '@/lib/facts/duty-commands'
import type { UserId } from '@/lib/facts/ids'
import type { Result } from '@/lib/result'
import { orNotSaved } from '@/lib/society/cannot-save'
import { endDuty, handOver } from '@/lib/society/end-duty'
import { giveDuty } from '@/lib/society/give-duty'
import { endOfficerSessions, newOneTimeLink } from '@/lib/society/officer-list'
import { parseInput } from '@/lib/society/parse-input'
import { noteOutcome } from '@/lib/society/request-log'

/** What a form that may make a one-time link is told: the link goes to the screen once and nowhere else. */
export interface LinkState {
  readonly path: string | null
  readonly sentence: string | null
  readonly refused: boolean
}

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()
const pathOf = (token: string | null) => (token === null ? null : `/sign-in/link/${token}`)
const toHandOut = (name: string) =>
  `Hand this link to ${name}. It opens once, within seven days, and is not shown again.`

async function withLink<T>(
  society: string,
  act: (actor: Actor) => Promise<Result<T>>,
  said: (value: T) => { readonly token: string | null; readonly sentence: string },
): Promise<LinkState> {
  const who = await askedBy(society)
  const done = who.ok ? await orNotSaved(() => act(who.value)) : who
  noteOutcome(done.ok ? 'done' : done.code)
  if (!done.ok)
    return { path: null, sentence: [done.sentence, ...done.faults.map((one) => one.sentence)].join(' '), refused: true }
  refresh()
  const { token, sentence } = said(done.value)
  return { path: pathOf(token), sentence, refused: false }
}

export async function handTheDutyOver(
  society: string,
  dutyId: string,
  _before: LinkState,
  form: FormData,
): Promise<LinkState> {
  const [email = '', ...rest] = text(form, 'to').split(' ')
  const to = email ? { email, name: rest.join(' ') } : { email: text(form, 'email'), name: text(form, 'name') }
  return withLink(
    society,
    async (actor) => {
      const asked = parseInput(handSchema, { dutyId, ...to })
      return asked.ok ? handOver(actor, asked.value) : asked
    },
    ({ name, token }) => ({
      token,
      sentence: token
        ? `${toHandOut(name)} The duty changes hands when it is used.`
        : `${name} holds the duty from now on.`,
    }),
  )
}

export async function newLink(society: string, userId: UserId, before: LinkState, form: FormData): Promise<LinkState> {
  // What is sent to an act without a form is refused at the door: it is asked for, although nothing stands in it.
  if (!(form instanceof FormData)) return before
  return withLink(
    society,
    (actor) => newOneTimeLink(actor, { userId }),
    ({ token }) => ({ token, sentence: toHandOut('the officer') }),
  )
}

export async function giveTheDuty(
  society: string,
  before: ActState,
  form: FormData,
): Promise<{ readonly state: ActState; readonly link: LinkState }> {
  let token: string | null = null
  const name = text(form, 'name')
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(giveSchema, { name, email: text(form, 'email'), duty: form.get('duty') })
      if (!asked.ok) return asked
      const given = await giveDuty(actor, asked.value)
      if (given.ok) token = given.value.token
      return given
    },
    (given) => (given.token ? 'The duty is given; the link stands below.' : 'The duty is given.'),
  )
  return { state, link: { path: pathOf(token), sentence: token ? toHandOut(name) : null, refused: false } }
}

export async function endTheDuty(society: string, dutyId: string, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    (actor) => endDuty(actor, { dutyId, endSessions: form.has('endSessions') }),
    () => 'The duty has ended.',
  )
}

export async function signThemOut(
  society: string,
  userId: UserId,
  before: ActState,
  form: FormData,
): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    (actor) => endOfficerSessions(actor, { userId }),
    ({ ended }) => (ended === 1 ? 'One session ended.' : `${ended} sessions ended.`),
  )
}
