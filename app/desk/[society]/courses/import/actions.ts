'use server'

import { redirect } from 'next/navigation'
import type { ImportState } from '@/app/desk/[society]/_import/import-state'
import { runImport } from '@/app/desk/[society]/_import/run-import'
import type { CourseImportPreview } from '@/lib/boards/desk-views'
import { importCourse, previewCourse } from '@/lib/society/import-course'

type State = ImportState<CourseImportPreview>

export async function readCourseIn(society: string, before: State, form: FormData): Promise<State> {
  return runImport(society, before, form, { preview: previewCourse, take: importCourse }, () =>
    redirect(`/desk/${society}/courses?kept=The+card`),
  )
}
