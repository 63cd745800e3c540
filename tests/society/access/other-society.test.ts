// Promise: whatever a use case is told the number or the address of, another society's secretary is refused it. Those that
// change something are walked form by form over HTTP; the readings are tried here; a use case in neither fails the test.

import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Actor } from '@/lib/facts/actor'
import type { DayId } from '@/lib/facts/ids'
import type { Result } from '@/lib/result'
import { proposeDay } from '@/lib/society/call-day'
import { dayPlace } from '@/lib/society/day-place'
import { deskDay } from '@/lib/society/desk-day'
import { deskMatches } from '@/lib/society/desk-matches'
import { dayFileOf } from '@/lib/society/export-day'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { courseById } from '@/lib/society/keep-course'
import { nextSheet } from '@/lib/society/next-sheet'
import { onCourse } from '@/lib/society/on-the-course'
import { startSheet } from '@/lib/society/publish-start'
import { memberHistory } from '@/lib/society/read-member'
import { returns } from '@/lib/society/returns'
import { toldMeanwhile } from '@/lib/society/told-meanwhile'
import { sources } from '../../architecture/imports'
import { ownBook } from '../../setup/copy'
import { aDay, type World, world } from '../setup/world'

interface Known extends World {
  readonly dayId: DayId
  readonly slug: string
}
const READINGS: Readonly<Record<string, (actor: Actor, of: Known) => Promise<Result<unknown>>>> = {
  proposeDay: (actor, of) => proposeDay(actor, of.seasonId),
  deskDay: (actor, of) => deskDay(actor, of.slug),
  deskMatches: (actor, of) => deskMatches(actor, of.slug),
  dayFileOf: (actor, of) => dayFileOf(actor, of.dayId),
  handicapTable: (actor, of) => handicapTable(actor, of.dayId),
  courseById: (actor, of) => courseById(actor, of.courseId),
  onCourse: (actor, of) => onCourse(actor, of.slug),
  startSheet: (actor, of) => startSheet(actor, of.dayId),
  returns: (actor, of) => returns(actor, of.dayId),
  dayPlace: (actor, of) => dayPlace(actor, of.slug),
  nextSheet: (actor, of) => nextSheet(actor, of.dayId),
  memberHistory: (actor, of) => memberHistory(actor, of.people[0]!),
}

/** Why they are not in the table. */
const OTHERWISE: Readonly<Record<string, string>> = {
  toldMeanwhile: 'tells nothing instead of refusing: below',
  daysToCount: 'takes a day that was read for the asker, and looks for others of the same society',
  groupKeysFor: 'takes a day that was read for the asker',
  deliverFacts: 'cards of others: tests/safety/acts-over-http.spec.ts',
  memberList: 'takes no number of anything',
  ownDataFile: 'takes no number of anything',
  readRecord: 'narrows the record of the society that asks',
  exportRecord: 'narrows the record of the society that asks',
  notePhone: 'notes the phone that asks',
  watchPlay: 'watches the group of the link that asks',
  watchCards: 'watches the group of the link that asks',
  servedPack: 'serves the group of the link that asks',
}

let close: () => Promise<void>
let here: Known
let there: World
beforeAll(async () => {
  close = (await ownBook()).close
  const own = await world('fernbrake')
  here = { ...own, ...(await aDay(own)) }
  there = await world('wetherlam')
})
afterAll(() => close())

it.each(Object.keys(READINGS))('%s answers its own society and no other', async (name) => {
  const reading = READINGS[name]!
  expect(await reading(here.actor, here)).toMatchObject({ ok: true })
  const theirs = await reading(there.actor, here)
  expect(theirs).toMatchObject({ ok: false, code: expect.stringMatching(/^(not-found|no-such-[a-z]+)$/) })
  expect(JSON.stringify(theirs)).not.toMatch(/Society fernbrake|Spring Cup|Aldermoss/)
})

it('what changed meanwhile is told to nobody of another society', async () => {
  const since = { subjectId: here.dayId, version: -1 }
  expect(JSON.stringify(await toldMeanwhile(here.actor, since))).toContain('Petra Ashgill')
  expect(JSON.stringify(await toldMeanwhile(there.actor, since))).not.toContain('Petra Ashgill')
})

it('every use case that is told of something is tried here or walked over HTTP', () => {
  const walked = new Set(
    sources('app')
      .map((path) => readFileSync(path, 'utf8'))
      .filter((text) => text.startsWith("'use server'") || text.includes("\n'use server'"))
      .flatMap((text) => [...text.matchAll(/import \{([^}]*)\} from '@\/lib\/society\//g)])
      .flatMap(([, names = '']) => names.split(',').map((name) => name.trim().split(' as ')[0])),
  )
  const told = sources('lib/society').flatMap((path) =>
    [
      ...readFileSync(path, 'utf8').matchAll(
        /^export (?:async )?(?:function |const )(\w+)(?:<[^(]*>)?(?: = (?:async )?)?\(\s*actor: Actor,\s*(?!now\b|act: Act)[\w{]/gm,
      ),
    ].map(([, name = '']) => name),
  )
  expect(told.length).toBeGreaterThan(50)
  expect(told.filter((name) => !walked.has(name) && !(name in READINGS) && !(name in OTHERWISE))).toEqual([])
  expect([...Object.keys(READINGS), ...Object.keys(OTHERWISE)].filter((name) => !told.includes(name))).toEqual([])
})
