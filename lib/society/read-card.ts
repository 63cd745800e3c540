import 'server-only'
import type { CardWorking, MatchSheet, PlayerCard } from '@/lib/boards/views'
import type { Result } from '@/lib/result'

export async function playerCard(_slug: string, _daySlug: string, _entryId: string): Promise<Result<PlayerCard>> {
  throw new Error('not built yet')
}

export async function cardWorking(
  _slug: string,
  _daySlug: string,
  _entryId: string,
  /** `competition` counts from 1, as `?c=` does. */
  _of: { readonly competition?: number; readonly hole?: number },
): Promise<Result<CardWorking>> {
  throw new Error('not built yet')
}

export async function matchOf(_slug: string, _daySlug: string, _a: string, _b: string): Promise<Result<MatchSheet>> {
  throw new Error('not built yet')
}
