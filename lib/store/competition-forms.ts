import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { CompetitionRecord } from '@/lib/facts/day-record'
import { competitionTerms } from '@/lib/facts/terms'
import type { Tx } from './client'

/** The forms of play of a day, without reading the day. */
export async function competitionForms(
  tx: Tx,
  which: { readonly societyId: SocietyId; readonly dayId: DayId },
): Promise<readonly Pick<CompetitionRecord, 'name' | 'format' | 'terms'>[]> {
  const rows = await tx.competition.findMany({
    where: { societyId: which.societyId, dayId: which.dayId },
    select: { name: true, format: true, terms: true },
    orderBy: { number: 'asc' },
  })
  return rows.map((row) => ({ ...row, terms: competitionTerms.parse(JSON.parse(row.terms)) }))
}
