'use server'

import { redirect } from 'next/navigation'
import type { ImportState } from '@/app/desk/[society]/_import/import-state'
import { runImport } from '@/app/desk/[society]/_import/run-import'
import type { MemberImportPreview } from '@/lib/boards/desk-views'
import { importMembers, previewMembers } from '@/lib/society/import-members'

type State = ImportState<MemberImportPreview>

export async function readMembersIn(society: string, before: State, form: FormData): Promise<State> {
  return runImport(society, before, form, { preview: previewMembers, take: importMembers }, (done) =>
    redirect(`/desk/${society}/members?read=${done.added}.${done.changed}.${done.unchanged}.${done.leftOut}`),
  )
}
