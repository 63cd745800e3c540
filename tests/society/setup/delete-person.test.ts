// Promise: a member or guest entered by mistake can be deleted, with the one handicap given at the start; whoever is named
// by a day, a duty or a second handicap stays, and the refusal says why. The database itself keeps every other handicap.

import { afterAll, beforeAll, expect, it } from 'vitest'
import type { PersonId } from '@/lib/facts/ids'
import { changeHandicap } from '@/lib/society/change-handicap'
import { deletePerson } from '@/lib/society/delete-person'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import type { Book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let book: Book
let w: World
let mistake: PersonId

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
  mistake = await added('Twice')
})
afterAll(() => close())

async function added(familyName: string) {
  const person = { firstName: 'Typed', familyName, gender: 'men', kind: 'member', handicapSource: 'society' } as const
  return got(await keepPerson(w.actor, { ...person, indexTenths: 180 })).personId
}

const names = async () => got(await memberList(w.actor)).map((one) => one.familyName)

it('deletes somebody nothing refers to, with the first handicap, and says so in the record', async () => {
  expect(got(await deletePerson(w.actor, { personId: mistake }))).toEqual({ name: 'Typed Twice' })
  expect(await names()).not.toContain('Twice')
  expect(await book.handicapRecord.count({ where: { personId: mistake } })).toBe(0)
  expect(await book.actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })).toMatchObject({
    act: 'delete-person',
    subject: 'Typed Twice',
    subjectId: mistake,
  })
  expect(await deletePerson(w.actor, { personId: mistake })).toMatchObject({ code: 'not-found' })
})

it('keeps whoever was entered, even when withdrawn since, and whoever brought a guest', async () => {
  const { dayId } = await aDay(w)
  const host = w.people[0]!
  const { version } = got(await enterPlayers(w.actor, { dayId, version: 1, enter: [{ personId: host }] }))
  const guest = { firstName: 'Gus', familyName: 'Teasdale', gender: 'men', claimedTenths: 200 } as const
  const brought = got(await enterGuest(w.actor, { dayId, version, hostId: host, ...guest }))
  const { entries } = await book.day.findUniqueOrThrow({ where: { id: dayId }, select: { entries: true } })
  const all = entries.map((entry) => entry.id)
  got(await enterPlayers(w.actor, { dayId, version: brought.version, enter: [], withdraw: all }))
  const refused = await deletePerson(w.actor, { personId: host })
  expect(refused).toMatchObject({ ok: false, code: 'person-in-use' })
  if (!refused.ok)
    expect(refused.faults.map((one) => one.sentence)).toEqual([
      'Entered on Spring Cup, withdrawn or not.',
      'Host of a guest on Spring Cup.',
    ])
  expect(await names()).toContain('Haldane')
})

it('keeps whoever has a second handicap, in the database too', async () => {
  const personId = await added('Changed')
  const today = new Date().toISOString().slice(0, 10)
  got(
    await changeHandicap(w.actor, {
      personId,
      indexTenths: 170,
      source: 'society',
      from: today,
      reason: 'played well',
    }),
  )
  const refused = await deletePerson(w.actor, { personId })
  expect(refused).toMatchObject({ code: 'person-in-use', faults: [{ place: 'handicaps' }] })
  await expect(book.handicapRecord.deleteMany({ where: { personId } })).rejects.toThrow()
  await expect(book.handicapRecord.deleteMany({ where: { personId: w.people[0]! } })).rejects.toThrow()
  expect(await book.handicapRecord.count({ where: { personId: { in: [personId, w.people[0]!] } } })).toBe(3)
})

it('is for the secretary and the captain, and never reaches another society', async () => {
  const personId = await added('Stays')
  const other = await world('other')
  const treasurer = { ...w.actor, duties: ['treasurer' as const] }
  expect(await deletePerson(treasurer, { personId })).toMatchObject({ code: 'not-allowed' })
  expect(await deletePerson(other.actor, { personId })).toMatchObject({ code: 'not-found' })
})
