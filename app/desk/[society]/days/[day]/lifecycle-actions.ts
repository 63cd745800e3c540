'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import {
  refreezeHandicaps as againSchema,
  callOffDay as offSchema,
  unfreezeHandicaps as unfreezeSchema,
} from '@/lib/facts/commands'
import { callOffDay, putDayOn } from '@/lib/society/call-off-day'
import { deleteDay } from '@/lib/society/delete-day'
import { parseInput } from '@/lib/society/parse-input'
import { playDayAhead } from '@/lib/society/play-day-ahead'
import { refreezeHandicaps, unfreezeHandicaps } from '@/lib/society/refreeze-handicaps'

export async function callOffTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(offSchema, { ...dayOfForm(form), reason: form.get('reason') })
      return asked.ok ? callOffDay(actor, asked.value) : asked
    },
    () => 'The day is called off. The fixture list, the start sheet and the board say so.',
  )
}

export async function unfreezeTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(unfreezeSchema, { ...dayOfForm(form), reason: form.get('reason') })
      return asked.ok ? unfreezeHandicaps(actor, asked.value) : asked
    },
    () => 'The handicaps are not frozen any more. They follow the member list until you freeze them again.',
  )
}

export async function freezeAgain(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const entryIds = form.getAll('entry').map(String)
      const asked = parseInput(againSchema, { ...dayOfForm(form), entryIds, reason: form.get('reason') })
      return asked.ok ? refreezeHandicaps(actor, asked.value) : asked
    },
    ({ players }) =>
      `Frozen again: ${players.map(({ name, was, is }) => (was === null ? `${name}, ${is}` : `${name}, ${is} (was ${was})`)).join('; ')}.`,
  )
}

export async function putTheDayOn(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    (actor) => putDayOn(actor, dayOfForm(form)),
    () => 'The day is on again, as it was.',
  )
}

export async function deleteTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  let done = false
  const state = await answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const deleted = await deleteDay(actor, dayOfForm(form))
      done = deleted.ok
      return deleted
    },
    ({ name }) => `${name} is deleted.`,
  )
  if (done) redirect(`/desk/${where.society}`)
  return state
}

export async function playTheDayAhead(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    (actor) => playDayAhead(actor, dayOfForm(form)),
    () => 'The cards of this day can be entered now, and its result can be published.',
  )
}
