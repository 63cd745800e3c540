// What a row of the board carries beside its score: the rounds it is the sum of, and the drives of a scramble.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { CompetitionResult, Standing } from '@/lib/rules/standings'
import { drivesStand, sideBall } from './ball-facts'
import type { Names } from './entrant-names'
import { formatIn } from './format-of-competition'
import { playerIds, sideOf } from './ids-from-engine'
import { counted, listed } from './in-words'
import { namedBallSaid } from './named-balls'
import { notShared } from './shared-games'
import { notReturnedNote } from './short-of-partner'
import type { BoardRow, CompetitionBoard } from './views'

/** Holes of this day alone: an earlier round has its own board. */
export function holesOfDay(record: DayRecord, { holes, rounds }: Standing): Standing['holes'] {
  return rounds ? holes.slice(-record.round.holes) : holes
}

/** Rounds by the days they were played on, this day last; of some holes the date tells two of one name apart. */
export function roundsOfRow(record: DayRecord, { rounds }: Standing): Pick<BoardRow, 'rounds' | 'away'> {
  if (!rounds) return {}
  const dayOf = (round: number) => (round === 1 ? record : record.earlier[round - 2]!)
  return {
    rounds: rounds.map(({ round, score }) => {
      const { slug, name, date } = dayOf(round)
      return { daySlug: slug, name, date, score }
    }),
    ...(rounds.some(({ round, missed }) => round === 1 && missed) ? { away: true as const } : {}),
  }
}

/** "guest of Storrey, did not play Friday"; null when there is nothing to say. */
export function noteOfRow(
  record: DayRecord,
  competition: CompetitionRecord,
  { entrant, players, rounds }: Standing,
  names: Names,
): string | null {
  const [first] = players
  const own = players.length === 1 && first !== undefined ? names.note(first) : null
  const missed = (rounds ?? []).flatMap(({ round, missed: is }) =>
    is ? [(round === 1 ? record : record.earlier[round - 2]!).name] : [],
  )
  const out = notReturnedNote(record, competition, playerIds(players), names)
  const side = competition.sides.find((one) => one.id === entrant)
  const ball = side ? namedBallSaid(record, competition, side, names.short) : null
  const said = [
    ...(own ? [own] : []),
    // A side that is called something: who plays in it.
    ...(side?.name ? [listed(playerIds(players).map(names.short))] : []),
    ...(ball ? [ball] : []),
    ...(missed.length > 0 ? [`did not play ${listed(missed)}`] : []),
    ...(out ? [out] : []),
  ]
  return said.length > 0 ? said.join(', ') : null
}

export function drivesOfRow(
  record: DayRecord,
  competition: CompetitionRecord,
  { entrant, players }: Standing,
  names: Names,
): Pick<BoardRow, 'drives'> {
  if (formatIn(competition)?.ball !== 'one' || players.length < 2) return {}
  const minimum = competition.terms.minimumDrives ?? null
  const { drives } = sideBall(sideOf(entrant), record.ballFacts, record.round)
  if (minimum === null && drives.every((one) => one === null)) return {}
  const stand = drivesStand(playerIds(players), drives, minimum)
  return {
    drives: {
      minimum,
      counts: stand.counts.map(({ entryId, taken, wanted }) => ({
        entryId,
        name: names.short(entryId),
        taken,
        wanted,
      })),
      outOfReach: stand.outOfReach,
      sentence: drivesSentence(stand, names, record.status === 'closed'),
    },
  }
}

/** "Drives: Ashgill 6, Verrow 1. Still wanted: three drives of Verrow."; on a closed day "Too few: Verrow 1 of 4." */
function drivesSentence(stand: ReturnType<typeof drivesStand>, names: Names, isOver: boolean): string {
  const each = stand.counts.map(({ entryId, taken }) => `${names.short(entryId)} ${taken}`).join(', ')
  const short = stand.counts.filter((one) => one.wanted > 0)
  if (stand.minimum === null || short.length === 0) return `Drives: ${each}.`
  if (isOver) {
    const lacking = short.map(({ entryId, taken }) => `${names.short(entryId)} ${taken} of ${stand.minimum}`)
    return `Drives: ${each}. Too few: ${listed(lacking)}.`
  }
  const wanted = listed(
    short.map(({ entryId, wanted: more }) => `${counted(more, 'drive')} of ${names.short(entryId)}`),
  )
  if (stand.outOfReach) return `Drives: ${each}. The minimum of ${stand.minimum} cannot be reached any more.`
  return `Drives: ${each}. Still wanted: ${wanted}.`
}

/** Groups that share a game, each with its entrants best first; undefined where nothing is shared. */
export function sharedGroupsOf(
  record: DayRecord,
  competition: CompetitionRecord,
  { standings }: CompetitionResult,
): Pick<CompetitionBoard, 'shared' | 'notShared' | 'placesInGroups'> {
  if (formatIn(competition)?.value.kind !== 'shared') return {}
  const told = notShared(record, competition)
  const groups = record.groups.flatMap((group) => {
    const entrants = standings
      .filter((one) => group.entryIds.some((id) => id === one.entrant))
      .map((one) => one.entrant)
    return entrants.length > 0 ? [{ groupNumber: group.number, entrants }] : []
  })
  const isApart = groups.length > 1 && competition.terms.ranking !== 'everybody'
  return {
    shared: groups,
    ...(isApart ? { placesInGroups: true as const } : {}),
    ...(told.length > 0 ? { notShared: told } : {}),
  }
}
