// The frame of every change made to a day at the desk: read in a transaction, decide, step the version, save.

import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import { ok, type Refused, type Result } from '@/lib/result'
import type { Tx } from '@/lib/store/client'
import { dayRecordIn } from '@/lib/store/day-record'
import { stepVersion } from '@/lib/store/day-setup'
import { write } from '@/lib/store/write'
import type { Act } from './acts'
import { deskOnly, movedOn, notFound, type Officer } from './desk-only'

export type DayRefusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on'

/** What the decision came to: the columns of the day that change with the version, and the rest of the saving. */
export interface Decided<T> {
  readonly also?: Parameters<typeof stepVersion>[4]
  readonly save: (tx: Tx) => Promise<T>
}

/**
 * `decide` looks at the day and refuses or says what to save. The version is checked before it is asked, so that a
 * decision never rests on a day the officer has not seen.
 */
export async function changeOfDay<T, C extends string>(
  actor: Actor,
  act: Act,
  { dayId, version }: { dayId: string; version: number },
  decide: (day: DayRecord, officer: Officer, tx: Tx) => Promise<Decided<T> | Refused<C>>,
): Promise<Result<T & { version: number }, DayRefusals | C>> {
  const officer = deskOnly(actor, act)
  if (!officer.ok) return officer
  const { societyId } = officer.value
  return write<Result<T & { version: number }, DayRefusals | C>>(async (tx) => {
    const day = await dayRecordIn(tx, { societyId, dayId })
    if (!day) return notFound('day')
    if (day.version !== version) return movedOn()
    const decided = await decide(day, officer.value, tx)
    if ('ok' in decided) return decided
    if (!(await stepVersion(tx, societyId, dayId, version, decided.also))) return movedOn()
    const value = await decided.save(tx)
    return ok({ ...value, version: version + 1 })
  })
}
