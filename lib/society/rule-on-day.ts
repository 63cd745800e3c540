// The committee rules on the day as a whole: the result of a play-off, a round abandoned, or an earlier ruling taken back.
// The terms stay frozen; what is ruled stands beside them with its reason and name.

import { boardOf } from '@/lib/boards/board'
import { dayRulingInWords } from '@/lib/boards/day-rulings'
import { namesOf } from '@/lib/boards/entrant-names'
import type { Actor } from '@/lib/facts/actor'
import { type RuleOnDay, ruleOnDay as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { type DayRuling, dayRulingsInForce } from '@/lib/facts/day-rulings'
import { type Refused, type Result, refused } from '@/lib/result'
import { hasHole, rangeInWords } from '@/lib/rules/hole-numbers'
import { addDayRuling } from '@/lib/store/day-rulings'
import { changeOfDay, type DayRefusals } from './day-change'
import { live } from './live'
import { notUnderstood, parseInput } from './parse-input'

type Refusals = DayRefusals | 'day-not-in-play' | 'no-such-ruling'

export async function ruleOnDay(
  actor: Actor,
  input: RuleOnDay,
  now: Date = new Date(),
): Promise<Result<{ version: number; number: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { ruling, reason } = read.value
  let boardVersion = 0
  const done = await changeOfDay<{ number: number }, Refusals>(
    actor,
    'rule-on-day',
    read.value,
    async (day, { userId, name }) => {
      boardVersion = day.boardVersion
      const wrong = wrongWith(day, ruling, now)
      if (wrong) return wrong
      const number = (day.dayRulings ?? []).length + 1
      const given: DayRuling = { ...ruling, number, reason, byUserId: userId, byName: name, ruledAt: now.toISOString() }
      return {
        record: {
          area: 'results',
          before: null,
          after: { [`Ruling ${number} on the day`]: dayRulingInWords(given, namesOf(day), day.round), Reason: reason },
        },
        save: async (tx) => {
          await addDayRuling(tx, day.society.id, day.id, given)
          return { number }
        },
      }
    },
    now,
  )
  if (done.ok) live().announce(read.value.dayId, `${done.value.version}.${boardVersion}`)
  return done
}

type Asked = ReturnType<typeof schema.parse>['ruling']

function wrongWith(
  day: DayRecord,
  ruling: Asked,
  now: Date,
): Refused<'not-understood' | 'day-not-in-play' | 'no-such-ruling'> | null {
  const fault = (place: string, sentence: string) => notUnderstood([{ place, sentence }])
  if (day.status === 'called')
    return refused('day-not-in-play', 'The handicaps are not frozen yet: change the day itself instead.')
  switch (ruling.kind) {
    case 'play-off': {
      const competition = day.competitions.find((one) => one.id === ruling.competitionId)
      if (!competition?.terms.ties.steps.some((step) => step.kind === 'play-off'))
        return fault('competitionId', 'The terms of this competition have no play-off among their steps.')
      const rows = boardOf(day, now).competitions.find((one) => one.id === ruling.competitionId)?.rows ?? []
      if (ruling.order.some((id) => !rows.some((row) => row.entrant === id)))
        return fault('order', 'Somebody in the play-off is not in this competition.')
      if (new Set(ruling.order).size < ruling.order.length)
        return fault('order', 'Give each player of the play-off a place of their own.')
      const scores = new Set(rows.filter((row) => ruling.order.includes(row.entrant)).map((row) => row.score))
      return scores.size > 1 ? fault('order', 'A play-off is between players who are level.') : null
    }
    case 'abandoned':
      if (ruling.afterHole !== 0 && !hasHole(day.round, ruling.afterHole))
        return fault('afterHole', `The round has ${rangeInWords(day.round)}.`)
      if (ruling.counts === 'first-holes' && ruling.afterHole === 0)
        return fault('afterHole', 'Say after which hole: those up to it count.')
      return null
    case 'taken-back':
      return dayRulingsInForce(day.dayRulings ?? []).some((one) => one.number === ruling.replaces)
        ? null
        : refused('no-such-ruling', `Ruling ${ruling.replaces} on the day is not in force. Look at the list again.`)
  }
}
