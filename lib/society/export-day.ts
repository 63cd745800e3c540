import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import type { Result } from '@/lib/result'

/** The day file as a value, ready for JSON. */
export async function dayFileOf(
  _actor: Actor,
  _dayId: string,
): Promise<Result<{ fileName: string; dayFile: unknown }>> {
  throw new Error('not built yet')
}
