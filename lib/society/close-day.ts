// The day is closed once every card is in or ruled upon: ties are broken, and a score that comes later is a late fact.

import 'server-only'
import type { z } from 'zod'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { cardsInTheWay } from '@/lib/boards/returns'
import type { Actor } from '@/lib/facts/actor'
import { closeDay as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { closeTheDay } from '@/lib/store/day-closing'
import { dayRecordIn } from '@/lib/store/day-record'
import { takeDay, versionText } from '@/lib/store/day-versions'
import { write } from '@/lib/store/write'
import { deskOnly, movedOn, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'

/** Refused as `cards-still-out` with a fault for each card that is neither taken in nor ruled. */
export async function closeDay(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<
  Result<
    { version: number },
    'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on' | 'day-not-in-play' | 'cards-still-out'
  >
> {
  const officer = deskOnly(actor, 'close-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, version } = read.value

  const done = await write(async (tx) => {
    const day = await takeDay(tx, societyId, dayId)
    if (!day) return notFound('day')
    // The same request sent twice: the first one closed the day.
    if (day.status === 'closed' && day.version === version + 1) return ok({ version: day.version, announce: null })
    if (day.version !== version) return movedOn()
    if (day.status === 'called' || day.status === 'closed')
      return refused(
        'day-not-in-play',
        day.status === 'closed' ? 'The day is closed already.' : 'The day has not begun: there are no cards yet.',
      )
    const record = await dayRecordIn(tx, { societyId, dayId })
    if (!record) return notFound('day')
    const out = cardsInTheWay(record, cardsAsTheyStand(record))
    if (out.length)
      return refused(
        'cards-still-out',
        out.length === 1 ? 'One card is still out.' : `${out.length} cards are still out.`,
        out,
      )
    if (!(await closeTheDay(tx, { societyId, dayId, version }, now))) return movedOn()
    const closed = { subject: record.name, subjectId: dayId, version: version + 1 }
    const words = { before: { Day: day.status.replace('-', ' ') }, after: { Day: 'closed' } }
    await recordAct(tx, actor, { act: 'close-day', area: 'results', ...closed, ...words }, now)
    return ok({ version: version + 1, announce: versionText({ ...day, version: version + 1 }) })
  })
  if (!done.ok) return done
  if (done.value.announce) live().announce(dayId, done.value.announce)
  return ok({ version: done.value.version })
}
