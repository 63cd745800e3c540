// Promise: two phones under one name never overwrite each other without a word. A name is taken over on purpose, and
// then the new phone goes on where the old one stopped; what the old one sends late is shown as a difference.

import { describe, expect, it } from 'vitest'
import type { CardId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'
import { opened, quiet } from './opened-book'

const CARD = asId<CardId>('card-haldane')

/** A second phone of Jago's. `opened` takes the name as the screen does once it has asked. */
const both = async () => {
  const server = new FakeServer(aldermossPack())
  const first = await opened(server)
  await quiet()
  const second = await opened(server)
  await quiet()
  await first.book.refresh()
  return { server, first, second }
}

const hole = (phone: Awaited<ReturnType<typeof opened>>, number = 1) => phone.card(asId('haldane')).holes[number - 1]!

describe('a name that another phone has', () => {
  it('is known on the other phones, with the time, and taking it over tells the earlier one', async () => {
    const { first, second } = await both()
    expect(first.now().holding).toMatchObject({ kind: 'taken' })
    expect(second.now().holding).toEqual({ kind: 'alone' })
    const { holding } = first.now()
    if (holding.kind !== 'taken') throw new Error('not told')
    await first.book.readTaken(holding.since)
    expect(first.now().takenRead).toBe(true)
    // Taken back: now the other one is told.
    await first.book.hold(asId('trevennor'))
    await quiet()
    await second.book.refresh()
    expect([first.now().holding.kind, second.now().holding.kind]).toEqual(['alone', 'taken'])
  })

  it('asks on a phone that took the name without knowing', async () => {
    const server = new FakeServer(aldermossPack())
    const first = await opened(server)
    const second = await opened(server)
    first.signal.on = false
    await quiet()
    // Neither knew of the other when it was asked; the server hears of both.
    const holders = server.pack.holders ?? []
    expect(holders.map((one) => one.entryId)).toEqual(['trevennor', 'trevennor'])
    expect(second.now().me.tookOver.length + first.now().me.tookOver.length).toBeLessThan(2)
  })
})

describe('two phones under one name', () => {
  it('that write different scores differ, on both', async () => {
    const { first, second } = await both()
    await second.book.write(CARD, 1, 7)
    await quiet()
    await first.book.write(CARD, 1, 5)
    await quiet()
    await second.book.refresh()
    for (const phone of [first, second]) expect(hole(phone)).toMatchObject({ differs: true, score: null })
    // The one that took over answers the difference; the earlier phone's score is replaced because it was on the screen.
    await second.book.write(CARD, 1, 7)
    await quiet()
    await first.book.refresh()
    for (const phone of [first, second]) expect(hole(phone)).toMatchObject({ differs: false, score: 7 })
  })

  it('agree where both wrote the same', async () => {
    const { first, second } = await both()
    await first.book.write(CARD, 1, 5)
    await second.book.write(CARD, 1, 5)
    await quiet()
    await second.book.refresh()
    expect(hole(second)).toMatchObject({ differs: false, score: 5 })
    expect(hole(second).written).toHaveLength(2)
  })

  it('take back only their own', async () => {
    const { first, second } = await both()
    await first.book.write(CARD, 1, 5)
    await second.book.write(CARD, 1, 7)
    await quiet()
    await first.book.refresh()
    await first.book.undo()
    await quiet()
    await second.book.refresh()
    for (const phone of [first, second]) expect(hole(phone)).toMatchObject({ differs: false, score: 7 })
  })
})

describe('a phone that died', () => {
  it('is corrected from the one that took over: one score, no difference, and undo puts the old one back', async () => {
    const server = new FakeServer(aldermossPack())
    const first = await opened(server)
    await first.book.write(CARD, 1, 5)
    await quiet()
    first.stop()
    const second = await opened(server)
    await quiet()
    expect(hole(second)).toMatchObject({ score: 5 })
    expect((await second.book.write(CARD, 1, 5)).ok && hole(second).written).toHaveLength(1)
    await second.book.write(CARD, 1, 7)
    await quiet()
    expect(hole(second)).toMatchObject({ differs: false, score: 7 })
    await second.book.undo()
    expect(hole(second)).toMatchObject({ differs: false, score: 5 })
  })

  it('shows what it brings late as a difference, and the late score does not win', async () => {
    const server = new FakeServer(aldermossPack())
    const first = await opened(server)
    first.signal.on = false
    await first.book.write(CARD, 2, 4)
    const second = await opened(server)
    await quiet()
    await second.book.write(CARD, 2, 6)
    await quiet()
    first.signal.on = true
    first.fire()
    await quiet()
    await second.book.refresh()
    expect(hole(second, 2)).toMatchObject({ differs: true, score: null })
    expect(
      hole(second, 2)
        .written.map((one) => one.score)
        .sort(),
    ).toEqual([4, 6])
  })

  it('says on the earlier phone that its score was changed, and does not undo what is not there', async () => {
    const server = new FakeServer(aldermossPack())
    const first = await opened(server)
    await first.book.write(CARD, 1, 5)
    await quiet()
    const second = await opened(server)
    await quiet()
    await second.book.write(CARD, 1, 7)
    await quiet()
    await first.book.refresh()
    expect(first.now().undo).toMatchObject({ changedTo: 7 })
    const before = server.taken.length
    await first.book.undo()
    await quiet()
    expect(server.taken).toHaveLength(before)
    expect(hole(first)).toMatchObject({ score: 7, differs: false })
  })
})

describe('an answer that stands already', () => {
  it('is said to stand, and writes nothing', async () => {
    const { book, server, phone } = await opened()
    await book.write(CARD, 1, 5)
    await quiet()
    server.deliver({
      deviceId: asId('una-phone-0123456789'),
      facts: [
        {
          kind: 'score',
          seq: 1,
          cardId: CARD,
          writer: asId('tarrablane'),
          writtenAt: '2026-04-25T12:52:00.000Z',
          hole: 1,
          score: 7,
        },
      ],
    })
    await book.refresh()
    expect(await book.write(CARD, 1, 5)).toEqual({ ok: true, value: 'stands' })
    expect(await phone.store.facts('fern-group-3')).toHaveLength(1)
  })
})
