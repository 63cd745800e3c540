// Promise: what a guest left in the book goes when the guest has been away for as long as the society said, and not before:
// whoever played last month keeps e-mail, telephone and name, however long ago the book first had them.

import { afterAll, beforeAll, expect, it } from 'vitest'
import type { DayId, PersonId } from '@/lib/facts/ids'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { keepPerson } from '@/lib/society/keep-person'
import { book } from '@/lib/store/client'
import { takeOutWhatRanOut } from '@/lib/store/privacy'
import { write } from '@/lib/store/write'
import { ownBook } from '../setup/copy'
import { aDay, got, type World, world } from '../society/setup/world'

let close: () => Promise<void>
let w: World
const LONG_AGO = new Date('2019-04-01T10:00:00Z')
const CUT = '2026-05-30'

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  const days = new Map<string, DayId>()
  for (const date of ['2024-06-01', '2026-05-29', CUT, '2026-10-30']) {
    const { dayId } = await aDay(w, { name: `Day of ${date}`, entriesCloseOn: null })
    got(await enterPlayers(w.actor, { dayId, version: 1, enter: [{ personId: w.people[2]! }] }))
    await book().day.update({ where: { id: dayId }, data: { date } })
    days.set(date, dayId)
  }
  for (const [familyName, dates] of [
    ['Lastmonth', ['2026-10-30']],
    ['Both', ['2024-06-01', '2026-10-30']],
    ['Thatday', [CUT]],
    ['Daybefore', ['2026-05-29']],
    ['Longgone', ['2024-06-01']],
  ] as const) {
    let personId: PersonId | undefined
    for (const date of dates) {
      const dayId = days.get(date)!
      const { version } = await book().day.findUniqueOrThrow({ where: { id: dayId } })
      const typed = { firstName: 'Rolf', familyName, gender: 'men' as const, claimedTenths: 173, hostId: w.people[2]! }
      const who = personId === undefined ? typed : { ...typed, namesake: 'same' as const }
      got(await enterGuest(w.actor, { dayId, version, ...who }))
      personId = (await book().person.findFirstOrThrow({ where: { familyName } })).id
    }
  }
  for (const familyName of ['Neverlong', 'Neverlately'])
    got(
      await keepPerson(w.actor, {
        firstName: 'Rolf',
        familyName,
        gender: 'men',
        kind: 'guest',
        handicapSource: 'claimed',
        indexTenths: 173,
      }),
    )
  await book().person.updateMany({
    where: { kind: 'guest' },
    data: { email: 'guest@example.org', phone: '01632 960 123', createdAt: LONG_AGO },
  })
  await book().person.updateMany({
    where: { familyName: 'Neverlately' },
    data: { createdAt: new Date('2026-10-30T10:00:00Z') },
  })
}, 240_000)
afterAll(() => close())

it('takes out contact and name of guests who have not played since, and of nobody else', async () => {
  const before = { leaversContact: CUT, guestsContact: CUT, guestsNames: CUT, leaversPage: CUT }
  const done = await write((tx) => takeOutWhatRanOut(tx, w.actor.societyId, before, new Date('2026-11-30T03:00:00Z')))
  expect(done).toEqual({ leaversContact: 0, guestsContact: 3, guestsNames: 3, leaversPage: 0 })
  const guests = await book().person.findMany({ where: { kind: 'guest' }, orderBy: { familyName: 'asc' } })
  expect(guests.map((one) => [one.familyName, one.email, one.phone, one.shownAs])).toEqual([
    ['Both', 'guest@example.org', '01632 960 123', 'name'],
    ['Daybefore', null, null, 'initials'],
    ['Lastmonth', 'guest@example.org', '01632 960 123', 'name'],
    ['Longgone', null, null, 'initials'],
    ['Neverlately', 'guest@example.org', '01632 960 123', 'name'],
    ['Neverlong', null, null, 'initials'],
    ['Thatday', 'guest@example.org', '01632 960 123', 'name'],
  ])
  const members = await book().person.findMany({ where: { kind: 'member', societyId: w.actor.societyId } })
  expect(members.every((one) => one.erasedAt === null && one.shownAs === 'name')).toBe(true)
})
