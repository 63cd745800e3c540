import 'server-only'
import type { DayBoard, FixtureCard, ResultSheet } from '@/lib/boards/views'
import type { Result } from '@/lib/result'

export async function dayBoard(_slug: string, _daySlug: string): Promise<Result<DayBoard>> {
  throw new Error('not built yet')
}

export async function fixtures(_slug: string): Promise<Result<FixtureCard>> {
  throw new Error('not built yet')
}

export interface PublishedSheet {
  readonly sheet: ResultSheet
  /** Every sheet of the day, oldest first. */
  readonly sheets: readonly { readonly number: number; readonly publishedAt: string; readonly reason: string | null }[]
}

export async function resultSheet(_slug: string, _daySlug: string, _number?: number): Promise<Result<PublishedSheet>> {
  throw new Error('not built yet')
}
