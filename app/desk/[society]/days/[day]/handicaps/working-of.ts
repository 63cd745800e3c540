// The way from a figure to a playing handicap, worked out from the day's own record with the engine's own steps.

import { formatIn } from '@/lib/boards/format-of-competition'
import type { DayRecord } from '@/lib/facts/day-record'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import type { Day } from '@/lib/rules/day'
import type { WorkingStep } from '@/lib/rules/standings'
import { holeWorking } from '@/lib/rules/working/hole-working'

const STROKES_ON_A_HOLE = 'Rules of Handicapping, Appendix E'

export function workingOf(record: DayRecord, entryId: EntryId, competitionId: CompetitionId): readonly WorkingStep[] {
  const competition = record.competitions.find((one) => one.id === competitionId)
  const format = competition && formatIn(competition)
  if (!competition || !format) return []
  const { terms } = competition
  const players = record.entries
    .filter((entry) => entry.status === 'entered' && entry.indexTenths !== null)
    .map((entry) => ({
      id: entry.id,
      name: fullName(entry),
      indexTenths: entry.indexTenths ?? 0,
      tee: entry.roundTeeId,
    }))
  const partners = competition.sides.find((side) => side.entryIds.includes(entryId))
  // Before sides are drawn each player stands alone; own balls have the same handicap either way.
  const sides =
    format.sideSize === 1
      ? []
      : partners
        ? [{ id: 'side', players: partners.entryIds, competitions: [competitionId] }]
        : players.map((player) => ({ id: player.id === entryId ? 'side' : player.id, players: [player.id] }))
  const day: Day = {
    date: record.date,
    edition: record.edition,
    tees: record.tees.map(({ isDefault: _isDefault, ...tee }) => tee),
    players,
    sides,
    cards: [],
    competitions: [
      {
        id: competitionId,
        name: competition.name,
        format: competition.format,
        allowance: terms.allowance,
        ...(terms.custom ? { custom: terms.custom } : {}),
        ...(terms.handicapLimit ? { handicapLimit: terms.handicapLimit } : {}),
      },
    ],
    closed: false,
  }
  const working = holeWorking(day, competitionId, format.sideSize === 1 ? entryId : 'side', record.round.firstHole)
  if (!working) return []
  const end = working.steps.findIndex((step) => step.clause === STROKES_ON_A_HOLE)
  return end === -1 ? working.steps : working.steps.slice(0, end)
}
