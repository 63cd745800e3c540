// The first question of every desk act: may this actor, and is it an officer of one society.

import type { Actor } from '@/lib/facts/actor'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { type Act, mayNot } from './acts'

export type Officer = Extract<Actor, { kind: 'officer' }>

export function deskOnly(actor: Actor, act: Act): Result<Officer, 'not-allowed'> {
  const no = mayNot(actor, act)
  if (no) return no
  if (actor.kind !== 'officer') return refused('not-allowed', 'That is done at the desk. Sign in first.')
  return ok(actor)
}

/** One answer for what is not there and for what belongs to another society: neither is given away. */
export function notFound(what: string): Refused<'not-found'> {
  return refused('not-found', `There is no such ${what} in this society's book.`)
}

export function movedOn(): Refused<'day-moved-on'> {
  return refused(
    'day-moved-on',
    'Somebody else has changed this day meanwhile. What you typed is still here: look at the day as it is now, then save again.',
  )
}
