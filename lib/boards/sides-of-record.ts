// Sides, matches, groups and teams of the book as the engine takes them.

import type { CompetitionRecord, DayRecord, PairingRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { Absent, Card, Competition, Match, Side, Team } from '@/lib/rules/day'
import { sideBall, startHoleOf } from './ball-facts'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { playerId, sideOf } from './ids-from-engine'

/** Sides that stand as entrants: in a match of singles those drawn together are opponents, not partners. */
export function sidesOf(record: DayRecord, playing: ReadonlySet<string>): Side[] {
  return record.competitions.flatMap((one) => {
    const format = formatIn(one)
    if (!format || format.sideSize < 2) return []
    const isNamed = format.count.kind === 'named-player'
    return sidesIn(one, playing).map(({ id, name, players }) => {
      const lost = isNamed
        ? sideBall(id, record.ballFacts, record.round, startHoleOf(record, players)).ballLostOn
        : null
      return {
        id,
        players,
        competitions: [one.id],
        ...(name ? { name } : {}),
        ...(lost === null ? {} : { ballLostOn: lost }),
      }
    })
  })
}

/** Whoever of a side plays; of a side that withdrew after its match was decided everybody, so that it keeps its name. */
function sidesIn(one: CompetitionRecord, playing: ReadonlySet<string>) {
  const decided = new Set(sidesDecided({ competitions: [one] }))
  return one.sides.flatMap(({ id, name, entryIds }) => {
    const players = entryIds.filter((entryId) => playing.has(entryId))
    if (players.length > 0) return [{ id, name, players }]
    return decided.has(id) && entryIds.length > 0 ? [{ id, name, players: entryIds }] : []
  })
}

/** Given by walkover, conceded, or given at the desk: it stands whoever of it withdrew since. */
export const isDecided = ({ ending }: Pick<PairingRecord, 'ending'>) =>
  ending.walkover !== undefined || ending.concededBy !== undefined || ending.result !== undefined

/**
 * The one card of a side that plays one ball: of its players' cards the first on which anything is written. `cardsOf`
 * makes a player's own card of one round.
 */
export function sideCards(
  record: DayRecord,
  sides: readonly Side[],
  cards: ReadonlyMap<string, Card>,
  ruledHandicap: (entryId: EntryId) => number | null,
): Card[] {
  const byCompetition = new Map<string, CompetitionRecord>(record.competitions.map((one) => [one.id, one]))
  return sides.flatMap((side): Card[] => {
    const competition = byCompetition.get(side.competitions?.[0] ?? '')
    const format = competition && formatIn(competition)
    if (!competition || format?.ball !== 'one') return []
    const own = side.players.flatMap((id) => cards.get(id) ?? [])
    const card = own.find((one) => one.outcome || one.scores.some((score) => score !== null)) ?? own[0]
    if (!card) return []
    const { indexTenths: _, courseHandicap: _course, ...written } = card
    const ruled = ruledHandicap(playerId(card.player))
    const drives = drivesOf(record, side, competition)
    return [
      {
        ...written,
        player: side.id,
        ...(ruled === null ? {} : { playingHandicap: ruled }),
        ...(drives && (card.round ?? 1) === 1 ? { drives } : {}),
      },
    ]
  })
}

/** Is it the side of a competition in which a side plays one ball? */
export const isOneBall = ({ competitions }: Pick<DayRecord, 'competitions'>, side: Side) =>
  competitions.some((one) => side.competitions?.includes(one.id) && formatIn(one)?.ball === 'one')

function drivesOf(record: DayRecord, side: Side, { terms }: CompetitionRecord): (string | null)[] | null {
  const { drives } = sideBall(sideOf(side.id), record.ballFacts, record.round)
  const known = drives.map((one) => (one !== null && side.players.includes(one) ? one : null))
  return terms.minimumDrives !== undefined || known.some((one) => one !== null) ? known : null
}

/** Sides whose match was given by walkover or conceded, or theirs. */
export function sidesDecided({ competitions }: Pick<DayRecord, 'competitions'>): readonly string[] {
  return competitions.flatMap(({ sides, pairings }) => {
    const ends = new Set(pairings.filter(isDecided).flatMap(({ a, b }) => [a, b]))
    return sides.filter((side) => ends.has(side.id)).map((side) => side.id)
  })
}

/** Who plays whom, with what the desk wrote about the end of it. Before pairings were kept, two of a side met. */
export function matchesOf(
  competition: CompetitionRecord,
  playing: ReadonlySet<string>,
  sides: readonly Side[],
): Match[] {
  const { pairings } = competition
  const there = new Set([...playing, ...sides.map((side) => side.id)])
  if (pairings.length > 0 || (formatIn(competition)?.sideSize ?? 1) > 1)
    return pairings.flatMap((pairing) => {
      const { id, a, b, ending } = pairing
      const { concededHoles, concededBy, walkover, result, abandoned, extraHoles } = ending
      if (!isDecided(pairing) && (!there.has(a) || !there.has(b))) return []
      return [
        {
          id,
          a,
          b,
          ...(concededHoles?.length ? { concededHoles } : {}),
          ...(concededBy ? { concededBy } : {}),
          ...(walkover ? { walkover } : {}),
          ...(result ? { result } : {}),
          ...(abandoned ? { abandoned } : {}),
          ...(extraHoles?.length ? { extraHoles } : {}),
        },
      ]
    })
  return competition.sides.flatMap(({ id, entryIds }) => {
    const [a, b] = entryIds.filter((entryId) => playing.has(entryId))
    return a && b ? [{ id, a, b }] : []
  })
}

/** Everybody a decided match names, and everybody of a side, who does not play. */
export function absentFrom(
  record: DayRecord,
  competitions: readonly Competition[],
  sides: readonly Side[],
  playing: ReadonlySet<string>,
): Absent[] {
  const known = new Set([...playing, ...sides.map((side) => side.id)])
  const ends = competitions.flatMap((one) => one.matches ?? []).flatMap(({ a, b }) => [a, b])
  const away = [...ends, ...sides.flatMap((side) => side.players)].filter((id) => !known.has(id))
  if (away.length === 0) return []
  const names = namesOf(record)
  return [...new Set(away)].map((id) => ({ id, name: names.entrant(id) }))
}

export function teamsOf({ teams }: Pick<DayRecord, 'teams'>, playing: ReadonlySet<string>): Team[] {
  return teams.flatMap(({ id, name, entryIds }) => {
    const players = entryIds.filter((entryId) => playing.has(entryId))
    return players.length > 0 ? [{ id, name, players }] : []
  })
}
