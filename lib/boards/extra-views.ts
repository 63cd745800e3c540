// Parts of a board that only some days have: teams, several rounds, drives. Finished and serialisable like the rest.

import type { EntryId } from '@/lib/facts/ids'

/** Points of a team from matches: one for a match won, a half for one halved. */
export interface TeamLine {
  readonly team: string
  readonly name: string
  /** "3½" */
  readonly points: string
  readonly halfPoints: number
  readonly won: number
  readonly halved: number
  readonly lost: number
}

/** One round of several, by the day it was played on. */
export interface RoundLine {
  readonly daySlug: string
  readonly name: string
  readonly date: string
  readonly score: number | null
}

export interface SeveralRounds {
  /** Each round of several, this day last. The row's `holes`, `out` and `in` are of this day alone. */
  readonly rounds?: readonly RoundLine[]
  /** Played an earlier round and is not in this day: there is no card here to open. */
  readonly away?: true
}

/** Whose drives a side of one ball took, against the minimum of the terms. */
export interface DrivesLine {
  readonly minimum: number | null
  readonly counts: readonly {
    readonly entryId: EntryId
    readonly name: string
    readonly taken: number
    readonly wanted: number
  }[]
  readonly outOfReach: boolean
  readonly sentence: string
}

/** A game that is shared inside groups; nothing of it in any other competition. */
export interface SharedGame {
  /** Groups that share, each with its entrants best first. */
  readonly shared?: readonly { readonly groupNumber: number; readonly entrants: readonly string[] }[]
  /** Each of several groups has places of its own; absent on sheets of before, which ranked over all of them. */
  readonly placesInGroups?: true
  /** Who has no part in it, a sentence each: a group of the wrong number, players in no group. */
  readonly notShared?: readonly string[]
}
