// The desk's own view: the society with its seasons, and a day with what is due.

import type { DeskDay, DeskHome, Due } from '@/lib/boards/desk-views'
import { formatIn } from '@/lib/boards/format-of-competition'
import { countsOf, teesInWords, whatIsDue } from '@/lib/boards/what-is-due'
import type { Actor } from '@/lib/facts/actor'
import { ballClashes } from '@/lib/facts/balls-on-a-card'
import { dateIn, daysBetween } from '@/lib/facts/calendar'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId, SocietyId } from '@/lib/facts/ids'
import { ok, type Result } from '@/lib/result'
import { intervalCaution } from '@/lib/rules/draw/interval'
import { reading } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { dayExtras } from '@/lib/store/day-setup'
import { slugOfSociety, societyAtDesk } from '@/lib/store/desk'
import { today, zoneOfInstallation } from '@/lib/store/settings'
import { isAhead } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { groupKeysFor, withoutKeys } from './keys-for-duty'

type Refusals = 'not-allowed' | 'not-found'

export async function deskDay(
  actor: Actor,
  daySlug: string,
  now: Date = new Date(),
): Promise<Result<DeskDay, Refusals>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const societySlug = await slugOfSociety(officer.value.societyId)
  // An act's address comes back from the browser: a missing one would mean any day to the database.
  const isAddress = societySlug !== null && typeof daySlug === 'string'
  const record = !isAddress ? null : await readDayRecord({ societySlug, daySlug })
  if (!record) return notFound('day')
  const extras = await dayExtras(reading(), record.id)
  const todayIs = today(now)
  const counts = countsOf(record, extras.places)
  return ok({
    record: withoutKeys(record),
    groupKeys: groupKeysFor(actor, record),
    today: todayIs,
    isAhead: isAhead(record, now),
    daysToGo: daysBetween(todayIs, record.date),
    places: extras.places,
    due: whatIsDue(record, counts, dateIn(extras.createdAt, zoneOfInstallation()), todayIs),
    counts,
    draw: extras.drawnAt && extras.drawWay ? { at: extras.drawnAt, way: extras.drawWay, seed: extras.drawSeed } : null,
    tees: teesInWords(record),
    cautions: cautionsOf(record),
  })
}

function cautionsOf(record: DayRecord): readonly string[] {
  return [...clashesOf(record), ...intervalCautions(record)]
}

/** Of a day that was called before own balls and one ball were kept apart. */
function clashesOf(record: DayRecord): readonly string[] {
  if (record.status === 'closed') return []
  return ballClashes(record.competitions.map((one) => ({ name: one.name, format: formatIn(one) }))).map(
    ({ sentence }) => sentence,
  )
}

function intervalCautions(record: DayRecord): readonly string[] {
  // Once the sheet is out the times are known to everybody: there is nothing left to advise.
  if (record.startPublishedAt !== null || record.status === 'closed') return []
  if (record.round.startKind === 'shotgun' || record.groups.length === 0) return []
  const largest = Math.max(...record.groups.map((group) => group.entryIds.length))
  const caution = intervalCaution(largest, record.round.intervalMinutes)
  return caution ? [caution] : []
}

/** The society's seasons with their days; for each day that still has something to do, the next thing. */
export async function deskHome(actor: Actor, now: Date = new Date()): Promise<Result<DeskHome, Refusals>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const { societyId } = officer.value
  const society = await societyAtDesk(societyId)
  if (!society) return notFound('society')
  const todayIs = today(now)
  const seasons = []
  for (const { days, ...season } of society.seasons) {
    const fixtures = []
    for (const day of days) {
      const done = day.calledOff !== null || (day.published !== null && daysBetween(day.date, todayIs) > 7)
      fixtures.push({ ...day, next: done ? null : await nextOf(societyId, day.dayId, todayIs) })
    }
    seasons.push({ ...season, days: days.length, fixtures })
  }
  return ok({
    societyName: society.name,
    societySlug: society.slug,
    isDemo: society.isDemo,
    today: todayIs,
    members: society.members,
    courses: society.courses,
    seasons,
  })
}

async function nextOf(societyId: SocietyId, dayId: DayId, todayIs: string): Promise<Due | null> {
  const record = await readDayRecord({ societyId, dayId })
  if (!record) return null
  const extras = await dayExtras(reading(), dayId)
  const called = dateIn(extras.createdAt, zoneOfInstallation())
  const due = whatIsDue(record, countsOf(record, extras.places), called, todayIs)
  return due.find((one) => one.state === 'next') ?? null
}
