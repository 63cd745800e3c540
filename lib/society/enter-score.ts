import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import type { KeyCard } from '@/lib/facts/commands'
import type { Delivery, DeliveryAnswer } from '@/lib/facts/score-fact'
import type { Ok, Refused, Result } from '@/lib/result'

/** The number that should have come is not there: nothing was taken, send from `expected` on. */
export interface DeliveryGap extends Refused<'gap'> {
  readonly expected: number
}
export type DeliveryRefused = DeliveryGap | Refused<'not-allowed' | 'bad-delivery' | 'no-such-group'>

export async function deliverFacts(
  _actor: Actor,
  _delivery: Delivery,
  _now: Date = new Date(),
): Promise<Ok<DeliveryAnswer> | DeliveryRefused> {
  throw new Error('not built yet')
}

export async function keyCard(
  _actor: Actor,
  _input: KeyCard,
  _now: Date = new Date(),
): Promise<Result<{ scoreVersion: number }>> {
  throw new Error('not built yet')
}
