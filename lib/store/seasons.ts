import type { SeasonId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { type Book, reading, type Tx } from './client'
import { newId } from './new-id'

export interface SeasonKept {
  readonly seasonId: SeasonId
  readonly name: string
  readonly startsOn: string
  readonly endsOn: string
  readonly days: number
}

const columns = { id: true, name: true, startsOn: true, endsOn: true, _count: { select: { days: true } } } as const

export async function seasonsOf(societyId: SocietyId, on: Book | Tx = reading()): Promise<readonly SeasonKept[]> {
  const rows = await on.season.findMany({
    where: { societyId },
    select: columns,
    orderBy: [{ startsOn: 'desc' }, { name: 'asc' }],
  })
  return rows.map(({ id, _count, ...row }) => ({ seasonId: id, ...row, days: _count.days }))
}

export async function seasonIn(tx: Book | Tx, societyId: SocietyId, seasonId: SeasonId): Promise<SeasonKept | null> {
  const row = await tx.season.findUnique({ where: { societyId_id: { societyId, id: seasonId } }, select: columns })
  if (!row) return null
  const { id, _count, ...season } = row
  return { seasonId: id, ...season, days: _count.days }
}

/** Null when the society already has a season of this name. */
export async function insertSeason(
  tx: Tx,
  societyId: SocietyId,
  season: { name: string; startsOn: string; endsOn: string },
): Promise<SeasonId | null> {
  const taken = await tx.season.findUnique({
    where: { societyId_name: { societyId, name: season.name } },
    select: { id: true },
  })
  if (taken) return null
  const id = newId<SeasonId>()
  await tx.season.create({ data: { id, societyId, ...season } })
  return id
}
