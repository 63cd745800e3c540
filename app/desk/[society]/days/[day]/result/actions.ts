'use server'

import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { publishResult as publishSchema, reopenDay as reopenSchema } from '@/lib/facts/commands'
import { closeDay } from '@/lib/society/close-day'
import { parseInput } from '@/lib/society/parse-input'
import { publishResult } from '@/lib/society/publish-result'
import { reopenDay } from '@/lib/society/reopen-day'

export async function closeTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    (actor) => closeDay(actor, { ...dayOfForm(form), notReturned: Number(form.get('notReturned') ?? 0) }),
    () => 'The day is closed: ties are broken and the prizes are settled. Look at them, then publish.',
  )
}

export async function publishTheResult(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(publishSchema, {
        ...dayOfForm(form),
        reason: String(form.get('reason') ?? '').trim() || null,
        without: form.get('without'),
      })
      return asked.ok ? publishResult(actor, asked.value) : asked
    },
    ({ number }) => `Sheet ${number} is published. It is never recounted; a correction makes the next sheet.`,
  )
}

export async function reopenTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(reopenSchema, { ...dayOfForm(form), reason: form.get('reason') })
      return asked.ok ? reopenDay(actor, asked.value) : asked
    },
    () => 'The day is open again. Correct what was wrong, close it, and publish the next sheet with its reason.',
  )
}
