// Promise: a father and a son of one name are both taken, after a question and with a word that tells them apart; the
// word stands wherever the name stands, and no record of an act loses one of the two.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { entryWords, groupWords } from '@/lib/boards/acts-in-words'
import { namesOf } from '@/lib/boards/entrant-names'
import { withShownNames } from '@/lib/boards/shown-names'
import type { DayId, PersonId } from '@/lib/facts/ids'
import { byName, fullName, nameKey } from '@/lib/facts/person-name'
import { enterGuest, enterKnownGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import { readRecord } from '@/lib/society/read-record'
import type { Book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let book: Book
let w: World
let dayId: DayId
let father: PersonId
let son: PersonId

const MARSH = {
  firstName: 'Peter',
  familyName: 'Marsh',
  gender: 'men',
  kind: 'member',
  handicapSource: 'society',
} as const

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
  dayId = (await aDay(w)).dayId
  father = got(await keepPerson(w.actor, { ...MARSH, indexTenths: 151 })).personId
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const at = async () => ({ dayId, version: (await record()).version })

describe('a second member of one name', () => {
  it('is asked about first, with the one who is there already', async () => {
    const asked = await keepPerson(w.actor, { ...MARSH, firstName: ' peter ', indexTenths: 240 })
    expect(asked).toMatchObject({
      ok: false,
      code: 'same-name',
      sentence: 'There is already a Peter Marsh. Is this somebody else?',
      faults: [{ place: father, sentence: 'Peter Marsh, member.' }],
    })
  })

  it('needs a word of its own once it is said to be another', async () => {
    const bare = await keepPerson(w.actor, { ...MARSH, isAnother: true, indexTenths: 240 })
    expect(bare).toMatchObject({ ok: false, code: 'told-apart', faults: [{ place: 'knownAs' }] })
    son = got(await keepPerson(w.actor, { ...MARSH, isAnother: true, knownAs: 'junior', indexTenths: 240 })).personId
    const third = await keepPerson(w.actor, { ...MARSH, isAnother: true, knownAs: 'Junior', indexTenths: null })
    expect(third).toMatchObject({ ok: false, code: 'told-apart' })
    const list = got(await memberList(w.actor))
    expect(list.filter((one) => one.familyName === 'Marsh').map(fullName)).toEqual([
      'Peter Marsh',
      'Peter Marsh (junior)',
    ])
  })

  it('can be told apart later too, without being asked again; a rename onto another name is asked about', async () => {
    got(await keepPerson(w.actor, { ...MARSH, personId: father, knownAs: 'senior', indexTenths: null }))
    const renamed = await keepPerson(w.actor, {
      ...MARSH,
      personId: w.people[0]!,
      handicapSource: 'home-club',
      indexTenths: null,
    })
    expect(renamed).toMatchObject({ ok: false, code: 'same-name' })
  })

  it('keeps the word in the database in one shape', async () => {
    const set = (word: string) => book.$executeRaw`UPDATE "Person" SET "knownAs" = ${word} WHERE "id" = ${son}`
    await expect(set(' junior')).rejects.toThrow(/CHECK/)
    await expect(set('')).rejects.toThrow(/CHECK/)
  })
})

describe('two of one name on a day', () => {
  it('are both in the record of the act that entered them', async () => {
    got(await enterPlayers(w.actor, { ...(await at()), enter: [{ personId: father }, { personId: son }] }))
    const { lines } = got(await readRecord(w.actor, {}))
    expect(lines[0]!.changes.map((change) => change.what).sort()).toEqual([
      'Peter Marsh (junior)',
      'Peter Marsh (senior)',
    ])
  })

  it('are both in it even while no word tells them apart', async () => {
    await book.person.updateMany({ where: { familyName: 'Marsh' }, data: { knownAs: null } })
    const day = await record()
    const ids = day.entries.map((entry) => entry.id)
    got(await enterPlayers(w.actor, { ...(await at()), enter: [], withdraw: ids }))
    const { lines } = got(await readRecord(w.actor, {}))
    expect(lines[0]!.changes).toHaveLength(2)
    expect(Object.keys(entryWords(day))).toEqual(['Peter Marsh', 'Peter Marsh (2)'])
    const group = { startTime: '10:00', startHole: 1, entryIds: ids }
    expect(Object.keys(groupWords(day, [group]))).toHaveLength(2)
    await book.person.update({ where: { id: father }, data: { knownAs: 'senior' } })
    await book.person.update({ where: { id: son }, data: { knownAs: 'junior' } })
  })

  it('are called apart on boards and sheets', async () => {
    const day = await record()
    const names = namesOf({ ...day, entries: day.entries.map((entry) => ({ ...entry, status: 'entered' })) })
    expect(day.entries.map((entry) => names.short(entry.id)).sort()).toEqual([
      'Peter Marsh (junior)',
      'Peter Marsh (senior)',
    ])
  })

  it('are hidden one by one: initials of the one leave the name of the other', () => {
    const hidden = {
      ...MARSH,
      knownAs: 'senior',
      as: 'initials',
      aloneInFamily: false,
      wordsOfOthers: ['junior'],
    } as const
    expect(withShownNames({ text: 'Peter Marsh (senior) beat Peter Marsh (junior)' }, [hidden]).text).toBe(
      'P. M. beat Peter Marsh (junior)',
    )
    expect(withShownNames({ text: 'Won by Peter Marsh.' }, [hidden]).text).toBe('Won by P. M.')
  })
})

describe('guests', () => {
  const guest = { firstName: 'Sorley', familyName: 'Maddock', gender: 'men', claimedTenths: 110 } as const

  it('are typed once and chosen again, with another host and without a handicap typed', async () => {
    got(await enterPlayers(w.actor, { ...(await at()), enter: [{ personId: w.people[5]! }] }))
    const hostId = w.people[5]!
    const { entryId } = got(await enterGuest(w.actor, { ...(await at()), hostId, ...guest }))
    const { personId } = (await record()).entries.find((entry) => entry.id === entryId)!
    got(await enterPlayers(w.actor, { ...(await at()), enter: [], withdraw: [entryId] }))
    const none = await enterKnownGuest(w.actor, { ...(await at()), hostId, personId, claimedTenths: null })
    expect(none).toMatchObject({ ok: false, code: 'no-figure', faults: [{ place: 'claimedTenths' }] })
    const again = await enterKnownGuest(w.actor, { ...(await at()), hostId, personId, claimedTenths: 121 })
    expect(got(again)).toMatchObject({ entryId, name: 'Sorley Maddock' })
  })

  it('added under Members are entered with the handicap of the book', async () => {
    const { personId } = got(
      await keepPerson(w.actor, {
        firstName: 'Wilf',
        familyName: 'Yardley',
        gender: 'men',
        kind: 'guest',
        handicapSource: 'claimed',
        indexTenths: 160,
      }),
    )
    got(await enterKnownGuest(w.actor, { ...(await at()), hostId: w.people[5]!, personId, claimedTenths: null }))
    expect((await record()).entries.find((entry) => entry.personId === personId)).toMatchObject({
      kind: 'guest',
      indexTenths: 160,
    })
  })

  it('of a member’s name are asked about, and may be another', async () => {
    const of = { ...guest, firstName: 'Corin', familyName: 'Haldane', hostId: w.people[5]! }
    expect(await enterGuest(w.actor, { ...(await at()), ...of })).toMatchObject({ ok: false, code: 'same-name' })
    expect(await enterGuest(w.actor, { ...(await at()), ...of, namesake: 'same' })).toMatchObject({
      ok: false,
      code: 'not-understood',
    })
    got(await enterGuest(w.actor, { ...(await at()), ...of, namesake: 'another', knownAs: 'of Leeds' }))
  })

  it('have no host until one is chosen, and a refusal in words', async () => {
    const none = await enterGuest(w.actor, { ...(await at()), ...guest, hostId: asId('') })
    expect(none).toMatchObject({ ok: false, faults: [{ place: 'hostId', sentence: 'Choose whose guest it is.' }] })
  })
})

describe('the order of names', () => {
  it('is by family name, then first name, apostrophes and accents left aside', () => {
    const people = [
      ['Ann', 'Oldroyd'],
      ['Tom', "O'Dowd"],
      ['Zoe', 'Ödell'],
      ['Bob', 'O’Dowd'],
      ['Al', 'ogden'],
    ].map(([firstName, familyName]) => ({ firstName: firstName!, familyName: familyName! }))
    expect(people.sort(byName).map((one) => one.firstName)).toEqual(['Zoe', 'Bob', 'Tom', 'Al', 'Ann'])
    expect(nameKey({ firstName: 'Tom', familyName: "O'Dowd" })).toBe(
      nameKey({ firstName: 'tom ', familyName: 'O’Dowd' }),
    )
  })
})
