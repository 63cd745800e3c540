// The draw as a screen shows it, in one line: publishing carries it, so that what was on the screen is what goes out.

import type { EntryId } from './ids'

interface ShownGroup {
  readonly startTime: string
  readonly startHole: number
  readonly entryIds: readonly EntryId[]
}

export const shownDraw = (groups: readonly ShownGroup[]): string =>
  groups.map((group) => `${group.startTime} ${group.startHole} ${group.entryIds.join(',')}`).join(';')
