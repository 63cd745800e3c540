// One player's card, read in every competition it counts in.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { scoreDay } from '@/lib/rules/score-day'
import { competitionBoard, dayHead } from './board'
import { sharedCard } from './card-holders'
import { formatsToReadAs } from './card-read-as'
import type { PlayerCard } from './card-views'
import { progressOf } from './cards-on-their-way'
import { chanceInFull } from './chances'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { namesOf } from './entrant-names'
import { cardsToMatch } from './match-sheet'
import { ownReading } from './own-handicaps'
import { publicRulings } from './result-sheet'
import type { CompetitionBoard } from './views'

/** Null when nobody of that id plays in the day. */
export function playerCardOf(record: DayRecord, entryId: EntryId): PlayerCard | null {
  const entry = record.entries.find((one) => one.id === entryId && one.status === 'entered')
  if (!entry) return null
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const results = scoreDay(day)
  const names = namesOf(record)
  const own = sharedCard(record, entryId)?.entryIds ?? []
  const kept = record.cards.find((one) => one.entryId === entryId)
  const group = record.groups.find((one) => one.entryIds.includes(entryId))
  const tee = record.tees.find((one) => one.id === entry.roundTeeId)
  return {
    ...dayHead(record),
    entryId,
    name: names.full(entryId),
    note: names.note(entryId),
    tee: { name: tee?.name ?? '', gender: tee?.gender ?? entry.gender },
    groupNumber: group?.number ?? null,
    startTime: group?.startTime ?? null,
    startHole: group?.startHole ?? null,
    marker: kept?.markerId ? names.full(kept.markerId) : null,
    progress: progressOf(record, cards, entryId),
    notAgreed: cards.get(entryId)?.notAgreed ?? [],
    readings: record.competitions.flatMap((competition) => {
      const result = results.find((one) => one.competition === competition.id)
      if (!result) return []
      const board = competitionBoard(record, competition, result, cards, names)
      const row = board.rows.find((one) => one.entryIds.includes(entryId))
      if (!row) return []
      const own = ownReading(competition, day).lines.get(entryId)
      return [
        {
          competitionId: competition.id,
          competition: board.name,
          formatName: board.formatName,
          allowance: board.allowance,
          unit: board.unit,
          row,
          own: own?.holes ?? row.holes,
          ownHandicap: own?.playingHandicap ?? row.playingHandicap,
          ...chanceOf(board, row.entrant),
        },
      ]
    }),
    readableAs: formatsToReadAs(day, entryId, sharedCard(record, entryId) !== null),
    rulings: kept ? publicRulings(record, names, kept.id) : [],
    others: cardsToMatch(record).filter((one) => one.entryId !== entryId && !own.includes(one.entryId)),
  }
}

/** What this player's row needs to win; where the competition has no bounds, why not. */
function chanceOf({ chances }: CompetitionBoard, entrant: string): { chance?: string } {
  const mine = chances?.entrants[entrant]
  const said = mine ? chanceInFull(mine) : chances?.note
  return said ? { chance: said } : {}
}
