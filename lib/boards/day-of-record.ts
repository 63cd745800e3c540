// The book's day as the engine takes it. The day file of the same day says the same, so that the score command and the
// board cannot disagree.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Card, Competition, Day, Match, Player, Side, Tee } from '@/lib/rules/day'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { type CurrentCard, currentCard } from './current-card'

// A record is one state of the book and never changes, so what is worked out from it is kept as long as it is.
const stands = new WeakMap<DayRecord, ReadonlyMap<string, CurrentCard>>()
const days = new WeakMap<DayRecord, Day>()

/** Every card of the day as it stands, by entry. */
export function cardsAsTheyStand(record: DayRecord): ReadonlyMap<string, CurrentCard> {
  const known = stands.get(record)
  if (known) return known
  const cards = standing(record)
  stands.set(record, cards)
  return cards
}

function standing(record: DayRecord): ReadonlyMap<string, CurrentCard> {
  const factsOf = grouped(record.facts)
  const signaturesOf = grouped(record.signatures)
  const rulingsOf = grouped(record.rulings)
  return new Map(
    record.cards.map((card) => [
      card.entryId,
      currentCard({
        card,
        holes: record.round.holes,
        facts: factsOf.get(card.id) ?? [],
        signatures: signaturesOf.get(card.id) ?? [],
        rulings: rulingsOf.get(card.id) ?? [],
      }),
    ]),
  )
}

function grouped<T extends { readonly cardId: string }>(rows: readonly T[]): ReadonlyMap<string, T[]> {
  const by = new Map<string, T[]>()
  for (const row of rows) {
    const list = by.get(row.cardId)
    if (list) list.push(row)
    else by.set(row.cardId, [row])
  }
  return by
}

/** `cards` other than those of the record itself: an empty map leaves out what was written and ruled. */
export function dayOfRecord(record: DayRecord, cards?: ReadonlyMap<string, CurrentCard>): Day {
  if (cards) return counted(record, cards)
  const known = days.get(record)
  if (known) return known
  const day = counted(record, cardsAsTheyStand(record))
  days.set(record, day)
  return day
}

function counted(record: DayRecord, cards: ReadonlyMap<string, CurrentCard>): Day {
  // Who waits or withdrew does not play; who has no figure yet cannot be counted until somebody gives one.
  const playing = record.entries.filter((entry) => entry.status === 'entered' && entry.indexTenths !== null)
  const startHole = new Map(record.groups.flatMap((group) => group.entryIds.map((id) => [id, group.startHole])))
  const ids = new Set(playing.map((entry) => entry.id))
  return {
    date: record.date,
    courseName: record.round.courseName,
    edition: record.edition,
    closed: record.status === 'closed',
    tees: record.tees.map(
      ({ id, name, gender, courseRatingTenths, slopeRating, holes }): Tee => ({
        id,
        name,
        gender,
        courseRatingTenths,
        slopeRating,
        holes,
      }),
    ),
    players: playing.map((entry): Player => {
      const ruled = cards.get(entry.id)?.playingHandicap ?? null
      return {
        id: entry.id,
        name: `${entry.firstName} ${entry.familyName}`,
        indexTenths: entry.indexTenths!,
        tee: entry.roundTeeId,
        ...(ruled === null ? {} : { playingHandicap: { '*': ruled } }),
        ...(entry.kind === 'guest' ? { guest: true } : {}),
        ...(entry.labels?.length ? { groups: entry.labels } : {}),
      }
    }),
    sides: record.competitions.filter((one) => !isMatch(one)).flatMap((one) => sidesOf(one, ids)),
    cards: playing.flatMap((entry): Card[] => {
      const card = cards.get(entry.id)
      if (!card) return []
      return [
        {
          player: entry.id,
          scores: card.scores,
          ...(card.outcome ? { outcome: card.outcome } : {}),
          ...(Object.keys(card.penaltyStrokes).length ? { penaltyStrokes: card.penaltyStrokes } : {}),
          ...(card.penaltyPoints ? { penaltyPoints: card.penaltyPoints } : {}),
          startHole: startHole.get(entry.id) ?? 1,
        },
      ]
    }),
    competitions: record.competitions.map((one) => competitionOf(one, ids)),
  }
}

function isMatch({ format, terms }: CompetitionRecord): boolean {
  if (terms.custom !== undefined) return terms.custom.value.kind === 'against-opponent'
  return formatOf(format)?.isMatch ?? false
}

function sidesOf(competition: CompetitionRecord, playing: ReadonlySet<string>): Side[] {
  return competition.sides.map((side) => ({
    id: side.id,
    players: side.entryIds.filter((id) => playing.has(id)),
    competitions: [competition.id],
    ...(side.name ? { name: side.name } : {}),
  }))
}

function competitionOf(record: CompetitionRecord, playing: ReadonlySet<string>): Competition {
  // What the engine reads; the rest of the terms is about prizes and the sheet.
  const { allowanceFrom: _from, allowanceReason: _reason, guests: _guests, onePrize: _prizes, ...rest } = record.terms
  // A divisor stands in place of the allowance: nobody reads a day in which both are given.
  const { allowance: _allowance, ...divided } = rest
  const terms = rest.dividedBy === undefined ? rest : divided
  return {
    id: record.id,
    name: record.name,
    format: record.format,
    ...terms,
    ...(isMatch(record) ? { matches: matchesOf(record, playing) } : {}),
  }
}

/** In a match of singles the two drawn together play each other. */
function matchesOf({ sides }: CompetitionRecord, playing: ReadonlySet<string>): Match[] {
  return sides.flatMap(({ id, entryIds }) => {
    const [a, b] = entryIds.filter((entryId) => playing.has(entryId))
    return a && b ? [{ id, a, b }] : []
  })
}
