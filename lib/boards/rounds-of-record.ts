// Rounds of earlier days that are added up with a day: this day is round 1, whatever reads one round reads it; the days
// before it are rounds 2, 3 … in the order of their dates. Everybody keeps this day's entry; a card of an earlier day
// brings its own tee and the figure that was frozen then.

import type { CompetitionRecord, DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { DayId, EntryId, RoundTeeId } from '@/lib/facts/ids'
import type { Card, Gender, Side, Tee } from '@/lib/rules/day'
import { formatIn } from './format-of-competition'
import { sideCards } from './sides-of-record'

/** A card without the player, as a function of the card as it stands: made by day-of-record for any round. */
export type CardsOfRound = (earlier: DayRecord) => ReadonlyMap<string, Card>

export interface EarlierRounds {
  readonly cards: readonly Card[]
  /** Tees that some of the cards were played from. */
  readonly tees: readonly Tee[]
}

export function earlierRounds(
  record: DayRecord,
  everybody: DayRecord['entries'],
  sides: readonly Side[],
  cardsOf: CardsOfRound,
): EarlierRounds {
  const used = new Set<string>()
  const cards = record.earlier.flatMap((earlier, at): Card[] => {
    const round = at + 2
    const byEntry = cardsOf(earlier)
    const then = entriesThen(earlier)
    const playedFrom = teesPlayed(
      earlier,
      [...then.values()].filter((entry) => byEntry.has(entry.id)),
    )
    const own = new Map<string, Card>()
    for (const entry of everybody) {
      const before = then.get(entry.personId)
      if (!before) {
        // A tee that was played from that day, so that nobody's handicap is measured from another day's par.
        const tee = playedFrom(entry.gender)
        used.add(tee)
        own.set(entry.id, { player: entry.id, scores: [], round, missed: true, tee })
        continue
      }
      const card = byEntry.get(before.id)
      if (!card) continue
      used.add(before.roundTeeId)
      own.set(entry.id, {
        ...card,
        player: entry.id,
        round,
        tee: before.roundTeeId,
        // A ruling of that day comes with the card, and goes before what was confirmed.
        ...(before.indexTenths === null || card.indexTenths !== undefined ? {} : { indexTenths: before.indexTenths }),
        ...(earlier.status === 'closed' && !hasBegun(card) ? { missed: true } : {}),
      })
    }
    return [...own.values(), ...sideCards(record, sides, own, (id) => own.get(id)?.playingHandicap ?? null)]
  })
  const tees = record.earlier.flatMap((earlier) => earlier.tees.filter((tee) => used.has(tee.id)))
  return { cards, tees: tees.map(({ isDefault: _, ...tee }) => tee) }
}

const entriesThen = (earlier: DayRecord) =>
  new Map(
    earlier.entries.filter((entry) => entry.status === 'entered').map((entry) => [entry.personId, entry] as const),
  )

const hasBegun = (card: Card | undefined) =>
  card !== undefined && (card.outcome !== undefined || card.scores.some((score) => score !== null))

/** For somebody who was not there: a tee that others played from, of the same gender where there is one. */
function teesPlayed({ tees }: DayRecord, there: DayRecord['entries']): (gender: Gender) => RoundTeeId {
  const ids = new Set(there.map((entry) => entry.roundTeeId))
  const played = tees.filter((tee) => ids.has(tee.id))
  const choice = played.length > 0 ? played : tees
  return (gender) => (choice.find((tee) => tee.gender === gender) ?? choice[0])?.id ?? ('' as RoundTeeId)
}

/**
 * Everybody who played one of the earlier rounds and is not in this one, as an entry of this day: they have missed it.
 * Nobody while entries are open, for then nobody has missed anything.
 */
export function missingToday(
  record: DayRecord,
  playing: DayRecord['entries'],
  cardsOf: CardsOfRound,
): readonly MissingEntry[] {
  if (record.status === 'called' || record.earlier.length === 0) return []
  const here = new Set(playing.map((entry) => entry.personId))
  const own = new Map(record.entries.map((entry) => [entry.personId, entry.id]))
  const found = new Map<string, MissingEntry>()
  const playedFrom = teesPlayed(record, playing)
  for (const earlier of record.earlier) {
    const cards = cardsOf(earlier)
    for (const entry of entriesThen(earlier).values()) {
      if (here.has(entry.personId) || entry.indexTenths === null || !hasBegun(cards.get(entry.id))) continue
      const days = [...(found.get(entry.personId)?.days ?? []), earlier.id]
      const id = own.get(entry.personId) ?? entry.id
      found.set(entry.personId, { ...entry, id, roundTeeId: playedFrom(entry.gender), days })
    }
  }
  return [...found.values()]
}

export type MissingEntry = EntryRecord & {
  /** The earlier days that they did play. */
  readonly days: readonly DayId[]
}

/** Sides of an earlier day all of whose players have missed this one: they stay together as they were. */
export function sidesMissing(record: DayRecord, missing: readonly MissingEntry[]): Side[] {
  const idOf = new Map<string, EntryId>(missing.map((entry) => [entry.personId, entry.id]))
  return record.competitions.flatMap((one) => {
    const size = formatIn(one)?.sideSize ?? 1
    if (size < 2 || missing.length === 0) return []
    const found = new Map<string, Side>()
    for (const earlier of record.earlier.filter((day) => one.countedDayIds.includes(day.id))) {
      const alike = earlier.competitions.filter((other) => other.format === one.format)
      const then = alike.find((other) => other.name === one.name) ?? alike[0]
      const personOf = new Map(earlier.entries.map((entry) => [entry.id, entry.personId]))
      for (const { id, name, entryIds } of then?.sides ?? []) {
        const players = entryIds.flatMap((entryId) => idOf.get(personOf.get(entryId) ?? '') ?? [])
        if (players.length === 0 || players.length < entryIds.length) continue
        // One side for the same players, whatever number it had on each day.
        found.set([...players].sort().join(' '), { id, players, competitions: [one.id], ...(name ? { name } : {}) })
      }
    }
    return [...found.values()]
  })
}

/** Rounds a competition adds up, this day last; undefined on a day that stands alone. */
export function roundsOf(record: DayRecord, { countedDayIds }: CompetitionRecord): number[] | undefined {
  if (record.earlier.length === 0) return undefined
  const numbers = countedDayIds.flatMap((id) => {
    const at = record.earlier.findIndex((one) => one.id === id)
    return at < 0 ? [] : [at + 2]
  })
  return [...numbers.sort((a, b) => a - b), 1]
}
