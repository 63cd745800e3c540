// Promise: the desk of one society finds nothing of another's day that is entered, frozen, drawn and published.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { changeDay } from '@/lib/society/change-day'
import { changeHandicap } from '@/lib/society/change-handicap'
import { deskDay } from '@/lib/society/desk-day'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps, handicapTable } from '@/lib/society/freeze-handicaps'
import { keepCourse } from '@/lib/society/keep-course'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { publishStart, renewGroupLink, startSheet } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, course, formOf, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const version = async () => (await record()).version
const form = async () => formOf(w, await record())

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  dayId = (await aDay(w, { places: 8 })).dayId
  const enter = w.people.slice(0, 4).map((personId) => ({ personId }))
  got(await enterPlayers(w.actor, { dayId, version: await version(), enter }))
  got(await freezeHandicaps(w.actor, { dayId, version: await version() }))
  got(await makeDraw(w.actor, { dayId, version: await version(), way: 'random', groupSize: 4, seed: 7 }))
  got(await publishStart(w.actor, { dayId, version: await version() }))
})
afterAll(() => close())

describe('another society', () => {
  it('finds nothing of this one, whatever it asks for', async () => {
    const other = await world('elsewhere')
    const seen = await version()
    const answers = [
      await enterPlayers(other.actor, { dayId, version: seen, enter: [] }),
      await enterGuest(other.actor, {
        dayId,
        version: seen,
        hostId: asId(w.people[0]!),
        firstName: 'A',
        familyName: 'B',
        gender: 'men',
        claimedTenths: 1,
      }),
      await freezeHandicaps(other.actor, { dayId, version: seen }),
      await handicapTable(other.actor, dayId),
      await makeDraw(other.actor, { dayId, version: seen, way: 'random', groupSize: 4, seed: 1 }),
      await arrangeGroups(other.actor, { dayId, version: seen, groups: [] }),
      await publishStart(other.actor, { dayId, version: seen }),
      await startSheet(other.actor, dayId),
      await renewGroupLink(other.actor, { dayId, groupId: (await record()).groups[0]!.id }),
      await changeDay(other.actor, { dayId, version: seen, day: await form() }),
      await changeHandicap(other.actor, {
        personId: asId(w.people[0]!),
        indexTenths: 1,
        source: 'society',
        from: '2026-01-01',
        reason: 'none of theirs',
      }),
      await keepCourse(other.actor, { ...course('Mine'), courseId: w.courseId, version: 1 }),
      await callDay(other.actor, { ...(await form()), seasonId: w.seasonId }),
      await proposeDay(other.actor, w.seasonId),
      await deskDay(other.actor, 'spring-cup-2031'),
    ]
    expect(answers.map((answer) => (answer.ok ? 'ok' : answer.code))).toEqual(answers.map(() => 'not-found'))
    expect(await version()).toBe(seen)
  })
})
