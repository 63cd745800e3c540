// What the walk over HTTP knows of the two societies in the server's book.

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
  readonly societyId: string
  readonly seasonId: string
  readonly dayId: string
  readonly daySlug: string
  readonly version: number
  readonly roundId: string
  readonly competitionId: string
  readonly cardId: string
  readonly entryId: string
  readonly groupId: string
  readonly link: string
  readonly courseId: string
  readonly personId: string
  readonly pageKey: string
  readonly dutyId: string
  readonly userId: string
}

export interface Prepared {
  readonly here: Targets
  readonly there: Targets
  /** Names, links and codes that must never be in an answer for the other society. */
  readonly secretsHere: readonly string[]
  readonly secretsThere: readonly string[]
}
