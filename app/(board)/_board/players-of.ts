// Everybody on the board once, by name: the rows of sides come apart into their players.

import { byLastWord } from '@/lib/boards/order-of-names'
import type { DayBoard } from '@/lib/boards/views'
import type { EntryId } from '@/lib/facts/ids'

export function playersOf(board: Pick<DayBoard, 'competitions'>): { entryId: EntryId; name: string }[] {
  const names = new Map<string, string>()
  for (const { rows } of board.competitions) {
    for (const row of rows) {
      const [only] = row.entryIds
      if (row.entryIds.length === 1 && only) names.set(only, row.name)
    }
  }
  // A day with competitions of sides only: the side's name holds its players in their order.
  for (const { rows } of board.competitions) {
    for (const row of rows) {
      const parts = row.name.split(' and ')
      row.entryIds.forEach((id, at) => {
        if (!names.has(id)) names.set(id, parts[at] ?? row.name)
      })
    }
  }
  return [...names]
    .map(([entryId, name]) => ({ entryId: entryId as EntryId, name }))
    .sort((a, b) => byLastWord(a.name, b.name))
}
