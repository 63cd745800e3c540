// A format is five choices: side, ball, strokes, value of a hole, count. Everything else about it follows from them;
// no part of the engine knows a format by its id.

import type { AllowanceRow } from '../editions/edition'

/** How many players make one entry. A side short of players is marked by the count, not refused. */
export interface SideChoice {
  readonly from: number
  readonly to: number
}

/** Each plays an own ball, or the side plays one. */
export type BallChoice = 'own' | 'one'

export type StrokesChoice =
  /** No handicap counts. */
  | { readonly kind: 'none' }
  /** A percentage of each player's course handicap, in full or, in matches and group games, as the difference from the lowest. */
  | { readonly kind: 'each-player'; readonly off: 'own' | 'lowest' }
  /** One handicap for the side's ball: shares of its players' handicaps, low to high. */
  | { readonly kind: 'for-the-side'; readonly off: 'own' | 'lowest' }

/** Points by strokes over par, net. Worse than the last entry counts as the last; better than the first as `beyond` says. */
export interface PointsTable {
  /** Strokes over par of the first entry: -4 is four under. */
  readonly best: number
  /** From the best downward, a stroke at a time. */
  readonly points: readonly number[]
  /** Added for every stroke better than the first entry. */
  readonly beyond: number
  readonly noScore: number
}

export type BallValue =
  | { readonly kind: 'strokes' }
  /** Strokes up to the maximum in the terms of the competition. */
  | { readonly kind: 'maximum' }
  | { readonly kind: 'points'; readonly table: PointsTable }
  /** Won +1, halved 0, lost -1 against par. */
  | { readonly kind: 'against-par' }

/** How a hole is shared inside a group. */
export type Shares =
  /** The best score alone takes the hole; a tied hole is carried to the next or lost. */
  | { readonly kind: 'best-alone'; readonly tied: 'carried' | 'lost' }
  /** Points by place on the hole, tied places share theirs; better by `clear.by` strokes or more takes `clear.takes`. */
  | {
      readonly kind: 'by-place'
      readonly points: readonly number[]
      readonly clear?: { readonly by: number; readonly takes: number }
    }

export type ValueChoice =
  | BallValue
  /** Won, halved or lost against an opponent, on this reading of the balls. */
  | { readonly kind: 'against-opponent'; readonly on: BallValue; readonly parts?: readonly MatchPart[] }
  | { readonly kind: 'shared'; readonly on: BallValue; readonly shares: Shares }

/** One of several matches played at once over a stretch of the round. */
export interface MatchPart {
  readonly name: string
  readonly from: number
  /** Last hole; 0 for the end of the round. */
  readonly to: number
}

/** Weight of the best value on a hole, of the second best, and so on: [1] the best, [1, 1] the two best, [2, 1] best and aggregate. */
export type Take = readonly number[]

export type CountChoice =
  | { readonly kind: 'best'; readonly take: Take }
  /** A different number each hole, in turn, beginning again at the end: the waltz is 1, 2, 3. */
  | { readonly kind: 'by-turn'; readonly turn: readonly Take[] }
  /** A different number on each stretch of the round, by hole number; the last stretch goes to the end. */
  | { readonly kind: 'by-stretch'; readonly stretches: readonly { readonly to: number; readonly take: Take }[] }
  /** One named player's score must count, in turn, so many times, with the best of the others. */
  | {
      readonly kind: 'named-player'
      readonly times: number
      readonly others: Take
      /** What happens from the hole where the named ball is lost. */
      readonly lost: 'counts-once' | 'named-score-nothing' | 'side-out'
    }

export interface FiveChoices {
  readonly side: SideChoice
  readonly ball: BallChoice
  readonly strokes: StrokesChoice
  readonly value: ValueChoice
  readonly count: CountChoice
}

export type FormatAllowance =
  | { readonly row: AllowanceRow }
  /** Nothing is published for it: a figure of ours with its reason. */
  | { readonly house: number | readonly number[]; readonly why: string }

export type Family = 'singles' | 'pairs' | 'teams' | 'matches' | 'group games'

export interface FormatData extends FiveChoices {
  /** Kebab-case, a trade word. */
  readonly id: string
  readonly name: string
  /** One sentence that ends with a full stop. */
  readonly sentence: string
  readonly family: Family
  readonly allowance: FormatAllowance
  /** Published figures of sides short of players, by how many there are. */
  readonly shortSides?: Readonly<Record<number, AllowanceRow>>
  /** Where the form of play is defined. */
  readonly clause: string
  /** Holes whose value is multiplied: named in the terms of the competition. */
  readonly namedHolesTimes?: number
}

export type Unit = 'points' | 'strokes' | 'holes' | 'skins'

export interface Format extends FormatData {
  readonly unit: Unit
  readonly better: 'high' | 'low'
  /** Players of a full side. */
  readonly sideSize: number
  readonly isMatch: boolean
}

/** The reading of each ball under any of the values. */
export function ballValueOf(value: ValueChoice): BallValue {
  return value.kind === 'against-opponent' || value.kind === 'shared' ? value.on : value
}

/** Are balls of different tees compared by strokes, so that the par difference is due? RoH 6.2b. */
export function comparesStrokes(format: FiveChoices): boolean {
  const on = ballValueOf(format.value)
  if (format.strokes.kind === 'none') return false
  return on.kind === 'strokes' || on.kind === 'maximum'
}

function unitOf(value: ValueChoice): Unit {
  switch (value.kind) {
    case 'points':
      return 'points'
    case 'shared':
      return value.shares.kind === 'best-alone' ? 'skins' : 'points'
    case 'against-par':
    case 'against-opponent':
      return 'holes'
    case 'strokes':
    case 'maximum':
      return 'strokes'
  }
}

/** A finished format from its data: what the screens show is worked out from the five choices, never stated twice. */
export function formatFrom(data: FormatData): Format {
  const unit = unitOf(data.value)
  return {
    ...data,
    unit,
    better: unit === 'strokes' ? 'low' : 'high',
    sideSize: data.side.to,
    isMatch: data.value.kind === 'against-opponent',
  }
}
