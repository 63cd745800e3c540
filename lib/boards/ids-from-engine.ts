// The engine knows entrants, players and matches as plain strings, and hands back the ids it was given. Here they get
// their types back.

import type { CompetitionId, EntryId, PairingId, SideId } from '@/lib/facts/ids'

export const playerIds = (players: readonly string[]): readonly EntryId[] => players as readonly EntryId[]
export const playerId = (player: string): EntryId => player as EntryId
export const sideOf = (entrant: string): SideId => entrant as SideId
export const competitionIdOf = (id: string): CompetitionId => id as CompetitionId
export const opponents = (a: string, b: string) =>
  ({ a, b }) as { readonly a: EntryId | SideId; readonly b: EntryId | SideId }
export const matchEnds = ({ id, a, b }: { readonly id: string; readonly a: string; readonly b: string }) =>
  ({ id, a, b }) as { readonly id: PairingId; readonly a: EntryId | SideId; readonly b: EntryId | SideId }
