// The frame of every change made to a day at the desk: read in a transaction, decide, step the version, save.

import type { ActToRecord } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId } from '@/lib/facts/ids'
import { ok, type Refused, type Result } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import { dayRecordIn } from '@/lib/store/day-record'
import { stepVersion } from '@/lib/store/day-setup'
import { write } from '@/lib/store/write'
import type { Act } from './acts'
import { whyCalledOff } from './day-on'
import { deskOnly, movedOn, notFound, type Officer } from './desk-only'

export type DayRefusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on' | 'day-called-off'

/** What an act on a day says of itself; the frame fills in the act, the day and its new version. */
export type ActOfDay = Partial<Pick<ActToRecord, 'area' | 'subject' | 'before' | 'after'>>

/** What the decision came to: the columns of the day that change with the version, and the rest of the saving. */
export interface Decided<T> {
  /** For the record of acts: before and after in words, or a function of what was saved. The area is `day` unless said. */
  readonly record?: ActOfDay | ((saved: T) => ActOfDay)
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
  { dayId, version }: { dayId: DayId; version: number },
  decide: (day: DayRecord, officer: Officer, tx: Tx) => Promise<Decided<T> | Refused<C>>,
  now: Date = new Date(),
): Promise<Result<T & { version: number }, DayRefusals | C>> {
  const officer = deskOnly(actor, act)
  if (!officer.ok) return officer
  const { societyId } = officer.value
  return write<Result<T & { version: number }, DayRefusals | C>>(async (tx) => {
    const day = await dayRecordIn(tx, { societyId, dayId })
    if (!day) return notFound('day')
    if (day.version !== version) return movedOn()
    const off = act === 'put-day-on' ? null : whyCalledOff(day)
    if (off) return off
    const decided = await decide(day, officer.value, tx)
    if ('ok' in decided) return decided
    if (!(await stepVersion(tx, societyId, dayId, version, decided.also))) return movedOn()
    const value = await decided.save(tx)
    const said = typeof decided.record === 'function' ? decided.record(value) : decided.record
    const record = { act, area: 'day' as const, subject: day.name, ...said, subjectId: dayId, version: version + 1 }
    await recordAct(tx, officer.value, record, now)
    return ok({ ...value, version: version + 1 })
  })
}
