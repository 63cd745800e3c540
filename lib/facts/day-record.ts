// A whole day as the book holds it, read in one go by the store and counted by lib/boards. Plain values.

import type { Gender, Hole } from '@/lib/rules/day'
import type { DayRuling } from './day-rulings'
import type {
  CardId,
  CompetitionId,
  CourseId,
  DayId,
  DeviceId,
  EntryId,
  GroupId,
  PairingId,
  PersonId,
  RoundId,
  RoundTeeId,
  RulingId,
  SeasonId,
  SideId,
  SocietyId,
  TeamId,
} from './ids'
import type { MatchEnding } from './match-ending'
import type { PlayStopRecord } from './play-stop'
import type { CompetitionTerms } from './terms'
import type { ReplacedScore } from './writer'

export const DAY_STATUSES = ['called', 'frozen', 'in-play', 'closed'] as const
export type DayStatus = (typeof DAY_STATUSES)[number]

export const CARD_STATES = ['out', 'handed-in', 'taken-in'] as const
export type CardState = (typeof CARD_STATES)[number]

export const RULING_KINDS = [
  'hole-score', // value: strokes, or null for no score
  'penalty-strokes', // value: strokes added to the hole
  'penalty-points', // value: points taken off
  'no-return',
  'disqualified',
  'withdrawn',
  'card-stands', // unsigned or otherwise imperfect, accepted by the committee
  'handicap-index', // value: the right index in tenths; each competition counts it by its own allowance
  'course-handicap', // value: the right course handicap, likewise
  'playing-handicap', // value: the playing handicap that counts, in every competition alike: a side's, and days ruled before
  'withdrawn-ruling', // takes an earlier ruling back
] as const
export type RulingKind = (typeof RULING_KINDS)[number]

export interface RoundTeeRecord {
  readonly id: RoundTeeId
  readonly name: string
  readonly gender: Gender
  readonly courseRatingTenths: number
  readonly slopeRating: number
  readonly isDefault: boolean
  readonly holes: readonly Hole[]
}

export interface EntryRecord {
  readonly id: EntryId
  readonly personId: PersonId
  readonly firstName: string
  readonly familyName: string
  /** A word that tells two of one name apart; it stands after the name. */
  readonly knownAs?: string | null
  readonly gender: Gender
  readonly kind: 'member' | 'guest'
  readonly hostId: PersonId | null
  readonly hostName: string | null
  readonly status: 'entered' | 'waiting' | 'withdrawn'
  readonly roundTeeId: RoundTeeId
  readonly claimedTenths: number | null
  /** The figure that counts on this day: frozen, or the present one before the freeze. Null when nobody has given one. */
  readonly indexTenths: number | null
  readonly frozen: boolean
  /** The handicap as it is now, whatever is frozen; read with the day. */
  readonly presentTenths?: number | null
  readonly handicapSource: 'home-club' | 'society' | 'claimed'
  readonly enteredAt: Date
  /** True when the name stands in for another: it is never cut to the family name. */
  readonly shownInFull?: boolean
  /** The society's words for the person: frozen into the day, or the present ones before the freeze. */
  readonly labels?: readonly string[]
}

export interface PrizeRecord {
  readonly number: number
  readonly name: string
  readonly place: number
  readonly eligible: 'everybody' | 'members' | 'guests'
  readonly valuePence: number | null
  /** Id of a division of the terms: won among its players. */
  readonly division?: string | null
}

export interface SideRecord {
  readonly id: SideId
  readonly number: number
  readonly name: string | null
  readonly entryIds: readonly EntryId[]
}

/** Two entries, or two sides of the competition, who play each other. */
export interface PairingRecord {
  readonly id: PairingId
  readonly number: number
  readonly a: EntryId | SideId
  readonly b: EntryId | SideId
  readonly ending: MatchEnding
}

/** A team of the day: its matches are counted together. */
export interface TeamRecord {
  readonly id: TeamId
  readonly number: number
  readonly name: string
  readonly entryIds: readonly EntryId[]
}

/** Whose drive a side took on a hole, or that its named ball was lost there. The newest of a side and hole counts. */
export interface BallFactRecord {
  readonly id: number
  readonly sideId: SideId
  readonly kind: 'drive' | 'ball-lost'
  readonly hole: number
  /** Of a drive; null takes back what was written. */
  readonly entryId: EntryId | null
  /** Of a lost ball; false takes it back. */
  readonly lost: boolean
  /** Entry id of the writer, or 'desk'. */
  readonly writer: EntryId | 'desk'
  readonly writtenAt: Date
  readonly receivedAt: Date
  readonly late: boolean
}

export interface CompetitionRecord {
  readonly id: CompetitionId
  readonly number: number
  readonly name: string
  readonly format: string
  readonly terms: CompetitionTerms
  readonly prizes: readonly PrizeRecord[]
  readonly sides: readonly SideRecord[]
  /** Who plays whom in a match; empty on days that were drawn before pairings were kept. */
  readonly pairings: readonly PairingRecord[]
  /** Earlier days that are added up with this one, in order: ids of `DayRecord.earlier`. */
  readonly countedDayIds: readonly DayId[]
  /** Those of them that are counted anew under these terms, not as they were published. */
  readonly recountedDayIds?: readonly DayId[]
}

export interface GroupRecord {
  readonly id: GroupId
  readonly number: number
  readonly startTime: string
  readonly startHole: number
  readonly code: string
  readonly linkKey: string
  readonly revoked: boolean
  readonly entryIds: readonly EntryId[]
}

export interface CardRecord {
  readonly id: CardId
  readonly entryId: EntryId
  readonly markerId: EntryId | null
  readonly state: CardState
  readonly takenInAt: Date | null
  /** What the paper adds up to; absent where nobody asks for it. */
  readonly paper?: PaperTotals
}

/** The totals written on a paper card, right or wrong; null where none was entered. */
export interface PaperTotals {
  readonly out: number | null
  readonly in: number | null
  readonly total: number | null
}

export interface FactRecord {
  /** Order of arrival: the order that counts. */
  readonly id: number
  readonly cardId: CardId
  readonly hole: number
  readonly score: number | 'x' | null
  /** Entry id of the writer, or 'desk'. */
  readonly writer: EntryId | 'desk'
  readonly deviceId: DeviceId
  readonly seq: number
  /** See lib/facts/writer.ts: null replaces whatever the name said before. */
  readonly replaces: readonly ReplacedScore[] | null
  readonly writtenAt: Date
  readonly receivedAt: Date
  readonly late: boolean
}

export interface SignatureRecord {
  readonly cardId: CardId
  readonly role: 'player' | 'marker'
  readonly entryId: EntryId | null
  readonly scores: readonly (number | 'x' | null)[]
  readonly signedAt: Date
  readonly withdrawnAt: Date | null
}

export interface RulingRecord {
  readonly id: RulingId
  readonly number: number
  readonly cardId: CardId
  readonly kind: RulingKind
  readonly hole: number | null
  readonly value: number | null
  readonly clause: string
  readonly reason: string
  readonly byName: string
  readonly ruledAt: Date
  readonly replaces: number | null
}

export interface CalledOff {
  readonly at: Date
  readonly reason: string
}

export interface DayRecord {
  readonly society: { readonly id: SocietyId; readonly slug: string; readonly name: string; readonly isDemo: boolean }
  readonly season: { readonly id: SeasonId; readonly name: string; readonly dayCount: number }
  readonly id: DayId
  readonly slug: string
  readonly number: number
  readonly name: string
  readonly date: string
  readonly status: DayStatus
  readonly edition: string
  readonly entriesCloseOn: string | null
  readonly frozenAt: Date | null
  readonly startPublishedAt: Date | null
  readonly closedAt: Date | null
  /** The course was closed, the weather: nobody plays, nothing is scored, nothing is published. */
  readonly calledOff?: CalledOff | null
  /** An officer said that the cards of this day are taken before its date. */
  readonly playedAheadAt?: Date | null
  readonly version: number
  readonly scoreVersion: number
  /** May the card on the phone show points and position as they stand? No when absent. */
  readonly showsPosition?: boolean
  /** May the board say what everybody still needs to win? No when absent. */
  readonly showsChances?: boolean
  /** The score version, moved on also by everything that changes on an earlier day counted here. */
  readonly boardVersion: number
  readonly round: {
    readonly id: RoundId
    readonly courseId: CourseId
    readonly courseName: string
    readonly holes: number
    /** Number on the first flag of the card: 1, or 10 where the second nine of a course is played. */
    readonly firstHole: number
    readonly startKind: 'tee-times' | 'shotgun'
    readonly firstTee: string
    readonly intervalMinutes: number
  }
  readonly tees: readonly RoundTeeRecord[]
  readonly entries: readonly EntryRecord[]
  readonly competitions: readonly CompetitionRecord[]
  readonly groups: readonly GroupRecord[]
  readonly teams: readonly TeamRecord[]
  readonly ballFacts: readonly BallFactRecord[]
  /** The days that some competition here is added up with, by date. Their own earlier days are not read. */
  readonly earlier: readonly DayRecord[]
  readonly cards: readonly CardRecord[]
  readonly facts: readonly FactRecord[]
  readonly signatures: readonly SignatureRecord[]
  readonly rulings: readonly RulingRecord[]
  /** On the day as a whole, those taken back included. */
  readonly dayRulings?: readonly DayRuling[]
  /** What the desk told everybody on the course, oldest first. */
  readonly playStops?: readonly PlayStopRecord[]
  readonly publications: readonly {
    readonly number: number
    readonly publishedAt: Date
    readonly reason: string | null
  }[]
}
