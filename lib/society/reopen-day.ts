import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import type { reopenDay as input } from '@/lib/facts/commands'
import type { Result } from '@/lib/result'

export async function reopenDay(
  _actor: Actor,
  _input: z.infer<typeof input>,
  _now: Date = new Date(),
): Promise<Result<{ version: number }>> {
  throw new Error('not built yet')
}
