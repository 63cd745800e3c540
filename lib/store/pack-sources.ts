import type { DayId, PersonId } from '@/lib/facts/ids'
import 'server-only'
import type { ShownAs } from '@/lib/facts/society-settings'
import { reading } from './client'
import { dayVersionOf } from './day-versions'

interface PersonRow {
  readonly society: string
  readonly personId: PersonId
  readonly firstName: string
  readonly familyName: string
  readonly shownAs: string
  readonly erased: number | bigint
  readonly hostId: PersonId | null
  readonly hostName: string | null
  readonly hostShownAs: string | null
  readonly hostErased: number | bigint
}

export interface PackSources {
  /** Changes with everything that a card on a phone shows: with the day, and with the names, which move no day. */
  readonly key: string
  /** Taken out of the book, and how they are to be shown. */
  readonly erased: ReadonlyMap<string, ShownAs>
}

/** What the cards of a day are made of, without reading them; null when there is no such day. */
export async function packSources(dayId: DayId): Promise<PackSources | null> {
  const version = await dayVersionOf(dayId)
  if (version === null) return null
  const rows = await reading().$queryRaw<PersonRow[]>`
    SELECT so."name" AS "society", p."id" AS "personId", p."firstName", p."familyName", p."shownAs",
      CASE WHEN p."erasedAt" IS NULL THEN 0 ELSE 1 END AS "erased",
      h."id" AS "hostId", h."familyName" AS "hostName", h."shownAs" AS "hostShownAs",
      CASE WHEN h."erasedAt" IS NULL THEN 0 ELSE 1 END AS "hostErased"
    FROM "Entry" e
    JOIN "Society" so ON so."id" = e."societyId"
    JOIN "Person" p ON p."id" = e."personId"
    LEFT JOIN "Person" h ON h."id" = e."hostId"
    WHERE e."dayId" = ${dayId}
    ORDER BY e."id"`
  const erased = new Map<string, ShownAs>()
  for (const row of rows) {
    if (Number(row.erased) === 1) erased.set(row.personId, row.shownAs as ShownAs)
    if (row.hostId !== null && Number(row.hostErased) === 1) erased.set(row.hostId, row.hostShownAs as ShownAs)
  }
  const names = rows.map((row) => Object.values(row).map(String).join('\t')).join('\n')
  return { key: `${version}\n${names}`, erased }
}
