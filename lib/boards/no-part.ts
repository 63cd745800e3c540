// Who has no part in a competition because the numbers or the draw left nobody to play with or against, and who has none
// in the whole day: that player's card is asked for by nobody.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { formatIn } from './format-of-competition'

type Sides = Pick<CompetitionRecord, 'name' | 'format' | 'terms' | 'sides'>

/** Everybody who plays and stands in no side of a competition whose sides are made. */
export function withoutPartner(
  { entries }: Pick<DayRecord, 'entries'>,
  { format, name, terms, sides }: Sides,
): readonly EntryId[] {
  if ((formatIn({ format, name, terms })?.sideSize ?? 1) < 2 || sides.length === 0) return []
  const seated = new Set(sides.flatMap((side) => side.entryIds))
  return entries.flatMap(({ id, status }) => (status === 'entered' && !seated.has(id) ? [id] : []))
}

/** Players, or sides, who are in no match of a competition that has matches. */
export function withoutMatch(
  { entries }: Pick<DayRecord, 'entries'>,
  one: CompetitionRecord,
): readonly (readonly EntryId[])[] {
  const format = formatIn(one)
  if (!format?.isMatch || one.pairings.length === 0) return []
  const paired = new Set<string>(one.pairings.flatMap(({ a, b }) => [a, b]))
  const entered = new Set(entries.flatMap(({ id, status }) => (status === 'entered' ? [id] : [])))
  if (format.sideSize < 2) return [...entered].filter((id) => !paired.has(id)).map((id) => [id])
  return one.sides.flatMap(({ id, entryIds }) => {
    const here = entryIds.filter((player) => entered.has(player))
    return paired.has(id) || here.length === 0 ? [] : [here]
  })
}

const none: ReadonlySet<EntryId> = new Set()
const found = new WeakMap<object, ReadonlySet<EntryId>>()

/** Players who are without a partner or an opponent in every competition of the day. */
export function withNoPart(record: Pick<DayRecord, 'competitions' | 'entries'>): ReadonlySet<EntryId> {
  const { competitions } = record
  const known = found.get(record)
  if (known) return known
  const [first, ...others] = competitions.map(
    (one) => new Set([...withoutPartner(record, one), ...withoutMatch(record, one).flat()]),
  )
  const all = first ? new Set([...first].filter((id) => others.every((each) => each.has(id)))) : none
  found.set(record, all)
  return all
}
