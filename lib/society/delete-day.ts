// A day entered by mistake is deleted, as long as nothing hangs on it. Whatever was entered, drawn, keyed or published
// keeps it: then it is called off instead, and stays to be read.

import 'server-only'
import type { z } from 'zod'
import { dayWords } from '@/lib/boards/acts-in-words'
import { whatHangsOn } from '@/lib/boards/called-off'
import type { Actor } from '@/lib/facts/actor'
import { deleteDay as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { dayRecordIn } from '@/lib/store/day-record'
import { addedUpWith, dayExtras, numberByDate, removeDay } from '@/lib/store/day-setup'
import { takeDay } from '@/lib/store/day-versions'
import { write } from '@/lib/store/write'
import { deskOnly, movedOn, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on' | 'not-empty'

export async function deleteDay(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ name: string }, Refusals>> {
  const officer = deskOnly(actor, 'delete-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, version } = read.value
  return write<Result<{ name: string }, Refusals>>(async (tx) => {
    const taken = await takeDay(tx, societyId, dayId)
    const day = taken && (await dayRecordIn(tx, { societyId, dayId }))
    if (!day) return notFound('day')
    if (day.version !== version) return movedOn()
    const hanging = whatHangsOn(day, await addedUpWith(tx, dayId))
    if (hanging.length > 0)
      return refused(
        'not-empty',
        `${day.name} cannot be deleted. Call it off instead: it then stays in the list with its reason.`,
        hanging.map((sentence) => ({ place: 'day', sentence })),
      )
    const { places, seasonId } = await dayExtras(tx, dayId)
    await removeDay(tx, dayId)
    await numberByDate(tx, seasonId)
    const before = dayWords({ ...day, places })
    const gone = { act: 'delete-day', area: 'day' as const, subject: day.name, subjectId: dayId, before }
    await recordAct(tx, officer.value, gone, now)
    return ok({ name: day.name })
  })
}
