// Groups nobody has scored for yet, as the secretary would read them off the start sheet.

import Database from 'better-sqlite3'

export interface QuietGroup {
  readonly link: string
  readonly code: string
  readonly society: string
  readonly day: string
}

const SCORED = `EXISTS (SELECT 1 FROM "GroupPlace" p JOIN "Card" c ON c."entryId" = p."entryId"
  JOIN "ScoreFact" f ON f."cardId" = c."id" WHERE p."groupId" = g."id")`
const SIGNED = `EXISTS (SELECT 1 FROM "GroupPlace" p JOIN "Card" c ON c."entryId" = p."entryId"
  JOIN "Signature" s ON s."cardId" = c."id" WHERE p."groupId" = g."id")`

function fullGroups(also: string, file: string): readonly QuietGroup[] {
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
            AND ${also}
          ORDER BY g."number"`,
      )
      .all() as QuietGroup[]
  } finally {
    book.close()
  }
}

const BOOK = () => process.env.BROWSER_BOOK ?? 'data/browser/book.db'

/** Full groups of a day that is not closed, without a single fact, in the order of the start sheet. */
export const quietGroups = (file = BOOK()) => fullGroups(`NOT ${SCORED}`, file)

/** Full groups that have begun and signed nothing yet. */
export const groupsInPlay = (file = BOOK()) => fullGroups(`${SCORED} AND NOT ${SIGNED}`, file)
