// What the screens are given: finished, serialisable, nothing left to count. Filled by the functions of lib/boards.

import type { CompetitionId, EntryId, PersonId } from '@/lib/facts/ids'
import type { PlayNow } from '@/lib/facts/play-stop'
import type { CountbackFigure, HoleLine, MatchResult, NoPlace, TieBroken, WorkingStep } from '@/lib/rules/standings'
import type { CardProgress } from './card-progress'
import type { DrivesLine, SeveralRounds, SharedGame, TeamLine } from './extra-views'

export interface BoardRow extends SeveralRounds {
  readonly place: number | null
  readonly tied: boolean
  /** Entry id in singles, side id otherwise. */
  readonly entrant: string
  readonly entryIds: readonly EntryId[]
  /** "Jago Trevennor" or "Trevennor and Coldbrook". */
  readonly name: string
  /** Of a side: its players by name, in the order of `entryIds`. Sheets of before have none. */
  readonly players?: readonly string[]
  /** "guest of Storrey" when the entrant is one guest, "did not play Friday" when a round was missed. */
  readonly note: string | null
  readonly playingHandicap: number | null
  readonly score: number | null
  readonly againstLevel: number | null
  readonly out: number | null
  readonly in: number | null
  /** What level places were given by, where that is not the second nine as it stands on the card. */
  readonly countback?: CountbackFigure
  readonly gross: number | null
  readonly holesPlayed: number
  /** Last hole played: number, what was scored, what it counted. */
  readonly last: { readonly hole: number; readonly gross: number | 'x'; readonly value: number } | null
  readonly holes: readonly HoleLine[]
  readonly noPlace: NoPlace | null
  readonly tieBroken: TieBroken | null
  /** The sentence of the sheet: "Trevennor above Holmgarth, both 38: last nine 18 each, last six 11 to 10." */
  readonly tieSentence: string | null
  /** Holes on which player and marker differ. */
  readonly notAgreed: readonly number[]
  readonly handedIn: boolean
  /** How far its card, or the least far of its cards, has come. Sheets of before have none. */
  readonly progress?: CardProgress
  readonly groupNumber: number | null
  /** Whose drives a side of one ball took. */
  readonly drives?: DrivesLine
}

/** A part of the field with places of its own; the figures of a row stand in the main rows. */
export interface DivisionBoard {
  readonly id: string
  readonly name: string
  /** Who is in it: "Women with a playing handicap of 18 or less." */
  readonly sentence: string
  readonly rows: readonly Pick<BoardRow, 'entrant' | 'place' | 'tied' | 'tieBroken' | 'tieSentence'>[]
}

/** What it needs to win, for one entrant. */
export interface EntrantChance {
  readonly first: 'certain' | 'certain-level' | 'possible' | 'out'
  readonly holesLeft: number
  /** "First place is still possible." */
  readonly stands: string
  /** "14 points on the six holes left tie with Trevennor, 15 win; countback would go to Trevennor." Empty when settled. */
  readonly needed: string
  /** "At the best 54 points, at the worst 24." Empty when no hole is left. */
  readonly range: string
}

export interface BoardChances {
  /** Why nothing exact can be said of this competition; null when it is said of each. */
  readonly note: string | null
  readonly entrants: Readonly<Record<string, EntrantChance>>
  /** By match: "Ashgill is dormie two and cannot be beaten in the round; …" */
  readonly matches: Readonly<Record<string, string>>
}

export interface CompetitionBoard extends SharedGame {
  readonly id: string
  readonly name: string
  readonly format: string
  readonly formatName: string
  /** "95 %" */
  readonly allowance: string
  /** "Allowance from the Rules of Handicapping 2024, Appendix C" or "House choice: …" */
  readonly allowanceFrom: string
  /** One sentence each: the own format read back, the maximum, limits. Sheets of before have none. */
  readonly moreTerms?: readonly string[]
  readonly tieRule: string
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
  readonly better: 'high' | 'low'
  readonly rows: readonly BoardRow[]
  /** Sheets of before divisions have none. */
  readonly divisions?: readonly DivisionBoard[]
  readonly matches: readonly MatchResult[]
  /** Who plays in the matches, by the ids in them. */
  readonly names: Readonly<Record<string, string>>
  /** Points of the teams from the matches of this competition. */
  readonly teams?: readonly TeamLine[]
  /** How it stands in this competition. Sheets of before have none. */
  readonly sentence?: string
  /** Only while the round is on, and only where the committee allows it. */
  readonly chances?: BoardChances
}

export interface GroupOnCourse {
  readonly number: number
  readonly startTime: string
  /** Holes every player of the group has finished; null before the first. */
  readonly through: number
  /** The hole they are on, null when round. */
  readonly onHole: number | null
  /** False until the first score of the group is in. */
  readonly started: boolean
  readonly startHole: number
  /** "1A" where two groups of a shotgun start share a hole; absent where one stands alone, and on sheets of before. */
  readonly startsAt?: string
  readonly entryIds: readonly EntryId[]
}

export interface DayBoard {
  readonly societySlug: string
  readonly societyName: string
  readonly daySlug: string
  readonly dayName: string
  readonly dayNumber: number
  readonly dayCount: number
  readonly seasonName: string
  readonly date: string
  readonly courseName: string
  readonly status: 'called' | 'frozen' | 'in-play' | 'closed'
  readonly players: number
  /** When and how the day begins. Sheets of before have none. */
  readonly start?: { readonly kind: 'tee-times' | 'shotgun'; readonly firstTee: string }
  /** Cards there are; as many as players unless a side shares one. Sheets of before have none. */
  readonly cards?: number
  /** Handed in, accepted or ruled out: the only meaning of "in". */
  readonly cardsIn: number
  /** Every hole written, a signature missing. */
  readonly cardsToSign?: number
  /** Counted as in because nobody waits for them, though they never came. Sheets of before have none. */
  readonly cardsNotReturned?: number
  readonly course: readonly { readonly hole: number; readonly par: number; readonly yards: number | null }[]
  readonly groups: readonly GroupOnCourse[]
  /** Who plays for which team, where the day has teams. */
  readonly teamLists?: readonly { readonly id: string; readonly name: string; readonly entryIds: readonly EntryId[] }[]
  readonly competitions: readonly CompetitionBoard[]
  /** All the matches of the day together, most points first. */
  readonly teams?: readonly TeamLine[]
  /** "Trevennor and Holmgarth are level on 38 with eleven cards to come." */
  readonly sentence: string
  readonly version: string
  readonly countedAt: string
  readonly published: number | null
  /** Why the day was called off; absent while it is on. */
  readonly calledOff?: string
  /** The newest word of the desk about play; absent on sheets of before and when nothing was said. */
  readonly play?: PlayNow | null
}

/** The frozen, numbered sheet. Stored as it is and never recounted. */
export interface ResultSheet {
  readonly sheetVersion: 1
  readonly number: number
  readonly reason: string | null
  /** "Published without a result in Sixes, because: …" Only where a competition had none. */
  readonly without?: string
  readonly publishedAt: string
  readonly by: string
  readonly board: DayBoard
  readonly ties: readonly string[]
  readonly prizes: readonly {
    readonly competition: string
    readonly name: string
    readonly entrant: string | null
    readonly winner: string
    readonly score: string
    readonly valuePence: number | null
    /** "Second on the board; the winner already has the cup." */
    readonly because: string | null
    /** Name of the division it was won in. */
    readonly division?: string
    /** How it came to be won, step by step. Sheets of before have none. */
    readonly working?: readonly WorkingStep[]
  }[]
  /** How many prizes a player may win, as the terms say it. */
  readonly prizeRule?: string
  readonly course: readonly { readonly hole: number; readonly average: number | null }[]
  readonly rulings: readonly {
    readonly number: number
    readonly name: string
    readonly sentence: string
    readonly clause: string
    readonly by: string
    readonly at: string
  }[]
  readonly frozenAt: string | null
  readonly edition: string
}

export interface StartSheet {
  readonly societyName: string
  readonly dayName: string
  readonly dayNumber: number
  readonly date: string
  readonly courseName: string
  readonly firstTee: string
  readonly intervalMinutes: number
  readonly startKind: 'tee-times' | 'shotgun'
  readonly competitions: readonly {
    readonly name: string
    readonly formatName: string
    readonly allowance: string
    readonly allowanceFrom: string
    readonly moreTerms?: readonly string[]
  }[]
  readonly groups: readonly {
    readonly number: number
    readonly startTime: string
    readonly startHole: number
    /** "1A" where two groups of a shotgun start share a hole; otherwise the hole. */
    readonly startsAt: string
    readonly code: string | null
    readonly link: string | null
    readonly players: readonly {
      readonly entryId: EntryId
      readonly name: string
      readonly note: string | null
      readonly tee: string
      readonly figure: string
      readonly playing: readonly { readonly competition: string; readonly playingHandicap: number | null }[]
      readonly marker: string | null
      readonly side: string | null
    }[]
  }[]
  readonly published: boolean
  /** Why the day was called off; absent while it is on. */
  readonly calledOff?: string
  readonly frozenAt: string | null
}

/** Index to course handicap to playing handicap, a row a player: the table of the freeze. */
export interface HandicapTable {
  readonly frozen: boolean
  readonly edition: string
  readonly competitions: readonly { readonly id: CompetitionId; readonly name: string; readonly allowance: string }[]
  readonly rows: readonly {
    readonly entryId: EntryId
    readonly name: string
    readonly note: string | null
    readonly tee: string
    readonly source: string
    readonly index: string
    readonly unrounded: string
    readonly courseHandicap: number
    readonly playing: readonly { readonly competitionId: CompetitionId; readonly playingHandicap: number }[]
  }[]
  /** Entered without a figure: they hold up the freeze. */
  readonly missing: readonly { readonly entryId: EntryId; readonly personId: PersonId; readonly name: string }[]
}

/** The head every public page of a day carries. */
export type DayHead = Pick<
  DayBoard,
  | 'societySlug'
  | 'societyName'
  | 'daySlug'
  | 'dayName'
  | 'dayNumber'
  | 'dayCount'
  | 'seasonName'
  | 'date'
  | 'courseName'
  | 'status'
  | 'published'
>

/** The season as the printed fixture card has it. */
export interface FixtureCard {
  readonly societySlug: string
  readonly societyName: string
  readonly foundedYear: number | null
  readonly isDemo: boolean
  /** Null while no season is open. */
  readonly seasonName: string | null
  readonly days: readonly {
    readonly daySlug: string
    readonly dayName: string
    readonly dayNumber: number
    readonly date: string
    readonly courseName: string
    readonly firstTee: string
    readonly startKind: 'tee-times' | 'shotgun'
    readonly status: DayBoard['status']
    /** Why the day was called off. */
    readonly calledOff: string | null
    /** "singles Stableford", "four-ball better ball": the formats in their order. */
    readonly formats: readonly string[]
    readonly players: number
    readonly startPublished: boolean
    /** Number of the newest sheet. */
    readonly published: number | null
    /** From the newest sheet, the main competition: never recounted. */
    readonly winner: { readonly name: string; readonly score: string } | null
  }[]
  /** False for the card of an earlier season: nothing on it is still to come. */
  readonly isNewest: boolean
  /** The other seasons, newest first. */
  readonly seasons: readonly { readonly name: string; readonly days: number }[]
}

/** A member's own page. */
export interface MemberPage {
  readonly societySlug: string
  readonly societyName: string
  readonly seasonName: string | null
  readonly name: string
  readonly memberSince: number | null
  readonly source: 'home-club' | 'society' | 'claimed'
  readonly figure: string | null
  readonly figureFrom: string | null
  readonly sentence: string
  /** Newest first. */
  readonly records: readonly {
    readonly from: string
    readonly indexTenths: number
    readonly figure: string
    /** "−2.0", null on the first. */
    readonly change: string | null
    readonly source: 'home-club' | 'society' | 'claimed'
    readonly reason: string
  }[]
  /** Newest first. */
  readonly cards: readonly {
    readonly entryId: EntryId
    readonly daySlug: string
    readonly dayName: string
    readonly date: string
    readonly courseName: string
    readonly score: string | null
    readonly unit: CompetitionBoard['unit']
    /** What the score is: to stand beside the figure. */
    readonly reading: 'points' | 'net' | 'gross' | null
    /** Played as a side: the names of all its players. */
    readonly side: string | null
    /** "won 6 and 4", a match each. */
    readonly matches: readonly string[]
    /** The day's other competitions, a line each, and the name of the main one. */
    readonly others?: { readonly in: string; readonly lines: readonly string[] }
    readonly gross: number | null
    readonly place: number | null
    readonly noPlace: NoPlace | null
    readonly live: boolean
  }[]
}
