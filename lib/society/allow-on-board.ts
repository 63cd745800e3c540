// What the committee lets be seen while the round is on: the position on the phone's card, and what everybody still
// needs to win on the board. Both are off until somebody allows them.

import type { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { allowOnBoard as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { type Result, refused } from '@/lib/result'
import { changeOfDay, type DayRefusals } from './day-change'
import { live } from './live'
import { parseInput } from './parse-input'

const WORDS = { showsPosition: 'Position on the card', showsChances: 'What it needs to win' } as const
type Shown = keyof typeof WORDS

export async function allowOnBoard(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ version: number }, DayRefusals | 'day-closed' | 'nothing-changed'>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { dayId, version, ...asked } = read.value
  const changed = await changeOfDay<{ scoreVersion: number }, 'day-closed' | 'nothing-changed'>(
    actor,
    'allow-on-board',
    { dayId, version },
    async (day) => {
      if (day.status === 'closed')
        return refused('day-closed', 'The day is closed: everybody sees the result, and nothing is left to win.')
      const other = (Object.keys(WORDS) as Shown[]).filter(
        (one) => asked[one] !== undefined && asked[one] !== on(day, one),
      )
      if (other.length === 0) return refused('nothing-changed', 'It is set like that already.')
      const said = (of: (one: Shown) => boolean) =>
        Object.fromEntries(other.map((one) => [WORDS[one], of(one) ? 'shown' : 'not shown']))
      return {
        also: Object.fromEntries(other.map((one) => [one, asked[one]])),
        record: { before: said((one) => on(day, one)), after: said((one) => asked[one] === true) },
        save: async () => ({ scoreVersion: day.boardVersion }),
      }
    },
    now,
  )
  if (!changed.ok) return changed
  live().announce(dayId, `${changed.value.version}.${changed.value.scoreVersion}`)
  return { ok: true, value: { version: changed.value.version } }
}

function on(day: DayRecord, one: Shown): boolean {
  return day[one] ?? false
}
