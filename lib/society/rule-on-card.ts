import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import type { RuleOnCard } from '@/lib/facts/commands'
import type { Result } from '@/lib/result'

export async function ruleOnCard(
  _actor: Actor,
  _input: RuleOnCard,
  _now: Date = new Date(),
): Promise<Result<{ number: number; scoreVersion: number }>> {
  throw new Error('not built yet')
}
