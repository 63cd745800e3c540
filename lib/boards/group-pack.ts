// The pack of a group's phone, from the day's record. It carries nobody's contact details, no code and no link.

import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import type { DayRecord, EntryRecord, GroupRecord } from '@/lib/facts/day-record'
import { playNow } from '@/lib/facts/play-stop'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import type { CurrentCard } from './current-card'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { mainReading } from './own-handicaps'

export function groupPack(record: DayRecord, group: GroupRecord): CardPack {
  const cards = cardsAsTheyStand(record)
  const main = mainReading(record, dayOfRecord(record))
  return {
    packVersion: 1,
    society: record.society.name,
    societySlug: record.society.slug,
    dayId: record.id,
    daySlug: record.slug,
    dayName: record.name,
    date: record.date,
    course: record.round.courseName,
    status: record.status,
    group: { id: group.id, number: group.number, startTime: group.startTime, startHole: group.startHole },
    reading: main.reading,
    mainCompetition: main.name,
    cards: group.entryIds.flatMap((id) => {
      const entry = record.entries.find((one) => one.id === id)
      const card = cards.get(id)
      if (!entry || !card) return []
      return [packCard(record, entry, card, main.lines.get(id)?.playingHandicap ?? 0)]
    }),
    scoreVersion: record.scoreVersion,
    dayVersion: record.version,
    play: playNow(record.playStops),
  }
}

function packCard(record: DayRecord, entry: EntryRecord, card: CurrentCard, playingHandicap: number): PackCard {
  const tee = record.tees.find((one) => one.id === entry.roundTeeId)
  const kept = record.cards.find((one) => one.id === card.cardId)
  const strokes = strokesOnHoles(playingHandicap, tee?.holes ?? [])
  return {
    cardId: card.cardId,
    entryId: entry.id,
    firstName: entry.firstName,
    familyName: entry.familyName,
    guestOf: entry.kind === 'guest' ? entry.hostName : null,
    tee: { name: tee?.name ?? '', gender: tee?.gender ?? entry.gender },
    playingHandicap,
    markerId: kept?.markerId ?? null,
    state: kept?.state ?? 'out',
    holes: (tee?.holes ?? []).map((hole, at) => ({
      hole: hole.hole,
      par: hole.par,
      strokeIndex: hole.strokeIndex,
      yards: hole.yards ?? null,
      strokes: strokes[at] ?? 0,
    })),
    written: writtenBy(card),
    ruled: Object.fromEntries(
      card.holes.filter((line) => line.ruledBy !== null).map((line) => [line.hole, line.score]),
    ),
    signatures: [card.player, card.marker].flatMap((one) =>
      one ? [{ role: one.role, entryId: one.entryId, signedAt: one.signedAt.toISOString() }] : [],
    ),
  }
}

/** Each writer's own column, hole by hole; who cleared a hole has nothing on it. */
function writtenBy(card: CurrentCard): Record<string, readonly WrittenScore[]> {
  const columns: Record<string, WrittenScore[]> = {}
  for (const [at, line] of card.holes.entries())
    for (const fact of line.opinions) {
      columns[fact.writer] ??= card.holes.map(() => null)
      columns[fact.writer]![at] = fact.score
    }
  return columns
}
