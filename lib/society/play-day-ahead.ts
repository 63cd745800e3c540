// Cards of a day are not keyed, and its result is not closed or published, before its date: a slip of the finger on next
// month's day would be a result for ever. Where a day really is played early, an officer says so once, on the record.

import 'server-only'
import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { playDayAhead as schema } from '@/lib/facts/commands'
import { type Result, refused } from '@/lib/result'
import { setPlayedAhead } from '@/lib/store/called-off'
import { today } from '@/lib/store/settings'
import { changeOfDay, type DayRefusals } from './day-change'
import { isAhead } from './day-on'
import { parseInput } from './parse-input'

export async function playDayAhead(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ version: number }, DayRefusals | 'not-ahead'>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  return changeOfDay<object, 'not-ahead'>(
    actor,
    'play-day-ahead',
    read.value,
    async (day) => {
      if (!isAhead(day, now)) return refused('not-ahead', 'The day does not lie ahead: its cards can be entered.')
      return {
        record: {
          before: { Date: day.date },
          after: { 'Cards and result before the date': 'allowed', On: today(now) },
        },
        save: async (tx) => {
          await setPlayedAhead(tx, day.id, now)
          return {}
        },
      }
    },
    now,
  )
}
