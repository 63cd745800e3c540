// A season: a name, its first and its last day. Days are called into it.

import type { SeasonRow } from '@/lib/boards/desk-views'
import type { Actor } from '@/lib/facts/actor'
import { isDate } from '@/lib/facts/calendar'
import { type OpenSeason, openSeason as schema } from '@/lib/facts/commands'
import type { SeasonId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { insertSeason, seasonsOf } from '@/lib/store/seasons'
import { write } from '@/lib/store/write'
import { deskOnly } from './desk-only'
import { notUnderstood, parseInput } from './parse-input'

export async function openSeason(
  actor: Actor,
  input: OpenSeason,
  now: Date = new Date(),
): Promise<Result<{ seasonId: SeasonId }, 'not-allowed' | 'not-understood' | 'season-exists'>> {
  const officer = deskOnly(actor, 'open-season')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const season = read.value
  if (!isDate(season.startsOn)) return notUnderstood([{ place: 'startsOn', sentence: 'The calendar has no such day.' }])
  if (!isDate(season.endsOn)) return notUnderstood([{ place: 'endsOn', sentence: 'The calendar has no such day.' }])
  if (season.endsOn < season.startsOn)
    return notUnderstood([{ place: 'endsOn', sentence: 'The season ends before it begins.' }])
  const seasonId = await write(async (tx) => {
    const id = await insertSeason(tx, officer.value.societyId, season)
    const after = { From: season.startsOn, Until: season.endsOn }
    if (id !== null)
      await recordAct(tx, actor, { act: 'open-season', area: 'book', subject: season.name, subjectId: id, after }, now)
    return id
  })
  if (seasonId === null)
    return refused('season-exists', `There is a season ${season.name} already. Give this one another name.`)
  return ok({ seasonId })
}

/** Newest first. */
export async function seasonList(actor: Actor): Promise<Result<readonly SeasonRow[], 'not-allowed'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  return ok(await seasonsOf(officer.value.societyId))
}
