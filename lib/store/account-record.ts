import type { UserId } from '@/lib/facts/ids'
import 'server-only'
import type { InWords } from '@/lib/facts/act-record'
import { recordAct } from './acts'
import type { Tx } from './client'
import { desksOfUser } from './officers'
import { write } from './write'

interface Holder {
  readonly userId: UserId
  readonly name: string
}

/** An officer's own account is everybody's affair where that officer has a desk: it stands in each of those books. */
export async function recordOfAccountIn(
  tx: Tx,
  { userId, name }: Holder,
  after: InWords,
  from: string | undefined,
  now: Date,
): Promise<void> {
  for (const { societyId, duties } of await desksOfUser(userId, now, tx)) {
    const actor = { kind: 'officer' as const, societyId, userId, name, duties, from }
    await recordAct(tx, actor, { act: 'keep-account', area: 'access', subject: name, subjectId: userId, after }, now)
  }
}

/** The same by itself, for what the sign-in library has done already. */
export async function recordOfAccount(
  holder: Holder,
  after: InWords,
  from: string | undefined,
  now: Date = new Date(),
): Promise<void> {
  await write((tx) => recordOfAccountIn(tx, holder, after, from, now))
}
