// Groups nobody has scored for yet, as the secretary would read them off the start sheet.

import Database from 'better-sqlite3'

export interface QuietGroup {
  readonly link: string
  readonly code: string
  readonly society: string
  readonly day: string
}

/** Full groups of a day that is not closed, without a single fact, in the order of the start sheet. */
export function quietGroups(file = process.env.BROWSER_BOOK ?? 'data/browser/book.db'): readonly QuietGroup[] {
  const book = new Database(file, { readonly: true })
  try {
    return book
      .prepare(
        `SELECT g."linkKey" AS link, g."code" AS code, s."slug" AS society, d."slug" AS day
           FROM "Group" g
           JOIN "Round" r ON r."id" = g."roundId"
           JOIN "Day" d ON d."id" = r."dayId"
           JOIN "Society" s ON s."id" = d."societyId"
          WHERE d."status" <> 'closed' AND d."startPublishedAt" IS NOT NULL
            AND (SELECT count(*) FROM "GroupPlace" p WHERE p."groupId" = g."id") = 4
            AND NOT EXISTS (
              SELECT 1 FROM "GroupPlace" p JOIN "Card" c ON c."entryId" = p."entryId"
                JOIN "ScoreFact" f ON f."cardId" = c."id" WHERE p."groupId" = g."id")
          ORDER BY g."number"`,
      )
      .all() as QuietGroup[]
  } finally {
    book.close()
  }
}
