import type { UserId } from '@/lib/facts/ids'
import 'server-only'
import { type Book, book, type Tx } from './client'

export interface SessionRow {
  readonly id: string
  readonly token: string
  readonly createdAt: Date
  readonly updatedAt: Date
  readonly from: string | null
  readonly userAgent: string | null
}

/** Newest first; what has run out is not told. */
export async function sessionsOf(userId: UserId, now: Date, on: Book | Tx = book()): Promise<readonly SessionRow[]> {
  const rows = await on.session.findMany({
    where: { userId, expiresAt: { gt: now } },
    orderBy: { updatedAt: 'desc' },
  })
  return rows.map(({ id, token, createdAt, updatedAt, ipAddress, userAgent }) => ({
    id,
    token,
    createdAt,
    updatedAt,
    from: ipAddress,
    userAgent,
  }))
}

/** Ends the sessions of one user: one of them, or all but one, or all. Answers how many there were. */
export async function endSessionsOf(
  tx: Book | Tx,
  userId: UserId,
  which: { readonly only?: string; readonly butToken?: string } = {},
): Promise<number> {
  const { only, butToken } = which
  const ended = await tx.session.deleteMany({
    where: { userId, ...(only ? { id: only } : {}), ...(butToken ? { token: { not: butToken } } : {}) },
  })
  return ended.count
}
