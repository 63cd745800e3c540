'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { readDayForm } from '@/app/desk/[society]/_day-form/read-day-form'
import { changeDay as changeDaySchema } from '@/lib/facts/commands'
import { changeDay } from '@/lib/society/change-day'
import { parseInput } from '@/lib/society/parse-input'

export async function changeTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  let done = false
  const state = await answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(changeDaySchema, { ...dayOfForm(form), day: readDayForm(form) })
      if (!asked.ok) return { ...asked, faults: asked.faults.map(withoutDay) }
      const changed = await changeDay(actor, asked.value)
      done = changed.ok
      return changed.ok ? changed : { ...changed, faults: changed.faults.map(withoutDay) }
    },
    () => 'Changed.',
  )
  if (done) redirect(`/desk/${where.society}/days/${where.day}`)
  return state
}

/** The form names its fields as the day has them, without the wrapping of the act. */
const withoutDay = (fault: { place: string; sentence: string }) => ({
  ...fault,
  place: fault.place.replace(/^day\./, ''),
})
