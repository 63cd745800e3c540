import type { DayId, RoundId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { CompetitionRecord, DayRecord, EntryRecord, GroupRecord, RoundTeeRecord } from '@/lib/facts/day-record'
import { labelsOf } from '@/lib/facts/labels'
import { competitionTerms } from '@/lib/facts/terms'
import { calledOffOf } from './called-off'
import { type Book, reading, type Tx } from './client'
import { cardsOf, factsOf, rulingsOf, signaturesOf } from './day-cards'
import { ballFactsOf, countedDaysOf, earlierVersions, pairingsOf, teamsOf } from './day-matches'
import { dayRulingsOf } from './day-rulings'
import { playStopsOf } from './play-stops'
import { readAtOnce } from './write'

/** Which day: by its own id inside a society, or by the two words of its address. */
export type WhichDay =
  | { readonly societyId: SocietyId; readonly dayId: DayId }
  | { readonly societySlug: string; readonly daySlug: string }

/** A whole day from one state of the book, or null when there is no such day in that society. */
export async function readDayRecord(which: WhichDay, on: Book = reading()): Promise<DayRecord | null> {
  return readAtOnce((tx) => dayRecordIn(tx, which), on)
}

/** The same inside a transaction that goes on to change something. */
export async function dayRecordIn(tx: Tx, which: WhichDay): Promise<DayRecord | null> {
  const day = await oneDay(tx, which)
  if (!day) return null
  const counted: DayRecord[] = []
  for (const dayId of await countedDaysOf(tx, day.id)) {
    const one = await oneDay(tx, { societyId: day.society.id, dayId })
    if (one) counted.push(one)
  }
  if (counted.length === 0) return day
  // A day that was called off is no round of the sum, but it still moves the version: it may be put back on.
  const earlier = counted.filter((one) => !one.calledOff)
  return { ...day, earlier, boardVersion: day.scoreVersion + earlierVersions(counted) }
}

async function oneDay(tx: Tx, which: WhichDay): Promise<DayRecord | null> {
  const day = await tx.day.findFirst({
    where:
      'dayId' in which
        ? { id: which.dayId, societyId: which.societyId }
        : { slug: which.daySlug, society: { slug: which.societySlug } },
    select: {
      id: true,
      societyId: true,
      slug: true,
      number: true,
      name: true,
      date: true,
      status: true,
      edition: true,
      entriesCloseOn: true,
      frozenAt: true,
      startPublishedAt: true,
      closedAt: true,
      calledOffAt: true,
      calledOffReason: true,
      playedAheadAt: true,
      version: true,
      scoreVersion: true,
      showsPosition: true,
      showsChances: true,
      society: { select: { id: true, slug: true, name: true, isDemo: true } },
      season: { select: { id: true, name: true, _count: { select: { days: true } } } },
      rounds: {
        where: { number: 1 },
        select: {
          id: true,
          courseId: true,
          courseName: true,
          holes: true,
          startKind: true,
          firstTee: true,
          intervalMinutes: true,
        },
      },
      publications: {
        select: { number: true, publishedAt: true, reason: true },
        orderBy: { number: 'asc' },
      },
    },
  })
  const round = day?.rounds[0]
  if (!day || !round) return null
  const cards = await cardsOf(tx, round.id)
  const tees = await teesOf(tx, round.id)
  const cardIds = cards.map((card) => card.id)
  return {
    society: day.society,
    season: { id: day.season.id, name: day.season.name, dayCount: day.season._count.days },
    id: day.id,
    slug: day.slug,
    number: day.number,
    name: day.name,
    date: day.date,
    status: day.status as DayRecord['status'],
    edition: day.edition,
    dayRulings: await dayRulingsOf(tx, day.id),
    entriesCloseOn: day.entriesCloseOn,
    frozenAt: day.frozenAt,
    startPublishedAt: day.startPublishedAt,
    closedAt: day.closedAt,
    calledOff: calledOffOf(day),
    playedAheadAt: day.playedAheadAt,
    version: day.version,
    scoreVersion: day.scoreVersion,
    showsPosition: day.showsPosition,
    showsChances: day.showsChances,
    boardVersion: day.scoreVersion,
    round: {
      ...round,
      firstHole: tees[0]?.holes[0]?.hole ?? 1,
      startKind: round.startKind as DayRecord['round']['startKind'],
    },
    tees,
    entries: await entriesOf(tx, day.id),
    competitions: await competitionsOf(tx, day.id),
    groups: await groupsOf(tx, round.id),
    teams: await teamsOf(tx, day.id),
    ballFacts: await ballFactsOf(tx, day.id),
    earlier: [],
    cards,
    facts: await factsOf(tx, cardIds),
    signatures: await signaturesOf(tx, cardIds),
    rulings: await rulingsOf(tx, day.id),
    playStops: await playStopsOf(tx, day.id),
    publications: day.publications,
  }
}

async function teesOf(tx: Tx, roundId: RoundId): Promise<RoundTeeRecord[]> {
  const rows = await tx.roundTee.findMany({
    where: { roundId },
    select: {
      id: true,
      name: true,
      gender: true,
      courseRatingTenths: true,
      slopeRating: true,
      isDefault: true,
      holes: {
        select: { hole: true, par: true, strokeIndex: true, yards: true },
        orderBy: { hole: 'asc' },
      },
    },
    orderBy: [{ name: 'asc' }, { gender: 'asc' }],
  })
  return rows.map((row) => ({
    ...row,
    gender: row.gender as RoundTeeRecord['gender'],
    holes: row.holes.map(({ yards, ...hole }) => (yards === null ? hole : { ...hole, yards })),
  }))
}

async function entriesOf(tx: Tx, dayId: DayId): Promise<EntryRecord[]> {
  const rows = await tx.entry.findMany({
    where: { dayId },
    select: {
      id: true,
      personId: true,
      hostId: true,
      kind: true,
      status: true,
      roundTeeId: true,
      claimedTenths: true,
      indexTenths: true,
      enteredAt: true,
      labels: true,
      person: {
        select: {
          firstName: true,
          familyName: true,
          knownAs: true,
          gender: true,
          handicapSource: true,
          labels: true,
          records: { select: { indexTenths: true }, orderBy: { sequence: 'desc' }, take: 1 },
        },
      },
      host: { select: { familyName: true } },
    },
    orderBy: [{ enteredAt: 'asc' }, { id: 'asc' }],
  })
  return rows.map(({ person, host, ...row }) => ({
    ...row,
    firstName: person.firstName,
    familyName: person.familyName,
    knownAs: person.knownAs,
    gender: person.gender as EntryRecord['gender'],
    kind: row.kind as EntryRecord['kind'],
    hostName: host?.familyName ?? null,
    status: row.status as EntryRecord['status'],
    indexTenths: row.indexTenths ?? row.claimedTenths ?? person.records[0]?.indexTenths ?? null,
    frozen: row.indexTenths !== null,
    presentTenths: row.claimedTenths ?? person.records[0]?.indexTenths ?? null,
    labels: labelsOf(row.labels ?? person.labels),
    handicapSource: (row.claimedTenths === null ? person.handicapSource : 'claimed') as EntryRecord['handicapSource'],
  }))
}

async function competitionsOf(tx: Tx, dayId: DayId): Promise<CompetitionRecord[]> {
  const rows = await tx.competition.findMany({
    where: { dayId },
    select: {
      id: true,
      number: true,
      name: true,
      format: true,
      terms: true,
      prizes: {
        select: { number: true, name: true, place: true, eligible: true, valuePence: true, division: true },
        orderBy: { number: 'asc' },
      },
      countedDays: { select: { dayId: true, countedUnder: true }, orderBy: { number: 'asc' } },
      sides: {
        select: {
          id: true,
          number: true,
          name: true,
          members: { select: { entryId: true }, orderBy: { position: 'asc' } },
        },
        orderBy: { number: 'asc' },
      },
    },
    orderBy: { number: 'asc' },
  })
  const pairings = await pairingsOf(tx, dayId)
  return rows.map(({ countedDays, ...row }) => ({
    ...row,
    pairings: pairings.get(row.id) ?? [],
    countedDayIds: countedDays.map((one) => one.dayId),
    recountedDayIds: countedDays.flatMap((one) => (one.countedUnder === 'this-day' ? [one.dayId] : [])),
    terms: competitionTerms.parse(JSON.parse(row.terms)),
    prizes: row.prizes.map((prize) => ({
      ...prize,
      eligible: prize.eligible as CompetitionRecord['prizes'][number]['eligible'],
    })),
    sides: row.sides.map(({ members, ...side }) => ({ ...side, entryIds: members.map((one) => one.entryId) })),
  }))
}

async function groupsOf(tx: Tx, roundId: RoundId): Promise<GroupRecord[]> {
  const rows = await tx.group.findMany({
    where: { roundId },
    select: {
      id: true,
      number: true,
      startTime: true,
      startHole: true,
      code: true,
      linkKey: true,
      revokedAt: true,
      places: { select: { entryId: true }, orderBy: { position: 'asc' } },
    },
    orderBy: { number: 'asc' },
  })
  return rows.map(({ places, revokedAt, ...row }) => ({
    ...row,
    revoked: revokedAt !== null,
    entryIds: places.map((place) => place.entryId),
  }))
}
