// What an officer may say about a spreadsheet of members before it is imported: what each column is, which rows are left
// out, what a wrong cell should read, and who is who among people of one name.

import { z } from 'zod'
import { typedLine } from './typed-text'

/** What a column can be, in the order in which the menu offers it. */
export const MEMBER_COLUMNS = [
  'out',
  'firstName',
  'familyName',
  'knownAs',
  'surnameFirst',
  'firstSurname',
  'gender',
  'index',
  'society',
  'figure',
  'source',
  'email',
  'phone',
  'memberSince',
  'membershipNumber',
  'homeClub',
  'labels',
  'kind',
  'leftOn',
] as const
export type MemberColumn = (typeof MEMBER_COLUMNS)[number]

export const COLUMN_IN_WORDS: Readonly<Record<MemberColumn, string>> = {
  out: 'Leave out',
  firstName: 'First name',
  familyName: 'Family name',
  knownAs: 'Told apart by: senior, junior',
  surnameFirst: 'Whole name: Surname, First name',
  firstSurname: 'Whole name: First name Surname',
  gender: 'Men or women',
  index: 'Handicap index, home club',
  society: 'Society handicap',
  figure: 'Handicap',
  source: 'Which kind of handicap',
  email: 'E-mail',
  phone: 'Telephone',
  memberSince: 'Member since',
  membershipNumber: 'Membership number',
  homeClub: 'Home club',
  labels: 'Tags',
  kind: 'Member or guest',
  leftOn: 'Left on',
}

/** Cells that can be put right in place; a name in one column is put right as its two parts. */
export const MENDABLE = [
  'firstName',
  'familyName',
  'knownAs',
  'gender',
  'figure',
  'email',
  'phone',
  'memberSince',
  'membershipNumber',
  'homeClub',
  'labels',
] as const
export type Mendable = (typeof MENDABLE)[number]

const row = z.int().min(1).max(2000)
const rowKey = z.string().regex(/^\d{1,4}$/)

export const memberImportChoices = z.strictObject({
  /** The row with the headings as the spreadsheet numbers it, 0 where there are none; null: found by itself. */
  headingRow: z.int().min(0).max(2000).nullable().default(null),
  /** By the place of the column, the first being 0; what is not named keeps its guess. */
  columns: z.record(z.string().regex(/^\d{1,2}$/), z.enum(MEMBER_COLUMNS)).default({}),
  /** Where the file does not say who plays from which tees; "each": it is said for every row. */
  gender: z.enum(['men', 'women', 'each']).nullable().default(null),
  /** Whose figure a column headed just "Handicap" has. */
  handicap: z.enum(['home-club', 'society']).nullable().default(null),
  leftOut: z.array(row).max(1000).default([]),
  /** Rows that were left out by themselves and are wanted after all. */
  broughtBack: z.array(row).max(1000).default([]),
  /** By row: a person already in the member list, or somebody new of the same name. */
  who: z.record(rowKey, z.string().min(1).max(64)).default({}),
  /** By row: what the cells should read. */
  mended: z.record(rowKey, z.partialRecord(z.enum(MENDABLE), typedLine().max(200))).default({}),
})
export type MemberImportChoices = z.output<typeof memberImportChoices>

export const NOTHING_CHOSEN: MemberImportChoices = memberImportChoices.parse({})

/** In `who`: nobody in the list yet, although the name is there. */
export const SOMEBODY_NEW = 'new'
