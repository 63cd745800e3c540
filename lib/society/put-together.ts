// Sides and pairings that follow from a draw: what stands is kept, the rest is made anew inside the groups.

import { formatIn, togetherIn } from '@/lib/boards/format-of-competition'
import { figuresOf } from '@/lib/boards/handicap-table'
import { opponents, playerIds } from '@/lib/boards/ids-from-engine'
import { isDecided, sidesDecided } from '@/lib/boards/sides-of-record'
import type { CompetitionRecord, DayRecord, SideRecord } from '@/lib/facts/day-record'
import type { EntryId, SideId } from '@/lib/facts/ids'
import { balancedSides } from '@/lib/rules/draw/balanced-sides'
import { type Drawn, opponentsOf } from '@/lib/rules/draw/opponents'
import { pairsOf } from '@/lib/rules/draw/pairs'
import type { Tx } from '@/lib/store/client'
import { dayRecordIn } from '@/lib/store/day-record'
import { type PairingToKeep, replacePairings } from '@/lib/store/pairings'
import { replaceSides } from '@/lib/store/sides'

interface GroupDrawn {
  readonly entryIds: readonly EntryId[]
}

/** The largest side that is made inside a group. */
const LARGEST_IN_GROUP = 4

/** Sides of every competition of a day whose groups have just been written. */
export async function sidesAfterDraw(
  tx: Tx,
  day: DayRecord,
  groups: readonly GroupDrawn[],
  seed: number | null,
): Promise<void> {
  for (const one of day.competitions) {
    const size = togetherIn(one)
    if (size < 2) continue
    const made = sidesFor(day, one, groups, size, seed ?? 0)
    await replaceSides(tx, day.society.id, one.id, [...made, ...withdrawnSides(one, groups)])
  }
}

/** Sides of which nobody is in the draw any more, although their match was decided: it stays in the book with them. */
function withdrawnSides(one: CompetitionRecord, groups: readonly GroupDrawn[]): readonly (readonly EntryId[])[] {
  const drawn = new Set(groups.flatMap((group) => group.entryIds))
  const decided = new Set(sidesDecided({ competitions: [one] }))
  return one.sides
    .filter((side) => decided.has(side.id) && !side.entryIds.some((id) => drawn.has(id)))
    .map((side) => side.entryIds)
}

function sidesFor(
  day: DayRecord,
  one: CompetitionRecord,
  groups: readonly GroupDrawn[],
  size: number,
  seed: number,
): readonly (readonly EntryId[])[] {
  const standing = one.sides.map((side) => side.entryIds)
  const drawn = groups.flatMap((group) => group.entryIds)
  if (size > LARGEST_IN_GROUP)
    return standing.length > 0 ? stillThere(standing, drawn) : evenSides(day, drawn, size, seed)
  // A side the desk made across two groups stays as it is; a pair of one group that a move has parted is made anew.
  const partedNow = (side: readonly EntryId[]) =>
    day.groups.some(({ entryIds }) => side.every((id) => entryIds.includes(id)))
  const groupOf = new Map(groups.flatMap((group, at) => group.entryIds.map((id) => [id, at] as const)))
  const across = standing.filter(
    (side) =>
      !partedNow(side) && side.every((id) => groupOf.has(id)) && new Set(side.map((id) => groupOf.get(id))).size > 1,
  )
  const taken = new Set(across.flat())
  const teamOf = teamsByEntry(day)
  const hostOf = new Map(
    day.entries.map((entry) => [entry.id, day.entries.find((host) => host.personId === entry.hostId)?.id ?? null]),
  )
  const inGroups = groups.flatMap(({ entryIds }) => {
    const free = entryIds.filter((id) => !taken.has(id))
    // Partners are of one team where the day has teams.
    const together = formatIn(one)?.isMatch ? byTeam(free, teamOf) : [free]
    return together.flatMap((ids) =>
      pairsOf(
        ids.map((id) => ({ id, hostId: hostOf.get(id) ?? null })),
        size,
        standing,
      ).map(playerIds),
    )
  })
  return [...across, ...inGroups]
}

const stillThere = (sides: readonly (readonly EntryId[])[], drawn: readonly EntryId[]) => {
  const there = new Set(drawn)
  return sides.map((side) => side.filter((id) => there.has(id))).filter((side) => side.length > 0)
}

/** Sides of one size from the whole field, as even as the handicaps allow. */
export function evenSides(
  day: DayRecord,
  entryIds: readonly EntryId[],
  size: number,
  seed: number,
): readonly (readonly EntryId[])[] {
  const figures = figuresOf(day)
  const players = entryIds.map((id) => ({ id, handicap: figures.get(id)?.course.rounded ?? null }))
  return balancedSides(players, Math.ceil(players.length / size), seed).map(playerIds)
}

const teamsByEntry = (day: DayRecord) =>
  new Map(day.teams.flatMap((team) => team.entryIds.map((id) => [id, team.id] as const)))

function byTeam(ids: readonly EntryId[], teamOf: ReadonlyMap<EntryId, string>): EntryId[][] {
  const by = new Map<string, EntryId[]>()
  for (const id of ids) {
    const team = teamOf.get(id) ?? ''
    by.set(team, [...(by.get(team) ?? []), id])
  }
  return [...by.values()]
}

/**
 * Who plays whom, once groups and sides are written. `keep` says which of the pairings that stand are kept as they are:
 * those inside one group after a new draw, all of them after a player was moved by hand.
 */
export async function pairingsAfterDraw(tx: Tx, before: DayRecord, keep: 'in-group' | 'all'): Promise<void> {
  if (!before.competitions.some((one) => formatIn(one)?.isMatch)) return
  const day = await dayRecordIn(tx, { societyId: before.society.id, dayId: before.id })
  if (!day) throw new Error(`Day ${before.id} went away while its matches were paired.`)
  for (const one of day.competitions) {
    const format = formatIn(one)
    if (!format?.isMatch) continue
    const kind = format.sideSize > 1 ? 'side' : 'entry'
    await replacePairings(tx, day.society.id, one.id, kind, proposedPairings(day, one, keep))
  }
}

/** The pairings that stand and may stay, then the opponents inside each group. */
export function proposedPairings(
  day: DayRecord,
  one: CompetitionRecord,
  keep: 'in-group' | 'all' | 'none',
): readonly PairingToKeep[] {
  const isSides = (formatIn(one)?.sideSize ?? 1) > 1
  const groupOf = new Map(day.groups.flatMap((group) => group.entryIds.map((id) => [id, group.number] as const)))
  const playersOf = new Map<string, readonly EntryId[]>(
    isSides
      ? one.sides.map((side: SideRecord) => [side.id, side.entryIds] as const)
      : day.entries.filter((entry) => entry.status === 'entered').map((entry) => [entry.id, [entry.id]] as const),
  )
  const placeOf = (id: string) => {
    const groups = new Set((playersOf.get(id) ?? []).map((player) => groupOf.get(player) ?? null))
    return groups.size === 1 ? [...groups][0]! : null
  }
  const partners = isSides ? new Map<string, readonly EntryId[]>() : partnersOn(day)
  const kept = one.pairings.filter(({ a, b, ending }) => {
    if (keep === 'none') return false
    // What the desk decided stays, whoever of it withdrew since.
    if (isDecided({ ending })) return true
    if (!playersOf.has(a) || !playersOf.has(b)) return false
    if (keep === 'all' || Object.keys(ending).length > 0) return true
    return placeOf(a) !== null && placeOf(a) === placeOf(b) && !partners.get(a)?.some((id) => id === b)
  })
  const taken = new Set(kept.flatMap(({ a, b }) => [a, b]))
  const teamOf = teamsByEntry(day)
  const made = day.groups.flatMap((group) => {
    const here: Drawn[] = isSides
      ? one.sides
          .filter((side) => placeOf(side.id) === group.number)
          .map((side) => ({ id: side.id, team: sideTeam(side, teamOf) }))
      : group.entryIds
          .filter((id) => playersOf.has(id))
          .map((id) => ({ id, team: teamOf.get(id) ?? null, partners: partners.get(id) ?? [] }))
    return opponentsOf(here.filter(({ id }) => !taken.has(id as EntryId | SideId))).map(([a, b]) => opponents(a, b))
  })
  const first = (id: string) => placeOf(id) ?? Number.MAX_SAFE_INTEGER
  return [...kept.map(({ a, b }) => ({ a, b })), ...made].sort((x, y) => first(x.a) - first(y.a))
}

/** With whom everybody plays as partners today, in any competition of the day. */
function partnersOn(day: DayRecord): ReadonlyMap<string, readonly EntryId[]> {
  const of = new Map<string, readonly EntryId[]>()
  for (const one of day.competitions) {
    if ((formatIn(one)?.sideSize ?? 1) < 2) continue
    for (const { entryIds } of one.sides)
      for (const id of entryIds) of.set(id, [...(of.get(id) ?? []), ...entryIds.filter((other) => other !== id)])
  }
  return of
}

/** The team of a side whose players are all of one team. */
function sideTeam(side: SideRecord, teamOf: ReadonlyMap<EntryId, string>): string | null {
  const teams = new Set(side.entryIds.map((id) => teamOf.get(id) ?? null))
  return teams.size === 1 ? [...teams][0]! : null
}
