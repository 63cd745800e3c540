// Fixes everybody's figure, course handicap and playing handicaps for the day. A later change alters nothing here.

import type { z } from 'zod'
import { frozenWords } from '@/lib/boards/acts-in-words'
import { fieldSizeNotes } from '@/lib/boards/field-size'
import { figuresOf, handicapTableOf } from '@/lib/boards/handicap-table'
import type { HandicapTable } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import { freezeHandicaps as schema } from '@/lib/facts/commands'
import type { DayId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { changeOfDay, type DayRefusals } from './day-change'
import { deskOnly, notFound } from './desk-only'
import { freezeLate } from './entry-list'
import { parseInput } from './parse-input'

type Refusals = 'frozen-already' | 'no-entries' | 'no-figure' | 'field-size'

export async function freezeHandicaps(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ version: number; frozen: number }, DayRefusals | Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  return changeOfDay<{ frozen: number }, Refusals>(
    actor,
    'freeze-handicaps',
    read.value,
    async (day) => {
      if (day.status !== 'called') return refused('frozen-already', 'The handicaps of this day are frozen already.')
      const entered = day.entries.filter((entry) => entry.status === 'entered')
      if (entered.length === 0) return refused('no-entries', 'Nobody is entered yet: there is nothing to freeze.')
      const table = handicapTableOf(day)
      const { missing } = table
      if (missing.length > 0)
        return refused(
          'no-figure',
          `${missing.length === 1 ? `${missing[0]!.name} has` : `${missing.length} players have`} no handicap yet. Write it under Handicaps, or withdraw the player.`,
          missing.map(({ entryId, name }) => ({ place: `entry ${entryId}`, sentence: `${name} has no handicap yet.` })),
        )
      const notes = fieldSizeNotes(day)
      const seen = read.value.fieldSizeSeen ?? entered.length
      if (notes.length > 0 && seen !== entered.length)
        return refused(
          'field-size',
          'The allowance was chosen for a field of another size. Change it first, or freeze as it is.',
          notes.map((sentence) => ({ place: 'allowance', sentence })),
        )
      const frozen = figuresOf(day).size
      return {
        also: { status: 'frozen', frozenAt: now },
        record: { area: 'handicaps', after: frozenWords(table) },
        save: async (tx) => {
          await freezeLate(tx, { ...day, status: 'frozen' })
          return { frozen }
        },
      }
    },
    now,
  )
}

export async function handicapTable(
  actor: Actor,
  dayId: DayId,
): Promise<Result<HandicapTable, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const day = await readDayRecord({ societyId: officer.value.societyId, dayId })
  return day ? ok(handicapTableOf(day)) : notFound('day')
}
