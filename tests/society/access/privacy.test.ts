// Promise: whoever leaves is shown as the society chose, on boards, cards and sheets that were frozen before, and no
// figure of a sheet changes; details go when their time is over; a member sees and takes away everything; of another
// society nothing is found.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { KeepPerson } from '@/lib/facts/commands'
import type { DayId, PersonId } from '@/lib/facts/ids'
import { settingsIn } from '@/lib/facts/society-settings'
import { closeDay } from '@/lib/society/close-day'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { keepPerson } from '@/lib/society/keep-person'
import { carryOutRetention, keepPrivacy, privacyNotice, privacySettings } from '@/lib/society/keep-privacy'
import { erasePerson, leaveSociety } from '@/lib/society/leave-society'
import { makeDraw } from '@/lib/society/make-draw'
import { askForCorrection, correctOwnDetails, ownData, ownDataFile } from '@/lib/society/own-data'
import { endPageKey, renewPageKey } from '@/lib/society/page-key'
import { publishResult } from '@/lib/society/publish-result'
import { publicStartSheet, publishStart } from '@/lib/society/publish-start'
import { dayBoard, fixtures, resultSheet } from '@/lib/society/read-board'
import { playerCard } from '@/lib/society/read-card'
import { readRecord } from '@/lib/society/read-record'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { takeCardIn } from '@/lib/society/take-card-in'
import { memberOf } from '@/lib/society/who-is-asking'
import type { Book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { dayVersionOf } from '@/lib/store/day-versions'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, DAY, got, type World, world } from '../setup/world'

let close: () => Promise<void>
let book: Book
let w: World
let far: World
let day: { dayId: DayId; slug: string }

const jago = () => ({ kind: 'member' as const, societyId: w.actor.societyId, personId: w.people[2]! })
const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId: day.dayId }))!
const EMAIL = 'jago.trevennor@example.org'

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
  far = await world('copsewood')
  day = await aDay(w)
  const { dayId } = day
  await book.person.update({ where: { id: asId(w.people[2]!) }, data: { email: EMAIL, phone: '01632 960 123' } })
  got(await enterPlayers(w.actor, { dayId, version: 1, enter: w.people.slice(1, 4).map((personId) => ({ personId })) }))
  const guest = { hostId: w.people[2]!, firstName: 'Rolf', familyName: 'Grindale', gender: 'men' as const }
  got(await enterGuest(w.actor, { dayId, version: 2, ...guest, claimedTenths: 173 }))
  got(await freezeHandicaps(w.actor, { dayId, version: 3 }))
  got(await makeDraw(w.actor, { dayId, version: 4, way: 'entry-order', groupSize: 4, seed: 1 }))
  got(await publishStart(w.actor, { dayId, version: 5 }))
  for (const card of (await record()).cards) {
    const scores = Array.from({ length: 18 }, (_, hole) => 4 + ((hole + card.entryId.charCodeAt(0)) % 3))
    got(await keyCard(w.actor, { dayId, cardId: card.id, scores, signed: { player: true, marker: true } }))
    if (card.entryId === (await record()).entries.find((one) => one.personId === w.people[2])!.id)
      got(await ruleOnCard(w.actor, { dayId, cardId: card.id, kind: 'card-stands', reason: 'Trevennor asked' }))
    got(await takeCardIn(w.actor, { dayId, cardId: card.id }))
  }
  got(await closeDay(w.actor, { dayId, version: 6 }))
  got(await publishResult(w.actor, { dayId, version: 7 }))
})
afterAll(() => close())

const everything = async () => {
  const entry = (await record()).entries.find((one) => one.personId === w.people[2])!
  const public_ = {
    board: got(await dayBoard('fernbrake', day.slug)),
    sheet: got(await resultSheet('fernbrake', day.slug)),
    start: got(await publicStartSheet('fernbrake', day.slug, new Date('2031-06-14T09:00:00Z'))),
    card: got(await playerCard('fernbrake', day.slug, entry.id)),
    fixtures: got(await fixtures('fernbrake')),
  }
  return JSON.stringify(public_)
}
const figures = (text: string) => text.replace(/"[^"]*"/g, '""')

describe('leaving', () => {
  it('shows the leaver by initials everywhere, sheets of before too, and changes no figure', async () => {
    const before = await everything()
    const kept = await book.publication.findFirstOrThrow({ where: { dayId: day.dayId } })
    expect(before).toContain('Jago Trevennor')
    got(await keepPrivacy(w.actor, { ...got(await privacySettings(w.actor)), leaversShownAs: 'initials' }))
    expect(got(await leaveSociety(jago(), {}))).toEqual({ shownAs: 'initials' })
    const after = await everything()
    expect(after.match(/.{40}Trevennor.{20}/g)).toBeNull()
    expect(after.includes('Jago')).toBe(false)
    expect(after).toContain('J. T.')
    expect(after).toContain('guest of J. T.')
    // Word for word the same sheet but for the name, also at the end of a sentence, where its full stop is enough.
    const sheet = (text: string) => JSON.stringify((JSON.parse(text) as { sheet: unknown }).sheet)
    const renamed = sheet(before).replaceAll(/(?:Jago )?Trevennor\.?/g, 'J. T.')
    expect(sheet(after) === renamed).toBe(true)
    expect(figures(after).length).toBeGreaterThan(1000)
    expect((await book.publication.findFirstOrThrow({ where: { dayId: day.dayId } })).sheet).toBe(kept.sheet)
    expect((await record()).entries.some((one) => one.familyName === 'Trevennor')).toBe(true)
  })

  it('twice is refused, and asking for less than the society shows is granted', async () => {
    expect(await leaveSociety(jago(), {})).toMatchObject({ code: 'left-already' })
    const emrys = { ...jago(), personId: w.people[1]! }
    expect(got(await leaveSociety(emrys, { shownAs: 'name' })).shownAs).toBe('initials')
    const una = { ...jago(), personId: w.people[3]! }
    expect(got(await leaveSociety(una, { shownAs: 'former-member' })).shownAs).toBe('former-member')
    const after = await everything()
    for (const name of ['Coldbrook', 'Emrys', 'Tarrablane']) expect(after.includes(name), name).toBe(false)
    expect(after).toContain('Former member')
  })

  it('a junior is shown by initials until the society chooses otherwise', async () => {
    const { id, gender, kind, handicapSource } = await book.person.findFirstOrThrow({
      where: { familyName: 'Grindale' },
    })
    const version = await dayVersionOf(day.dayId)
    const rolf = {
      personId: asId<PersonId>(id),
      firstName: 'Rolf',
      familyName: 'Grindale',
      gender,
      kind,
      handicapSource,
    }
    got(await keepPerson(w.actor, { ...rolf, junior: true, indexTenths: null } as KeepPerson))
    // The day is closed and gets no score: its version has moved all the same, for whoever watches it or asks again.
    expect(await dayVersionOf(day.dayId)).not.toBe(version)
    expect((await everything()).includes('Grindale')).toBe(false)
    const chosen = { ...got(await privacySettings(w.actor)), juniorsShownAs: 'name' }
    got(await keepPrivacy(w.actor, chosen))
    expect((await everything()).includes('Grindale')).toBe(true)
  })

  it('a name that is corrected is on every board at once, and a changed telephone number moves none', async () => {
    const { id, gender, kind, handicapSource } = await book.person.findFirstOrThrow({
      where: { familyName: 'Grindale' },
    })
    const rolf = { personId: asId<PersonId>(id), firstName: 'Rolf', gender, kind, handicapSource, indexTenths: null }
    got(await keepPerson(w.actor, { ...rolf, familyName: 'Grindale-Moss', junior: true } as KeepPerson))
    expect(JSON.stringify(got(await dayBoard('fernbrake', day.slug)))).toContain('Rolf Grindale-Moss')
    const version = await dayVersionOf(day.dayId)
    await book.person.update({ where: { id: asId(id) }, data: { phone: '01632 960 777' } })
    expect(await dayVersionOf(day.dayId)).toBe(version)
    got(await keepPerson(w.actor, { ...rolf, familyName: 'Grindale', junior: true } as KeepPerson))
  })

  it('a guest’s claimed handicap is on the start sheet of the day and gone the day after', async () => {
    const figureOn = async (date: string) =>
      got(await publicStartSheet('fernbrake', day.slug, new Date(`${date}T09:00:00Z`)))
        .groups.flatMap((group) => group.players)
        .find((player) => player.name === 'Rolf Grindale')?.figure
    expect(await figureOn(DAY)).toContain('17.3')
    expect(await figureOn('2031-06-16')).toBe('–')
  })
})

describe('what is held about me', () => {
  it('is told whole: contact, figures, days, every score and what was done', async () => {
    const text = JSON.stringify(got(await ownData(jago())).parts)
    for (const held of [EMAIL, '01632 960 123', '20.7', 'Spring Cup', 'Written on the card', 'Trevennor asked'])
      expect(text).toContain(held)
    expect(text).toContain('carried out a leaving')
    const csv = got(await ownDataFile(jago(), 'csv')).text
    expect(csv.split('\r\n').length).toBeGreaterThan(15)
    expect(JSON.parse(got(await ownDataFile(jago(), 'json')).text)).toMatchObject({ name: 'Jago Trevennor' })
  })

  it('is corrected by the member, or asked for; the record tells that and not what', async () => {
    got(await correctOwnDetails(jago(), { email: 'new.address@example.org', phone: null }))
    got(
      await askForCorrection(jago(), {
        what: 'The figure of 2030 is not mine. Write to me@example.org, 01632 960 999',
      }),
    )
    const lines = got(await readRecord(w.actor, { act: 'correct-own-details' })).lines
    expect(lines).toHaveLength(2)
    expect(lines[0]).toMatchObject({ who: 'Jago Trevennor', subject: 'Jago Trevennor' })
    const whole = JSON.stringify(await book.actRecord.findMany())
    for (const secret of ['new.address', 'me@example.org', EMAIL, '960 123', '960 999'])
      expect(whole).not.toContain(secret)
  })
})

describe('the link of the own page', () => {
  it('is renewed by desk and member, ended by the desk; the old one has ended', async () => {
    const { pageKey } = await book.person.findUniqueOrThrow({ where: { id: asId(w.people[4]!) } })
    const freya = { ...jago(), personId: w.people[4]! }
    expect((await memberOf(pageKey)).ok).toBe(true)
    const first = got(await renewPageKey(w.actor, { personId: asId(freya.personId) }))
      .path.split('/')
      .at(-1)!
    expect(await memberOf(pageKey)).toMatchObject({ code: 'no-such-page', sentence: expect.stringContaining('ended') })
    const second = got(await renewPageKey(freya, { personId: freya.personId }))
      .path.split('/')
      .at(-1)!
    expect((await memberOf(first)).ok).toBe(false)
    expect(await renewPageKey(freya, { personId: w.people[1]! })).toMatchObject({ code: 'not-found' })
    got(await endPageKey(w.actor, { personId: asId(freya.personId) }))
    expect((await memberOf(second)).ok).toBe(false)
    const ended = await book.person.findUniqueOrThrow({ where: { id: asId(w.people[4]!) } })
    expect((await memberOf(ended.pageKey)).ok).toBe(false)
    expect(JSON.stringify(await book.actRecord.findMany())).not.toContain(second)
  })
})

describe('retention', () => {
  it('takes out what ran out, society by society, once, and says so as the server', async () => {
    expect((await book.person.findUniqueOrThrow({ where: { id: asId(w.people[2]!) } })).email).not.toBeNull()
    expect(await carryOutRetention()).toEqual({ takenOut: 0 })
    const later = new Date(Date.now() + 366 * 86_400_000)
    // Three leavers lose their page, one of them the contact details too.
    expect(await carryOutRetention(later)).toEqual({ takenOut: 4 })
    expect((await book.person.findUniqueOrThrow({ where: { id: asId(w.people[2]!) } })).email).toBeNull()
    expect(await carryOutRetention(later)).toEqual({ takenOut: 0 })
    const acts = await book.actRecord.findMany({ where: { act: 'carry-out-retention' } })
    expect(acts.map((one) => [one.actorKind, one.societyId])).toEqual([['server', w.actor.societyId]])
  })

  it('at the desk takes one person’s details out at once', async () => {
    const personId = w.people[5]!
    await book.person.update({
      where: { id: asId(personId) },
      data: { email: 'magnus@example.org', labels: '["senior"]' },
    })
    got(await erasePerson(w.actor, { personId: asId(personId), shownAs: 'former-member' }))
    const gone = await book.person.findUniqueOrThrow({ where: { id: asId(personId) } })
    expect([gone.email, gone.phone, gone.labels, gone.shownAs]).toEqual([null, null, '[]', 'former-member'])
    expect(gone.erasedAt).not.toBeNull()
  })

  it('is read out of whatever an older edition kept', () => {
    expect(settingsIn('{}').retention.leaversContact).toBe(365)
    expect(settingsIn('{"retention":{"leaversContact":-4}}').retention.leaversContact).toBe(365)
  })

  it('stands in the notice', async () => {
    expect(got(await privacyNotice('fernbrake')).settings.leaversShownAs).toBe('initials')
    expect(await privacyNotice('nowhere')).toMatchObject({ code: 'no-such-society' })
  })
})

describe('another society', () => {
  it('finds nobody', async () => {
    const personId = w.people[6]!
    const none = { code: 'not-found' }
    expect(await renewPageKey(far.actor, { personId: asId(personId) })).toMatchObject(none)
    expect(await endPageKey(far.actor, { personId: asId(personId) })).toMatchObject(none)
    expect(await erasePerson(far.actor, { personId: asId(personId), shownAs: 'initials' })).toMatchObject(none)
    const stranger = { kind: 'member' as const, societyId: far.actor.societyId, personId }
    expect(await ownData(stranger)).toMatchObject(none)
    expect(await correctOwnDetails(stranger, { email: null, phone: null })).toMatchObject(none)
    expect(await askForCorrection(stranger, { what: 'something is wrong' })).toMatchObject(none)
    expect(await leaveSociety(stranger, {})).toMatchObject(none)
    expect(JSON.stringify(got(await readRecord(far.actor, {})))).not.toContain('Spring Cup')
  })
})

describe('two desks at one person', () => {
  const wilf = { firstName: 'Wilf', familyName: 'Thackerstone', gender: 'men' as const, kind: 'member' as const }
  const was = {
    ...wilf,
    regular: true,
    email: null,
    phone: null,
    handicapSource: 'home-club' as const,
    memberSince: null,
    leftOn: null,
    junior: false,
  }
  it('keep what each of them changed, and the later one is told where both wrote', async () => {
    const personId = w.people[6]!
    const form = { ...was, personId, indexTenths: null, was }
    got(await keepPerson(w.actor, { ...form, phone: '01632 960 777' }))
    got(await keepPerson(w.actor, { ...form, email: 'wilf@example.org' }))
    const both = await book.person.findUniqueOrThrow({ where: { id: asId(personId) } })
    expect([both.phone, both.email]).toEqual(['01632 960 777', 'wilf@example.org'])
    const clash = await keepPerson(w.actor, { ...form, phone: '01632 960 888' })
    expect(clash).toMatchObject({
      code: 'person-moved-on',
      faults: [{ place: 'phone', sentence: 'Telephone reads 01632 960 777 now.' }],
    })
    got(await keepPerson(w.actor, { ...form, phone: '01632 960 888', overrule: ['phone'] }))
    const last = await book.person.findUniqueOrThrow({ where: { id: asId(personId) } })
    expect([last.phone, last.email]).toEqual(['01632 960 888', 'wilf@example.org'])
  })
})
