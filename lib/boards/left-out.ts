// Who has no part in a competition of the day because of the numbers or the draw: without a partner, a side, an opponent, or
// a group of the right size. One list for every step from the draw to the sheet, so that nobody vanishes without a word.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { asSentence, inWords, listed } from './in-words'
import { withoutMatch, withoutPartner } from './no-part'
import { notShared, sizeOfShare } from './shared-games'
import { withoutPartnerAtDraw } from './short-of-partner'

/** One sentence a competition and kind. Nothing before there is a draw. */
export function leftOut(record: DayRecord, names: Names = namesOf(record)): readonly string[] {
  if (record.groups.length === 0) return []
  return record.competitions.flatMap((one) => [
    ...notShared(record, one),
    ...noSidesYet(record, one),
    ...withoutPartnerAtDraw(record, one, names),
    ...withoutMatchAtDraw(record, one, names),
  ])
}

function noSidesYet({ entries }: DayRecord, one: CompetitionRecord): readonly string[] {
  const size = formatIn(one)?.sideSize ?? 1
  if (size < 2 || one.sides.length > 0 || !entries.some(({ status }) => status === 'entered')) return []
  return [`No side is made in ${one.name} yet: nobody takes a place in it.`]
}

function withoutMatchAtDraw(record: DayRecord, one: CompetitionRecord, names: Names): readonly string[] {
  const format = formatIn(one)
  if (format?.isMatch && one.pairings.length === 0 && (format.sideSize < 2 || one.sides.length > 0))
    return [`Nobody is paired in ${one.name} yet: say who plays whom.`]
  return withoutMatch(record, one).map((ids) => {
    const [has, opponent] = ids.length === 1 ? ['has', 'no opponent'] : ['have', 'no opponents']
    return `${listed(ids.map(names.short))} ${has} ${opponent} in ${one.name}.`
  })
}

/** For the terms on the board and the sheet: "No opponent, and so no match: Elverstone." */
export function withoutMatchSaid(record: DayRecord, one: CompetitionRecord, names: Names): readonly string[] {
  const alone = withoutMatch(record, one)
  if (alone.length === 0) return []
  const players = alone.map((ids) => listed(ids.map(names.short)))
  return [asSentence(`No opponent, and so no match: ${players.join('; ')}`)]
}

/** What one player is told on the card: "No partner in the Quaich: you take no place in it." */
export function leftOutOf(record: DayRecord, entryId: EntryId): readonly string[] {
  return record.competitions.flatMap((one) => {
    const format = formatIn(one)
    if (withoutPartner(record, one).includes(entryId))
      return [`No ${format?.sideSize === 2 ? 'partner' : 'side'} in ${one.name}, and so no place in it.`]
    if (withoutMatch(record, one).some((ids) => ids.includes(entryId)))
      return [`No opponent in ${one.name}, and so no match.`]
    const size = format ? sizeOfShare(format) : null
    const group = record.groups.find(({ entryIds }) => entryIds.includes(entryId))
    const isShared = format?.value.kind === 'shared'
    if (isShared && group && group.entryIds.length !== (size ?? Math.max(2, group.entryIds.length)))
      return [
        `${one.name} is not counted in this group: it is for groups of ${size === null ? 'two or more' : inWords(size)}.`,
      ]
    return []
  })
}
