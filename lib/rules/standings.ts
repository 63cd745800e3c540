// What the engine answers: standings of a competition, and the working behind each figure.

import type { HoleScore } from './day'

/** Why an entrant has no place. */
export type NoPlace =
  | 'no-return'
  | 'disqualified'
  | 'withdrawn'
  | 'not-started'
  /** Of several rounds on strokes only one was played, or some but not all: what was played was returned. */
  | 'one-round-only'
  | 'rounds-missing'

/** One hole of one entrant as the competition reads it. */
export interface HoleLine {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  /** Strokes received (negative: given back). */
  readonly strokes: number
  readonly gross: HoleScore
  readonly net: number | null
  /**
   * Value in the competition: points, net or gross strokes counted, +1/0/-1 against par; null when not played yet. A hole
   * nobody played before the day was closed has no gross, and the value the rules give it.
   */
  readonly value: number | null
  /** Player whose score counts, for a side. */
  readonly by?: readonly string[]
}

/** How a tie with the next entrant below was broken. */
export interface TieBroken {
  /** The entrants who were level, in their final order. */
  readonly level: readonly string[]
  /** The step that decided, in words: "last six". */
  readonly step: string
  /** Figures on every window tried up to the deciding one, this entrant's first. */
  readonly figures: readonly { readonly window: string; readonly mine: string; readonly theirs: string }[]
  readonly against: string
}

/** What the tie rule looks at first, as it looks at it: in the order of play, with shares of the handicap. */
export interface CountbackFigure {
  /** "last nine", "last nine played" */
  readonly window: string
  readonly figure: string
}

export interface Standing {
  readonly place: number | null
  readonly tied: boolean
  /** Player or side id. */
  readonly entrant: string
  /** Games inside a group: number of the group, from 1, among whose players this is the place. */
  readonly group?: number
  readonly players: readonly string[]
  readonly courseHandicap: number | null
  readonly playingHandicap: number | null
  /** Each player's own playing handicap in this competition (a side has no single one when each plays own ball). */
  readonly handicaps: Readonly<Record<string, number>>
  /** Points, net strokes, gross strokes, holes up or down. Null with no place. */
  readonly score: number | null
  /** Against level so far (net par, two points a hole): for comparing players on different holes. */
  readonly againstLevel: number | null
  readonly out: number | null
  readonly in: number | null
  /**
   * Of a finished card, where the first window of the tie rule says otherwise of somebody than the figure of the second
   * nine: what level places were given by.
   */
  readonly countback?: CountbackFigure
  readonly holesPlayed: number
  readonly holes: readonly HoleLine[]
  readonly gross: number | null
  readonly noPlace?: NoPlace
  readonly tieBroken?: TieBroken
  /** Score of each round of several; `missed` when nobody of the entry was in it. */
  readonly rounds?: readonly { readonly round: number; readonly score: number | null; readonly missed?: true }[]
  /** Scramble: drives taken of each player, and who is short of the minimum. */
  readonly drives?: Readonly<Record<string, number>>
  readonly drivesShort?: readonly string[]
}

export interface MatchState {
  readonly hole: number
  /** Holes A is up (negative: B is up). Null when the hole is not played. */
  readonly up: number | null
}

/** One of several matches inside a match: front nine, back nine, whole. */
export interface MatchPartResult {
  readonly name: string
  readonly winner: string | null
  readonly result: string
  readonly finished: boolean
}

export interface MatchResult {
  readonly id: string
  readonly a: string
  readonly b: string
  /** Strokes received; of a side with several balls all of them together, ball by ball in `strokes`. */
  readonly strokesA: number
  readonly strokesB: number
  readonly winner: string | null
  /** "2&1", "1 up", "halved", or the state so far: "A 2 up after 11". */
  readonly result: string
  readonly finished: boolean
  readonly holes: readonly MatchState[]
  /** Strokes of each ball, by player, or by side where it plays one. */
  readonly strokes: Readonly<Record<string, number>>
  readonly parts?: readonly MatchPartResult[]
  /** Only the whole match counts for a team; each of the parts when absent. */
  readonly wholeForTeams?: true
}

/** Points of a team from the matches of one competition, each part of one in parts a match, in halves: 7 is 3½. */
export interface TeamPoints {
  readonly team: string
  readonly name: string
  readonly halfPoints: number
  /** "3½" */
  readonly points: string
  readonly won: number
  readonly halved: number
  readonly lost: number
}

export interface DivisionResult {
  readonly id: string
  readonly name: string
  readonly standings: readonly Standing[]
}

export interface CompetitionResult {
  readonly competition: string
  readonly format: string
  readonly allowance: number | readonly number[]
  /** 'published' with its clause, or 'house choice'. */
  readonly allowanceFrom: string
  /** 'high' when more is better. */
  readonly better: 'high' | 'low'
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
  readonly standings: readonly Standing[]
  readonly matches?: readonly MatchResult[]
  readonly teams?: readonly TeamPoints[]
  readonly divisions?: readonly DivisionResult[]
}

/** One line of a working: the running figure, what it is, how it came about, and the clause. */
export interface WorkingStep {
  /** Stands in the margin: "20.098", "19", "2". */
  readonly figure: string
  readonly label: string
  /** "20.7 × 125 ÷ 113 + (69.2 − 72)" when there is arithmetic to show. */
  readonly sum?: string
  readonly sentence: string
  readonly clause: string
  /** Id of the player a handicap figure is of: several stand in the working of a side's one ball. */
  readonly player?: string
}
