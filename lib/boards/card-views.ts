// What the pages of one card are given: the card read in its competitions, one figure opened, two cards as a match.

import type { CompetitionId, EntryId } from '@/lib/facts/ids'
import type { RoundHoles } from '@/lib/rules/hole-numbers'
import type { HoleLine, WorkingStep } from '@/lib/rules/standings'
import type { CardProgress } from './card-progress'
import type { BoardRow, CompetitionBoard, DayHead, ResultSheet } from './views'

/** One player's card, read in every competition it counts in. */
export interface PlayerCard extends DayHead {
  readonly entryId: EntryId
  readonly name: string
  readonly note: string | null
  readonly tee: { readonly name: string; readonly gender: 'men' | 'women' }
  readonly groupNumber: number | null
  readonly startTime: string | null
  readonly startHole: number | null
  readonly marker: string | null
  /** Null before the player has a card. */
  readonly progress: CardProgress | null
  readonly notAgreed: readonly number[]
  readonly readings: readonly {
    readonly competitionId: CompetitionId
    readonly competition: string
    readonly formatName: string
    readonly allowance: string
    readonly unit: CompetitionBoard['unit']
    readonly row: BoardRow
    /** This player's own holes: in a competition of sides the row holds the side's. */
    readonly own: readonly HoleLine[]
    readonly ownHandicap: number | null
    /** What it needs to win, where the committee allows it. */
    readonly chance?: string
  }[]
  /** Other formats under which the card can be read. */
  readonly readableAs: readonly { readonly format: string; readonly name: string; readonly family: string }[]
  readonly rulings: ResultSheet['rulings']
  readonly others: readonly { readonly entryId: EntryId; readonly name: string }[]
}

/** One figure with its steps: of one hole, or of the whole card when `hole` is null. */
export interface CardWorking extends DayHead {
  readonly entryId: EntryId
  readonly name: string
  readonly competitionId: CompetitionId
  readonly competition: string
  readonly formatName: string
  readonly hole: number | null
  /** Which holes the card has: the way from one to the next. */
  readonly round: RoundHoles
  readonly figure: string
  readonly unit: string
  /** "A five on a par four with one stroke is net four, level with par: two points." */
  readonly sentence: string
  readonly steps: readonly WorkingStep[]
  /** Of a whole card: in which divisions it stands and why, where the competition has some. */
  readonly divisions?: readonly WorkingStep[]
  /** Index of the step that gives the strokes on this hole; the band of stroke indexes is drawn under it. */
  readonly strokesAt: number | null
  readonly strokesByIndex: readonly { readonly strokeIndex: number; readonly strokes: number }[]
  readonly strokeIndex: number | null
  readonly ifItHadBeen: readonly {
    readonly gross: number | 'x'
    readonly net: number | null
    readonly value: number
    readonly here: boolean
  }[]
  /** "Rules of Handicapping 2024" */
  readonly edition: string
  readonly editionSentence: string
}
