// What the walk over HTTP knows of the two societies in the server's book.

import type {
  CardId,
  CompetitionId,
  CourseId,
  DayId,
  EntryId,
  GroupId,
  PersonId,
  RoundId,
  SeasonId,
  SocietyId,
  UserId,
} from '@/lib/facts/ids'

export const PASSWORD = 'walking the fells since 2031'

export const OFFICERS = {
  secretary: 'secretary@wetherlam.example.org',
  captain: 'captain@wetherlam.example.org',
  'handicap-secretary': 'handicaps@wetherlam.example.org',
  treasurer: 'treasurer@wetherlam.example.org',
  committee: 'committee@wetherlam.example.org',
} as const
export type OfficerDuty = keyof typeof OFFICERS

export interface Targets {
  readonly slug: string
  readonly societyId: SocietyId
  readonly seasonId: SeasonId
  readonly dayId: DayId
  readonly daySlug: string
  readonly version: number
  readonly roundId: RoundId
  readonly competitionId: CompetitionId
  readonly cardId: CardId
  readonly entryId: EntryId
  readonly groupId: GroupId
  readonly link: string
  readonly courseId: CourseId
  readonly personId: PersonId
  readonly pageKey: string
  readonly dutyId: string
  readonly userId: UserId
}

export interface Prepared {
  readonly here: Targets
  readonly there: Targets
  /** Names, links and codes that must never be in an answer for the other society. */
  readonly secretsHere: readonly string[]
  readonly secretsThere: readonly string[]
}
