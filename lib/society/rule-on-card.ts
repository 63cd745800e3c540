// The committee rules on a card. A ruling is added with its reason, never edited; a later one may take its place.

import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import { type RuleOnCard, ruleOnCard as schema } from '@/lib/facts/commands'
import { ok, type Result } from '@/lib/result'
import { versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { takeDayOn } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { putRuling } from './ruling-in-book'

export type RulingRefusals =
  | 'not-allowed'
  | 'not-understood'
  | 'not-found'
  | 'day-called-off'
  | 'day-closed'
  | 'no-such-ruling'

export async function ruleOnCard(
  actor: Actor,
  input: RuleOnCard,
  now: Date = new Date(),
): Promise<Result<{ number: number; scoreVersion: number }, RulingRefusals>> {
  const officer = deskOnly(actor, 'rule-on-card')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, cardId } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on.code === 'not-found' ? notFound('card') : on
    const day = on.value
    const sources = await cardSources(tx, { societyId, dayId, cardId })
    if (!sources) return notFound('card')
    const put = await putRuling(tx, officer.value, day, sources, read.value, now)
    if (!put.ok) return put
    const { number, repeated } = put.value
    if (repeated) return ok({ number, scoreVersion: day.scoreVersion, version: null })
    const moved = await moveScores(tx, dayId, false)
    return ok({ number, scoreVersion: moved.scoreVersion, version: versionText(moved) })
  })
  if (!done.ok) return done
  const { version, ...answer } = done.value
  if (version) live().announce(dayId, version)
  return ok(answer)
}
