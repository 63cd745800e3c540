// What a day is to the engine: plain values, whole numbers, nothing inferred. The day file (lib/facts/day-file.ts)
// and the book (lib/boards/day-of-record.ts) both end here, so the score command and the board cannot disagree.

import type { FiveChoices } from './formats/format'

export type Gender = 'men' | 'women'

export interface Hole {
  /** Number on the card, from 1. */
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards?: number
}

export interface Tee {
  readonly id: string
  readonly name: string
  readonly gender: Gender
  /** Course rating in tenths: 69.2 is 692. */
  readonly courseRatingTenths: number
  /** 55 to 155. */
  readonly slopeRating: number
  /** In hole order. 9 or 18 of them. */
  readonly holes: readonly Hole[]
}

export interface Player {
  readonly id: string
  readonly name: string
  /** Handicap index in tenths; a plus index is negative: +2.1 is -21. */
  readonly indexTenths: number
  /** Id of a tee of the day. */
  readonly tee: string
  /** Sets the playing handicap by hand (a ruling, a limit); the allowance is then not applied. By competition id, or '*'. */
  readonly playingHandicap?: Readonly<Record<string, number>>
  readonly guest?: boolean
}

export interface Side {
  readonly id: string
  readonly name?: string
  /** In order: a yellow-ball or a foursomes order may rest on it. */
  readonly players: readonly string[]
  /** Only in these competitions; in all that take sides of this size when absent. */
  readonly competitions?: readonly string[]
}

/** Gross strokes; 'x' no score (picked up, not holed); null not played yet. */
export type HoleScore = number | 'x' | null

export type CardOutcome = 'no-return' | 'disqualified' | 'withdrawn'

export interface Card {
  readonly player: string
  /** One for each hole of the tee, in hole order. */
  readonly scores: readonly HoleScore[]
  readonly outcome?: CardOutcome
  /** Strokes added to a hole by the committee, by hole number. */
  readonly penaltyStrokes?: Readonly<Record<number, number>>
  /** Points taken off the total in Stableford, holes in par, by the committee. */
  readonly penaltyPoints?: number
  /** Where this player's group began; matters only when the tie rule counts holes as played. */
  readonly startHole?: number
}

export interface Match {
  readonly id: string
  /** Player ids, or side ids in a match of sides. */
  readonly a: string
  readonly b: string
}

/** One step of a tie rule, tried in order until somebody is ahead. */
export type TieStep =
  /** Last n holes of the round (or holes `from`-`to` by number). Shares of the handicap are kept as fractions in net stroke play. */
  | { readonly kind: 'last'; readonly holes: number }
  | { readonly kind: 'first-nine-last'; readonly holes: number }
  | { readonly kind: 'lower-handicap' }
  | { readonly kind: 'higher-handicap' }
  | { readonly kind: 'lot'; readonly seed: number }
  /** A play-off result, entered by hand: entrant ids, best first. */
  | { readonly kind: 'play-off'; readonly order: readonly string[] }

export interface TieRule {
  readonly steps: readonly TieStep[]
  /** Windows by number on the card, whatever the starting hole; or by the order in which the group played. */
  readonly holesCount: 'by-number' | 'as-played'
  /** Shares of the handicap in net stroke play. */
  readonly fractions: 'kept' | 'rounded'
}

/** The five choices of a format (see lib/rules/formats); a known id stands for a set of them. */
export interface Competition {
  readonly id: string
  readonly name?: string
  readonly format: string
  /** The society's own format, by its five choices; `format` is then only its name for the sheet. */
  readonly custom?: FiveChoices
  /** Percent of the course handicap, or weights low to high for one ball of a side. The published figure when absent. */
  readonly allowance?: number | readonly number[]
  readonly ties?: TieRule
  readonly matches?: readonly Match[]
  /** Entrants (players or sides) in this competition; everybody when absent. */
  readonly entrants?: readonly string[]
  /** Cap of a hole in maximum score. */
  readonly maximum?: MaximumScore
}

export type MaximumScore =
  | { readonly kind: 'net-double-bogey' }
  | { readonly kind: 'double-par' }
  | { readonly kind: 'fixed'; readonly strokes: number }

export interface Day {
  /** YYYY-MM-DD. */
  readonly date: string
  /** Of no account to the scoring; kept so that a day written out again still says where it was. */
  readonly courseName?: string
  /** Handicapping edition, a key of lib/rules/editions: '2024' or '2020-gbi'. */
  readonly edition: string
  readonly tees: readonly Tee[]
  readonly players: readonly Player[]
  readonly sides: readonly Side[]
  readonly cards: readonly Card[]
  readonly competitions: readonly Competition[]
  /**
   * True once the committee closed the day: holes not played have no score (no points, lost, the maximum; no return
   * where every stroke counts), and ties are broken.
   */
  readonly closed: boolean
}
