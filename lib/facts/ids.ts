// Ids of different things are different types: an entry's id given where a person's is wanted does not compile. At run time
// they are plain strings. They come into being in the database (scripts/id-types.mjs gives the client's columns these types)
// and at the borders, where a schema below parses them; nowhere else.

import { z } from 'zod'

const idOf = <Of extends string>() => z.string().min(1).max(40).brand<Of, 'inout'>()

export const societyId = idOf<'society'>()
export const userId = idOf<'user'>()
export const personId = idOf<'person'>()
export const courseId = idOf<'course'>()
export const teeId = idOf<'tee'>()
export const seasonId = idOf<'season'>()
export const dayId = idOf<'day'>()
export const roundId = idOf<'round'>()
export const roundTeeId = idOf<'round tee'>()
export const competitionId = idOf<'competition'>()
export const entryId = idOf<'entry'>()
export const sideId = idOf<'side'>()
export const pairingId = idOf<'pairing'>()
export const teamId = idOf<'team'>()
export const groupId = idOf<'group'>()
export const cardId = idOf<'card'>()
export const deviceId = z.string().min(1).max(120).brand<'device', 'inout'>()
export const rulingId = idOf<'ruling'>()

export type SocietyId = z.output<typeof societyId>
export type UserId = z.output<typeof userId>
export type PersonId = z.output<typeof personId>
export type CourseId = z.output<typeof courseId>
export type TeeId = z.output<typeof teeId>
export type SeasonId = z.output<typeof seasonId>
export type DayId = z.output<typeof dayId>
export type RoundId = z.output<typeof roundId>
export type RoundTeeId = z.output<typeof roundTeeId>
export type CompetitionId = z.output<typeof competitionId>
export type EntryId = z.output<typeof entryId>
export type SideId = z.output<typeof sideId>
export type PairingId = z.output<typeof pairingId>
export type TeamId = z.output<typeof teamId>
export type GroupId = z.output<typeof groupId>
export type CardId = z.output<typeof cardId>
export type DeviceId = z.output<typeof deviceId>
export type RulingId = z.output<typeof rulingId>
