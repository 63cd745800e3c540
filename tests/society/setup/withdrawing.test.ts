// Promise: whoever is entered can be withdrawn at any time before the day is closed, by the entry the screen shows; the
// first on the waiting list moves up, and entering again undoes it.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId, PersonId } from '@/lib/facts/ids'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  w = await world()
  dayId = (await aDay(w, { places: 7 })).dayId
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const at = async () => ({ dayId, version: (await record()).version })
const entered = async () => (await record()).entries.filter((entry) => entry.status === 'entered')
const enter = (...people: PersonId[]) => people.map((personId) => ({ personId }))

async function outAndIn() {
  const before = await entered()
  const [one] = before
  const waits = (await record()).entries.find((entry) => entry.status === 'waiting')!
  const out = got(await enterPlayers(w.actor, { ...(await at()), enter: [], withdraw: [one!.id] }))
  expect(out).toMatchObject({ withdrawn: [`${one!.firstName} ${one!.familyName}`] })
  expect(out.movedUp).toEqual([`${waits.firstName} ${waits.familyName}`])
  const day = await record()
  expect(day.groups.flatMap((group) => group.entryIds)).not.toContain(one!.id)
  expect(day.cards.map((card) => card.entryId)).not.toContain(one!.id)
  expect(day.entries.find((entry) => entry.id === one!.id)?.status).toBe('withdrawn')
  // The place went to whoever waited: entering again means waiting, until somebody else withdraws.
  const back = got(await enterPlayers(w.actor, { ...(await at()), enter: enter(one!.personId) }))
  expect(back.waiting).toEqual([`${one!.firstName} ${one!.familyName}`])
}

describe('withdrawing', () => {
  it('works before the freeze', async () => {
    got(await enterPlayers(w.actor, { ...(await at()), enter: enter(...w.people) }))
    await outAndIn()
  })

  it('works after the freeze and after the draw', async () => {
    got(await freezeHandicaps(w.actor, await at()))
    await outAndIn()
    got(await makeDraw(w.actor, { ...(await at()), way: 'entry-order', groupSize: 4, seed: 1 }))
    await outAndIn()
  })

  it('works after the start sheet is out, and every card keeps a marker', async () => {
    got(await makeDraw(w.actor, { ...(await at()), way: 'entry-order', groupSize: 4, seed: 1 }))
    got(await publishStart(w.actor, await at()))
    await outAndIn()
    expect((await record()).cards.every((card) => card.markerId !== null)).toBe(true)
  })

  it('takes no person for an entry', async () => {
    const answer = await enterPlayers(w.actor, { ...(await at()), enter: [], withdraw: [asId(w.people[0]!)] })
    expect(answer).toMatchObject({ ok: false, code: 'not-found' })
  })

  it('does not enter and withdraw one at once', async () => {
    const [one] = await entered()
    const both = await enterPlayers(w.actor, { ...(await at()), enter: enter(one!.personId), withdraw: [one!.id] })
    expect(both).toMatchObject({ ok: false, code: 'not-understood' })
  })
})
