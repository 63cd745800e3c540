// Promise: what the holder presses is on the phone before the screen says so, is sent by itself, and what others wrote
// is laid beside it, never over it.

import { describe, expect, it } from 'vitest'
import { openGroupBook } from '@/lib/outbox/group-book'
import { refused } from '@/lib/result'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'
import { LINK, opened, phoneFor, quiet } from './opened-book'

describe('writing', () => {
  it('keeps the pack and the holder, and shows what is only on this phone', async () => {
    const { book, signal, now, card } = await opened()
    expect(now().pack?.dayName).toBe('Spring Cup')
    signal.on = false
    expect((await book.write(asId('card-trevennor'), 1, 5)).ok).toBe(true)
    expect(card(asId('trevennor')).holes[0]?.score).toBe(5)
    expect(now().waitingScores).toBe(1)
    expect(now().lastReceivedAt).toBeNull()
  })

  it('sends by itself and says received only when the server has answered', async () => {
    const { book, server, now } = await opened()
    await book.write(asId('card-trevennor'), 1, 5)
    await quiet()
    expect(server.taken).toHaveLength(1)
    expect(now().waitingScores).toBe(0)
    expect(now().lastReceivedAt).not.toBeNull()
  })

  it('tries again after a failure, with growing patience', async () => {
    const { book, server, signal, timers, fire, now } = await opened()
    signal.on = false
    await book.write(asId('card-trevennor'), 1, 5)
    await quiet()
    const first = Math.max(...timers.filter((each) => each.ms < 20_000).map((each) => each.ms))
    fire()
    await quiet()
    const second = Math.max(...timers.filter((each) => each.ms < 20_000).map((each) => each.ms))
    expect(second).toBeGreaterThan(first)
    signal.on = true
    fire()
    await quiet()
    expect(server.taken).toHaveLength(1)
    expect(now().waitingScores).toBe(0)
  })

  it('holds in the page what a full phone would not keep, says so, and writes it down in order when there is room', async () => {
    const { book, phone, card, now, server } = await opened()
    const { keep } = phone.store
    Object.assign(phone.store, { keep: async () => refused('phone-full', 'This phone is full.') })
    await book.write(asId('card-trevennor'), 1, 5)
    await book.write(asId('card-trevennor'), 1, 6)
    await book.write(asId('card-haldane'), 1, 4)
    expect(now()).toMatchObject({ inPageOnly: 3, whyNotKept: 'This phone is full.' })
    expect(card(asId('trevennor')).holes[0]?.score).toBe(6)
    await book.undo()
    expect(now().inPageOnly).toBe(2)
    expect(card(asId('haldane')).holes[0]?.score).toBeNull()
    expect(server.taken).toHaveLength(0)

    Object.assign(phone.store, { keep })
    await book.refresh()
    expect(now()).toMatchObject({ inPageOnly: 0, whyNotKept: null })
    expect((await phone.store.facts(LINK)).map(({ seq, fact }) => [seq, fact.kind === 'score' && fact.score])).toEqual([
      [1, 5],
      [2, 6],
    ])
    await book.write(asId('card-trevennor'), 2, 4)
    expect((await phone.store.facts(LINK)).map((kept) => kept.seq)).toEqual([1, 2, 3])
  })

  it('goes on where another phone died: what was received is there, and the numbers are its own', async () => {
    const first = await opened()
    await first.book.write(asId('card-trevennor'), 1, 5)
    await first.book.write(asId('card-haldane'), 1, 4)
    await quiet()
    first.stop()
    const second = await opened(first.server)
    expect(second.card(asId('trevennor')).holes[0]?.score).toBe(5)
    await second.book.write(asId('card-haldane'), 2, 5)
    await quiet()
    expect(first.server.taken.map(({ fact }) => [fact.seq, fact.kind === 'score' && fact.hole])).toEqual([
      [1, 1],
      [2, 1],
      [1, 2],
    ])
    expect(second.now().waitingScores).toBe(0)
    // The same holder corrects on the new phone what was written on the dead one: one score, no difference.
    await second.book.write(asId('card-trevennor'), 1, 6)
    await quiet()
    expect(second.card(asId('trevennor')).holes[0]).toMatchObject({ score: 6, differs: false })
  })

  it('shows the newest cards although a full phone keeps the old ones', async () => {
    const { book, phone, now, server } = await opened()
    Object.assign(phone.store, {
      keepPack: async () => {
        throw new DOMException('full', 'QuotaExceededError')
      },
    })
    server.pack = { ...server.pack, scoreVersion: 99, dayName: 'The newest' }
    await book.refresh()
    expect(now().pack?.dayName).toBe('The newest')
    expect(now().packKept).toBe(true)
  })

  it('says nothing of a stop that was over before the phone was opened, and everything of one that was not', async () => {
    const server = new FakeServer(aldermossPack())
    const told = {
      number: 2,
      kind: 'resume',
      reason: 'the storm has passed',
      toldAt: '2026-04-25T12:40:00.000Z',
    } as const
    server.pack = { ...server.pack, play: told }
    const late = await opened(server)
    expect(late.now()).toMatchObject({ play: told, playRead: true })
    server.pack = { ...server.pack, scoreVersion: 60, play: { ...told, number: 3, kind: 'stop-at-once' } }
    await late.book.refresh()
    expect(late.now().playRead).toBe(false)
    server.pack = { ...server.pack, scoreVersion: 61, play: { ...told, number: 4 } }
    await late.book.refresh()
    expect(late.now()).toMatchObject({ play: { kind: 'resume' }, playRead: false })
  })

  it('does not call a card whole that a full phone has never kept', async () => {
    const around = phoneFor(new FakeServer(aldermossPack()))
    let full = true
    const { keepPack } = around.phone.store
    Object.assign(around.phone.store, {
      keepPack: async (...asked: Parameters<typeof keepPack>) => {
        if (full) throw new DOMException('full', 'QuotaExceededError')
        return keepPack(...asked)
      },
    })
    const book = openGroupBook(LINK, around.phone)
    book.start()
    await quiet()
    expect(book.snapshot()).toMatchObject({ pack: { dayName: 'Spring Cup' }, packKept: false })
    full = false
    await book.refresh()
    expect(book.snapshot()).toMatchObject({ packKept: true })
  })

  it('shows a stop at once and keeps it against an answer that was on its way', async () => {
    const { book, phone, now, server, hear } = await opened()
    const stop = { number: 1, kind: 'stop-at-once', reason: 'lightning', toldAt: '2026-04-25T12:00:00.000Z' } as const
    hear(stop)
    await quiet()
    expect(now()).toMatchObject({ play: stop, playRead: false })
    expect(server.pack.play).toBeUndefined()
    await book.refresh()
    expect(now().play).toEqual(stop)
    await book.readPlay(1)
    expect(now().playRead).toBe(true)
    await book.write(asId('card-trevennor'), 1, 5)
    expect(await phone.store.facts(LINK)).toHaveLength(1)
    server.pack = { ...server.pack, scoreVersion: 50, play: { ...stop, number: 2, kind: 'resume' } }
    await book.refresh()
    expect(now()).toMatchObject({ play: { kind: 'resume' }, playRead: false })
  })

  it('knocks with what it still keeps when the link has ended, once a minute, and settles what the desk took', async () => {
    const { book, phone, now, server, signal, advance } = await opened()
    signal.on = false
    await book.write(asId('card-trevennor'), 1, 5)
    signal.on = true
    server.ended = { code: 'link-ended', sentence: 'The day is over.' }
    const knocks: (number | undefined)[] = []
    const { post } = phone
    let taken = false
    Object.assign(phone, {
      post: async (...[_link, delivery]: Parameters<typeof post>) => {
        knocks.push(delivery.unsent)
        if (!taken) return { kind: 'ended', code: 'link-ended', sentence: 'The day is over.' }
        return { kind: 'answered', answer: { lastSeq: 1, scoreVersion: 3, answers: [{ seq: 1, answer: 'received' }] } }
      },
    })
    await book.refresh()
    await quiet()
    await book.refresh()
    await quiet()
    expect(knocks).toEqual([1])
    expect(now()).toMatchObject({ waitingScores: 1, ended: { code: 'link-ended' } })
    taken = true
    advance(61_000)
    await book.refresh()
    await quiet()
    expect(knocks).toEqual([1, 1])
    expect(now().waitingScores).toBe(0)
  })

  it('writes nothing twice when the same figure is pressed again', async () => {
    const { book, phone } = await opened()
    await book.write(asId('card-trevennor'), 1, 5)
    await book.write(asId('card-trevennor'), 1, 5)
    expect(await phone.store.facts(LINK)).toHaveLength(1)
  })

  it('takes back the newest first, one after another, across a reload', async () => {
    const { book, phone, card, now } = await opened()
    await book.write(asId('card-trevennor'), 1, 5)
    await book.write(asId('card-trevennor'), 1, 6)
    await book.write(asId('card-haldane'), 1, 4)
    expect(now().undo?.kept.fact).toMatchObject({ cardId: 'card-haldane' })
    await book.undo()
    expect(card(asId('haldane')).holes[0]?.score).toBeNull()
    const again = openGroupBook(LINK, phone)
    again.start()
    await quiet()
    expect(again.snapshot()?.undo?.kept.fact).toMatchObject({ cardId: 'card-trevennor', score: 6 })
    await again.undo()
    expect(again.snapshot()?.cards[2]?.holes[0]?.score).toBe(5)
    await again.undo()
    expect(again.snapshot()?.cards[2]?.holes[0]?.score).toBeNull()
    expect(again.snapshot()?.undo).toBeNull()
  })
})

describe('two people on one card', () => {
  const unaWrote = (server: FakeServer, hole: number, score: number) => {
    server.deliver({
      deviceId: asId('una-phone-0123456789'),
      facts: [
        {
          kind: 'score',
          seq: 1,
          cardId: asId('card-trevennor'),
          writer: asId('tarrablane'),
          writtenAt: '2026-04-25T12:52:00.000Z',
          hole,
          score,
        },
      ],
    })
  }

  it('shows both where they differ, and lets either answer settle it', async () => {
    const { book, server, card } = await opened()
    await book.write(asId('card-trevennor'), 11, 5)
    await quiet()
    unaWrote(server, 11, 6)
    await book.refresh()
    expect(card(asId('trevennor')).notAgreed).toEqual([11])
    expect(card(asId('trevennor')).holes[10]).toMatchObject({ differs: true, score: null })
    await book.write(asId('card-trevennor'), 11, 6)
    expect(card(asId('trevennor')).notAgreed).toEqual([])
    expect(card(asId('trevennor')).holes[10]?.score).toBe(6)
  })

  it('does not take a slower, older look at the server for news', async () => {
    const { book, server, card } = await opened()
    const old = server.pack
    await book.write(asId('card-trevennor'), 1, 5)
    await quiet()
    unaWrote(server, 2, 6)
    await book.refresh()
    server.pack = old
    await book.refresh()
    expect(
      card(asId('trevennor'))
        .holes.slice(0, 2)
        .map((each) => each.score),
    ).toEqual([5, 6])
  })

  it('lets a ruling of the committee stand over both', async () => {
    const { book, server, card } = await opened()
    await book.write(asId('card-trevennor'), 11, 5)
    await quiet()
    unaWrote(server, 11, 6)
    server.pack = {
      ...server.pack,
      cards: server.pack.cards.map((each) => (each.entryId === 'trevennor' ? { ...each, ruled: { 11: 7 } } : each)),
    }
    await book.refresh()
    expect(card(asId('trevennor')).holes[10]).toMatchObject({ score: 7, differs: false, ruled: true })
  })
})
