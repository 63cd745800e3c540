// What decides about a signature besides the scores of its group: which holes the matches still need, and whose card it is.

import { sidesOfOneBall } from '@/lib/boards/card-holders'
import type { CurrentCard } from '@/lib/boards/current-card'
import { cardsAsTheyStand, matchesOfDay } from '@/lib/boards/day-of-record'
import { namesOf } from '@/lib/boards/entrant-names'
import { formatIn } from '@/lib/boards/format-of-competition'
import { besideMatches } from '@/lib/boards/match-cards'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId, EntryId, SocietyId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import type { Tx } from '@/lib/store/client'
import { competitionForms } from '@/lib/store/competition-forms'
import { dayRecordIn } from '@/lib/store/day-record'
import type { MatchInBook, SigningSources } from './take-fact'

interface WhichDay {
  readonly societyId: SocietyId
  readonly dayId: DayId
}

/** Cards whose scores decide about these facts: of the whole group where somebody signs. */
export const cardsTouched = (facts: readonly DeviceFact[]): ReadonlySet<string> | 'all' =>
  facts.some((fact) => fact.kind === 'signature') ? 'all' : new Set(facts.map((fact) => fact.cardId))

export async function withSigning<T extends { readonly entryIds: readonly EntryId[] }>(
  tx: Tx,
  which: WhichDay,
  facts: readonly DeviceFact[],
  sources: T,
): Promise<T & { readonly signing?: SigningSources }> {
  if (!facts.some((fact) => fact.kind === 'signature' || fact.kind === 'concession')) return sources
  const forms = (await competitionForms(tx, which)).map(formatIn)
  if (!forms.some((format) => format?.isMatch || format?.ball === 'one')) return sources
  const record = await dayRecordIn(tx, which)
  if (!record) return sources
  return {
    ...sources,
    signing: {
      matches: matchesOfDay(record).map((one) => one.match),
      beside: Object.fromEntries(record.entries.map(({ id }) => [id, besideMatches(record, id)])),
      shared: sidesOfOneBall(record).map((side) => side.entryIds),
      pairings: matchesInBook(record, sources.entryIds),
    },
  }
}

function matchesInBook(record: DayRecord, here: readonly EntryId[]): readonly MatchInBook[] {
  const names = namesOf(record)
  return record.competitions.flatMap(({ name, sides, pairings }) =>
    pairings.map(({ id, a, b, ending }): MatchInBook => {
      const entryIds = record.entries
        .map((one) => one.id)
        .filter(
          (one) =>
            one === a || one === b || sides.some((side) => [a, b].includes(side.id) && side.entryIds.includes(one)),
        )
      return {
        id,
        subject: `${names.entrant(a)} and ${names.entrant(b)}, ${name}, ${record.name}`,
        a: names.entrantShort(a),
        b: names.entrantShort(b),
        entryIds,
        ending,
        elsewhere: record.cards.filter((card) => entryIds.includes(card.entryId) && !here.includes(card.entryId)),
      }
    }),
  )
}

/** One card at the desk with what the matches of the day leave of it. */
export async function cardInItsDay(
  tx: Tx,
  which: WhichDay,
  entryId: EntryId,
  alone: CurrentCard,
): Promise<CurrentCard> {
  const forms = (await competitionForms(tx, which)).map(formatIn)
  if (!forms.some((format) => format?.isMatch)) return alone
  const record = await dayRecordIn(tx, which)
  return (record && cardsAsTheyStand(record).get(entryId)) ?? alone
}
