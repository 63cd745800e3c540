// Parts of a board that only some days have: teams, several rounds, drives. Finished and serialisable like the rest.

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

/** Whose drives a side of one ball took, against the minimum of the terms. */
export interface DrivesLine {
  readonly minimum: number | null
  readonly counts: readonly {
    readonly entryId: string
    readonly name: string
    readonly taken: number
    readonly wanted: number
  }[]
  readonly outOfReach: boolean
  readonly sentence: string
}
