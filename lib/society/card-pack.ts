import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import type { CardPack } from '@/lib/facts/card-pack'
import type { Result } from '@/lib/result'

export async function cardPack(_actor: Actor): Promise<Result<CardPack>> {
  throw new Error('not built yet')
}
