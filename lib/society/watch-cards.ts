// The group's cards for phones that are open: told when they read otherwise, so that the second phone of a group hears of
// a score as soon as the board does. Scores of other groups wake nobody.

import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import { ok, type Result } from '@/lib/result'
import { dayVersionOf } from '@/lib/store/day-versions'
import { mayNot } from './acts'
import { servedPack } from './card-pack'
import { live } from './live'

/** Tells the tag of the present cards at once and of every later ones; the answer's value ends the watching. */
export async function watchCards(
  actor: Actor,
  told: (tag: string) => void,
): Promise<Result<() => void, 'not-allowed'>> {
  const no = mayNot(actor, 'read-group')
  if (no) return no
  if (actor.kind !== 'scorer') throw new Error('Only a group’s phone watches the cards of its group.')
  let last: string | null = null
  async function look(version: string): Promise<void> {
    // A book that cannot answer now is asked again with the next version; the phone also looks by itself.
    const served = await servedPack(actor, version).catch(() => null)
    if (!served?.ok || served.value.cardsTag === last) return
    last = served.value.cardsTag
    told(served.value.tag)
  }
  const end = live().watch(actor.dayId, (version) => void look(version))
  const version = await dayVersionOf(actor.dayId)
  if (version) await look(version)
  return ok(end)
}
