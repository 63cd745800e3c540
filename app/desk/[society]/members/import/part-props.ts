import type { MemberImportPreview } from '@/lib/boards/desk-views'
import type { MemberImportChoices } from '@/lib/facts/member-import'

/** What every part of the preview is given: how things stand, what was said, and the way to say more. */
export interface PartProps {
  readonly preview: MemberImportPreview
  readonly choices: MemberImportChoices
  readonly onChange: (more: Partial<MemberImportChoices>) => void
}
