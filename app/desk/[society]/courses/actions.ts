'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { idIn } from '@/app/desk/_form/form-ids'
import { keepCourse as keepSchema } from '@/lib/facts/commands'
import type { CourseId } from '@/lib/facts/ids'
import { deleteCourse } from '@/lib/society/delete-course'
import { keepCourse } from '@/lib/society/keep-course'
import { parseInput } from '@/lib/society/parse-input'

export async function keepTheCourse(society: string, before: ActState, form: FormData): Promise<ActState> {
  let kept: { readonly name: string; readonly others: boolean } | null = null
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = parseInput(keepSchema, readCourse(String(form.get('course') ?? ''), form.getAll('overrule')))
      if (!asked.ok) return asked
      const done = await keepCourse(actor, asked.value)
      if (done.ok) kept = { name: asked.value.name, others: done.value.taken.length > 0 }
      return done
    },
    () => 'Kept.',
  )
  const { name, others } = (kept ?? {}) as { name?: string; others?: boolean }
  if (name !== undefined)
    redirect(`/desk/${society}/courses?kept=${encodeURIComponent(name)}${others ? '&others=changed' : ''}`)
  return state
}

export async function deleteTheCourse(society: string, before: ActState, form: FormData): Promise<ActState> {
  let deleted = ''
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const asked = { courseId: idIn<CourseId>(form, 'courseId'), version: Number(form.get('version')) }
      const done = await deleteCourse(actor, asked)
      if (done.ok) deleted = done.value.name
      return done
    },
    () => 'Deleted.',
  )
  if (deleted !== '') redirect(`/desk/${society}/courses?deleted=${encodeURIComponent(deleted)}`)
  return state
}

function readCourse(text: string, overrule: readonly FormDataEntryValue[]): unknown {
  try {
    return { ...JSON.parse(text), ...(overrule.length > 0 ? { overrule } : {}) }
  } catch {
    return null
  }
}
