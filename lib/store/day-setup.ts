import type { CompetitionId, CourseId, DayId, RoundId, RoundTeeId, SeasonId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayRecord, PrizeRecord } from '@/lib/facts/day-record'
import type { CompetitionTerms } from '@/lib/facts/terms'
import type { Tx } from './client'
import type { TeeToKeep } from './courses'
import { newId } from './new-id'

export interface CompetitionToKeep {
  readonly name: string
  readonly format: string
  readonly terms: CompetitionTerms
  readonly prizes: readonly Omit<PrizeRecord, 'number'>[]
}

export interface RoundTeeToKeep extends TeeToKeep {
  readonly isDefault: boolean
}

export interface DayToKeep {
  readonly name: string
  readonly date: string
  readonly edition: string
  readonly entriesCloseOn: string | null
  readonly places: number | null
  readonly round: {
    readonly courseId: CourseId
    readonly courseName: string
    readonly holes: number
    readonly startKind: 'tee-times' | 'shotgun'
    readonly firstTee: string
    readonly intervalMinutes: number
  }
  readonly tees: readonly RoundTeeToKeep[]
  readonly competitions: readonly CompetitionToKeep[]
}

export async function insertDay(
  tx: Tx,
  societyId: SocietyId,
  seasonId: SeasonId,
  slug: string,
  day: DayToKeep,
  now: Date,
): Promise<DayId> {
  const id = newId<DayId>()
  const roundId = newId<RoundId>()
  const { round, tees, competitions, ...rest } = day
  const number = (await tx.day.count({ where: { seasonId } })) + 1
  await tx.day.create({
    data: { id, societyId, seasonId, number, slug, status: 'called', ...rest, createdAt: now },
  })
  await tx.round.create({ data: { id: roundId, societyId, dayId: id, number: 1, ...round } })
  await insertRoundTees(tx, societyId, roundId, tees)
  for (const [at, competition] of competitions.entries())
    await insertCompetition(tx, societyId, id, at + 1, competition)
  await numberByDate(tx, seasonId)
  return id
}

/** A free address part: the wanted one, or with the next number behind it. */
export async function freeDaySlug(tx: Tx, societyId: SocietyId, wanted: string): Promise<string> {
  const rows = await tx.day.findMany({
    where: { societyId, slug: { startsWith: wanted } },
    select: { slug: true },
  })
  const taken = new Set(rows.map((row) => row.slug))
  if (!taken.has(wanted)) return wanted
  for (let number = 2; ; number++) if (!taken.has(`${wanted}-${number}`)) return `${wanted}-${number}`
}

/** Names of later days with a competition that counts this one too. */
export async function addedUpWith(tx: Tx, dayId: DayId): Promise<readonly string[]> {
  const rows = await tx.countedDay.findMany({
    where: { dayId },
    select: { competition: { select: { day: { select: { name: true } } } } },
  })
  return [...new Set(rows.map((row) => row.competition.day.name))]
}

/** Only for a day on which nothing hangs: its round, tees and competitions go with it. */
export async function removeDay(tx: Tx, dayId: DayId): Promise<void> {
  await tx.day.delete({ where: { id: dayId } })
}

/** Days of a season carry numbers in the order of their dates, whichever was called first. */
export async function numberByDate(tx: Tx, seasonId: SeasonId): Promise<void> {
  const days = await tx.day.findMany({
    where: { seasonId },
    select: { id: true, number: true },
    orderBy: [{ date: 'asc' }, { createdAt: 'asc' }, { id: 'asc' }],
  })
  const wrong = days.filter((day, at) => day.number !== at + 1)
  if (wrong.length === 0) return
  // Two steps, because on the way no two days may have the same number.
  for (const day of wrong) await tx.day.update({ where: { id: day.id }, data: { number: day.number + 100_000 } })
  for (const [at, day] of days.entries())
    if (day.number !== at + 1) await tx.day.update({ where: { id: day.id }, data: { number: at + 1 } })
}

export async function insertRoundTees(
  tx: Tx,
  societyId: SocietyId,
  roundId: RoundId,
  tees: readonly RoundTeeToKeep[],
): Promise<ReadonlyMap<string, RoundTeeId>> {
  const withIds = tees.map((tee) => ({ id: newId<RoundTeeId>(), ...tee }))
  await tx.roundTee.createMany({ data: withIds.map(({ holes: _, ...tee }) => ({ ...tee, societyId, roundId })) })
  await tx.roundTeeHole.createMany({
    data: withIds.flatMap((tee) => tee.holes.map((hole) => ({ roundTeeId: tee.id, ...hole }))),
  })
  return new Map(withIds.map((tee) => [`${tee.name} ${tee.gender}`, tee.id]))
}

async function insertCompetition(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
  number: number,
  competition: CompetitionToKeep,
): Promise<void> {
  const id = newId<CompetitionId>()
  const { terms, prizes, ...rest } = competition
  await tx.competition.create({ data: { id, societyId, dayId, number, ...rest, terms: JSON.stringify(terms) } })
  await insertPrizes(tx, societyId, id, prizes)
}

async function insertPrizes(
  tx: Tx,
  societyId: SocietyId,
  competitionId: CompetitionId,
  prizes: CompetitionToKeep['prizes'],
): Promise<void> {
  await tx.prize.createMany({
    data: prizes.map((prize, at) => ({ id: newId(), societyId, competitionId, number: at + 1, ...prize })),
  })
}

/**
 * Moves the day to its next version if it still stands at `version`. The condition and the step are one statement:
 * of two desks that save at the same moment only one gets through. Call it first in the transaction.
 */
export async function stepVersion(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
  version: number,
  also: {
    status?: DayRecord['status']
    frozenAt?: Date | null
    startPublishedAt?: Date
    showsPosition?: boolean
    showsChances?: boolean
  } = {},
): Promise<boolean> {
  const stepped = await tx.day.updateMany({
    where: { id: dayId, societyId, version },
    data: { version: version + 1, ...also },
  })
  return stepped.count === 1
}

/** What a change of the day before the freeze writes: everything but its tees and competitions. */
export async function updateDay(
  tx: Tx,
  dayId: DayId,
  seasonId: SeasonId,
  day: Pick<DayToKeep, 'name' | 'date' | 'edition' | 'entriesCloseOn' | 'places' | 'round'>,
): Promise<void> {
  const { name, date, edition, entriesCloseOn, places, round } = day
  await tx.day.update({ where: { id: dayId }, data: { seasonId, name, date, edition, entriesCloseOn, places } })
  await tx.round.updateMany({ where: { dayId, number: 1 }, data: round })
}

/** New copies of the tees; entries move to the tee of the same name and gender, or to the default of their gender. */
export async function replaceTees(
  tx: Tx,
  record: Pick<DayRecord, 'society' | 'round' | 'tees' | 'entries'>,
  tees: readonly RoundTeeToKeep[],
): Promise<void> {
  const before = new Map(record.tees.map((tee) => [tee.id, tee]))
  // The old ones step aside first: a round has each tee once for each gender.
  for (const tee of record.tees)
    await tx.roundTee.update({ where: { id: tee.id }, data: { name: `${tee.name} (before)`, isDefault: false } })
  const ids = await insertRoundTees(tx, record.society.id, record.round.id, tees)
  for (const entry of record.entries) {
    const was = before.get(entry.roundTeeId)
    const fallback = tees.find((tee) => tee.gender === entry.gender && tee.isDefault)
    const kept = ids.get(`${was?.name} ${was?.gender}`) ?? ids.get(`${fallback?.name} ${fallback?.gender}`)
    if (kept === undefined) throw new Error(`No tee for entry ${entry.id}: the change should have been refused.`)
    await tx.entry.update({ where: { id: entry.id }, data: { roundTeeId: kept } })
  }
  await tx.roundTee.deleteMany({ where: { id: { in: record.tees.map((tee) => tee.id) } } })
}

/** Competitions keep their number, and with it their sides; one more is added, one fewer falls away from the end. */
export async function replaceCompetitions(
  tx: Tx,
  record: Pick<DayRecord, 'society' | 'id' | 'status' | 'competitions'>,
  competitions: readonly CompetitionToKeep[],
): Promise<void> {
  for (const [at, competition] of competitions.entries()) {
    const kept = record.competitions.find((one) => one.number === at + 1)
    if (!kept) {
      await insertCompetition(tx, record.society.id, record.id, at + 1, competition)
      continue
    }
    const { name, format, terms, prizes } = competition
    // Frozen terms are not even written again: the database refuses it.
    const changed = record.status === 'called' ? { name, format, terms: JSON.stringify(terms) } : { name }
    await tx.competition.update({ where: { id: kept.id }, data: changed })
    await tx.prize.deleteMany({ where: { competitionId: kept.id } })
    await insertPrizes(tx, record.society.id, kept.id, prizes)
  }
  await tx.competition.deleteMany({ where: { dayId: record.id, number: { gt: competitions.length } } })
}

/** What a day record leaves out: the limit of places and how the groups were drawn. */
export async function dayExtras(
  tx: Tx,
  dayId: DayId,
): Promise<{
  places: number | null
  seasonId: SeasonId
  createdAt: Date
  drawnAt: Date | null
  drawWay: string | null
  drawSeed: number | null
}> {
  const row = await tx.day.findUniqueOrThrow({
    where: { id: dayId },
    select: {
      places: true,
      seasonId: true,
      createdAt: true,
      rounds: { where: { number: 1 }, select: { drawnAt: true, drawWay: true, drawSeed: true } },
    },
  })
  const { rounds, ...rest } = row
  return { ...rest, ...(rounds[0] ?? { drawnAt: null, drawWay: null, drawSeed: null }) }
}

/** The day that was played or called last, to propose the next one from. */
export async function lastDayOf(tx: Tx, societyId: SocietyId): Promise<DayId | null> {
  const row = await tx.day.findFirst({
    where: { societyId },
    select: { id: true },
    orderBy: [{ date: 'desc' }, { createdAt: 'desc' }],
  })
  return row?.id ?? null
}
