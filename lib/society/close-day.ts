import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import type { closeDay as input } from '@/lib/facts/commands'
import type { Result } from '@/lib/result'

/** Refused as `cards-still-out` with a fault for each card that is neither taken in nor ruled. */
export async function closeDay(
  _actor: Actor,
  _input: z.infer<typeof input>,
  _now: Date = new Date(),
): Promise<Result<{ version: number }>> {
  throw new Error('not built yet')
}
