// Promise: until the start sheet is out, frozen handicaps can be unfrozen as a whole or frozen again for some players, with a
// reason and a line in the record; once it is out they stand, in the code and in the database.

import { afterAll, beforeAll, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { changeHandicap } from '@/lib/society/change-handicap'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps, handicapTable } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { refreezeHandicaps, unfreezeHandicaps } from '@/lib/society/refreeze-handicaps'
import { book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  dayId = (await aDay(w)).dayId
  got(await enterPlayers(w.actor, { ...(await at()), enter: w.people.slice(0, 6).map((personId) => ({ personId })) }))
  got(await freezeHandicaps(w.actor, await at()))
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const at = async () => ({ dayId, version: (await record()).version })
const figures = async () => got(await handicapTable(w.actor, dayId)).rows.map((row) => [row.name, row.index])
const lastAct = () => book().actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })

const correct = async (person: number, indexTenths: number) => {
  const from = new Date().toISOString().slice(0, 10)
  const reason = 'A card was missing'
  got(await changeHandicap(w.actor, { personId: w.people[person]!, indexTenths, source: 'home-club', from, reason }))
}

it('freezes two again and leaves the others as they were', async () => {
  await correct(1, 190)
  await correct(2, 199)
  await correct(3, 260)
  const before = await figures()
  expect(before).toContainEqual(['Emrys Coldbrook', '18.4'])
  const two = (await record()).entries.filter((entry) => [w.people[1], w.people[2]].includes(entry.personId))
  const reason = 'Corrected by the home clubs'
  const done = got(await refreezeHandicaps(w.actor, { ...(await at()), entryIds: two.map((one) => one.id), reason }))
  expect([...done.players].sort((a, b) => (a.name < b.name ? -1 : 1))).toEqual([
    { name: 'Emrys Coldbrook', was: '18.4', is: '19.0' },
    { name: 'Jago Trevennor', was: '20.7', is: '19.9' },
  ])
  const after = await figures()
  expect(after).toContainEqual(['Una Tarrablane', '24.7'])
  expect(after.filter((row, n) => row[1] !== before[n]?.[1])).toHaveLength(2)
  const day = await record()
  expect(day.entries.every((entry) => entry.frozen)).toBe(true)
  expect(await book().playingHandicap.count()).toBe(6 * day.competitions.length)
  const act = await lastAct()
  expect(act).toMatchObject({ act: 'refreeze-handicaps', area: 'handicaps' })
  expect(JSON.parse(act.before!)).toMatchObject({ 'Jago Trevennor': '20.7' })
  expect(JSON.parse(act.after!)).toMatchObject({ 'Jago Trevennor': '19.9', Reason: reason })
})

it('unfreezes them all, and freezes them anew off the handicaps of that moment', async () => {
  got(await unfreezeHandicaps(w.actor, { ...(await at()), reason: 'Frozen a week too early' }))
  expect(await record()).toMatchObject({ status: 'called', frozenAt: null })
  expect((await record()).entries.some((entry) => entry.frozen)).toBe(false)
  expect(await unfreezeHandicaps(w.actor, { ...(await at()), reason: 'Twice' })).toMatchObject({ code: 'not-frozen' })
  expect(JSON.parse((await lastAct()).after!)).toMatchObject({ Reason: 'Frozen a week too early' })
  got(await freezeHandicaps(w.actor, await at()))
  expect(await figures()).toContainEqual(['Una Tarrablane', '26.0'])
})

it('is over once the start sheet is out: the way is a ruling, and the database refuses too', async () => {
  got(await makeDraw(w.actor, { ...(await at()), way: 'entry-order', groupSize: 3, seed: 1 }))
  got(await publishStart(w.actor, await at()))
  const entry = (await record()).entries[0]!
  const again = await refreezeHandicaps(w.actor, { ...(await at()), entryIds: [entry.id], reason: 'A slip' })
  expect(again).toMatchObject({ code: 'start-published' })
  if (!again.ok) expect(again.sentence).toContain('ruling of the committee')
  expect(await unfreezeHandicaps(w.actor, { ...(await at()), reason: 'A slip' })).toMatchObject({
    code: 'start-published',
  })
  const none = { indexTenths: null, courseNumerator: null, courseDenominator: null, courseHandicap: null }
  await expect(book().entry.update({ where: { id: entry.id }, data: none })).rejects.toThrow()
  await expect(book().entry.update({ where: { id: entry.id }, data: { indexTenths: 1 } })).rejects.toThrow()
})
