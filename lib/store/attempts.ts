// Tries are counted in the book, so that a limit also holds with several processes and after a restart; in a table of
// our own, because the sign-in library empties its own after a minute.
import 'server-only'
import { createHmac } from 'node:crypto'
import { book } from './client'
import { secretOfInstallation } from './settings'

/** Different things tried that are counted at once. Beyond it the counters that would end first are dropped. */
const MOST_COUNTERS = 20_000

/** Of one length whatever was typed, and no way back to it without the secret of the installation. */
const digestOf = (key: string) => createHmac('sha256', secretOfInstallation()).update(key).digest('base64url')

/** Counts one attempt under `key`; false once `max` were made within the window of `windowMs` milliseconds. */
export async function mayTry(key: string, max: number, windowMs: number, now: Date): Promise<boolean> {
  const digest = digestOf(key)
  const moment = BigInt(now.getTime())
  const until = moment + BigInt(windowMs)
  await dropBeyond(MOST_COUNTERS)
  // One statement: read and count cannot be parted by somebody else's attempt.
  const rows = await book().$queryRaw<{ count: number }[]>`
    INSERT INTO "Attempt" ("digest", "count", "began", "until") VALUES (${digest}, 1, ${moment}, ${until})
    ON CONFLICT ("digest") DO UPDATE SET
      "count" = CASE WHEN "Attempt"."until" <= ${moment} THEN 1 ELSE "Attempt"."count" + 1 END,
      "began" = CASE WHEN "Attempt"."until" <= ${moment} THEN ${moment} ELSE "Attempt"."began" END,
      "until" = CASE WHEN "Attempt"."until" <= ${moment} THEN ${until} ELSE "Attempt"."until" END
    RETURNING "count"`
  return Number(rows[0]?.count ?? 1) <= max
}

/** Were `max` made already within the window that is running? Counts nothing. */
export async function wasTried(key: string, max: number, now: Date): Promise<boolean> {
  const row = await book().attempt.findUnique({
    where: { digest: digestOf(key) },
    select: { count: true, until: true },
  })
  return row !== null && row.count >= max && Number(row.until) > now.getTime()
}

async function dropBeyond(most: number): Promise<void> {
  await book().$executeRaw`
    DELETE FROM "Attempt" WHERE "digest" IN (
      SELECT "digest" FROM "Attempt" ORDER BY "until" LIMIT max(0, (SELECT count(*) FROM "Attempt") - ${most} + 1))`
}
