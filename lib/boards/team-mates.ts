// Two of one team who are paired in a match: it counts for neither, and comes about where teams are made after the draw.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { capital, counted } from './in-words'
import { isDecided } from './sides-of-record'

export interface TeamMatesPaired {
  readonly competitionId: CompetitionId
  readonly name: string
  /** One sentence a match. */
  readonly sentences: readonly string[]
  /** Sides of one team and another, which no pairing can repair: the sides have to be made anew. */
  readonly mixedSides: number
}

/** Competitions with such a match, or with a side of players of two teams; none without teams. */
export function teamMatesPaired(record: DayRecord): readonly TeamMatesPaired[] {
  if (record.teams.length < 2 || record.status === 'closed') return []
  const names = namesOf(record)
  const teamOf = new Map(record.teams.flatMap((team) => team.entryIds.map((id) => [id, team] as const)))
  return record.competitions.flatMap((one) => {
    if (!formatIn(one)?.isMatch) return []
    const teamsOf = (id: string) => new Set(playersOf(one, id).map((player) => teamOf.get(player)?.id ?? null))
    const sentences = one.pairings.flatMap((pairing) => {
      const [a, b] = [[...teamsOf(pairing.a)], [...teamsOf(pairing.b)]]
      if (isDecided(pairing) || a.length !== 1 || b.length !== 1 || a[0] === null || a[0] !== b[0]) return []
      const team = record.teams.find(({ id }) => id === a[0])
      return [
        `${capital(names.entrantShort(pairing.a))} and ${names.entrantShort(pairing.b)} are all of ${team?.name}: their match in ${one.name} counts for no team.`,
      ]
    })
    const mixedSides = one.sides.filter(
      ({ id, entryIds }) =>
        entryIds.length > 1 && teamsOf(id).size > 1 && one.pairings.some(({ a, b }) => a === id || b === id),
    ).length
    const mixed =
      mixedSides === 0
        ? []
        : [
            `${capital(counted(mixedSides, 'side'))} of ${one.name} ${mixedSides === 1 ? 'has' : 'have'} players of two teams and ${mixedSides === 1 ? 'counts' : 'count'} for neither.`,
          ]
    return sentences.length + mixedSides === 0
      ? []
      : [{ competitionId: one.id, name: one.name, sentences: [...sentences, ...mixed], mixedSides }]
  })
}

function playersOf({ sides }: CompetitionRecord, id: string): readonly EntryId[] {
  return sides.find((side) => side.id === id)?.entryIds ?? [id as EntryId]
}
