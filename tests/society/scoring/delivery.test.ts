// Promise: what a phone was told is received is in the book exactly once, in the order of its numbers, and a repeat
// gets its first answer; nothing is taken from a card of another group, day or society.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { currentCard } from '@/lib/boards/current-card'
import type { EntryId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { deviceIn, phoneMark } from '@/lib/facts/writer'
import { cardPack } from '@/lib/society/card-pack'
import { deliverFacts } from '@/lib/society/enter-score'
import { notePhone } from '@/lib/society/note-phone'
import { takeCardIn } from '@/lib/society/take-card-in'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { world } from '../setup/world'
import { type DayInPlay, dayInPlay, got, over, Phone, published } from './day-in-play'

let day: DayInPlay
let a: EntryId
let b: EntryId
let c: EntryId

beforeAll(async () => {
  day = await dayInPlay()
  ;[a, b, c] = day.players(1) as [EntryId, EntryId, EntryId]
})
afterAll(() => day.close())

const now = async (entryId: EntryId) => {
  const record = await day.record()
  const card = record.cards.find((one) => one.entryId === entryId)!
  return { ...currentCard({ ...record, ...record.round, card }), state: card.state }
}
const facts = async () => (await day.record()).facts

describe('a delivery', () => {
  it('is taken whole; the first score puts the frozen day in play and moves the version by one', async () => {
    const before = await day.record()
    expect(before.status).toBe('frozen')
    const answers = await new Phone(day, 1, a).score(asId(a), 1, 5).score(asId(b), 1, 'x').score(asId(a), 1, 6).send()
    expect(answers.map((one) => one.answer)).toEqual(['received', 'received', 'received'])
    const after = await day.record()
    expect([after.status, after.scoreVersion]).toEqual(['in-play', before.scoreVersion + 1])
    expect((await now(asId(a))).scores[0]).toBe(6)
    expect((await now(asId(b))).scores[0]).toBe('x')
  })

  it('sent twice is in the book once, and is answered the same', async () => {
    const phone = new Phone(day, 1, a).score(asId(a), 2, 5).score(asId(a), 3, 4)
    const sent = [...phone.outbox]
    const first = await phone.send()
    const rows = (await facts()).length
    phone.outbox = sent
    expect(await phone.send()).toEqual(first)
    expect((await facts()).length).toBe(rows)
  })

  it('with a gap is refused with the number that is due, and nothing of it is kept', async () => {
    const phone = new Phone(day, 1, a).score(asId(a), 4, 5).score(asId(a), 5, 5).score(asId(a), 6, 5)
    const rows = (await facts()).length
    const send = (seqs: number[]) =>
      deliverFacts(day.scorer(1), {
        deviceId: phone.deviceId,
        facts: phone.outbox.filter((fact) => seqs.includes(fact.seq)),
      })
    expect(await send([2, 3])).toMatchObject({ ok: false, code: 'gap', expected: 1 })
    expect((await facts()).length).toBe(rows)
    // Up to the gap it is taken.
    expect(got(await send([1, 3]))).toMatchObject({ lastSeq: 1, answers: [{ seq: 1, answer: 'received' }] })
    expect(got(await send([1, 2, 3]))).toMatchObject({ lastSeq: 3 })
    expect((await facts()).length).toBe(rows + 3)
  })

  it('in the wrong order is put in the order of its numbers', async () => {
    const phone = new Phone(day, 1, a).score(asId(a), 7, 4).score(asId(a), 7, 5).score(asId(a), 7, 6)
    phone.outbox.reverse()
    await phone.send()
    expect((await now(asId(a))).scores[6]).toBe(6)
  })

  it('of two phones at once keeps both, each in its own order', async () => {
    const one = new Phone(day, 1, a)
    const two = new Phone(day, 1, b)
    for (let hole = 8; hole <= 18; hole++) {
      one.score(asId(a), hole, 5)
      two.score(asId(a), hole, 5)
    }
    await Promise.all([one.send(), two.send()])
    for (const phone of [one, two]) {
      const rows = (await facts()).filter((fact) => fact.deviceId.endsWith(phone.deviceId))
      expect(rows.map((fact) => fact.seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])
    }
    expect((await now(asId(a))).notAgreed).toEqual([])
  })

  it('of the same phone sent twice at once is taken once', async () => {
    const phone = new Phone(day, 1, c).score(asId(c), 1, 4).score(asId(c), 2, 6)
    const facts = [...phone.outbox]
    const send = () => deliverFacts(day.scorer(1), { deviceId: phone.deviceId, facts })
    const [first, second] = await Promise.all([send(), send()])
    expect(got(first).answers).toEqual(got(second).answers)
    expect((await day.record()).facts.filter((fact) => fact.deviceId.endsWith(phone.deviceId))).toHaveLength(2)
  })

  it('for a card of another group is refused for good, moves the number on, and is answered the same again', async () => {
    const [other] = day.players(2)
    const phone = new Phone(day, 1, a).score(asId(other!), 1, 5).score(asId(a), 1, 5)
    const sent = [...phone.outbox]
    const answers = await phone.send()
    expect(answers).toMatchObject([
      { seq: 1, answer: 'refused', code: 'card-not-in-group' },
      { seq: 2, answer: 'received' },
    ])
    phone.outbox = sent
    expect(await phone.send()).toEqual(answers)
    expect(await book().refusedFact.count()).toBe(1)
    await expect(book().refusedFact.deleteMany()).rejects.toThrow()
  })

  it('by somebody outside the group, and on a hole that is not there, is refused', async () => {
    const [other] = day.players(2)
    const phone = new Phone(day, 1, other!).score(asId(a), 1, 5)
    expect(await phone.send()).toMatchObject([{ code: 'writer-not-in-group' }])
  })

  it('that is no delivery is refused with its places, and nobody but a scorer delivers', async () => {
    expect(await deliverFacts(day.scorer(1), { deviceId: 'x', facts: [] })).toMatchObject({
      ok: false,
      code: 'not-understood',
      faults: [{ place: 'deviceId' }, { place: 'facts' }],
    })
    const phone = new Phone(day, 1, a).score(asId(a), 1, 5)
    const delivery = { deviceId: phone.deviceId, facts: phone.outbox }
    for (const actor of [day.w.actor, { kind: 'anybody' } as const])
      expect(await deliverFacts(actor, delivery)).toMatchObject({ ok: false, code: 'not-allowed' })
  })

  it('with a group of another day or society is refused', async () => {
    const other = await published(await world('hollins'), 'hollins')
    const phone = new Phone(day, 1, a).score(asId(a), 1, 5)
    const delivery = { deviceId: phone.deviceId, facts: phone.outbox }
    const crossed = { ...day.scorer(1), societyId: other.w.actor.societyId }
    expect(await deliverFacts(crossed, delivery)).toMatchObject({ ok: false, code: 'no-such-group' })
    expect(await deliverFacts({ ...day.scorer(1), dayId: other.dayId }, delivery)).toMatchObject({
      ok: false,
      code: 'no-such-group',
    })
    // The other society's own scorer cannot write on our card either.
    expect(got(await deliverFacts(other.scorer(1), delivery)).answers).toMatchObject([{ code: 'card-not-in-group' }])
    expect(await takeCardIn(other.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(a))) })).toMatchObject({
      ok: false,
      code: 'not-found',
    })
  })
})

describe('two writers on one card', () => {
  it('differ: the latest counts, the hole is flagged, and a cleared opinion is none', async () => {
    const mine = new Phone(day, 1, a).score(asId(b), 11, 5)
    const theirs = new Phone(day, 1, b).score(asId(b), 11, 6)
    await mine.send()
    await theirs.send()
    expect(await now(asId(b))).toMatchObject({ notAgreed: [11] })
    expect((await now(asId(b))).scores[10]).toBe(6)
    const pack = got(await cardPack(day.scorer(1))).cards.find((card) => card.entryId === b)!
    const on11 = (name: string) =>
      Object.entries(pack.written).flatMap(([key, column]) => (key.startsWith(`${name}~`) ? [column[10]] : []))
    const says = (name: string) => on11(name).find((score) => score !== null)
    expect([says(a), says(b)]).toEqual([5, 6])
    await mine.score(b, 11, null).send()
    expect((await now(b)).notAgreed).toEqual([])
    await theirs.score(b, 11, null).send()
    expect((await now(b)).missing).toContain(11)
  })
})

describe('two phones under one name', () => {
  const hole = 16
  const replaced = (phone: Phone, seq: number) => [
    { phone: phoneMark(deviceIn(day.scorer(1).groupId, phone.deviceId)), seq },
  ]

  it('are two writers: different scores are not agreed, and a cleared one takes only its own away', async () => {
    const one = new Phone(day, 1, c).score(b, hole, 5)
    const two = new Phone(day, 1, c).score(b, hole, 7)
    await one.send()
    await two.send()
    expect((await now(b)).notAgreed).toContain(hole)
    await one.score(b, hole, null).send()
    expect(await now(b)).toMatchObject({ notAgreed: [] })
    expect((await now(b)).scores[hole - 1]).toBe(7)
    await two.score(b, hole, null).send()
  })

  it('replace what they name and nothing that came after it', async () => {
    const old = new Phone(day, 1, c).score(b, hole, 5)
    await old.send()
    const fresh = new Phone(day, 1, c).score(b, hole, 6)
    fresh.outbox[0] = { ...fresh.outbox[0]!, replaces: replaced(old, 1) } as DeviceFact
    await fresh.send()
    expect((await now(b)).notAgreed).toEqual([])
    expect((await now(b)).scores[hole - 1]).toBe(6)
    // The old phone's late score stands beside it, and a clearing that names the earlier one leaves it alone.
    await old.score(b, hole, 8).send()
    expect((await now(b)).notAgreed).toEqual([hole])
    fresh.score(b, hole, null)
    fresh.outbox[0] = { ...fresh.outbox[0]!, replaces: replaced(old, 1) } as DeviceFact
    await fresh.send()
    expect((await now(b)).scores[hole - 1]).toBe(8)
    await old.score(b, hole, null).send()
  })
})

describe('whose phone it is', () => {
  const look = (phone: Phone, entryId: EntryId, number: number) =>
    notePhone(
      day.scorer(1),
      new Headers({
        'x-daybook-device': phone.deviceId,
        'x-daybook-holder': entryId,
        'x-daybook-holds': String(number),
      }),
      new Date(),
    )
  const holders = async () => got(await cardPack(day.scorer(1))).holders ?? []

  it('is known once a phone has said so, and stands in the pack of the others', async () => {
    const [one, two] = [new Phone(day, 1, a), new Phone(day, 1, a)]
    await look(one, a, 1)
    await look(two, a, 1)
    const said = (await holders()).filter((each) => each.entryId === a)
    expect(new Set(said.map((each) => each.phone)).size).toBe(2)
    // Handed on, and taken back.
    await look(one, b, 2)
    expect((await holders()).filter((each) => each.entryId === a)).toHaveLength(1)
    const before = (await holders()).find((each) => each.entryId === b)?.since
    await look(one, b, 3)
    expect((await holders()).find((each) => each.entryId === b)?.since).not.toBe(before)
  })

  it('is nobody outside the group', async () => {
    const [other] = day.players(2)
    const before = (await holders()).length
    await look(new Phone(day, 1, a), other!, 1)
    expect(await holders()).toHaveLength(before)
  })
})

describe('signing', () => {
  it('refuses a card with holes missing or not agreed, by the wrong person, or not as it stands; then hands it in', async () => {
    const [d] = day.players(2)
    const [, marker] = day.players(2)
    const scores = over(20)
    const phone = new Phone(day, 2, d!)
    phone.round(asId(d!), [...scores.slice(0, 17), null]).sign(asId(d!), 'player', scores)
    expect((await phone.send()).at(-1)).toMatchObject({
      code: 'holes-missing',
      sentence: expect.stringContaining('18'),
    })
    const other = new Phone(day, 2, marker!).score(asId(d!), 3, 9)
    await other.send()
    phone.score(asId(d!), 18, scores[17]!).sign(asId(d!), 'player', scores)
    expect((await phone.send()).at(-1)).toMatchObject({ code: 'not-agreed', sentence: expect.stringContaining('3') })
    await other.score(asId(d!), 3, scores[2]!).send()
    expect(await phone.sign(asId(d!), 'player', over(21)).send()).toMatchObject([{ code: 'card-changed' }])
    expect(await phone.sign(asId(d!), 'player', scores, marker).send()).toMatchObject([{ code: 'not-your-card' }])
    expect(await phone.sign(asId(d!), 'marker', scores, d!).send()).toMatchObject([{ code: 'own-marker' }])
    expect(await phone.sign(asId(d!), 'player', scores).send()).toMatchObject([{ answer: 'received' }])
    expect((await now(asId(d!))).state).toBe('out')
    // A score that changes takes the signature back; agreeing again does not bring it back.
    await other.score(asId(d!), 3, 9).score(asId(d!), 3, scores[2]!).send()
    expect((await now(asId(d!))).player).toBeNull()
    await phone.sign(asId(d!), 'player', scores).send()
    await other.sign(asId(d!), 'marker', scores).send()
    expect((await now(asId(d!))).state).toBe('handed-in')
  })

  it('closes the card: what comes then is kept as a late fact, says so, and does not count', async () => {
    const [d] = day.players(2)
    const phone = new Phone(day, 2, d!).score(asId(d!), 1, 9).sign(asId(d!), 'player', over(20))
    const sent = [...phone.outbox]
    const answers = await phone.send()
    expect(answers).toMatchObject([{ answer: 'late' }, { answer: 'refused', code: 'card-closed' }])
    phone.outbox = sent
    expect((await phone.send()).map((one) => one.answer)).toEqual(['late', 'refused'])
    const card = await now(asId(d!))
    expect(card.scores[0]).not.toBe(9)
    expect(card.lateFacts).toHaveLength(1)
  })
})

describe('the pack of a group', () => {
  it('holds the strokes of the day and nobody else’s cards, and no key, code or address', async () => {
    const pack = got(await cardPack(day.scorer(2)))
    expect(pack.cards.map((card) => card.entryId)).toEqual([...day.players(2)])
    for (const card of pack.cards)
      expect(card.holes.reduce((sum, hole) => sum + hole.strokes, 0)).toBe(card.playingHandicap)
    const text = JSON.stringify(pack)
    const record = await day.record()
    for (const group of record.groups) {
      expect(text).not.toContain(group.linkKey)
      expect(text).not.toContain(group.code)
    }
    expect(text).not.toContain('@')
    expect(pack.reading).toBe('points')
  })
})
