'use server'

import { redirect } from 'next/navigation'
import type { ImportState } from '@/app/desk/[society]/_import/import-state'
import { runImport } from '@/app/desk/[society]/_import/run-import'
import { importCourse, previewCourse } from '@/lib/society/import-course'

export async function readCourseIn(society: string, before: ImportState, form: FormData): Promise<ImportState> {
  return runImport(society, before, form, { preview: previewCourse, take: importCourse }, () =>
    redirect(`/desk/${society}/courses?kept=The+card`),
  )
}
