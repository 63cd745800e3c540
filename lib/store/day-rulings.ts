import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { type DayRuling, dayRuling } from '@/lib/facts/day-rulings'
import type { Tx } from './client'

/** In the order in which they were given. */
export async function dayRulingsOf(tx: Pick<Tx, 'dayRuling'>, dayId: DayId): Promise<readonly DayRuling[]> {
  const rows = await tx.dayRuling.findMany({ where: { dayId }, select: { ruling: true }, orderBy: { number: 'asc' } })
  return rows.map((row) => dayRuling.parse(JSON.parse(row.ruling)))
}

/** The version of the day has been stepped in the same transaction. */
export async function addDayRuling(tx: Tx, societyId: SocietyId, dayId: DayId, ruling: DayRuling): Promise<void> {
  await tx.dayRuling.create({
    data: { societyId, dayId, number: ruling.number, kind: ruling.kind, ruling: JSON.stringify(ruling) },
  })
}
