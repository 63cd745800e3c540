'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { readDayForm } from '@/app/desk/[society]/_day-form/read-day-form'
import { mergeFields } from '@/lib/boards/merge-fields'
import type { Actor } from '@/lib/facts/actor'
import { type CallDay, changeDay as changeDaySchema } from '@/lib/facts/commands'
import { changeDay } from '@/lib/society/change-day'
import { deskDay } from '@/lib/society/desk-day'
import { courseList } from '@/lib/society/keep-course'
import { parseInput } from '@/lib/society/parse-input'
import { asCalled } from './as-called'

export async function changeTheDay(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  let done = false
  const state = await answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const day = await withTheirs(actor, where.day, form, readDayForm(form))
      const asked = parseInput(changeDaySchema, { ...dayOfForm(form), day })
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

/** Fields that only another desk changed since the form was filled are taken over: nobody meant to write them back. */
async function withTheirs(actor: Actor, daySlug: string, form: FormData, mine: unknown): Promise<unknown> {
  const filled = filledIn(String(form.get('filled') ?? ''))
  if (filled === null || typeof mine !== 'object' || mine === null) return mine
  const now = await deskDay(actor, daySlug)
  const courses = await courseList(actor)
  if (!now.ok || !courses.ok) return mine
  const { record, places } = now.value
  const theirs = asCalled(record, places, courses.value)
  const typed = record.frozenAt === null ? mine : withFrozen(mine, theirs)
  // Not the day this form is of, or not yet told that it moved: the use case refuses, with what was typed.
  if (record.version !== dayOfForm(form).version) return typed
  const { merged } = mergeFields<object>(filled, typed, { ...typed, ...theirs })
  return record.frozenAt === null ? merged : withFrozen(merged, theirs)
}

function filledIn(written: string): Readonly<Record<string, unknown>> | null {
  try {
    const value: unknown = JSON.parse(written)
    return typeof value === 'object' && value !== null ? { ...value } : null
  } catch {
    return null
  }
}

/** The form names its fields as the day has them, without the wrapping of the act. */
const withoutDay = (fault: { place: string; sentence: string }) => ({
  ...fault,
  place: fault.place.replace(/^day\./, ''),
})

/** Once handicaps are frozen the form has names, times and prizes only: course, tees and terms are those of the day. */
function withFrozen(asked: object, frozen: CallDay): object {
  const { courseId, holes, teeMen, teeWomen, competitions } = frozen
  const typed: unknown = 'competitions' in asked ? asked.competitions : []
  const rows: readonly unknown[] = Array.isArray(typed) ? typed : []
  if (rows.length !== competitions.length) return asked
  const kept = rows.map((row, at) => {
    const { format, terms } = competitions[at]!
    return { ...(typeof row === 'object' ? row : {}), format, terms }
  })
  return { ...asked, courseId, holes, teeMen, teeWomen, competitions: kept }
}
