// A society's whole book as plain tables: one file a kind of row, in the order in which they can be read in again.

import { z } from 'zod'
import { dayRuling } from './day-rulings'
import { competitionTerms } from './terms'

export interface ExportKind {
  /** `people` stands in people.csv. */
  readonly name: string
  readonly table: string
  /** What one row is, for the documents. */
  readonly holds: string
  /** Rows are written in this order; rows without a lasting number of their own in the order they were entered. */
  readonly order: readonly string[]
  /** Where the table does not name the society itself: the table it hangs on, and by which column. */
  readonly through?: { readonly table: string; readonly column: string }
  /** Never written: made anew when the file is read in. */
  readonly renewed?: readonly string[]
  /** Numbers the database gives by itself; the order of the rows is what counts. */
  readonly counted?: readonly string[]
  readonly json?: Readonly<Record<string, z.ZodType>>
}

const anyJson = z.unknown()

export const EXPORT_KINDS: readonly ExportKind[] = [
  {
    name: 'society',
    table: 'Society',
    holds: 'the society and its settings',
    order: ['id'],
    json: { settings: anyJson },
  },
  { name: 'officers', table: 'User', holds: 'whoever holds or held a duty; never a password', order: ['id'] },
  {
    name: 'people',
    table: 'Person',
    holds: 'members and guests; the address of a member’s own page is made anew',
    order: ['id'],
    renewed: ['pageKey'],
    json: { labels: anyJson },
  },
  { name: 'duties', table: 'DutyHeld', holds: 'who holds which duty from when to when', order: ['id'] },
  { name: 'courses', table: 'Course', holds: 'courses', order: ['id'] },
  { name: 'tees', table: 'Tee', holds: 'sets of tees with rating and slope', order: ['id'] },
  {
    name: 'tee-holes',
    table: 'TeeHole',
    holds: 'par, stroke index and yards of every hole of a set of tees',
    order: ['teeId', 'hole'],
    through: { table: 'Tee', column: 'teeId' },
  },
  { name: 'seasons', table: 'Season', holds: 'seasons', order: ['id'] },
  { name: 'days', table: 'Day', holds: 'days', order: ['id'] },
  { name: 'rounds', table: 'Round', holds: 'the round of a day: course, start, draw', order: ['id'] },
  { name: 'round-tees', table: 'RoundTee', holds: 'the tees as they stood on the day', order: ['id'] },
  {
    name: 'round-tee-holes',
    table: 'RoundTeeHole',
    holds: 'their holes',
    order: ['roundTeeId', 'hole'],
    through: { table: 'RoundTee', column: 'roundTeeId' },
  },
  {
    name: 'competitions',
    table: 'Competition',
    holds: 'competitions with their terms',
    order: ['id'],
    json: { terms: competitionTerms },
  },
  { name: 'prizes', table: 'Prize', holds: 'prizes', order: ['id'] },
  {
    name: 'counted-days',
    table: 'CountedDay',
    holds: 'the earlier days a competition is added up over',
    order: ['competitionId', 'number'],
  },
  {
    name: 'entries',
    table: 'Entry',
    holds: 'who entered for a day, with the figure frozen into it',
    order: ['id'],
    json: { labels: anyJson },
  },
  {
    name: 'playing-handicaps',
    table: 'PlayingHandicap',
    holds: 'the playing handicap of an entry in a competition',
    order: ['entryId', 'competitionId'],
    through: { table: 'Entry', column: 'entryId' },
  },
  { name: 'sides', table: 'Side', holds: 'pairs and sides', order: ['id'] },
  {
    name: 'side-members',
    table: 'SideMember',
    holds: 'who plays in them',
    order: ['sideId', 'position'],
    through: { table: 'Side', column: 'sideId' },
  },
  { name: 'teams', table: 'Team', holds: 'teams of a day', order: ['id'] },
  { name: 'team-members', table: 'TeamMember', holds: 'who plays in them', order: ['teamId', 'entryId'] },
  {
    name: 'pairings',
    table: 'Pairing',
    holds: 'who plays whom, and how it ended',
    order: ['id'],
    json: { ending: anyJson },
  },
  {
    name: 'groups',
    table: 'Group',
    holds: 'groups of the draw; their links and codes are made anew',
    order: ['id'],
    renewed: ['linkKey', 'code'],
  },
  {
    name: 'group-places',
    table: 'GroupPlace',
    holds: 'who plays in them',
    order: ['groupId', 'position'],
    through: { table: 'Group', column: 'groupId' },
  },
  { name: 'cards', table: 'Card', holds: 'cards with their state', order: ['id'] },
  { name: 'devices', table: 'Device', holds: 'the phones and desks that wrote scores, by number', order: ['id'] },
  {
    name: 'score-facts',
    table: 'ScoreFact',
    holds: 'every score ever written, in the order received',
    order: ['id'],
    counted: ['id'],
    json: { replaces: anyJson },
  },
  {
    name: 'ball-facts',
    table: 'BallFact',
    holds: 'whose drive a side took, where a named ball was lost',
    order: ['id'],
    counted: ['id'],
  },
  {
    name: 'concessions',
    table: 'Concession',
    holds: 'holes and matches conceded on a phone, and who wrote it',
    order: ['id'],
    counted: ['id'],
  },
  {
    name: 'signatures',
    table: 'Signature',
    holds: 'who signed a card, and what they saw',
    order: ['id'],
    json: { scores: anyJson },
  },
  {
    name: 'refused-facts',
    table: 'RefusedFact',
    holds: 'what a phone sent that was refused for good, with the sentence',
    order: ['deviceId', 'seq'],
    json: { fact: anyJson },
  },
  { name: 'rulings', table: 'Ruling', holds: 'rulings', order: ['dayId', 'number'] },
  { name: 'reopenings', table: 'Reopening', holds: 'days opened again, with the reason', order: ['id'] },
  {
    name: 'publications',
    table: 'Publication',
    holds: 'the frozen result sheets',
    order: ['dayId', 'number'],
    json: { sheet: anyJson },
  },
  {
    name: 'handicap-records',
    table: 'HandicapRecord',
    holds: 'every figure a person ever had',
    order: ['personId', 'sequence'],
  },
  {
    name: 'day-rulings',
    table: 'DayRuling',
    holds: 'rulings on a day as a whole: play-off, round abandoned, taken back',
    order: ['dayId', 'number'],
    json: { ruling: dayRuling },
  },
  { name: 'play-stops', table: 'PlayStop', holds: 'play stopped and resumed', order: ['id'], counted: ['id'] },
  {
    name: 'acts',
    table: 'ActRecord',
    holds: 'the record of acts',
    order: ['id'],
    counted: ['id'],
    json: { before: anyJson, after: anyJson },
  },
]

/** Tables that are not exported, and why. A table in neither list fails a test. */
export const NOT_EXPORTED: Readonly<Record<string, string>> = {
  StandingsSnapshot: 'counted again from the rest',
  Session: 'signing in belongs to one installation',
  Account: 'passwords are never written; officers set a new one behind a one-time link',
  Verification: 'signing in belongs to one installation',
  Passkey: 'a passkey belongs to one address',
  RateLimit: 'requests of the last minute, counted by the sign-in library',
  Attempt: 'tries of the last hour',
}
