// Rounds of earlier days that are added up with a day: this day is round 1, whatever reads one round reads it; the days
// before it are rounds 2, 3 … in the order of their dates. Everybody keeps this day's entry; a card of an earlier day
// brings its own tee and the figure that was frozen then.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Card, Side, Tee } from '@/lib/rules/day'
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
  playing: DayRecord['entries'],
  sides: readonly Side[],
  cardsOf: CardsOfRound,
): EarlierRounds {
  const used = new Set<string>()
  const cards = record.earlier.flatMap((earlier, at): Card[] => {
    const byEntry = cardsOf(earlier)
    const then = new Map(
      earlier.entries.filter((entry) => entry.status === 'entered').map((entry) => [entry.personId, entry] as const),
    )
    const own = new Map<string, Card>()
    for (const entry of playing) {
      const before = then.get(entry.personId)
      const card = before && byEntry.get(before.id)
      if (!before || !card) continue
      used.add(before.roundTeeId)
      own.set(entry.id, {
        ...card,
        player: entry.id,
        round: at + 2,
        tee: before.roundTeeId,
        ...(before.indexTenths === null ? {} : { indexTenths: before.indexTenths }),
      })
    }
    return [...own.values(), ...sideCards(record, sides, own, (id) => own.get(id)?.playingHandicap ?? null)]
  })
  const tees = record.earlier.flatMap((earlier) => earlier.tees.filter((tee) => used.has(tee.id)))
  return { cards, tees: tees.map(({ isDefault: _, ...tee }) => tee) }
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
