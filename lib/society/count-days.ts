// A competition over several days: the earlier days it is added up with. This day is its last round.

import { canBeAdded, countedOtherwise, termsDiffer } from '@/lib/boards/counted-terms'
import { formatIn } from '@/lib/boards/format-of-competition'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import type { DayId } from '@/lib/facts/ids'
import { type CountDays, countDays as schema } from '@/lib/facts/match-commands'
import { ok, type Result, refused } from '@/lib/result'
import { reading } from '@/lib/store/client'
import { type DayToCount, daysBefore, replaceCountedDays } from '@/lib/store/pairings'
import { readAtOnce } from '@/lib/store/write'
import { changeOfDay, type DayRefusals } from './day-change'
import { deskOnly, notFound } from './desk-only'
import { notUnderstood, parseInput } from './parse-input'

/** The engine and the day file know eight rounds a day. */
const MOST_EARLIER = 7

type Refusals = DayRefusals | 'day-closed' | 'no-sum' | 'too-many-days' | 'terms-differ'

export async function countDays(
  actor: Actor,
  input: CountDays,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { competitionId, dayIds, underTheseTerms, recount } = read.value
  return changeOfDay<object, Refusals>(
    actor,
    'change-day',
    read.value,
    async (day, { societyId }, tx) => {
      if (day.status === 'closed') return refused('day-closed', 'The day is closed: its rounds stay as they were.')
      const competition = day.competitions.find((one) => one.id === competitionId)
      if (!competition) return notFound('competition')
      if (formatIn(competition)?.isMatch)
        return refused('no-sum', `${competition.name} is played as matches: a match has one round.`)
      const before = await daysBefore(tx, societyId, day.date, day.id)
      const wanted = before.filter((one) => dayIds.includes(one.id)).reverse()
      const faults = dayIds.flatMap((id, at) => {
        const there = before.find((one) => one.id === id)
        const place = `dayIds[${at}]`
        if (!there) return [{ place, sentence: 'Only days up to the date of this one can be added up with it.' }]
        if (canBeAdded(competition, there) || competition.countedDayIds.includes(id)) return []
        return [{ place, sentence: `${there.name} has no cards that ${competition.name} could be counted from.` }]
      })
      if (faults.length > 0) return notUnderstood(faults)
      const others = day.competitions.filter((one) => one.id !== competitionId).flatMap((one) => one.countedDayIds)
      if (new Set([...others, ...wanted.map((one) => one.id)]).size > MOST_EARLIER)
        return refused('too-many-days', `A day is added up with ${MOST_EARLIER} earlier ones at the most.`)
      const other = wanted.flatMap((one) => {
        const sentence = competition.countedDayIds.includes(one.id) ? null : countedOtherwise(competition, one)
        return sentence ? [{ place: 'underTheseTerms', sentence }] : []
      })
      if (other.length > 0 && !underTheseTerms)
        return refused('terms-differ', `Say that it is to be counted under the terms of ${competition.name}.`, other)
      const anew = wanted.filter((one) => recount.includes(one.id) && termsDiffer(competition, one))
      const nameOf = (id: DayId) => before.find((one) => one.id === id)?.name ?? id
      return {
        record: {
          subject: `${competition.name}, ${day.name}`,
          ...changedInWords(
            {
              'Added up with': competition.countedDayIds.map(nameOf),
              'Counted anew': (competition.recountedDayIds ?? []).map(nameOf),
            },
            { 'Added up with': wanted.map((one) => one.name), 'Counted anew': anew.map((one) => one.name) },
          ),
        },
        save: async (saving) => {
          await replaceCountedDays(
            saving,
            societyId,
            competitionId,
            wanted.map((one) => one.id),
            anew.map((one) => one.id),
          )
          return {}
        },
      }
    },
    now,
  )
}

/** Days that can be chosen for it, newest first. */
export async function daysToCount(
  actor: Actor,
  day: { readonly id: DayId; readonly date: string },
): Promise<Result<readonly DayToCount[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  return ok(await readAtOnce((tx) => daysBefore(tx, officer.value.societyId, day.date, day.id), reading()))
}
