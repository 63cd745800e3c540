import 'server-only'
import { randomUUID } from 'node:crypto'
import { book } from './client'

/** Counts one attempt under `key`; false once `max` were made within the window. Held in the book, so that it also
 * holds with several processes and after a restart. */
export async function mayTry(key: string, max: number, windowMs: number, now: Date): Promise<boolean> {
  const moment = BigInt(now.getTime())
  // One statement: read and count cannot be parted by somebody else's attempt.
  const rows = await book().$queryRaw<{ count: number }[]>`
    INSERT INTO "RateLimit" ("id", "key", "count", "lastRequest") VALUES (${randomUUID()}, ${key}, 1, ${moment})
    ON CONFLICT ("key") DO UPDATE SET
      "count" = CASE WHEN "RateLimit"."lastRequest" <= ${moment - BigInt(windowMs)} THEN 1 ELSE "RateLimit"."count" + 1 END,
      "lastRequest" = CASE WHEN "RateLimit"."lastRequest" <= ${moment - BigInt(windowMs)} THEN ${moment} ELSE "RateLimit"."lastRequest" END
    RETURNING "count"`
  return Number(rows[0]?.count ?? 1) <= max
}

/** Were `max` made already within the window? Counts nothing. */
export async function wasTried(key: string, max: number, windowMs: number, now: Date): Promise<boolean> {
  const row = await book().rateLimit.findUnique({ where: { key }, select: { count: true, lastRequest: true } })
  return row !== null && row.count >= max && Number(row.lastRequest) > now.getTime() - windowMs
}
