// Everything a group's phone needs for a whole day without a signal: sent once when the link is opened, kept on the
// phone, refreshed when there is a signal.

import type { Gender } from '@/lib/rules/day'
import type { BallValue, CountChoice, PointsTable } from '@/lib/rules/formats/format'
import type { MatchToCount } from '@/lib/rules/matches/match-now'
import type { GameToCount } from '@/lib/rules/score/game-now'
import type { Shortage } from '@/lib/rules/score/short-sides'
import type { CardState } from './day-record'
import type { CardId, DayId, EntryId, GroupId, SideId } from './ids'
import type { PlayNow } from './play-stop'
import type { WrittenScore } from './score-fact'

/** Header of an answer that says "as you have it": the version of the scores that is true of. */
export const SCORE_VERSION = 'x-daybook-scores'

export interface PackHole {
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  readonly yards: number | null
  /** Strokes this player receives here in the main competition (negative: gives back). */
  readonly strokes: number
  /** How often the hole counts, where that is not once: twice where the terms name it, not at all where they leave it out. */
  readonly times?: number
  /** Par against which strokes are told while the card is on its way, where tees of different par are in one field. */
  readonly level?: number
  /** Maximum score: the most gross strokes that count here. */
  readonly cap?: number
}

export interface PackCard {
  readonly cardId: CardId
  readonly entryId: EntryId
  readonly firstName: string
  readonly familyName: string
  readonly guestOf: string | null
  /** Where a side shares one card: its other players. Each of them may write and sign as the player does. */
  readonly sharedWith?: readonly PackPartner[]
  readonly tee: { readonly name: string; readonly gender: Gender }
  readonly playingHandicap: number
  readonly markerId: EntryId | null
  readonly state: CardState
  readonly holes: readonly PackHole[]
  /** What each writer (a key of lib/facts/writer.ts) says, hole by hole, as the server has it. */
  readonly written: Readonly<Record<string, readonly WrittenScore[]>>
  /** The numbers those scores have on their phones: what a replacing score names. Absent in packs of older builds. */
  readonly numbers?: Readonly<Record<string, readonly (number | null)[]>>
  /** Holes the committee has settled: hole number to what counts. */
  readonly ruled: Readonly<Record<number, WrittenScore>>
  readonly signatures: readonly {
    readonly role: 'player' | 'marker'
    readonly entryId: EntryId | null
    readonly signedAt: string
  }[]
  /** Of somebody in a match: another competition that is no match, and needs every hole. */
  readonly beside?: string
  /** Where the draw left the player over: "No partner in the Quaich, and so no place in it." */
  readonly leftOut?: readonly string[]
  /** Left over by every competition of the day: no score of this card is asked for. */
  readonly noPart?: true
  /** Signatures that no longer cover the card and were not given again. */
  readonly signaturesOff?: readonly SignatureOff[]
}

/** Why a signature came off: the hole that reads otherwise since, or null where it reads as it did. */
export interface SignatureOff {
  readonly role: 'player' | 'marker'
  readonly entryId: EntryId | null
  readonly hole: number | null
  readonly from: WrittenScore
  /** Null with a hole: not agreed now. */
  readonly to: WrittenScore
}

/** Another player of the side whose card it is. */
export interface PackPartner {
  readonly entryId: EntryId
  readonly firstName: string
  readonly familyName: string
}

/** Whose phone a phone of the group is, as it said itself. */
export interface PackHolder {
  readonly entryId: EntryId
  /** Mark of the phone. */
  readonly phone: string
  readonly since: string
  /** Its newest number the server has. */
  readonly lastSeq: number
}

/** What is written beside the strokes of a side: whose drives it took, or where its named ball was lost. */
export interface PackBall {
  readonly kind: 'drives' | 'named-ball'
  readonly sideId: SideId
  /** The card in this group that it is written beside. */
  readonly cardId: CardId
  readonly name: string
  /** In the side's order: the named ball goes round by it. */
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
  /** Drives each player has to give; null without a minimum. */
  readonly minimum: number | null
  /** Entry id of whose drive, hole by hole. */
  readonly drives: readonly (EntryId | null)[]
  /** Holes on which the named ball is said to be lost, in the order of play. */
  readonly lost: readonly number[]
  /** What the loss of the named ball costs, in a sentence. */
  readonly cost?: string
  /** What the score of the player in turn does from there on; absent where the side is out. */
  readonly inTurn?: string
}

/** A match somebody of the group plays in, with what the phone counts it from. */
export interface PackMatch {
  readonly competition: string
  readonly a: string
  readonly b: string
  readonly match: MatchToCount
}

/** Skins or split sixes of this group, with what the phone counts them from. */
export interface PackGame {
  readonly competition: string
  readonly unit: 'skins' | 'points'
  /** In the order of the game's balls. */
  readonly players: readonly { readonly entryId: EntryId; readonly name: string }[]
  readonly game: GameToCount
}

export interface CardPack {
  readonly packVersion: 1
  readonly society: string
  readonly societySlug: string
  /** The invented society: said on the card, so that nobody takes it for a real day. */
  readonly isDemo?: true
  readonly dayId: DayId
  readonly daySlug: string
  readonly dayName: string
  readonly date: string
  readonly course: string
  readonly status: 'called' | 'frozen' | 'in-play' | 'closed'
  readonly group: {
    readonly id: GroupId
    readonly number: number
    readonly startTime: string
    readonly startHole: number
    /** "1A" where two groups of a shotgun start share the hole. */
    readonly startsAt?: string
  }
  /** How the main competition reads a hole: the heading of the columns. */
  readonly reading: 'points' | 'net' | 'gross' | 'par'
  readonly mainCompetition: string
  readonly cards: readonly PackCard[]
  readonly scoreVersion: number
  readonly dayVersion: number
  /** The newest word of the desk about play: stopped, or in play again. */
  readonly play?: PlayNow | null
  /** The build that answers: a phone with an older one takes it when nobody is typing. */
  readonly app?: string
  /** Points of the main competition, where they are not those of the Rules. */
  readonly points?: PointsTable
  /** Sides of the main competition that play in this group, and how their scores count together. */
  readonly together?: {
    readonly count: CountChoice
    readonly on: BallValue
    readonly better: 'high' | 'low'
    readonly sides: readonly { readonly name: string; readonly entryIds: readonly EntryId[] }[]
    /** What stands for a player that a side lacks. */
    readonly shortage?: Shortage
  }
  /** Only where the committee allows it: places as they stood when the pack was made, by entry. */
  readonly position?: {
    readonly of: number
    readonly places: Readonly<Record<string, { readonly place: number; readonly tied: boolean }>>
  }
  /** Phones of this group that said whose they are. */
  readonly holders?: readonly PackHolder[]
  /** Sides in this group about whose ball something is written down. */
  readonly balls?: readonly PackBall[]
  /** Competitions in which a side of this group chooses among its scores: how many count on a hole. */
  readonly counting?: readonly { readonly competition: string; readonly count: CountChoice; readonly size: number }[]
  /** Matches with somebody of this group in them. */
  readonly matches?: readonly PackMatch[]
  /** Games shared inside this group. */
  readonly games?: readonly PackGame[]
}
