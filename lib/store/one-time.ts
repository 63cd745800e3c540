import type { SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import { createHash, randomBytes, randomUUID } from 'node:crypto'
import { type Book, book, type Tx } from './client'

/** What a one-time link is good for. Only a digest of it is kept: whoever reads the book cannot use it. */
export type OneTime =
  | { readonly purpose: 'first-start' | 'further-society' }
  | {
      readonly purpose: 'set-password'
      readonly userId: UserId
      readonly societyId: SocietyId
      /** A duty that the giver hands over: it ends when the link is used. */
      readonly endsDuty: string | null
    }

const keyOf = (token: string) => `one-time ${createHash('sha256').update(token).digest('base64url')}`

export async function issueOneTime(tx: Book | Tx, what: OneTime, until: Date, now: Date): Promise<string> {
  const token = randomBytes(24).toString('base64url')
  await tx.verification.create({
    data: {
      id: randomUUID(),
      identifier: keyOf(token),
      value: JSON.stringify(what),
      expiresAt: until,
      createdAt: now,
      updatedAt: now,
    },
  })
  return token
}

/** What the link is for; null when it was used, has run out or never was. */
export async function oneTimeOf(token: string, now: Date, on: Book | Tx = book()): Promise<OneTime | null> {
  const row = await on.verification.findFirst({ where: { identifier: keyOf(token), expiresAt: { gt: now } } })
  return row ? (JSON.parse(row.value) as OneTime) : null
}

/** Uses the link up. False when somebody else was quicker: then nothing of the transaction may stand. */
export async function spendOneTime(tx: Tx, token: string, now: Date): Promise<boolean> {
  const gone = await tx.verification.deleteMany({ where: { identifier: keyOf(token), expiresAt: { gt: now } } })
  return gone.count === 1
}

/** Ends every link of one purpose, for one user if given: a newer one takes their place. */
export async function endOneTimes(tx: Book | Tx, purpose: OneTime['purpose'], userId?: UserId): Promise<void> {
  const rows = await tx.verification.findMany({
    where: { identifier: { startsWith: 'one-time ' } },
    select: { id: true, value: true },
  })
  const gone = rows.filter((row) => {
    const what = JSON.parse(row.value) as OneTime
    return what.purpose === purpose && (userId === undefined || ('userId' in what && what.userId === userId))
  })
  await tx.verification.deleteMany({ where: { id: { in: gone.map((row) => row.id) } } })
}
