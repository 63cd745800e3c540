import type { CompetitionId, DayId, EntryId, PairingId, SideId, SocietyId, TeamId } from '@/lib/facts/ids'
import 'server-only'
import type { CompetitionRecord } from '@/lib/facts/day-record'
import type { MatchEnding } from '@/lib/facts/match-ending'
import { competitionTerms } from '@/lib/facts/terms'
import type { Tx } from './client'
import { newId } from './new-id'

export interface PairingToKeep {
  readonly a: EntryId | SideId
  readonly b: EntryId | SideId
}

/** On the way no two rows may have the same number. */
const OUT_OF_THE_WAY = 100_000

/**
 * Who plays whom, in this order. A pairing that is there already keeps its row, and with it what the desk wrote about its
 * end; the others are made anew.
 */
export async function replacePairings(
  tx: Tx,
  societyId: SocietyId,
  competitionId: CompetitionId,
  kind: 'entry' | 'side',
  pairings: readonly PairingToKeep[],
): Promise<void> {
  const rows = await tx.pairing.findMany({
    where: { competitionId },
    select: { id: true, entryAId: true, entryBId: true, sideAId: true, sideBId: true },
  })
  const there = new Map(rows.map((row) => [`${row.entryAId ?? row.sideAId} ${row.entryBId ?? row.sideBId}`, row.id]))
  const kept = pairings.map(({ a, b }) => there.get(`${a} ${b}`) ?? null)
  await tx.pairing.deleteMany({ where: { competitionId, id: { notIn: kept.filter((id) => id !== null) } } })
  await tx.pairing.updateMany({ where: { competitionId }, data: { number: { increment: OUT_OF_THE_WAY } } })
  for (const [at, id] of kept.entries())
    if (id !== null) await tx.pairing.update({ where: { id }, data: { number: at + 1 } })
  await tx.pairing.createMany({
    data: pairings.flatMap(({ a, b }, at) => {
      if (kept[at] !== null) return []
      const ends =
        kind === 'entry'
          ? { entryAId: a as EntryId, entryBId: b as EntryId }
          : { sideAId: a as SideId, sideBId: b as SideId }
      return [{ id: newId<PairingId>(), societyId, competitionId, number: at + 1, ...ends }]
    }),
  })
}

export async function setEnding(tx: Tx, pairingId: PairingId, ending: MatchEnding): Promise<void> {
  await tx.pairing.update({ where: { id: pairingId }, data: { ending: JSON.stringify(ending) } })
}

export async function replaceTeams(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
  teams: readonly { readonly name: string; readonly entryIds: readonly EntryId[] }[],
): Promise<void> {
  await tx.team.deleteMany({ where: { dayId } })
  const withIds = teams.map((team, at) => ({ id: newId<TeamId>(), number: at + 1, ...team }))
  await tx.team.createMany({ data: withIds.map(({ id, number, name }) => ({ id, societyId, dayId, number, name })) })
  await tx.teamMember.createMany({
    data: withIds.flatMap(({ id, entryIds }) =>
      entryIds.map((entryId, at) => ({ societyId, teamId: id, entryId, position: at + 1 })),
    ),
  })
}

export async function replaceCountedDays(
  tx: Tx,
  societyId: SocietyId,
  competitionId: CompetitionId,
  dayIds: readonly DayId[],
  recounted: readonly DayId[] = [],
): Promise<void> {
  await tx.countedDay.deleteMany({ where: { competitionId } })
  await tx.countedDay.createMany({
    data: dayIds.map((dayId, at) => ({
      societyId,
      competitionId,
      number: at + 1,
      dayId,
      countedUnder: recounted.includes(dayId) ? 'this-day' : 'as-published',
    })),
  })
}

export interface DayToCount {
  readonly id: DayId
  readonly name: string
  readonly date: string
  readonly holes: number
  readonly courseName: string
  readonly competitions: readonly Pick<CompetitionRecord, 'name' | 'format' | 'terms'>[]
}

/** Days of the society that were played before this date, newest first: they can be added up with a later one. */
export async function daysBefore(tx: Tx, societyId: SocietyId, date: string, dayId: DayId): Promise<DayToCount[]> {
  const rows = await tx.day.findMany({
    where: { societyId, id: { not: dayId }, date: { lte: date }, calledOffAt: null },
    select: {
      id: true,
      name: true,
      date: true,
      createdAt: true,
      rounds: { where: { number: 1 }, select: { holes: true, courseName: true } },
      competitions: { select: { name: true, format: true, terms: true }, orderBy: { number: 'asc' } },
    },
    orderBy: [{ date: 'desc' }, { createdAt: 'desc' }],
    take: 60,
  })
  return rows.flatMap(({ rounds, createdAt: _, competitions, ...row }) => {
    const of = competitions.map((one) => ({ ...one, terms: competitionTerms.parse(JSON.parse(one.terms)) }))
    return rounds[0] ? [{ ...row, ...rounds[0], competitions: of }] : []
  })
}
