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
  /** Set by a ruling in place of the one computed from the index; every allowance applies to it as usual. */
  readonly courseHandicap?: number
  /** The index that was confirmed for the day, where a ruling put the right one in its place: shown in the working. */
  readonly indexBefore?: number
  /** Sets the playing handicap by hand (a ruling, a limit); the allowance is then not applied. By competition id, or '*'. */
  readonly playingHandicap?: Readonly<Record<string, number>>
  readonly guest?: boolean
  /** Words the society sorts people by: "seniors", "first-timers". Divisions may rest on them. */
  readonly groups?: readonly string[]
}

export interface Side {
  readonly id: string
  readonly name?: string
  /** In order: a yellow-ball or a foursomes order may rest on it. */
  readonly players: readonly string[]
  /** Only in these competitions; in all that take sides of this size when absent. */
  readonly competitions?: readonly string[]
  /** Yellow ball: number of the hole on which the named ball was lost. */
  readonly ballLostOn?: number
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
  /** Which round of a day of several, from 1; the first when absent. */
  readonly round?: number
  /** A round this player was not in: no score on it, and none to come. On strokes there is no total without it. */
  readonly missed?: true
  /** Tee of this round, where it is not the player's own. */
  readonly tee?: string
  /** Handicap index of this round in tenths, where it is not the player's own: frozen on another day. */
  readonly indexTenths?: number
  /** Course handicap of this round set by a ruling; every allowance applies to it. */
  readonly courseHandicap?: number
  /** Playing handicap of this round set by hand, in every competition; goes before the player's own. */
  readonly playingHandicap?: number
  /** Scramble: whose drive was taken, hole by hole. */
  readonly drives?: readonly (string | null)[]
}

/** "3 and 2" for one of the two: holes up with so many left; both nought for a match that was halved. */
export interface GivenResult {
  readonly winner: 'a' | 'b' | null
  readonly up: number
  readonly left: number
}

export interface Match {
  readonly id: string
  /** Player ids, or side ids in a match of sides. */
  readonly a: string
  readonly b: string
  /** Holes conceded before anybody holed out, and to whom. */
  readonly concededHoles?: readonly { readonly hole: number; readonly to: 'a' | 'b' }[]
  /** The match conceded by a side. */
  readonly concededBy?: 'a' | 'b'
  /** The opponent never came: who goes through. */
  readonly walkover?: 'a' | 'b'
  /** As it was given at the desk, without the scores of its holes; nobody won: halved. */
  readonly result?: GivenResult
  /** Stopped and not to be finished: it stands as it is. */
  readonly abandoned?: boolean
  /** Gross scores of extra holes, in the order played, from the first hole of the match on. */
  readonly extraHoles?: readonly { readonly a: number | 'x'; readonly b: number | 'x' }[]
}

/** What a missing player of a short side counts as. Society custom, stated in the terms. */
export type MissingPlayer =
  /** Nothing: the others have to make the scores. */
  | { readonly kind: 'nothing' }
  /** A ghost, so many over net par on every hole (two is no points); its course handicap where a side plays one ball. */
  | { readonly kind: 'ghost'; readonly overPar: number; readonly courseHandicap: number }
  /** The best score of the others on the hole counts again; on one ball the lowest handicap is taken twice. */
  | { readonly kind: 'lowest-again' }
  /** The card of somebody else in the competition, drawn by lot from the recorded seed. */
  | { readonly kind: 'drawn'; readonly seed: number }

/** A part of the field with places of its own. Every condition that is given must hold for everybody of the entry. */
export interface Division {
  readonly id: string
  readonly name: string
  /** Playing handicap from and to, both included; of a side the sum. */
  readonly handicapFrom?: number
  readonly handicapTo?: number
  readonly gender?: Gender
  readonly guests?: 'only' | 'none'
  readonly group?: string
}

export interface Team {
  readonly id: string
  readonly name: string
  readonly players: readonly string[]
}

/** Somebody who does not play, or a whole side, known because a match was decided without them. In no standings. */
export interface Absent {
  readonly id: string
  readonly name: string
}

/** One step of a tie rule, tried in order until somebody is ahead. */
export type TieStep =
  /** Last n holes of the round. Shares of the handicap are kept as fractions in net stroke play. */
  | { readonly kind: 'last'; readonly holes: number }
  /** Holes by their numbers on the card, from and to, wherever a group began. */
  | { readonly kind: 'holes'; readonly from: number; readonly to: number }
  | { readonly kind: 'first-nine-last'; readonly holes: number }
  | { readonly kind: 'lower-handicap' }
  | { readonly kind: 'higher-handicap' }
  | { readonly kind: 'lot'; readonly seed: number }
  /** A play-off result, entered by hand: entrant ids, best first. Empty until it is known: the step is passed over. */
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
  /** Highest playing handicap by gender; for a side with one ball the highest course handicap of each player. */
  readonly handicapLimit?: { readonly men?: number; readonly women?: number }
  /**
   * One ball: the tee whose card the side plays to, par and stroke indexes, in every round somebody plays from it. When
   * absent, the tee of its players with the lowest par; of equal par the one with the lower course rating.
   */
  readonly sideTee?: string
  /** House variant for one ball: the combined course handicaps divided by this, in place of the allowance. */
  readonly dividedBy?: number
  /** Order of work in a match; the edition's own when absent. */
  readonly matchDifference?: 'rounded' | 'unrounded'
  /** What a match in several parts is worth to a team: a point for each part when absent, or one for the whole. */
  readonly partPoints?: 'each-part' | 'whole'
  /** Do strokes fall on extra holes as on the card? They do when absent. */
  readonly extraHoleStrokes?: 'as-on-the-card' | 'none'
  /** Holes whose value is multiplied in a format that has such holes. */
  readonly namedHoles?: readonly number[]
  /** Only these holes count, for everybody; all of them when absent. */
  readonly countedHoles?: readonly number[]
  /** On a closed day: what a hole nobody played any more counts as. No score when absent. */
  readonly notPlayed?: 'no-score' | 'level'
  readonly missing?: MissingPlayer
  /** Yellow ball: what a lost ball costs; the format's own rule when absent. */
  readonly ballLost?: 'counts-once' | 'named-score-nothing' | 'side-out'
  readonly minimumDrives?: number
  /** Groups inside which skins or split sixes are shared: entrant ids. Everybody together when absent. */
  readonly groups?: readonly (readonly string[])[]
  /** Skins and split sixes: places inside each group, a game of its own, when absent; or over everybody. */
  readonly ranking?: 'in-group' | 'everybody'
  readonly divisions?: readonly Division[]
  /** Rounds that are added up, in order; the first when absent. */
  readonly rounds?: readonly number[]
  /** Terms that a round was played and published under, in place of those of this competition. */
  readonly roundTerms?: readonly RoundTerms[]
}

/** What a score depends on. A term that is not given is absent in that round too, whatever the competition says. */
export type ScoredBy = Pick<
  Competition,
  | 'allowance'
  | 'handicapLimit'
  | 'dividedBy'
  | 'maximum'
  | 'countedHoles'
  | 'namedHoles'
  | 'missing'
  | 'notPlayed'
  | 'ballLost'
  | 'sideTee'
>

export interface RoundTerms extends ScoredBy {
  readonly round: number
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
  /** Two or more teams between which the matches of the day are counted, one and a half point. */
  readonly teams?: readonly Team[]
  /** Ends of matches given by walkover or conceded, and members of a team or side, who are not among the players. */
  readonly absent?: readonly Absent[]
  /**
   * True once the committee closed the day: holes not played have no score (no points, lost, the maximum; no return
   * where every stroke counts), and ties are broken.
   */
  readonly closed: boolean
}
