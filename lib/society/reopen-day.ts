// A closed day is opened again, with the reason. Sheets already published stay as they are.

import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { reopenDay as schema } from '@/lib/facts/commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { openTheDayAgain } from '@/lib/store/day-closing'
import { takeDay, versionText } from '@/lib/store/day-versions'
import { dayInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { deskOnly, movedOn, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'

export async function reopenDay(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<
  Result<{ version: number }, 'not-allowed' | 'not-understood' | 'not-found' | 'day-moved-on' | 'day-not-closed'>
> {
  const officer = deskOnly(actor, 'reopen-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId, userId, name } = officer.value
  const { dayId, version, reason } = read.value

  const done = await write(async (tx) => {
    const day = await takeDay(tx, societyId, dayId)
    if (!day) return notFound('day')
    if (day.status === 'in-play' && day.version === version + 1) return ok({ version: day.version, announce: null })
    if (day.version !== version) return movedOn()
    if (day.status !== 'closed') return refused('day-not-closed', 'The day is open: there is nothing to open again.')
    if (!(await openTheDayAgain(tx, { societyId, dayId, version }, { userId, name, reason }, now))) return movedOn()
    const opened = { subject: await dayInWords(tx, societyId, dayId), subjectId: dayId, version: version + 1 }
    const words = { before: { Day: 'closed' }, after: { Day: 'open again', Reason: reason } }
    await recordAct(tx, actor, { act: 'reopen-day', area: 'results', ...opened, ...words }, now)
    return ok({ version: version + 1, announce: versionText({ ...day, version: version + 1 }) })
  })
  if (!done.ok) return done
  if (done.value.announce) live().announce(dayId, done.value.announce)
  return ok({ version: done.value.version })
}
