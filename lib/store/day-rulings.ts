import 'server-only'
import { type DayRuling, dayRulingsWritten } from '@/lib/facts/day-rulings'
import type { Tx } from './client'

/** The whole list, the new one at its end; the version of the day has been stepped in the same transaction. */
export async function keepDayRulings(tx: Tx, dayId: string, rulings: readonly DayRuling[]): Promise<void> {
  await tx.day.update({ where: { id: dayId }, data: { notes: dayRulingsWritten(rulings) } })
}
