import 'server-only'
import type { MemberPage } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import type { Result } from '@/lib/result'

export async function memberPage(_actor: Actor): Promise<Result<MemberPage>> {
  throw new Error('not built yet')
}
