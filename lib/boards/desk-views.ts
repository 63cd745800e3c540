// What the rooms of the desk are given: lists, the clock of a day, and what a file that is to be read in would do.

import type { DayRecord } from '@/lib/facts/day-record'
import type { CourseId, DayId, GroupId, PersonId, SeasonId, TeeId } from '@/lib/facts/ids'
import type { MemberColumn, Mendable } from '@/lib/facts/member-import'
import type { Gender, Hole } from '@/lib/rules/day'

export type HandicapSource = 'home-club' | 'society' | 'claimed'

export interface MemberRow {
  readonly personId: PersonId
  readonly firstName: string
  readonly familyName: string
  /** A word that tells two of one name apart; it stands after the name. */
  readonly knownAs: string | null
  readonly gender: Gender
  readonly kind: 'member' | 'guest'
  readonly regular: boolean
  readonly email: string | null
  readonly phone: string | null
  readonly handicapSource: HandicapSource
  readonly indexTenths: number | null
  /** "18.4", "+2.1" or "none yet". */
  readonly figure: string
  /** Since when the figure stands. */
  readonly figureFrom: string | null
  readonly figureReason: string | null
  readonly memberSince: number | null
  readonly membershipNumber: string | null
  readonly homeClub: string | null
  readonly leftOn: string | null
  /** The words the society sorts people by: "senior", "first-timer". */
  readonly labels: readonly string[]
  readonly junior: boolean
  readonly shownAs: 'name' | 'initials' | 'former-member'
  /** Contact details were taken out of the book. */
  readonly erased: boolean
  /** Days entered and not withdrawn from. */
  readonly days: number
  /** Last part of the address of the member's own page; null where the officer may not act for the member. */
  readonly pageKey: string | null
}

export interface CourseRow {
  readonly courseId: CourseId
  readonly name: string
  readonly place: string | null
  readonly holes: number
  readonly version: number
  readonly tees: readonly {
    readonly teeId: TeeId
    readonly name: string
    readonly gender: Gender
    /** "69.2" */
    readonly courseRating: string
    readonly slopeRating: number
    /** Nine on a course of eighteen is its front or its back nine. */
    readonly holes: number
    /** 10 of a back nine. */
    readonly firstHole: number
    readonly par: number
    readonly yards: number | null
    /** The nine of a nine-hole course played twice as eighteen, and where its numbers come from; null otherwise. */
    readonly twice: { readonly courseRating: string; readonly said: string } | null
  }[]
}

export interface CourseCard {
  readonly courseId: CourseId
  readonly name: string
  readonly place: string | null
  readonly version: number
  readonly tees: readonly {
    readonly teeId: TeeId
    readonly name: string
    readonly gender: Gender
    readonly courseRatingTenths: number
    readonly slopeRating: number
    readonly holes: readonly (Hole & { readonly yards?: number })[]
  }[]
}

export interface SeasonRow {
  readonly seasonId: SeasonId
  readonly name: string
  readonly startsOn: string
  readonly endsOn: string
  readonly days: number
}

export type DutyOfDay =
  | 'call'
  | 'close-entries'
  | 'draw'
  | 'freeze'
  | 'publish-start'
  | 'first-tee'
  | 'returns'
  | 'close'
  | 'publish'
  | 'handicap-changes'

/** One line of "What is due". */
export interface Due {
  readonly what: DutyOfDay
  readonly on: string
  /** "18:00" when there is an hour to it. */
  readonly at: string | null
  /** 'next' is the one to do now; several may be late, only one is next. */
  readonly state: 'done' | 'next' | 'later'
  readonly late: boolean
  /** "Freeze handicaps" */
  readonly title: string
  /** "27 in, 2 waiting" */
  readonly note: string
}

export interface DeskCounts {
  readonly entered: number
  readonly guests: number
  readonly waiting: number
  readonly withdrawn: number
  readonly places: number | null
  readonly groups: number
  readonly cards: number
  /** Handed in, accepted or ruled out, as the board counts them. */
  readonly cardsIn: number
  readonly cardsAccepted: number
  /** Nobody waits for them any more; they are neither in nor accepted. */
  readonly cardsNotReturned: number
  /** Entered without a figure. */
  readonly noFigure: number
  /** Entered, but in no group. */
  readonly ungrouped: number
}

export interface GroupKey {
  readonly id: GroupId
  readonly number: number
  readonly startTime: string
  readonly code: string
  readonly linkKey: string
}

export interface DeskDay {
  /** Today is before its date, and no officer has said that it is played early: no cards, no result yet. */
  readonly isAhead: boolean
  /** Without links and codes of the groups. */
  readonly record: DayRecord
  /** What opens the groups' cards; null for a duty that may not enter scores. */
  readonly groupKeys: readonly GroupKey[] | null
  readonly today: string
  /** Negative once the day is past. */
  readonly daysToGo: number
  readonly places: number | null
  readonly due: readonly Due[]
  readonly counts: DeskCounts
  readonly draw: { readonly at: Date; readonly way: string; readonly seed: number | null } | null
  /** "Men from yellow, par 72, 69.2 and 125. Women from red, par 73, 70.9 and 125." */
  readonly tees: string
  /** Interval shorter than published practice for the size of the groups, as a sentence. */
  readonly cautions: readonly string[]
}

export interface DeskHome {
  readonly societyName: string
  readonly societySlug: string
  readonly isDemo: boolean
  readonly today: string
  readonly members: number
  readonly courses: number
  readonly seasons: readonly (SeasonRow & {
    readonly fixtures: readonly {
      readonly dayId: DayId
      readonly slug: string
      readonly number: number
      readonly name: string
      readonly date: string
      readonly courseName: string
      readonly status: DayRecord['status']
      readonly calledOff: string | null
      readonly entered: number
      readonly published: number | null
      readonly next: Due | null
    }[]
  })[]
}

/** What importing a list of members would do, and what is still to be said about it. */
export interface MemberImportPreview {
  /** Tied to the bytes of the file, to everything chosen, and to what would happen: anything else is refused. */
  readonly digest: string
  readonly fileName: string
  /** As the spreadsheet numbers it; 0 where there are no headings. */
  readonly headingRow: number
  readonly columns: readonly { readonly at: number; readonly heading: string; readonly as: MemberColumn }[]
  /** The spreadsheet as it is: its first rows, and those that need a look or are left out. */
  readonly sheet: readonly {
    readonly row: number
    readonly cells: readonly string[]
    readonly state: 'ready' | 'look' | 'left-out'
  }[]
  readonly rows: readonly MemberImportRow[]
  readonly look: readonly MemberRowToLookAt[]
  readonly leftOut: readonly {
    readonly row: number
    readonly reads: string
    readonly why: string
    readonly byItself: boolean
  }[]
  readonly blank: number
  readonly questions: readonly {
    readonly about: 'names' | 'gender' | 'handicap'
    readonly sentence: string
  }[]
  /** What the file has not, once each. */
  readonly notes: readonly string[]
  /** True where men or women were chosen for everybody: a single row can say otherwise. */
  readonly genderChosen: boolean
  /** What is wrong with the file itself. */
  readonly faults: readonly { readonly place: string; readonly sentence: string }[]
  readonly ready: boolean
  readonly sentence: string
}

export interface MemberImportRow {
  /** Row of the file as the spreadsheet program numbers it. */
  readonly row: number
  readonly firstName: string
  readonly familyName: string
  readonly gender: Gender | null
  readonly figure: string
  readonly what: 'new' | 'changed' | 'unchanged'
  /** True where the file does not say men or women. */
  readonly genderUnsaid: boolean
  /** "New member", "Handicap 18.4 becomes 17.9". */
  readonly sentence: string
}

export interface MemberRowToLookAt {
  readonly row: number
  readonly name: string
  readonly sentences: readonly string[]
  /** Cells to put right in place. */
  readonly cells: readonly { readonly cell: Mendable; readonly written: string }[]
  /** People of that name in the list already, and whether it may be somebody new. */
  readonly who: readonly { readonly personId: PersonId; readonly said: string }[] | null
}

/** What importing a course card would do, and what the card does not have. */
export interface CourseImportPreview {
  /** Tied to the bytes of the file, to everything said about it, and to the course it would replace. */
  readonly digest: string
  readonly fileName: string
  readonly name: string
  /** A course of that name is there already and would be replaced. */
  readonly known: boolean
  readonly tees: readonly CourseImportTee[]
  readonly notes: readonly string[]
  readonly faults: readonly { readonly place: string; readonly sentence: string }[]
  readonly ready: boolean
  readonly sentence: string
}

export interface CourseImportTee {
  readonly key: string
  /** "column D", "rows 2 to 19": as the spreadsheet program shows it. */
  readonly place: string
  readonly name: string
  readonly gender: Gender | null
  readonly holes: number
  readonly par: number | null
  readonly yards: number | null
  /** As written or typed, right or wrong. */
  readonly courseRating: string
  readonly slopeRating: string
  readonly what: 'new' | 'changed' | 'unchanged' | 'look' | 'left-out'
  readonly sentences: readonly string[]
}
