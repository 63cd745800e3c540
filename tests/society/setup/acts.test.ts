// Promise: every duty may do what the table of acts says and nothing else, whatever use case it asks; and a doubled
// request at the desk does its work once.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Actor, DUTIES, type Duty } from '@/lib/facts/actor'
import type { DayId } from '@/lib/facts/ids'
import type { Result } from '@/lib/result'
import { ACTS, type Act, mayNot } from '@/lib/society/acts'
import { arrangePairings } from '@/lib/society/arrange-pairings'
import { arrangeSides, makeSides } from '@/lib/society/arrange-sides'
import { arrangeTeams, makeTeams } from '@/lib/society/arrange-teams'
import { callAgain } from '@/lib/society/call-again'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { changeDay } from '@/lib/society/change-day'
import { changeHandicap } from '@/lib/society/change-handicap'
import { countDays } from '@/lib/society/count-days'
import { deskDay, deskHome } from '@/lib/society/desk-day'
import { endMatch } from '@/lib/society/end-match'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps, handicapTable } from '@/lib/society/freeze-handicaps'
import { giveDuty } from '@/lib/society/give-duty'
import { importCourse, previewCourse } from '@/lib/society/import-course'
import { importMembers, previewMembers } from '@/lib/society/import-members'
import { courseById, courseList, keepCourse } from '@/lib/society/keep-course'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { openSeason, seasonList } from '@/lib/society/open-season'
import { publishStart, renewGroupLink, startSheet } from '@/lib/society/publish-start'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, course, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  dayId = (await aDay(w)).dayId
})
afterAll(() => close())

function actorWith(duty: Duty): Actor {
  const { societyId, userId, name } = w.actor
  switch (duty) {
    case 'member':
      return { kind: 'member', societyId, personId: asId(w.people[0]!) }
    case 'scorer':
      return { kind: 'scorer', societyId, dayId, groupId: asId('none') }
    case 'guest':
    case 'anybody':
      return { kind: 'anybody' }
    default:
      return { kind: 'officer', societyId, userId, name, duties: [duty] }
  }
}

const nothing = { fileName: 'x.csv', bytes: new Uint8Array(), digest: '' }

/** Every use case of the desk's setting-up with the act it stands under; the inputs are refused or change nothing. */
const CALLS: readonly (readonly [string, Act, (actor: Actor) => Promise<Result<unknown>>])[] = [
  ['giveDuty', 'give-duty', (a) => giveDuty(a, { name: '', email: '', duty: 'treasurer' })],
  ['openSeason', 'open-season', (a) => openSeason(a, { name: '', startsOn: '', endsOn: '' })],
  ['seasonList', 'read-desk', (a) => seasonList(a)],
  ['keepCourse', 'keep-course', (a) => keepCourse(a, { ...course(), tees: [] })],
  ['courseList', 'read-desk', (a) => courseList(a)],
  ['courseById', 'read-desk', (a) => courseById(a, asId('none'))],
  ['previewCourse', 'keep-course', (a) => previewCourse(a, nothing)],
  ['importCourse', 'keep-course', (a) => importCourse(a, nothing)],
  [
    'keepPerson',
    'keep-people',
    (a) =>
      keepPerson(a, {
        firstName: '',
        familyName: '',
        gender: 'men',
        kind: 'member',
        handicapSource: 'society',
        indexTenths: null,
      }),
  ],
  ['memberList', 'read-desk', (a) => memberList(a)],
  ['previewMembers', 'keep-people', (a) => previewMembers(a, nothing)],
  ['importMembers', 'keep-people', (a) => importMembers(a, nothing)],
  [
    'changeHandicap',
    'change-handicap',
    (a) =>
      changeHandicap(a, {
        personId: asId('none'),
        indexTenths: 1,
        source: 'society',
        from: '2026-01-01',
        reason: 'none',
      }),
  ],
  ['proposeDay', 'call-day', (a) => proposeDay(a, asId('none'))],
  [
    'callDay',
    'call-day',
    async (a) => callDay(a, { ...got(await proposeDay(w.actor, w.seasonId)), seasonId: asId('none') }),
  ],
  [
    'changeDay',
    'change-day',
    async (a) => changeDay(a, { dayId: asId('none'), version: 1, day: got(await proposeDay(w.actor, w.seasonId)) }),
  ],
  ['enterPlayers', 'enter-player', (a) => enterPlayers(a, { dayId: asId('none'), version: 1, enter: [] })],
  [
    'enterGuest',
    'enter-player',
    (a) =>
      enterGuest(a, {
        dayId: asId('none'),
        version: 1,
        hostId: asId('none'),
        firstName: 'A',
        familyName: 'B',
        gender: 'men',
        claimedTenths: 1,
      }),
  ],
  ['freezeHandicaps', 'freeze-handicaps', (a) => freezeHandicaps(a, { dayId: asId('none'), version: 1 })],
  ['handicapTable', 'read-desk', (a) => handicapTable(a, asId('none'))],
  [
    'makeDraw',
    'make-draw',
    (a) => makeDraw(a, { dayId: asId('none'), version: 1, way: 'random', groupSize: 4, seed: 1 }),
  ],
  ['arrangeGroups', 'make-draw', (a) => arrangeGroups(a, { dayId: asId('none'), version: 1, groups: [] })],
  [
    'arrangeSides',
    'arrange-sides',
    (a) => arrangeSides(a, { dayId: asId('none'), version: 1, competitionId: asId('none'), sides: [] }),
  ],
  ['makeSides', 'arrange-sides', (a) => makeSides(a, { ...noDay, competitionId: asId('none'), seed: 1 })],
  [
    'arrangePairings',
    'arrange-pairings',
    (a) => arrangePairings(a, { ...noDay, competitionId: asId('none'), pairings: [] }),
  ],
  ['arrangeTeams', 'arrange-teams', (a) => arrangeTeams(a, { ...noDay, teams: [] })],
  ['makeTeams', 'arrange-teams', (a) => makeTeams(a, { ...noDay, names: ['A', 'B'], seed: 1 })],
  [
    'endMatch',
    'end-match',
    (a) => endMatch(a, { ...noDay, competitionId: asId('none'), matchId: asId('none'), ending: {} }),
  ],
  ['countDays', 'change-day', (a) => countDays(a, { ...noDay, competitionId: asId('none'), dayIds: [] })],
  [
    'callAgain',
    'call-day',
    (a) =>
      callAgain(a, { ...noDay, name: 'B', date: '2031-06-15', firstTee: '10:00', courseId: asId('none'), holes: 18 }),
  ],
  ['publishStart', 'publish-start', (a) => publishStart(a, { dayId: asId('none'), version: 1 })],
  ['renewGroupLink', 'renew-group-link', (a) => renewGroupLink(a, { dayId: asId('none'), groupId: asId('none') })],
  ['startSheet', 'read-desk', (a) => startSheet(a, asId('none'))],
  ['deskDay', 'read-desk', (a) => deskDay(a, 'none')],
  ['deskHome', 'read-desk', (a) => deskHome(a)],
]

const noDay = { dayId: asId<DayId>('none'), version: 1 }

describe('the table of acts', () => {
  it('is asked for every act and every duty', () => {
    for (const act of Object.keys(ACTS) as Act[])
      for (const duty of DUTIES) {
        if (duty === 'guest') continue
        const allowed = (ACTS[act] as readonly Duty[]).includes(duty)
        expect(mayNot(actorWith(duty), act) === null, `${duty} ${act}`).toBe(allowed)
      }
  })

  it.each(CALLS)('%s stands under %s for every duty', async (_, act, call) => {
    for (const duty of DUTIES) {
      if (duty === 'guest') continue
      const answer = await call(actorWith(duty))
      const allowed = (ACTS[act] as readonly Duty[]).includes(duty)
      if (allowed) expect(answer.ok || answer.code !== 'not-allowed', duty).toBe(true)
      else expect(answer, duty).toMatchObject({ ok: false, code: 'not-allowed' })
    }
  })
})

describe('a doubled request', () => {
  it('is done once: the second is told that the day moved on', async () => {
    const enter = w.people.map((personId) => ({ personId }))
    const both = await Promise.all([
      enterPlayers(w.actor, { dayId, version: 1, enter }),
      enterPlayers(w.actor, { dayId, version: 1, enter }),
    ])
    expect(both.filter((one) => one.ok)).toHaveLength(1)
    expect(both.find((one) => !one.ok)).toMatchObject({ code: 'day-moved-on' })
    const freeze = await Promise.all([1, 2, 3].map(() => freezeHandicaps(w.actor, { dayId, version: 2 })))
    expect(freeze.filter((one) => one.ok)).toHaveLength(1)
    got(await makeDraw(w.actor, { dayId, version: 3, way: 'random', groupSize: 4, seed: 1 }))
    const publish = await Promise.all([1, 2, 3].map(() => publishStart(w.actor, { dayId, version: 4 })))
    expect(publish.filter((one) => one.ok)).toHaveLength(1)
    expect(got(await startSheet(w.actor, dayId)).groups.flatMap((group) => group.players)).toHaveLength(8)
  })
})
