// What a visitor could read off the printed papers of the seeded society: addresses, a group's link, a member's link.

import Database from 'better-sqlite3'

export interface PublicBook {
  readonly society: string
  readonly live: { readonly slug: string; readonly link: string }
  readonly published: { readonly slug: string; readonly a: string; readonly b: string }
  readonly member: string
}

export function publicBook(file = process.env.BROWSER_BOOK ?? 'data/browser/book.db'): PublicBook {
  const book = new Database(file, { readonly: true })
  const one = <T>(sql: string, ...values: unknown[]) => book.prepare(sql).get(...values) as T
  try {
    const { society } = one<{ society: string }>(`SELECT "slug" AS society FROM "Society" ORDER BY rowid LIMIT 1`)
    // The group that is least far round: there is most left to write for it.
    const live = one<{ slug: string; link: string }>(
      `SELECT d."slug" AS slug, g."linkKey" AS link
         FROM "Group" g JOIN "Round" r ON r."id" = g."roundId" JOIN "Day" d ON d."id" = r."dayId"
         JOIN "GroupPlace" p ON p."groupId" = g."id" JOIN "Card" c ON c."entryId" = p."entryId"
         JOIN "ScoreFact" f ON f."cardId" = c."id"
        WHERE d."status" = 'in-play' AND d."societyId" = (SELECT "id" FROM "Society" ORDER BY rowid LIMIT 1) GROUP BY g."id" ORDER BY count(*) LIMIT 1`,
    )
    const { slug } = one<{ slug: string }>(
      `SELECT d."slug" AS slug FROM "Publication" p JOIN "Day" d ON d."id" = p."dayId"
        ORDER BY d."date" DESC, p."number" DESC LIMIT 1`,
    )
    const entryOf = (family: string) =>
      one<{ id: string }>(
        `SELECT e."id" AS id FROM "Entry" e JOIN "Person" p ON p."id" = e."personId"
           JOIN "Day" d ON d."id" = e."dayId" WHERE d."slug" = ? AND p."familyName" = ?`,
        slug,
        family,
      ).id
    const { key } = one<{ key: string }>(`SELECT "pageKey" AS key FROM "Person" WHERE "familyName" = 'Trevennor'`)
    return { society, live, published: { slug, a: entryOf('Trevennor'), b: entryOf('Tarrablane') }, member: key }
  } finally {
    book.close()
  }
}

/** Every e-mail address and telephone number the book holds. */
export function contactDetails(file = process.env.BROWSER_BOOK ?? 'data/browser/book.db'): readonly string[] {
  const book = new Database(file, { readonly: true })
  try {
    const rows = book
      .prepare(
        `SELECT "email" AS one FROM "Person" UNION SELECT "phone" FROM "Person" UNION SELECT "email" FROM "User"`,
      )
      .all() as { one: string | null }[]
    return rows.flatMap(({ one }) => (one === null || one.length < 5 ? [] : [one]))
  } finally {
    book.close()
  }
}
