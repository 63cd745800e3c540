// What reading in a file answers with: a refusal, a preview of every row, or the word that it is done.

import type { CourseImportRow, ImportPreview, MemberImportRow } from '@/lib/boards/desk-views'
import type { Refused } from '@/lib/result'

export type ImportRow = MemberImportRow | CourseImportRow

export interface ImportState {
  readonly attempt: number
  readonly refused: Refused | null
  readonly preview: ImportPreview<ImportRow> | null
}

export const NOTHING_READ: ImportState = { attempt: 0, refused: null, preview: null }

export type ImportAction = (before: ImportState, form: FormData) => Promise<ImportState>
