// Sides, matches and balls of a day as the desk arranges them, from the record and its board.

import type { CompetitionRecord, DayRecord, PairingRecord } from '@/lib/facts/day-record'
import type { CompetitionId, DayId, EntryId, PairingId, SideId } from '@/lib/facts/ids'
import { type MatchEnding, NO_ENDING } from '@/lib/facts/match-ending'
import { ballValueOf } from '@/lib/rules/formats/format'
import { holesOfRound } from '@/lib/rules/hole-numbers'
import { sideBall, startHoleOf } from './ball-facts'
import { namesOf } from './entrant-names'
import { figureOf } from './figure'
import { formatIn } from './format-of-competition'
import { matchEnds } from './ids-from-engine'
import { listed } from './in-words'
import { endingInWords, wonHow } from './match-ending-words'
import { ballKind } from './pack-balls'
import type { CompetitionBoard, DayBoard } from './views'

export interface PlayerAtDesk {
  readonly entryId: EntryId
  readonly name: string
  /** As it is written: "18.4", "+2.1", "–". */
  readonly handicap: string
  /** Number of the group; null before the draw. */
  readonly group: number | null
}

export interface MatchAtDesk {
  readonly id: PairingId
  readonly a: string
  readonly b: string
  /** "Verrow 2 up after 11", "Ashgill 3&2". */
  readonly result: string
  readonly ending: MatchEnding
  /** What the desk wrote about its end; null when nothing. */
  readonly said: string | null
}

export interface BallAtDesk {
  readonly side: { readonly id: SideId; readonly name: string }
  readonly kind: 'drives' | 'named-ball'
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
  /** Numbers of the holes, in card order. */
  readonly holes: readonly number[]
  readonly drives: readonly (EntryId | null)[]
  readonly ballLostOn: number | null
  readonly said: string
}

export interface CompetitionAtDesk {
  readonly id: CompetitionId
  readonly name: string
  readonly size: number
  readonly countedDayIds: readonly DayId[]
  readonly recountedDayIds: readonly DayId[]
  readonly sides: CompetitionRecord['sides']
  /** Null where the field is played, not an opponent. */
  readonly matches: readonly MatchAtDesk[] | null
  readonly pairings: readonly { readonly a: EntryId | SideId; readonly b: EntryId | SideId }[]
  /** Whoever can be paired, in the order of the draw. */
  readonly ends: readonly { readonly id: EntryId | SideId; readonly name: string }[]
  readonly withExtraHoles: boolean
  readonly balls: readonly BallAtDesk[]
}

export function deskMatchesOf(
  record: DayRecord,
  board: DayBoard,
): { readonly players: readonly PlayerAtDesk[]; readonly competitions: readonly CompetitionAtDesk[] } {
  const names = namesOf(record)
  const order = record.groups.flatMap((group) => group.entryIds)
  const place = (id: EntryId) => (order.includes(id) ? order.indexOf(id) : order.length)
  const players = record.entries
    .filter((entry) => entry.status === 'entered')
    .map((entry) => ({
      entryId: entry.id,
      name: names.full(entry.id),
      handicap: figureOf(entry.indexTenths),
      sort: `${entry.familyName}, ${entry.firstName}`,
      group: record.groups.find((group) => group.entryIds.includes(entry.id))?.number ?? null,
    }))
    // In the order of the draw; whoever is in no group yet by family name.
    .sort((a, b) => place(a.entryId) - place(b.entryId) || a.sort.localeCompare(b.sort, 'en-GB'))
    .map(({ sort: _sort, ...player }) => player)
  return {
    players,
    competitions: record.competitions.map((one): CompetitionAtDesk => {
      const format = formatIn(one)
      const size = format?.sideSize ?? 1
      const shown = board.competitions.find(({ id }) => id === one.id)
      return {
        id: one.id,
        name: one.name,
        size,
        countedDayIds: one.countedDayIds,
        recountedDayIds: one.recountedDayIds ?? [],
        sides: one.sides,
        matches: format?.isMatch ? matchesAtDesk(record, one, shown) : null,
        pairings: one.pairings,
        ends:
          size > 1
            ? one.sides.map((side) => ({ id: side.id, name: names.entrant(side.id) }))
            : [
                ...players.map(({ entryId, name, handicap }) => ({ id: entryId, name: `${name}, ${handicap}` })),
                ...withdrawnStillPaired(record, one).map((id) => ({ id, name: `${names.full(id)} (withdrawn)` })),
              ],
        withExtraHoles: format !== null && ballValueOf(format.value).kind === 'strokes',
        balls: ballsAtDesk(record, one),
      }
    }),
  }
}

function withdrawnStillPaired({ entries }: DayRecord, { pairings }: CompetitionRecord): readonly EntryId[] {
  const paired = new Set<string>(pairings.flatMap(({ a, b }) => [a, b]))
  return entries.filter((entry) => entry.status !== 'entered' && paired.has(entry.id)).map((entry) => entry.id)
}

/** In the order of the pairings, those that are not on the board included. */
function matchesAtDesk(
  record: DayRecord,
  { pairings, sides }: CompetitionRecord,
  shown: CompetitionBoard | undefined,
): MatchAtDesk[] {
  const names = namesOf(record)
  const onBoard = new Map((shown?.matches ?? []).map((match) => [match.id, match]))
  const all: readonly Pick<PairingRecord, 'id' | 'a' | 'b'>[] =
    pairings.length > 0 ? pairings : [...onBoard.values()].map(matchEnds)
  return all.map(({ id, a: first, b: second }) => {
    const match = onBoard.get(id)
    const ending = pairings.find((one) => one.id === id)?.ending ?? NO_ENDING
    const a = names.entrantShort(first)
    const b = names.entrantShort(second)
    const winner = match && match.winner !== null ? `${names.entrantShort(match.winner)} ` : ''
    return {
      id,
      a,
      b,
      result: match
        ? `${winner}${winner ? wonHow(match.result) : match.result}`
        : whyNot(record, sides, [first, second]),
      ending,
      said: Object.keys(ending).length > 0 ? `At the desk: ${endingInWords(ending, a, b)}.` : null,
    }
  })
}

/** Why a pairing is not on the board: one of the two does not play, or has no figure yet. */
function whyNot(record: DayRecord, sides: CompetitionRecord['sides'], ends: readonly string[]): string {
  const names = namesOf(record)
  const said = ends.flatMap((id) => {
    const side = sides.find((one) => one.id === id)
    const players = record.entries.filter((entry) => (side ? side.entryIds : [id]).includes(entry.id))
    if (players.some((one) => one.status === 'entered' && one.indexTenths !== null)) return []
    const name = names.entrantShort(id)
    const has = players.length > 1 ? 'have' : 'has'
    if (players.some((one) => one.status === 'entered')) return [`${name} ${has} no figure yet`]
    return [`${name} ${has} withdrawn`]
  })
  const withdrawn = said.some((one) => one.endsWith('withdrawn'))
  return `${listed(said)}${withdrawn ? ': give a walkover, or pair anew' : ''}`
}

/** "Verrow 4 needed, 2 taken" */
const drivesOfPlayer = (name: string, taken: number, needed: number | undefined) =>
  needed === undefined ? `${name} ${taken}` : `${name} ${needed} needed, ${taken} taken`

function ballsAtDesk(record: DayRecord, competition: CompetitionRecord): BallAtDesk[] {
  const kind = ballKind(competition)
  if (kind === null) return []
  const names = namesOf(record)
  return competition.sides.map((side) => {
    const { drives, ballLostOn } = sideBall(side.id, record.ballFacts, record.round, startHoleOf(record, side.entryIds))
    const taken = side.entryIds
      .map((id) =>
        drivesOfPlayer(names.short(id), drives.filter((one) => one === id).length, competition.terms.minimumDrives),
      )
      .join('; ')
    return {
      side: { id: side.id, name: names.entrant(side.id) },
      kind,
      players: side.entryIds.map((entryId) => ({ entryId, name: names.short(entryId) })),
      holes: holesOfRound(record.round),
      drives,
      ballLostOn,
      said:
        kind === 'drives' ? `drives ${taken}` : ballLostOn === null ? 'the ball is home' : `lost on hole ${ballLostOn}`,
    }
  })
}
