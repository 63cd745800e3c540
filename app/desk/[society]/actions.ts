'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { callDay as callDaySchema, openSeason as openSeasonSchema } from '@/lib/facts/commands'
import { callDay } from '@/lib/society/call-day'
import { openSeason } from '@/lib/society/open-season'
import { parseInput } from '@/lib/society/parse-input'
import { readDayForm } from './_day-form/read-day-form'

export async function openTheSeason(society: string, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(openSeasonSchema, {
        name: form.get('name'),
        startsOn: form.get('startsOn'),
        endsOn: form.get('endsOn'),
      })
      return asked.ok ? openSeason(actor, asked.value) : asked
    },
    () => `The season ${String(form.get('name'))} is open. Call its first day.`,
  )
}

export async function callTheDay(society: string, before: ActState, form: FormData): Promise<ActState> {
  let called: string | null = null
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(callDaySchema, readDayForm(form))
      if (!asked.ok) return asked
      const done = await callDay(actor, asked.value)
      if (done.ok) called = done.value.slug
      return done
    },
    () => 'Called.',
  )
  if (called !== null) redirect(`/desk/${society}/days/${called}`)
  return state
}
