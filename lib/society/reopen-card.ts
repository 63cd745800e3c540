// A card that was accepted, or handed in, by a slip of the hand is opened again: no ruling, a line in the record of acts.
// What was written stays; what is entered now is added to it. Once a result is out, the reason is asked for.

import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { reopenCard as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { takeOut } from '@/lib/store/card-states'
import { hasResult } from '@/lib/store/day-closing'
import { takeDay, versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores } from '@/lib/store/score-facts'
import { cardInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'

const NEEDS_REASON = 'A result is out: what changes now is a correction. Write the reason for opening the card again.'

/** Opening a card twice answers the same. */
export async function reopenCard(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ scoreVersion: number }, 'not-allowed' | 'not-understood' | 'not-found' | 'day-closed'>> {
  const officer = deskOnly(actor, 'reopen-card')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, cardId, reason } = read.value

  const done = await write(async (tx) => {
    const day = await takeDay(tx, societyId, dayId)
    const sources = day && (await cardSources(tx, { societyId, dayId, cardId }))
    if (!day || !sources) return notFound('card')
    if (sources.card.state === 'out') return ok({ scoreVersion: day.scoreVersion, version: null })
    if (day.status === 'closed')
      return refused('day-closed', 'The day is closed. Open the day again under Result, with the reason, first.')
    if (reason.length < 3 && (await hasResult(tx, dayId)))
      return refused('not-understood', NEEDS_REASON, [{ place: 'reason', sentence: NEEDS_REASON }])
    await takeOut(tx, { societyId, cardId })
    const record = {
      subject: await cardInWords(tx, societyId, cardId),
      subjectId: cardId,
      before: { Card: sources.card.state === 'taken-in' ? 'accepted' : 'handed in' },
      after: { Card: 'open again', ...(reason === '' ? {} : { Reason: reason }) },
    }
    await recordAct(tx, actor, { act: 'reopen-card', area: 'results', ...record }, now)
    const moved = await moveScores(tx, dayId, false)
    return ok({ scoreVersion: moved.scoreVersion, version: versionText(moved) })
  })
  if (!done.ok) return done
  const { version, scoreVersion } = done.value
  if (version) live().announce(dayId, version)
  return ok({ scoreVersion })
}
