// Who is taken out of the entries of a day, by the entry and not by the person: what a screen shows is an entry.

import { hasScores } from '@/lib/boards/drawn-day'
import { sidesDecided } from '@/lib/boards/sides-of-record'
import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { ok, type Result, refused } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { takeOutOfDraw, updateEntry } from '@/lib/store/entries'
import { notFound } from './desk-only'

/** Whoever has withdrawn already is left as they are: a second press of the button does no harm. */
export function withdrawals(
  day: DayRecord,
  entryIds: readonly EntryId[],
): Result<readonly EntryRecord[], 'not-found' | 'has-scores'> {
  const entryOf = new Map(day.entries.map((entry) => [entry.id, entry]))
  const out: EntryRecord[] = []
  for (const entryId of new Set(entryIds)) {
    const entry = entryOf.get(entryId)
    if (!entry) return notFound('entry')
    if (entry.status === 'withdrawn') continue
    if (hasScores(day, entry.id))
      return refused(
        'has-scores',
        `${fullName(entry)} has scores on the card. Rule the card withdrawn instead, under Returns.`,
      )
    out.push(entry)
  }
  return ok(out)
}

export async function saveWithdrawals(tx: Tx, day: DayRecord, out: readonly EntryRecord[]): Promise<void> {
  for (const { id } of out) {
    await takeOutOfDraw(tx, id, sidesDecided(day))
    await updateEntry(tx, id, { status: 'withdrawn' })
  }
}
