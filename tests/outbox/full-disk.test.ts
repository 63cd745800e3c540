// Promise: a phone whose disk fills up in the middle of a round shows every touch, says that it is not written down, and
// writes all of it down once, in order, when there is room. Seen on a real disk that was full: the browser shuts the
// database in the middle of a write, and neither reading nor opening it works until there is room again.

import 'fake-indexeddb/auto'
import { randomUUID } from 'node:crypto'
import { forceCloseDatabase } from 'fake-indexeddb'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { browserStore } from '@/lib/outbox/browser-store'
import { openGroupBook } from '@/lib/outbox/group-book'
import type { ToKeep } from '@/lib/outbox/kept-fact'
import { memoryStore } from '@/lib/outbox/memory-store'
import { notKept } from '@/lib/outbox/not-kept'
import type { Phone } from '@/lib/outbox/phone'
import { steadyStore } from '@/lib/outbox/steady-store'
import type { OutboxStore } from '@/lib/outbox/store'
import { refused } from '@/lib/result'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'

const LINK = 'fern-group-3'
const AT = '2026-04-25T12:53:00.000Z'
const score = (hole: number, strokes: number): ToKeep => ({
  draft: { kind: 'score', cardId: asId('card-trevennor'), writer: asId('trevennor'), hole, score: strokes },
  before: null,
})

/** A store on a disk: while it is full nothing can be read or written, as the browsers have it. */
function onDisk() {
  const disk = { full: false }
  const store = memoryStore(randomUUID)
  const gone = () => Promise.reject(new DOMException('Internal error opening backing store.', 'UnknownError'))
  const behind = Object.fromEntries(
    Object.entries(store).map(([name, call]) => [
      name,
      typeof call !== 'function'
        ? call
        : (...args: never[]) => {
            if (!disk.full) return (call as (...of: never[]) => unknown)(...args)
            return name === 'keep' ? Promise.resolve(refused('phone-full', 'This phone is full.')) : gone()
          },
    ]),
  ) as unknown as OutboxStore
  return { disk, store: behind }
}

function phoneOn(store: OutboxStore, server: FakeServer) {
  const timers: (() => void)[] = []
  const phone: Phone = {
    store: steadyStore(store, randomUUID),
    post: async (_link, delivery) => server.deliver(delivery),
    fetchPack: async () => ({ kind: 'pack', pack: server.pack }),
    locks: undefined,
    me: randomUUID(),
    now: () => new Date(AT),
    chance: () => 0.5,
    later(run) {
      timers.push(run)
      return () => void (timers.includes(run) && timers.splice(timers.indexOf(run), 1))
    },
    tell: () => {},
    hear: () => () => {},
    liveLine: () => () => {},
    tellReached: () => {},
    whenReached: () => () => {},
    whenReachable: () => () => {},
    looking: () => true,
    askBackground: () => {},
  }
  const fire = () => {
    for (const run of timers.splice(0)) run()
  }
  return { phone, fire }
}

// What would not be read or written is told on the console, for somebody who looks into a phone.
beforeEach(() => void vi.spyOn(console, 'warn').mockImplementation(() => {}))
afterEach(() => void vi.restoreAllMocks())

describe('a disk that fills up in the middle of a round', () => {
  it('shows every touch, says what is not written down, and writes and sends all of it once there is room', async () => {
    const { disk, store } = onDisk()
    const server = new FakeServer(aldermossPack())
    const { phone, fire } = phoneOn(store, server)
    const book = openGroupBook(LINK, phone)
    const stop = book.start()
    await vi.waitFor(() => expect(book.snapshot()?.pack).toBeTruthy())
    const card = server.pack.cards[0]!
    await book.hold(card.entryId)
    await book.write(card.cardId, 1, 5)
    await vi.waitFor(() => expect(server.taken).toHaveLength(1))

    disk.full = true
    for (const hole of [2, 3, 4]) expect((await book.write(card.cardId, hole, hole + 2)).ok).toBe(true)
    expect(book.snapshot()).toMatchObject({ inPageOnly: 3, whyNotKept: 'This phone is full.' })
    const shown = book.snapshot()?.cards.find((each) => each.card.cardId === card.cardId)
    expect(shown?.holes.slice(0, 4).map((hole) => hole.score)).toEqual([5, 4, 5, 6])
    // The courier stumbles over the storage as well, and must be there when it holds again.
    fire()

    disk.full = false
    await Promise.all([book.refresh(), book.write(card.cardId, 5, 7), book.refresh()])
    await vi.waitFor(() => {
      fire()
      expect(server.taken).toHaveLength(5)
    })
    expect(server.taken.map(({ fact }) => fact.kind === 'score' && [fact.hole, fact.score])).toEqual([
      [1, 5],
      [2, 4],
      [3, 5],
      [4, 6],
      [5, 7],
    ])
    await vi.waitFor(() => expect(book.snapshot()).toMatchObject({ inPageOnly: 0, whyNotKept: null, waitingScores: 0 }))
    stop()
  })

  it('lets a holder be chosen while nothing can be written, and writes the name down later', async () => {
    const { disk, store } = onDisk()
    const steady = steadyStore(store, randomUUID)
    await steady.queue(LINK)
    disk.full = true
    await steady.setHolder(LINK, { holder: asId('trevennor'), holds: 1, tookOver: [] })
    expect((await steady.queue(LINK)).holder).toBe('trevennor')
    disk.full = false
    await steady.queue(LINK)
    expect((await store.queue(LINK)).holder).toBe('trevennor')
  })

  it('keeps what was read as read, also when that could not be written down', async () => {
    const { disk, store } = onDisk()
    const steady = steadyStore(store, randomUUID)
    await steady.keep(LINK, score(1, 4), AT)
    await steady.facts(LINK)
    disk.full = true
    await steady.markSeen(LINK, [1])
    expect((await steady.facts(LINK)).map((kept) => kept.seen)).toEqual([true])
    disk.full = false
    await steady.queue(LINK)
    expect((await store.facts(LINK)).map((kept) => kept.seen)).toEqual([true])
  })

  it('writes what it held once, however many ask for it at the same time', async () => {
    const { disk, store } = onDisk()
    const held = notKept(store, LINK)
    disk.full = true
    for (const hole of [1, 2, 3]) await held.keep(score(hole, 4), AT)
    disk.full = false
    await Promise.all([held.tryAgain(), held.tryAgain(), held.keep(score(4, 4), AT)])
    expect((await store.facts(LINK)).map(({ fact }) => fact.kind === 'score' && fact.hole)).toEqual([1, 2, 3, 4])
    expect(held.facts()).toEqual([])
  })
})

describe('the browser’s database', () => {
  it('is opened again when the browser has shut it', async () => {
    const opened: IDBDatabase[] = []
    const open = indexedDB.open.bind(indexedDB)
    vi.spyOn(indexedDB, 'open').mockImplementation((...args) => {
      const request = open(...args)
      request.addEventListener('success', () => opened.push(request.result))
      return request
    })
    const store = await browserStore(randomUUID, `shut-${randomUUID()}`)
    expect((await store.keep(LINK, score(1, 4), AT)).ok).toBe(true)
    forceCloseDatabase(opened[0] as never)
    expect((await store.keep(LINK, score(2, 5), AT)).ok).toBe(true)
    // Shut without a word, as when another page upgrades.
    opened[1]?.close()
    expect((await store.facts(LINK)).map((kept) => kept.seq)).toEqual([1, 2])
    expect(opened).toHaveLength(3)
  })
})
