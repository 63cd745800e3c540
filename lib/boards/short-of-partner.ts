// Who of a side does not count: a partner whose card was not returned (Rules of Golf 3.3b(2), 23.2b), and a player for whom
// the draw left no partner. Said by name wherever the sides are shown.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { cardsAsTheyStand } from './day-of-record'
import type { Names } from './entrant-names'
import { formatIn } from './format-of-competition'
import { asSentence, listed } from './in-words'
import { withoutPartner } from './no-part'

type Competition = Pick<CompetitionRecord, 'name' | 'format' | 'terms' | 'sides'>

/** Sides of partners with a card each, outside a match: there a card that was not returned is missing from the side. */
function countsCards(competition: Competition): boolean {
  const format = formatIn(competition)
  return format !== null && format.sideSize > 1 && format.ball === 'own' && !format.isMatch
}

/** "Ashcombe-Pell’s card was not returned and does not count"; null when every card of the side counts, or none does. */
export function notReturnedNote(
  record: DayRecord,
  competition: Competition,
  players: readonly EntryId[],
  names: Names,
): string | null {
  if (!countsCards(competition)) return null
  const cards = cardsAsTheyStand(record)
  const gone = players.filter((id) => cards.get(id)?.outcome === 'no-return')
  if (gone.length === 0 || gone.length === players.length) return null
  const [card, does] = gone.length === 1 ? ['card was', 'does'] : ['cards were', 'do']
  return `${listed(gone.map((id) => `${names.short(id)}’s`))} ${card} not returned and ${does} not count`
}

const takes = (players: readonly EntryId[]) => (players.length === 1 ? 'takes' : 'take')

/** What closing over these cards does to their partners: "Four-ball: Thackwray counts alone, without Ashcombe-Pell." */
export function countingAlone(record: DayRecord, out: readonly EntryId[], names: Names): readonly string[] {
  const cards = cardsAsTheyStand(record)
  const gone = (id: EntryId) => out.includes(id) || cards.get(id)?.outcome === 'no-return'
  return record.competitions.filter(countsCards).flatMap((one) =>
    one.sides.flatMap(({ entryIds }) => {
      const without = entryIds.filter((id) => out.includes(id))
      const left = entryIds.filter((id) => !gone(id))
      if (without.length === 0) return []
      if (left.length === 0) return [`${one.name}: ${listed(without.map(names.short))} ${takes(without)} no place.`]
      const counts = left.length === 1 ? 'counts alone' : 'count'
      return [`${one.name}: ${listed(left.map(names.short))} ${counts}, without ${listed(without.map(names.short))}.`]
    }),
  )
}

/** For the terms on the board and the sheet: "No partner, and so no place: Elverstone." */
export function withoutPartnerSaid(record: DayRecord, competition: Competition, names: Names): readonly string[] {
  const alone = withoutPartner(record, competition)
  if (alone.length === 0) return []
  const word = formatIn(competition)?.sideSize === 2 ? 'No partner' : 'In no side'
  return [asSentence(`${word}, and so no place: ${listed(alone.map(names.short))}`)]
}

/** For the draw, before anything is published. */
export function withoutPartnerAtDraw(record: DayRecord, competition: Competition, names: Names): readonly string[] {
  const alone = withoutPartner(record, competition)
  if (alone.length === 0) return []
  const [has, takes] = alone.length === 1 ? ['has', 'takes'] : ['have', 'take']
  const none = formatIn(competition)?.sideSize === 2 ? 'no partner' : 'no side'
  return [`${listed(alone.map(names.short))} ${has} ${none} in ${competition.name} and ${takes} no place in it.`]
}
