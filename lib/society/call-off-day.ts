// A day is called off (the weather, the course closed), or put back on. It stays where it is in the season: what the
// members see says so, the links of its groups end, and it is neither scored nor published.

import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { callOffDay as offSchema, putDayOn as onSchema } from '@/lib/facts/commands'
import { type Result, refused } from '@/lib/result'
import { setCalledOff } from '@/lib/store/called-off'
import { changeOfDay, type DayRefusals } from './day-change'
import { live } from './live'
import { parseInput } from './parse-input'

export async function callOffDay(
  actor: Actor,
  input: z.input<typeof offSchema>,
  now: Date = new Date(),
): Promise<Result<{ version: number }, DayRefusals | 'day-closed' | 'published-already'>> {
  const read = parseInput(offSchema, input)
  if (!read.ok) return read
  const { dayId, reason } = read.value
  let boardVersion = 0
  const done = await changeOfDay<object, 'day-closed' | 'published-already'>(
    actor,
    'call-off-day',
    read.value,
    async (day) => {
      boardVersion = day.boardVersion
      if (day.publications.length > 0)
        return refused('published-already', 'A result of this day is published: it was played, and it stays.')
      if (day.status === 'closed')
        return refused('day-closed', 'The day is closed: it was played. Open it again first if it is to be called off.')
      return {
        record: { before: { Day: 'on' }, after: { Day: 'called off', Reason: reason } },
        save: async (tx) => {
          await setCalledOff(tx, dayId, { at: now, reason })
          return {}
        },
      }
    },
    now,
  )
  if (done.ok) live().announce(dayId, `${done.value.version}.${boardVersion}`)
  return done
}

export async function putDayOn(
  actor: Actor,
  input: z.input<typeof onSchema>,
  now: Date = new Date(),
): Promise<Result<{ version: number }, DayRefusals | 'not-called-off'>> {
  const read = parseInput(onSchema, input)
  if (!read.ok) return read
  const { dayId } = read.value
  let boardVersion = 0
  const done = await changeOfDay<object, 'not-called-off'>(
    actor,
    'put-day-on',
    read.value,
    async (day) => {
      boardVersion = day.boardVersion
      if (!day.calledOff) return refused('not-called-off', 'The day is not called off.')
      return {
        record: { before: { Day: 'called off', Reason: day.calledOff.reason }, after: { Day: 'on' } },
        save: async (tx) => {
          await setCalledOff(tx, dayId, null)
          return {}
        },
      }
    },
    now,
  )
  if (done.ok) live().announce(dayId, `${done.value.version}.${boardVersion}`)
  return done
}
