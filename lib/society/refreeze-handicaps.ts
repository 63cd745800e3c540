// Until the start sheet is out, what was frozen can be taken back: as a whole, or for some players whose handicap was
// corrected or who came late. Once the sheet is out the cards carry the strokes, and only the committee rules.

import type { z } from 'zod'
import { frozenWords } from '@/lib/boards/acts-in-words'
import { figureOf } from '@/lib/boards/figure'
import { handicapTableOf } from '@/lib/boards/handicap-table'
import type { InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { refreezeHandicaps as againSchema, unfreezeHandicaps as unfreezeSchema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { fullName } from '@/lib/facts/person-name'
import { type Refused, type Result, refused } from '@/lib/result'
import { dayRecordIn } from '@/lib/store/day-record'
import { clearFigures } from '@/lib/store/entries'
import { changeOfDay, type DayRefusals } from './day-change'
import { freezeLate } from './entry-list'
import { parseInput } from './parse-input'

type NotNow = 'not-frozen' | 'start-published'

function whyNotNow(day: DayRecord): Refused<NotNow> | null {
  if (day.status === 'called') return refused('not-frozen', 'The handicaps of this day are not frozen.')
  if (day.startPublishedAt === null && day.cards.length === 0) return null
  return refused(
    'start-published',
    'The start sheet is out and the cards carry these handicaps. A wrong one is now put right by a ruling of the committee on the card, under Returns.',
  )
}

/** Handicaps follow the members again until they are frozen anew. Entries, draw and sides stay. */
export async function unfreezeHandicaps(
  actor: Actor,
  input: z.input<typeof unfreezeSchema>,
  now: Date = new Date(),
): Promise<Result<{ version: number }, DayRefusals | NotNow>> {
  const read = parseInput(unfreezeSchema, input)
  if (!read.ok) return read
  return changeOfDay<object, NotNow>(
    actor,
    'unfreeze-handicaps',
    read.value,
    async (day) => {
      const no = whyNotNow(day)
      if (no) return no
      return {
        also: { status: 'called', frozenAt: null },
        record: {
          area: 'handicaps',
          before: frozenWords(handicapTableOf(day)),
          after: { Handicaps: 'not frozen', Reason: read.value.reason },
        },
        save: async (tx) => {
          const frozen = day.entries.filter((entry) => entry.frozen)
          await clearFigures(
            tx,
            frozen.map((entry) => entry.id),
          )
          return {}
        },
      }
    },
    now,
  )
}

export interface FrozenAgain {
  readonly name: string
  /** "24.7"; null for a player who was not frozen yet. */
  readonly was: string | null
  readonly is: string
}

/** These players alone, off the handicap they have now. */
export async function refreezeHandicaps(
  actor: Actor,
  input: z.input<typeof againSchema>,
  now: Date = new Date(),
): Promise<
  Result<{ version: number; players: readonly FrozenAgain[] }, DayRefusals | NotNow | 'not-entered' | 'no-figure'>
> {
  const read = parseInput(againSchema, input)
  if (!read.ok) return read
  const { entryIds, reason } = read.value
  return changeOfDay<{ players: readonly FrozenAgain[] }, NotNow | 'not-entered' | 'no-figure'>(
    actor,
    'refreeze-handicaps',
    read.value,
    async (day) => {
      const asked = day.entries.filter((entry) => entryIds.includes(entry.id) && entry.status === 'entered')
      if (asked.length < new Set(entryIds).size)
        return refused('not-entered', 'Somebody ticked is not entered any more. Look at the list as it is now.')
      // Who is not frozen yet has no figure on a card: that may be done on the morning of the day too.
      const no = asked.every((entry) => !entry.frozen) && day.status !== 'called' ? null : whyNotNow(day)
      if (no) return no
      const without = asked.filter((entry) => entry.presentTenths == null)
      if (without.length > 0)
        return refused(
          'no-figure',
          'A handicap is missing. Give it under Members first.',
          without.map((entry) => ({
            place: `entry ${entry.id}`,
            sentence: `${fullName(entry)} has no handicap yet.`,
          })),
        )
      return {
        record: ({ players }) => ({
          area: 'handicaps',
          before: wordsOf(players, ({ was }) => was),
          after: { ...wordsOf(players, ({ is }) => is), Reason: reason },
        }),
        save: async (tx) => {
          await clearFigures(
            tx,
            asked.filter((entry) => entry.frozen).map((entry) => entry.id),
          )
          await freezeLate(tx, day)
          const after = await dayRecordIn(tx, { societyId: day.society.id, dayId: day.id })
          return {
            players: asked.map((entry) => ({
              name: fullName(entry),
              was: entry.frozen ? figureOf(entry.indexTenths) : null,
              is: figureOf(after?.entries.find((one) => one.id === entry.id)?.indexTenths ?? null),
            })),
          }
        },
      }
    },
    now,
  )
}

const wordsOf = (players: readonly FrozenAgain[], what: (one: FrozenAgain) => string | null): InWords =>
  Object.fromEntries(players.map((one) => [one.name, what(one) ?? 'not frozen']))
