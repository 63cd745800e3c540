'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { keepCourse as keepSchema } from '@/lib/facts/commands'
import { keepCourse } from '@/lib/society/keep-course'
import { parseInput } from '@/lib/society/parse-input'

export async function keepTheCourse(society: string, before: ActState, form: FormData): Promise<ActState> {
  let kept: string | null = null
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(keepSchema, readCourse(String(form.get('course') ?? '')))
      if (!asked.ok) return asked
      const done = await keepCourse(actor, asked.value)
      if (done.ok) kept = asked.value.name
      return done
    },
    () => 'Kept.',
  )
  if (kept !== null) redirect(`/desk/${society}/courses?kept=${encodeURIComponent(kept)}`)
  return state
}

function readCourse(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
