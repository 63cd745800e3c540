// What importing a file answers with: a refusal, or a preview of everything that would happen.

import type { Refused } from '@/lib/result'

export interface ImportState<Preview> {
  readonly attempt: number
  readonly refused: Refused | null
  readonly preview: Preview | null
}

export const NOTHING_READ: ImportState<never> = { attempt: 0, refused: null, preview: null }

export type ImportAction<Preview> = (before: ImportState<Preview>, form: FormData) => Promise<ImportState<Preview>>
