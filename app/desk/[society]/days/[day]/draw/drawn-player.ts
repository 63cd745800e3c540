import type { EntryId } from '@/lib/facts/ids'

export interface DrawnPlayer {
  readonly entryId: EntryId
  readonly name: string
  readonly playing: string
  readonly note: string | null
}
