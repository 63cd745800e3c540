import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import type { takeCardIn as input } from '@/lib/facts/commands'
import type { Result } from '@/lib/result'

/** Refused as `card-not-ready` with every fault named. Taking in a card twice answers the same. */
export async function takeCardIn(
  _actor: Actor,
  _input: z.infer<typeof input>,
  _now: Date = new Date(),
): Promise<Result<{ scoreVersion: number }>> {
  throw new Error('not built yet')
}
