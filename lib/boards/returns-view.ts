// What the desk's returns are given: every card with its state, what stands in its way and who wrote what.

import type { CardState, PaperTotals } from '@/lib/facts/day-record'
import type { CardId, DayId, EntryId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import type { CardOutcome, Gender } from '@/lib/rules/day'
import type { DayHead } from './views'

export interface WrittenBy {
  /** Entry id, or 'desk'. */
  readonly writer: string
  /** "Una Tarrablane", or "the desk" for a card keyed from paper. */
  readonly name: string
  readonly score: WrittenScore
  readonly writtenAt: string
  readonly receivedAt: string
}

export interface ReturnHole {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards: number | null
  /** Strokes received in the main competition. */
  readonly strokes: number
  /** What counts: the ruling, or the latest fact. */
  readonly score: WrittenScore
  /** Value in the main competition. */
  readonly value: number | null
  readonly notAgreed: boolean
  readonly ruled: boolean
  /** Each writer's latest opinion, newest first; a writer who cleared the hole is not in it. */
  readonly written: readonly WrittenBy[]
  /** "The desk wrote 5. Una Tarrablane wrote 6 at 12.52 pm." Only where they differ. */
  readonly sentence: string | null
}

export interface RulingLine {
  readonly number: number
  readonly cardId: CardId
  readonly entryId: EntryId
  readonly name: string
  readonly hole: number | null
  /** "Hole 11 counts as 5." */
  readonly sentence: string
  readonly reason: string
  readonly clause: string
  readonly by: string
  readonly at: string
  readonly replaces: number | null
  /** Taken back or replaced by a later ruling. */
  readonly replacedBy: number | null
}

export interface LateFactLine {
  readonly id: number
  readonly cardId: CardId
  readonly name: string
  readonly hole: number
  readonly score: WrittenScore
  readonly by: string
  readonly writtenAt: string
  readonly receivedAt: string
  /** "Magnus Storrey, hole 15: no score, written at 1.44 pm. The card had it already." */
  readonly sentence: string
}

export interface CardReturn {
  readonly cardId: CardId
  readonly entryId: EntryId
  /** Whose card it is, told apart from every other card of the day: "Jago Trevennor", or everybody of a side on one ball. */
  readonly name: string
  /** The one who holds the card and signs it as the player. */
  readonly player: string
  /** One ball for a whole side: this is the side's card. */
  readonly isSide: boolean
  readonly note: string | null
  readonly tee: { readonly name: string; readonly gender: Gender }
  readonly playingHandicap: number | null
  readonly marker: { readonly entryId: EntryId; readonly name: string } | null
  readonly state: CardState
  readonly takenInAt: string | null
  readonly outcome: CardOutcome | null
  /** A ruling lets the card stand although something is missing on it. */
  readonly stands: boolean
  /** Short, for the list: "accepted", "hole 1 differs", "on the 18th", "not started". */
  readonly line: string
  readonly holes: readonly ReturnHole[]
  readonly out: number | null
  readonly in: number | null
  readonly gross: number | null
  readonly score: number | null
  readonly missing: readonly number[]
  /** Holes that need no score: the matches of the player were over before them. */
  readonly notNeeded: readonly number[]
  readonly notAgreed: readonly number[]
  readonly signatures: readonly {
    readonly role: 'player' | 'marker'
    readonly name: string
    /** Entered at the desk from the paper card. */
    readonly onPaper: boolean
    readonly signedAt: string
    /** False when a score changed after it. */
    readonly covers: boolean
  }[]
  /** Everything that stands in the way of taking the card in, one sentence each. */
  readonly faults: readonly { readonly place: string; readonly sentence: string }[]
  /** Drives that the terms ask for and nobody wrote, by name and number: looked at before the card is accepted. */
  readonly drivesShort: readonly string[]
  readonly lateFacts: readonly LateFactLine[]
  readonly rulings: readonly RulingLine[]
  /** What the paper adds up to, as it was entered. */
  readonly paper: PaperTotals
  /** Handed in, nothing open, and what is on the paper agrees: it may be accepted unread. */
  readonly isReady: boolean
}

export interface ReturnsView extends DayHead {
  readonly dayId: DayId
  readonly version: number
  readonly scoreVersion: number
  /** A result has been published: whatever is changed on a card from now on is a correction and needs its reason. */
  readonly isPublished: boolean
  readonly hasMatches: boolean
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
  readonly takenIn: number
  readonly cards: number
  readonly groups: readonly {
    readonly number: number
    readonly startTime: string
    readonly startHole: number
    readonly cards: readonly CardReturn[]
  }[]
  /** Newest first, those replaced included. */
  readonly rulings: readonly RulingLine[]
  readonly lateFacts: readonly LateFactLine[]
  /** Cards that keep the day from being closed; empty when it may be closed. */
  readonly inTheWay: readonly {
    readonly entryId: EntryId
    readonly place: string
    readonly sentence: string
    readonly isOut: boolean
  }[]
  /** Who counts as not returned, by a ruling or by the close. */
  readonly notReturned: readonly string[]
}
