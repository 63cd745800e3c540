// Games that are shared inside a group, skins and split sixes: which groups of the draw share, and who is told that they
// do not.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Format } from '@/lib/rules/formats/format'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { gamesOf } from './games-of-groups'
import { counted, inWords, listed } from './in-words'
import type { CompetitionBoard } from './views'

/** How many must be in a group; null for any number of two and more. */
export function sizeOfShare({ value }: Pick<Format, 'value'>): number | null {
  return value.kind === 'shared' && value.shares.kind === 'by-place' ? value.shares.points.length : null
}

const isRight = (players: number, size: number | null) => players > 1 && (size === null || players === size)

/** Who is first in each group that has places of its own; nobody where one list of places holds everybody. */
export function firstInGroups(board: Pick<CompetitionBoard, 'shared' | 'placesInGroups' | 'rows'>) {
  if (!board.placesInGroups) return []
  return gamesOf(board, board.rows)
    .map(({ groupNumber, rows }) => ({ groupNumber, best: rows.filter((row) => row.place === 1) }))
    .filter(({ best }) => best.length > 0)
}

/** Groups of the draw inside which a game is shared; of split sixes only those of the right number. */
export function sharedGroups(
  { groups }: Pick<DayRecord, 'groups'>,
  format: Pick<Format, 'value'>,
  playing: ReadonlySet<string>,
): string[][] | null {
  if (format.value.kind !== 'shared') return null
  const size = sizeOfShare(format)
  return groups
    .map((group) => group.entryIds.filter((id) => playing.has(id)))
    .filter((ids) => isRight(ids.length, size))
}

/**
 * One sentence for each group, and one for all the players without a group, who have no part in a shared game. Nothing for
 * any other game, and nothing before there is a draw.
 */
export function notShared(record: DayRecord, competition: CompetitionRecord): readonly string[] {
  const format = formatIn(competition)
  if (format?.value.kind !== 'shared' || record.groups.length === 0) return []
  const size = sizeOfShare(format)
  const playing = record.entries.filter((entry) => entry.status === 'entered' && entry.indexTenths !== null)
  const ids = new Set(playing.map((entry) => entry.id))
  const ofGroups = record.groups.flatMap(({ number, entryIds }) => {
    const players = entryIds.filter((id) => ids.has(id)).length
    if (players === 0 || isRight(players, size)) return []
    const wanted = size === null ? 'two or more' : inWords(size)
    return [
      `Group ${number} has ${counted(players, 'player')}: ${competition.name} is for groups of ${wanted}, so nothing counts there.`,
    ]
  })
  const drawn = new Set(record.groups.flatMap((group) => group.entryIds))
  const names = namesOf(record)
  const alone = playing.filter((entry) => !drawn.has(entry.id)).map((entry) => names.short(entry.id))
  if (alone.length === 0) return ofGroups
  return [
    ...ofGroups,
    `${listed(alone)} ${alone.length === 1 ? 'is' : 'are'} in no group and ${alone.length === 1 ? 'has' : 'have'} no part in ${competition.name}.`,
  ]
}
