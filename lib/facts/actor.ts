// Who is asking. The first argument of every use case.

import type { DayId, GroupId, PersonId, SocietyId, UserId } from './ids'

export const DUTIES = [
  'secretary',
  'handicap-secretary',
  'treasurer',
  'captain',
  'committee',
  'member',
  'guest',
  'scorer',
  'anybody',
] as const
export type Duty = (typeof DUTIES)[number]

export type Actor =
  /** Signed in at the desk of one society. */
  | {
      readonly kind: 'officer'
      readonly societyId: SocietyId
      readonly userId: UserId
      readonly name: string
      readonly duties: readonly Duty[]
      /** Where the request came from; kept shortened, and only in the record of acts. */
      readonly from?: string | undefined
    }
  /** Holds a group's link or code: scorer on the day, for that group's cards only. */
  | {
      readonly kind: 'scorer'
      readonly societyId: SocietyId
      readonly dayId: DayId
      readonly groupId: GroupId
      readonly from?: string | undefined
    }
  /** Holds the private link of a member's page. */
  | {
      readonly kind: 'member'
      readonly societyId: SocietyId
      readonly personId: PersonId
      readonly from?: string | undefined
    }
  | { readonly kind: 'anybody' }

/** The duties an actor may act under. */
export function dutiesOf(actor: Actor): readonly Duty[] {
  switch (actor.kind) {
    case 'officer':
      return actor.duties
    case 'scorer':
      return ['scorer']
    case 'member':
      return ['member']
    case 'anybody':
      return ['anybody']
  }
}
