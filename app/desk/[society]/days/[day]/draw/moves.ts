// What was moved in the draw since it was saved, in words.

import { clockInWords } from '@/lib/boards/dates-in-words'
import type { EntryId } from '@/lib/facts/ids'

interface PlacedGroup {
  readonly startTime: string
  readonly startHole: number
  readonly entryIds: readonly EntryId[]
}

/** Each player's start as it is said: the time, or the group where all start at once; and the seat in it. */
type Places = ReadonlyMap<EntryId, { readonly at: string; readonly seat: number }>

export const placesOf = (groups: readonly PlacedGroup[], shotgun: boolean): Places =>
  new Map(
    groups.flatMap((group, place) =>
      group.entryIds.map((id, seat) => [
        id,
        { at: shotgun ? `group ${place + 1}` : clockInWords(group.startTime), seat },
      ]),
    ),
  )

export interface Move {
  readonly entryId: EntryId
  readonly from: string
  readonly to: string
}

const NOWHERE = 'no group'

/** Players with another start. Where only the order inside groups changed there is none. */
export function movesBetween(saved: Places, now: Places): readonly Move[] {
  return [...new Set([...saved.keys(), ...now.keys()])].flatMap((entryId) => {
    const from = saved.get(entryId)?.at ?? NOWHERE
    const to = now.get(entryId)?.at ?? NOWHERE
    return from === to ? [] : [{ entryId, from, to }]
  })
}

const MOST_NAMED = 4

export function movesInWords(
  moves: readonly Move[],
  names: readonly (readonly [entryId: EntryId, name: string])[],
): string {
  if (moves.length === 0) return 'Another order inside a group'
  const nameOf = new Map(names)
  const said = moves
    .slice(0, MOST_NAMED)
    .map(({ entryId, from, to }) => `${nameOf.get(entryId) ?? 'a player'} ${from} to ${to}`)
  const more = moves.length - said.length
  return `${moves.length === 1 ? '1 move' : `${moves.length} moves`}: ${said.join(', ')}${more > 0 ? ` and ${more} more` : ''}`
}
