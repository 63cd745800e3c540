// A further officer: a duty with a date, held by somebody who can sign in.

import type { Actor } from '@/lib/facts/actor'
import { type GiveDuty, giveDuty as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { insertDuty } from '@/lib/store/officers'
import { mayNot } from './acts'
import { parseInput } from './parse-input'

export async function giveDuty(
  actor: Actor,
  input: GiveDuty,
  now: Date = new Date(),
): Promise<Result<{ userId: string }, 'not-allowed' | 'not-understood' | 'password-needed'>> {
  const no = mayNot(actor, 'give-duty')
  if (no) return no
  if (actor.kind !== 'officer') return refused('not-allowed', 'That is for the officers.')
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const userId = await insertDuty(actor.societyId, read.value, now)
  if (userId === null)
    return refused('password-needed', `${read.value.name} cannot sign in yet: give a first password too.`)
  return ok({ userId })
}
