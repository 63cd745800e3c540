// Moving players between groups on the draw screen. Plain lists of entry ids; the screen, the keys and the drag share
// these moves.

import type { EntryId } from '@/lib/facts/ids'

export type Groups = readonly (readonly EntryId[])[]

export const MOST_IN_A_GROUP = 4

export const placeOf = (groups: Groups, entryId: EntryId): { group: number; seat: number } | null => {
  for (const [group, ids] of groups.entries()) {
    const seat = ids.indexOf(entryId)
    if (seat !== -1) return { group, seat }
  }
  return null
}

export const without = (groups: Groups, entryId: EntryId): Groups =>
  groups.map((ids) => ids.filter((one) => one !== entryId))

/** Into a group, at a seat or at the end. A full group gives its last player in exchange. */
export function movedTo(groups: Groups, entryId: EntryId, to: number, seat?: number): Groups {
  const from = placeOf(groups, entryId)
  const target = groups[to]
  if (!target) return groups
  if (from?.group === to) {
    const rest = target.filter((one) => one !== entryId)
    const at = Math.max(0, Math.min(seat ?? rest.length, rest.length))
    return groups.with(to, [...rest.slice(0, at), entryId, ...rest.slice(at)])
  }
  const cleared = without(groups, entryId)
  const into = cleared[to] ?? []
  const at = Math.max(0, Math.min(seat ?? into.length, into.length))
  if (into.length < MOST_IN_A_GROUP) return cleared.with(to, [...into.slice(0, at), entryId, ...into.slice(at)])
  const leaves = into[Math.min(at, into.length - 1)] ?? ('' as EntryId)
  const swapped = cleared.with(
    to,
    into.map((one) => (one === leaves ? entryId : one)),
  )
  if (!from) return swapped
  const back = swapped[from.group] ?? []
  return swapped.with(from.group, [...back.slice(0, from.seat), leaves, ...back.slice(from.seat)])
}

/** Earlier or later in the own group: the order decides who marks whom. */
export function shifted(groups: Groups, entryId: EntryId, by: -1 | 1): Groups {
  const from = placeOf(groups, entryId)
  if (!from) return groups
  const seat = from.seat + by
  const size = groups[from.group]?.length ?? 0
  return seat < 0 || seat >= size ? groups : movedTo(groups, entryId, from.group, seat)
}

/** Two or more make a group; one alone has nobody to mark the card. */
export const lonely = (groups: Groups): readonly number[] =>
  groups.flatMap((ids, group) => (ids.length === 1 ? [group + 1] : []))

/** The ways to pair a group of up to four for a competition of sides. */
export function pairings(ids: readonly EntryId[], size: number): readonly (readonly (readonly EntryId[])[])[] {
  if (size >= ids.length || size < 2) return ids.length > 0 ? [[ids]] : []
  const [a, b, c, d] = ids
  if (size === 3) return a && b && c && d ? [[[a, b, c], [d]]] : []
  if (a && b && c && d)
    return [
      [
        [a, b],
        [c, d],
      ],
      [
        [a, c],
        [b, d],
      ],
      [
        [a, d],
        [b, c],
      ],
    ]
  if (a && b && c)
    return [
      [[a, b], [c]],
      [[a, c], [b]],
      [[b, c], [a]],
    ]
  return [[ids]]
}
