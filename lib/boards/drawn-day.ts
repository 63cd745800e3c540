// What of a day a withdrawal touches, cut down to what a screen needs to say so beforehand.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { formatIn } from './format-of-competition'
import { isDecided } from './sides-of-record'
import type { DrawnDay } from './withdrawal'

/** Anything on the card that cannot be thrown away: scores, a signature, a ruling; or scores written for others. */
export function hasScores(day: DayRecord, entryId: EntryId): boolean {
  const card = day.cards.find((one) => one.entryId === entryId)
  if (!card) return false
  return (
    card.state !== 'out' ||
    day.facts.some((fact) => fact.cardId === card.id || fact.writer === entryId) ||
    day.signatures.some((signature) => signature.cardId === card.id) ||
    day.rulings.some((ruling) => ruling.cardId === card.id)
  )
}

export function drawnDayOf(record: DayRecord, places: number | null): DrawnDay {
  return {
    status: record.status,
    isPublished: record.startPublishedAt !== null,
    places,
    entries: record.entries.map((entry) => ({
      id: entry.id,
      personId: entry.personId,
      hostId: entry.hostId,
      name: fullName(entry),
      kind: entry.kind,
      status: entry.status,
      indexTenths: entry.indexTenths,
      hasScores: hasScores(record, entry.id),
    })),
    groups: record.groups.map(({ number, startTime, entryIds }) => ({ number, startTime, entryIds })),
    competitions: record.competitions.map((one) => ({
      name: one.name,
      // In a match of singles the two who were drawn together are opponents.
      arePartners: (formatIn(one)?.sideSize ?? 1) > 1,
      sides: one.sides.map(({ id, entryIds }) => ({ id, entryIds })),
      matches: one.pairings.map((pairing) => ({ a: pairing.a, b: pairing.b, isDecided: isDecided(pairing) })),
    })),
    teams: record.teams.map(({ name, entryIds }) => ({ name, entryIds })),
  }
}
