// The pack of a group's phone, from the day's record. It carries nobody's contact details, no code and no link.

import type { CardPack, PackCard, PackHole, PackPartner, SignatureOff } from '@/lib/facts/card-pack'
import type { DayRecord, EntryRecord, GroupRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { playNow } from '@/lib/facts/play-stop'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { ballValueOf } from '@/lib/rules/formats/format'
import { STABLEFORD_POINTS } from '@/lib/rules/formats/stableford-points'
import { type BallToCount, type MatchToCount, playsIn } from '@/lib/rules/matches/match-now'
import { levelsByTee } from '@/lib/rules/score/field'
import { scoreDay } from '@/lib/rules/score-day'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { maximumOn } from '@/lib/rules/values/value-on-hole'
import { sharedCard } from './card-holders'
import { type CurrentCard, keyOf } from './current-card'
import { cardsAsTheyStand, dayOfRecord, matchesOfDay } from './day-of-record'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { leftOutOf } from './left-out'
import { besideMatches, hasMatches } from './match-cards'
import { withNoPart } from './no-part'
import { mainReading, type OwnLine, teeOfCard } from './own-handicaps'
import { packBalls } from './pack-balls'
import { packGames } from './pack-games'
import { takeOnHole, variesByHole } from './scores-that-count'
import { startHoleIn } from './start-holes'

export const groupPack = (record: DayRecord, group: GroupRecord): CardPack => packsOf(record)(group)

/** The packs of all groups: what they share is worked out once. */
export function packsOf(record: DayRecord): (group: GroupRecord) => CardPack {
  const cards = cardsAsTheyStand(record)
  const main = mainReading(record, dayOfRecord(record))
  const levels = levelsOf(record)
  let standings: readonly DayStanding[] | null = null
  const standing = () => {
    standings ??= mainStandings(record)
    return standings
  }
  const matches = matchesOfDay(record)
  const gamesOf = packGames(record)
  const gamesFor = (group: GroupRecord): Pick<CardPack, 'games'> => {
    const games = gamesOf(group)
    return games.length > 0 ? { games } : {}
  }
  const names = namesOf(record)
  const matchesFor = ({ entryIds }: GroupRecord): Pick<CardPack, 'matches'> => {
    const here = matches.filter(({ match }) => entryIds.some((id) => playsIn(match, id)))
    if (here.length === 0) return {}
    return {
      matches: here.map(({ competition, ends, match }) => ({
        competition: competition.name,
        a: names.entrantShort(ends.a),
        b: names.entrantShort(ends.b),
        match: asInGroup(match, entryIds),
      })),
    }
  }
  return (group) => ({
    packVersion: 1,
    society: record.society.name,
    societySlug: record.society.slug,
    ...(record.society.isDemo ? { isDemo: true as const } : {}),
    dayId: record.id,
    daySlug: record.slug,
    dayName: record.name,
    date: record.date,
    course: record.round.courseName,
    status: record.status,
    group: {
      id: group.id,
      number: group.number,
      startTime: group.startTime,
      startHole: group.startHole,
      ...startsAtOf(record, group),
    },
    reading: main.reading,
    mainCompetition: main.name,
    cards: group.entryIds.flatMap((id) => {
      const entry = record.entries.find((one) => one.id === id)
      const card = cards.get(id)
      if (!entry || !card) return []
      return [packCard(record, entry, card, main.lines.get(id), levels)]
    }),
    scoreVersion: record.scoreVersion,
    dayVersion: record.version,
    play: playNow(record.playStops),
    ...howItCounts(record, group),
    ...packBalls(record, group),
    ...countingIn(record, group),
    ...matchesFor(group),
    ...gamesFor(group),
    ...(record.showsPosition ? { position: positionsOf(standing(), group) } : {}),
  })
}

/** What the phone needs to count beyond the plain reading: other points, and sides that play in the group. */
function howItCounts(record: DayRecord, group: GroupRecord): Pick<CardPack, 'points' | 'together'> {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  if (!format) return {}
  const on = ballValueOf(format.value)
  const points =
    on.kind === 'points' && JSON.stringify(on.table) !== JSON.stringify(STABLEFORD_POINTS) ? { points: on.table } : {}
  // A named player and a shared hole need more than the group's own cards; there each card is read by itself.
  const counts = format.ball === 'own' && !format.isMatch && format.value.kind !== 'shared'
  if (!counts || format.sideSize < 2 || format.count.kind === 'named-player') return points
  const names = namesOf(record)
  const { maximum, missing } = main.terms
  const playing = new Set(
    record.entries.filter((entry) => entry.status === 'entered' && entry.indexTenths !== null).map(({ id }) => id),
  )
  const sides = main.sides
    .map((side) => ({ ...side, entryIds: side.entryIds.filter((id) => playing.has(id)) }))
    .filter(({ entryIds }) => entryIds.length > 1 && entryIds.every((id) => group.entryIds.includes(id)))
    // A card drawn by lot for a missing player is of another group.
    .filter(({ entryIds }) => missing?.kind !== 'drawn' || entryIds.length >= format.side.to)
    .map((side) => ({ name: names.entrant(side.id), entryIds: side.entryIds }))
  if (sides.length === 0) return points
  const { better, count, side } = format
  const shortage =
    missing?.kind === 'ghost' || missing?.kind === 'lowest-again'
      ? { shortage: { missing, size: side.to, on, better, maximum: maximum ?? NET_DOUBLE_BOGEY } }
      : {}
  return { ...points, together: { count, on, better, sides, ...shortage } }
}

/** Where a side of the group plays several balls, how many of its scores count. */
function countingIn(record: DayRecord, group: GroupRecord): Pick<CardPack, 'counting'> {
  const counting = record.competitions.flatMap((competition) => {
    const format = formatIn(competition)
    const isHere = competition.sides.some((side) => side.entryIds.some((id) => group.entryIds.includes(id)))
    if (!format || !isHere || format.isMatch || format.ball === 'one' || format.sideSize < 2) return []
    const { count, side } = format
    // The better ball of two is what a four-ball is: nobody needs it said on every hole.
    if (side.to === 2 && !variesByHole(count) && takeOnHole(count, 1).length === 1) return []
    const { ballLost } = competition.terms
    const inForce = count.kind === 'named-player' && ballLost !== undefined ? { ...count, lost: ballLost } : count
    return [{ competition: competition.name, count: inForce, size: side.to }]
  })
  return counting.length > 0 ? { counting } : {}
}

const NET_DOUBLE_BOGEY = { kind: 'net-double-bogey' } as const

/** A side's one ball of whose players some are in another group: the phone has not every card it may be written on. */
function asInGroup(match: MatchToCount, entryIds: readonly string[]): MatchToCount {
  const inGroup = (ball: BallToCount): BallToCount =>
    ball.players.length > 1 && !ball.players.every((id) => entryIds.includes(id)) ? { ...ball, isFixed: true } : ball
  return { ...match, a: match.a.map(inGroup), b: match.b.map(inGroup) }
}

type DayStanding = ReturnType<typeof scoreDay>[number]['standings'][number]

function mainStandings(record: DayRecord): readonly DayStanding[] {
  const main = record.competitions[0]
  return scoreDay(dayOfRecord(record)).find((one) => one.competition === main?.id)?.standings ?? []
}

/** Places as they stand, for the players of this group. */
function positionsOf(standings: readonly DayStanding[], group: GroupRecord): NonNullable<CardPack['position']> {
  const placed = standings.filter((one) => one.place !== null && one.holesPlayed > 0)
  return {
    of: standings.length,
    places: Object.fromEntries(
      placed.flatMap(({ players, place, tied }) =>
        players.filter((id) => group.entryIds.some((one) => one === id)).map((id) => [id, { place: place!, tied }]),
      ),
    ),
  }
}

function capOf(record: DayRecord, par: number, strokes: number): { cap?: number } {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  if (!format || ballValueOf(format.value).kind !== 'maximum') return {}
  return { cap: maximumOn(main.terms.maximum ?? { kind: 'net-double-bogey' }, par, strokes) }
}

type Levels = ReturnType<typeof levelsByTee>

function levelsOf(record: DayRecord): Levels {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  const competition = dayOfRecord(record).competitions.find((one) => one.id === main?.id)
  const isStrokes = format && !format.isMatch && ['strokes', 'maximum'].includes(ballValueOf(format.value).kind)
  return isStrokes && competition ? levelsByTee(dayOfRecord(record), competition) : new Map()
}

function levelOf(tee: DayRecord['tees'][number] | undefined, at: number, levels: Levels): Pick<PackHole, 'level'> {
  const level = tee && levels.get(tee.id)?.[at]
  return level === undefined || level === tee?.holes[at]?.par ? {} : { level }
}

/** In a match the holes that count are told with the match. */
function timesOf(record: DayRecord, hole: number): Pick<PackHole, 'times'> {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  if (!format || format.isMatch) return {}
  const { countedHoles, namedHoles } = main.terms
  if (countedHoles?.length && !countedHoles.includes(hole)) return { times: 0 }
  return format.namedHolesTimes && namedHoles?.includes(hole) ? { times: format.namedHolesTimes } : {}
}

function packCard(
  record: DayRecord,
  entry: EntryRecord,
  card: CurrentCard,
  line: OwnLine | undefined,
  levels: Levels,
): PackCard {
  const tee = teeOfCard(record, entry, line)
  const playingHandicap = line?.playingHandicap ?? 0
  const kept = record.cards.find((one) => one.id === card.cardId)
  const strokes = strokesOnHoles(playingHandicap, tee?.holes ?? [])
  return {
    cardId: card.cardId,
    entryId: entry.id,
    firstName: entry.firstName,
    familyName: familyShown(entry),
    guestOf: entry.kind === 'guest' ? entry.hostName : null,
    ...partnersOf(record, entry.id),
    ...besideOf(record, entry.id),
    ...leftOutSaid(record, entry.id),
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
      ...timesOf(record, hole.hole),
      ...levelOf(tee, at, levels),
      ...capOf(record, hole.par, strokes[at] ?? 0),
    })),
    ...writtenBy(card),
    ruled: Object.fromEntries(
      card.holes.filter((line) => line.ruledBy !== null).map((line) => [line.hole, line.score]),
    ),
    signatures: [card.player, card.marker].flatMap((one) =>
      one ? [{ role: one.role, entryId: one.entryId, signedAt: one.signedAt.toISOString() }] : [],
    ),
    ...signaturesOff(record, card),
  }
}

/** Who plays the same ball: the card is theirs too. */
function partnersOf(record: DayRecord, entryId: EntryId): Pick<PackCard, 'sharedWith'> {
  const group = record.groups.find((one) => one.entryIds.includes(entryId))?.entryIds ?? []
  const side = sharedCard(record, entryId)?.entryIds ?? []
  const sharedWith = side.flatMap((id): PackPartner[] => {
    const other =
      id === entryId || !group.includes(id)
        ? undefined
        : record.entries.find((one) => one.id === id && one.status === 'entered')
    return other ? [{ entryId: id, firstName: other.firstName, familyName: familyShown(other) }] : []
  })
  return sharedWith.length > 0 ? { sharedWith } : {}
}

function besideOf(record: DayRecord, entryId: EntryId): Pick<PackCard, 'beside'> {
  const beside = hasMatches(record) ? besideMatches(record, entryId) : null
  return beside === null ? {} : { beside }
}

function startsAtOf(record: DayRecord, group: GroupRecord): Pick<CardPack['group'], 'startsAt'> {
  const startsAt = startHoleIn(record, group)
  return startsAt === String(group.startHole) ? {} : { startsAt }
}

function leftOutSaid(record: DayRecord, entryId: EntryId): Pick<PackCard, 'leftOut' | 'noPart'> {
  const leftOut = leftOutOf(record, entryId)
  return leftOut.length === 0 ? {} : { leftOut, ...(withNoPart(record).has(entryId) ? { noPart: true as const } : {}) }
}

const familyShown = ({ familyName, knownAs }: EntryRecord) => (knownAs ? `${familyName} (${knownAs})` : familyName)

/** Each writer's own column, hole by hole; who cleared a hole has nothing on it. */
function writtenBy(card: CurrentCard): Pick<PackCard, 'written' | 'numbers'> {
  const written: Record<string, WrittenScore[]> = {}
  const numbers: Record<string, (number | null)[]> = {}
  for (const [at, line] of card.holes.entries())
    for (const fact of line.opinions) {
      const key = keyOf(fact)
      written[key] ??= card.holes.map(() => null)
      numbers[key] ??= card.holes.map(() => null)
      written[key]![at] = fact.score
      numbers[key]![at] = fact.seq
    }
  return { written, numbers }
}

/** Signatures that were taken back and not given again, each with the first hole that reads otherwise since. */
function signaturesOff(record: DayRecord, card: CurrentCard): Pick<PackCard, 'signaturesOff'> {
  const off = (['player', 'marker'] as const).flatMap((role): SignatureOff[] => {
    const last = record.signatures.findLast((one) => one.cardId === card.cardId && one.role === role)
    if (!last || last.withdrawnAt === null) return []
    const at = card.holes.findIndex((line, place) => line.notAgreed || line.score !== (last.scores[place] ?? null))
    const line = card.holes[at]
    const to = !line || line.notAgreed ? null : line.score
    return [
      { role, entryId: last.entryId, hole: line?.hole ?? null, from: line ? (last.scores[at] ?? null) : null, to },
    ]
  })
  return off.length > 0 ? { signaturesOff: off } : {}
}
