import 'server-only'
import type { ReturnsView } from '@/lib/boards/returns-view'
import type { Actor } from '@/lib/facts/actor'
import type { Result } from '@/lib/result'

export async function returns(_actor: Actor, _dayId: string): Promise<Result<ReturnsView>> {
  throw new Error('not built yet')
}
