// Promise: a day that was called can be entered, frozen, drawn and published at the desk, in that order and no other; what is
// frozen stays; of two desks that save at once one is told.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId, EntryId, PersonId } from '@/lib/facts/ids'
import { shownDraw } from '@/lib/facts/shown-draw'
import { arrangeSides } from '@/lib/society/arrange-sides'
import { changeDay } from '@/lib/society/change-day'
import { changeHandicap } from '@/lib/society/change-handicap'
import { deskDay, deskHome } from '@/lib/society/desk-day'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps, handicapTable } from '@/lib/society/freeze-handicaps'
import { keepCourse } from '@/lib/society/keep-course'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { publicStartSheet, publishStart, renewGroupLink, startSheet } from '@/lib/society/publish-start'
import { groupLinkOfCode, scorerOf } from '@/lib/society/who-is-asking'
import type { Book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, course, DAY, formOf, got, type World, world } from './world'

let close: () => Promise<void>
let book: Book
let w: World
let dayId: DayId

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
  dayId = (await aDay(w, { places: 8 })).dayId
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const version = async () => (await record()).version

const entryOf = async (personId: PersonId) => (await record()).entries.find((entry) => entry.personId === personId)!.id

const form = async (over: object = {}) => formOf(w, await record(), over)

describe('entering', () => {
  it('enters members, each on the tee of the gender', async () => {
    const entered = got(
      await enterPlayers(w.actor, {
        dayId,
        version: await version(),
        enter: w.people.slice(0, 6).map((personId) => ({ personId })),
      }),
    )
    expect(entered.waiting).toEqual([])
    const day = await record()
    expect(day.entries).toHaveLength(6)
    expect(
      day.entries.every((entry) => day.tees.find((tee) => tee.id === entry.roundTeeId)?.gender === entry.gender),
    ).toBe(true)
  })

  it('enters a guest with a host and refuses one whose host does not play', async () => {
    const guest = { firstName: 'Sorley', familyName: 'Maddock', gender: 'men' as const, claimedTenths: 110 }
    const noHost = await enterGuest(w.actor, { dayId, version: await version(), hostId: asId(w.people[7]!), ...guest })
    expect(noHost).toMatchObject({ ok: false, code: 'no-host' })
    const entered = got(
      await enterGuest(w.actor, { dayId, version: await version(), hostId: asId(w.people[5]!), ...guest }),
    )
    expect(entered.waiting).toEqual([])
    const asked = await enterGuest(w.actor, { dayId, version: await version(), hostId: w.people[5]!, ...guest })
    expect(asked).toMatchObject({ ok: false, code: 'same-name' })
    const again = await enterGuest(w.actor, {
      dayId,
      version: await version(),
      hostId: w.people[5]!,
      namesake: 'same',
      ...guest,
    })
    expect(again).toMatchObject({ ok: false, code: 'entered-already' })
    expect((await record()).entries.find((entry) => entry.kind === 'guest')).toMatchObject({
      hostName: 'Storrey',
      indexTenths: 110,
      handicapSource: 'claimed',
    })
  })

  it('puts the ninth on the waiting list and moves them up when somebody withdraws', async () => {
    const rest = got(
      await enterPlayers(w.actor, {
        dayId,
        version: await version(),
        enter: w.people.slice(6).map((personId) => ({ personId })),
      }),
    )
    expect(rest.waiting).toEqual(['Petra Ashgill'])
    const out = got(
      await enterPlayers(w.actor, {
        dayId,
        version: await version(),
        enter: [],
        withdraw: [await entryOf(w.people[0]!)],
      }),
    )
    expect(out.movedUp).toEqual(['Petra Ashgill'])
    const back = got(
      await enterPlayers(w.actor, { dayId, version: await version(), enter: [{ personId: asId(w.people[0]!) }] }),
    )
    expect(back.waiting).toEqual(['Corin Haldane'])
  })

  it('tells the second of two desks that the day moved on, and changes nothing', async () => {
    const seen = await version()
    const [first, second] = [await entryOf(w.people[1]!), await entryOf(w.people[2]!)]
    const [one, two] = await Promise.all([
      enterPlayers(w.actor, { dayId, version: seen, enter: [], withdraw: [first] }),
      enterPlayers(w.actor, { dayId, version: seen, enter: [], withdraw: [second] }),
    ])
    expect([one.ok, two.ok].filter(Boolean)).toHaveLength(1)
    const refusal = one.ok ? two : one
    expect(refusal).toMatchObject({ ok: false, code: 'day-moved-on' })
    const day = await record()
    expect(day.version).toBe(seen + 1)
    const withdrawn = one.ok ? w.people[1]! : w.people[2]!
    got(await enterPlayers(w.actor, { dayId, version: day.version, enter: [{ personId: asId(withdrawn) }] }))
  })
})

describe('the freeze', () => {
  it('waits for a figure that is missing, and names who has none', async () => {
    const { personId } = got(
      await keepPerson(w.actor, {
        firstName: 'New',
        familyName: 'Comer',
        gender: 'men',
        kind: 'member',
        handicapSource: 'society',
        indexTenths: null,
      }),
    )
    got(await changeDay(w.actor, { dayId, version: await version(), day: await form({ places: 12 }) }))
    got(await enterPlayers(w.actor, { dayId, version: await version(), enter: [{ personId }] }))
    const early = await freezeHandicaps(w.actor, { dayId, version: await version() })
    expect(early).toMatchObject({ ok: false, code: 'no-figure', sentence: expect.stringContaining('New Comer') })
    expect(got(await handicapTable(w.actor, dayId)).missing.map((one) => one.name)).toEqual(['New Comer'])
    got(
      await enterPlayers(w.actor, { dayId, version: await version(), enter: [], withdraw: [await entryOf(personId)] }),
    )
  })

  it('stores index, unrounded course handicap and playing handicaps as the table shows them', async () => {
    const { frozen } = got(await freezeHandicaps(w.actor, { dayId, version: await version() }))
    expect(frozen).toBe(9)
    const table = got(await handicapTable(w.actor, dayId))
    expect(table.frozen).toBe(true)
    const trevennor = table.rows.find((row) => row.name === 'Jago Trevennor')
    expect(trevennor).toMatchObject({ index: '20.7', unrounded: '20.098', courseHandicap: 20 })
    const stored = await book.entry.findMany({ where: { dayId, status: 'entered' }, include: { playing: true } })
    for (const entry of stored) {
      const row = table.rows.find((one) => one.entryId === entry.id)!
      expect(entry.courseHandicap).toBe(row.courseHandicap)
      for (const { competitionId, playingHandicap } of row.playing)
        expect(entry.playing.find((one) => one.competitionId === competitionId)?.playingHandicap).toBe(playingHandicap)
    }
  })

  it('is untouched by a later change of a figure, and happens once', async () => {
    const before = got(await handicapTable(w.actor, dayId))
    got(
      await changeHandicap(w.actor, {
        personId: asId(w.people[2]!),
        indexTenths: 187,
        source: 'society',
        from: new Date().toISOString().slice(0, 10),
        reason: 'won twice',
      }),
    )
    expect(got(await handicapTable(w.actor, dayId)).rows.map((row) => row.index)).toEqual(
      before.rows.map((row) => row.index),
    )
    expect(await freezeHandicaps(w.actor, { dayId, version: await version() })).toMatchObject({
      code: 'frozen-already',
    })
  })

  it('holds course, tees and terms; names, times and prizes may still change', async () => {
    const { courseId } = got(await keepCourse(w.actor, course('Skerrowby Links')))
    const other = got(await import('@/lib/society/keep-course').then((part) => part.courseById(w.actor, courseId)))
    const moved = await changeDay(w.actor, {
      dayId,
      version: await version(),
      day: await form({ courseId, teeMen: other.tees[0]!.teeId, teeWomen: other.tees[1]!.teeId }),
    })
    expect(moved).toMatchObject({ ok: false, code: 'frozen' })
    const now = await form()
    const terms = await changeDay(w.actor, {
      dayId,
      version: await version(),
      day: {
        ...now,
        competitions: now.competitions.map((one) => ({ ...one, terms: { ...one.terms, allowance: 100 } })),
      },
    })
    expect(terms).toMatchObject({ ok: false, code: 'frozen' })
    got(
      await changeDay(w.actor, {
        dayId,
        version: await version(),
        day: { ...now, name: 'Spring Cup again', firstTee: '11:00' },
      }),
    )
    expect((await record()).name).toBe('Spring Cup again')
    expect((await record()).round.firstTee).toBe('11:00')
  })
})

describe('the draw and the start sheet', () => {
  it('draws threes for nine where sizes are to be even, guest with host, and pairs inside the groups', async () => {
    const early = await publishStart(w.actor, { dayId, version: await version() })
    expect(early).toMatchObject({ code: 'no-groups' })
    got(
      await makeDraw(w.actor, {
        dayId,
        version: await version(),
        way: 'random',
        groupSize: 4,
        seed: 7,
        evenSizes: true,
      }),
    )
    const day = await record()
    expect(day.groups.map((group) => group.entryIds.length)).toEqual([3, 3, 3])
    expect(day.groups.map((group) => group.startTime)).toEqual(['11:00', '11:11', '11:22'])
    const guest = day.entries.find((entry) => entry.kind === 'guest')!
    const host = day.entries.find((entry) => entry.personId === guest.hostId)!
    const together = day.groups.find((group) => group.entryIds.includes(guest.id))!
    expect(together.entryIds).toContain(host.id)
    const pairs = day.competitions.find((one) => one.name === 'Pairs')!
    expect(pairs.sides).toHaveLength(3)
    expect(pairs.sides.some((side) => side.entryIds.includes(guest.id) && side.entryIds.includes(host.id))).toBe(true)
  })

  it('the same lot draws the same groups; sides chosen by hand stay when the groups do', async () => {
    const first = (await record()).groups.map((group) => group.entryIds)
    got(
      await makeDraw(w.actor, {
        dayId,
        version: await version(),
        way: 'random',
        groupSize: 4,
        seed: 7,
        evenSizes: true,
      }),
    )
    expect((await record()).groups.map((group) => group.entryIds)).toEqual(first)
    const day = await record()
    const pairs = day.competitions.find((one) => one.name === 'Pairs')!
    const [a, b, c] = day.groups[0]!.entryIds
    const sides = [
      [a!, c!],
      ...pairs.sides
        .map((side) => side.entryIds)
        .filter((ids) => !ids.includes(a!) && !ids.includes(b!) && !ids.includes(c!)),
    ]
    got(
      await arrangeSides(w.actor, {
        dayId,
        version: day.version,
        competitionId: pairs.id,
        sides: sides.map((side) => [...side]),
      }),
    )
    got(
      await arrangeGroups(w.actor, {
        dayId,
        version: await version(),
        groups: (await record()).groups.map((group) => ({ entryIds: [...group.entryIds] })),
      }),
    )
    const after = (await record()).competitions.find((one) => one.name === 'Pairs')!
    expect(after.sides.some((side) => side.entryIds.includes(a!) && side.entryIds.includes(c!))).toBe(true)
    const twice = await arrangeGroups(w.actor, {
      dayId,
      version: await version(),
      groups: [{ entryIds: [a!, a!] }],
    })
    expect(twice).toMatchObject({ ok: false, code: 'not-understood', faults: [{ place: 'groups[0].entryIds[1]' }] })
  })

  it('makes the pairs of two groups anew when players changed places between them', async () => {
    const before = (await record()).groups.map((group) => [...group.entryIds])
    const swapped = before.map((ids) => [...ids])
    swapped[0]![0] = before[1]![0]!
    swapped[1]![0] = before[0]![0]!
    const arrange = async (groups: readonly EntryId[][]) =>
      got(
        await arrangeGroups(w.actor, {
          dayId,
          version: await version(),
          groups: groups.map((entryIds) => ({ entryIds: [...entryIds] })),
        }),
      )
    await arrange(swapped)
    const { sides } = (await record()).competitions.find((one) => one.name === 'Pairs')!
    expect(sides.filter((side) => !swapped.some((ids) => side.entryIds.every((id) => ids.includes(id))))).toEqual([])
    await arrange(before)
  })

  it('publishes cards, codes and links, once; the public sheet has no codes', async () => {
    expect(await publicStartSheet('fernbrake', 'spring-cup-2031')).toMatchObject({ ok: false, code: 'not-published' })
    const { linkKey } = (await record()).groups[0]!
    expect(await scorerOf(linkKey)).toMatchObject({ ok: false, code: 'no-such-link' })
    const saved = shownDraw((await record()).groups)
    const [first = '', ...others] = saved.split(';')
    const moved = [...others, first].join(';')
    expect(await publishStart(w.actor, { dayId, version: await version(), draw: moved })).toMatchObject({
      code: 'draw-not-as-shown',
    })
    expect((await record()).startPublishedAt).toBeNull()
    const { cards } = got(await publishStart(w.actor, { dayId, version: await version(), draw: saved }))
    expect(cards).toBe(9)
    const day = await record()
    expect(day.cards).toHaveLength(9)
    for (const card of day.cards) {
      const group = day.groups.find((one) => one.entryIds.includes(card.entryId))!
      expect(card.markerId).not.toBe(card.entryId)
      expect(group.entryIds).toContain(card.markerId)
    }
    expect(await publishStart(w.actor, { dayId, version: await version() })).toMatchObject({
      code: 'published-already',
    })
    const desk = got(await startSheet(w.actor, dayId))
    expect(
      desk.groups.every((group) => /^[a-z]+ \d{6}$/.test(group.code ?? '') && (group.link?.length ?? 0) > 30),
    ).toBe(true)
    const open = got(await publicStartSheet('fernbrake', 'spring-cup-2031'))
    expect(open.groups.every((group) => group.code === null && group.link === null)).toBe(true)
    expect(open.groups[0]!.players[0]!.marker).toBe(desk.groups[0]!.players[1]!.name)
  })

  it('lets the group in by link and by code however it is typed, until the end of the day after', async () => {
    const group = (await record()).groups[0]!
    const before = new Date(`${DAY}T10:00:00Z`)
    expect(await scorerOf(group.linkKey, before)).toMatchObject({ ok: true, value: { groupId: group.id, dayId } })
    const [word, figures] = group.code.split(' ')
    for (const typed of [group.code, `${word}${figures}`, ` ${word?.toUpperCase()}-${figures} `])
      expect(await groupLinkOfCode(typed, 'phone', before)).toMatchObject({
        ok: true,
        value: { linkKey: group.linkKey },
      })
    expect(await scorerOf(group.linkKey, new Date('2031-06-16T12:00:00Z'))).toMatchObject({ code: 'link-ended' })
    expect(await groupLinkOfCode('fern 0000', 'phone', before)).toMatchObject({ code: 'no-such-code' })
    for (let turn = 0; turn < 30; turn++) await groupLinkOfCode('fern 0000', 'guesser', before)
    expect(await groupLinkOfCode(group.code, 'guesser', before)).toMatchObject({ code: 'too-many-tries' })
  })

  it('renews a link that went astray: the old one leads nowhere', async () => {
    const group = (await record()).groups[1]!
    const fresh = got(await renewGroupLink(w.actor, { dayId, groupId: group.id }))
    const before = new Date(`${DAY}T10:00:00Z`)
    expect(await scorerOf(group.linkKey, before)).toMatchObject({ ok: false })
    expect(await scorerOf(fresh.linkKey, before)).toMatchObject({ ok: true })
    expect(await groupLinkOfCode(group.code, 'another phone', before)).toMatchObject({ code: 'no-such-code' })
  })

  it('keeps codes and cards when a player moves, and takes out the card of one who withdraws', async () => {
    const day = await record()
    const [first, second, third] = day.groups
    const moved = first!.entryIds.at(-1)!
    got(
      await arrangeGroups(w.actor, {
        dayId,
        version: day.version,
        groups: [
          { entryIds: first!.entryIds.slice(0, -1) },
          { entryIds: [...second!.entryIds, moved] },
          { entryIds: [...third!.entryIds] },
        ],
      }),
    )
    const after = await record()
    expect(after.groups.map((group) => group.code)).toEqual(day.groups.map((group) => group.code))
    expect(after.cards).toHaveLength(9)
    const markerOf = (entryId: EntryId) => after.cards.find((card) => card.entryId === entryId)?.markerId
    expect(after.groups[1]!.entryIds).toContain(markerOf(moved))
    const leaver = after.entries.find((entry) => entry.id === moved)!
    got(
      await enterPlayers(w.actor, {
        dayId,
        version: after.version,
        enter: [],
        withdraw: [await entryOf(leaver.personId)],
      }),
    )
    const last = await record()
    expect(last.cards.some((card) => card.entryId === moved)).toBe(false)
    expect(last.cards.every((card) => card.markerId !== moved && card.markerId !== null)).toBe(true)
  })
})

describe('the desk', () => {
  it('says what is due and counts', async () => {
    const day = got(await deskDay(w.actor, 'spring-cup-2031', new Date(`${DAY}T08:00:00Z`)))
    expect(day.daysToGo).toBe(0)
    expect(day.counts).toMatchObject({ guests: 1, waiting: 0, cardsIn: 0, ungrouped: 0 })
    expect(day.due.find((one) => one.state === 'next')?.what).toBe('first-tee')
    expect(day.due.filter((one) => one.state === 'done').map((one) => one.what)).toEqual([
      'call',
      'close-entries',
      'freeze',
      'draw',
      'publish-start',
    ])
    expect(day.tees).toBe('Men from Yellow, par 72, 69.2 and 125. Women from Red, par 73, 70.9 and 125.')
    const home = got(await deskHome(w.actor))
    expect(home.seasons[0]!.fixtures.map((one) => one.number)).toEqual([1])
    expect(got(await memberList(w.actor)).filter((one) => one.kind === 'member')).toHaveLength(9)
  })
})
