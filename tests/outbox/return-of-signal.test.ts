// Promise: however the signal comes back, with the phone's word for it or without, what waits is received within three
// seconds; and a server that answers everything but will not take the scores is not hammered.

import { randomUUID } from 'node:crypto'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type GroupBook, type GroupSnapshot, openGroupBook } from '@/lib/outbox/group-book'
import type { LineEars } from '@/lib/outbox/live-line'
import { memoryStore } from '@/lib/outbox/memory-store'
import type { Phone } from '@/lib/outbox/phone'
import type { Posted } from '@/lib/outbox/sender'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'
import { LINK } from './opened-book'

/** How a request ends while there is no signal: at once, after a wait, or only when its asker gives up. */
type Silence = 'refused at once' | 'slowly' | 'never'
const PATIENCE_MS = 20_000

interface Sky {
  silent: Silence | null
  /** Deliveries only: everything else gets through. */
  posts: Posted | null
  inSight: boolean
  /** How long an answer takes. */
  takes: { look: number; delivery: number }
}

/** A phone on the clock of the test, with a signal that is there or not. */
function phoneUnder(server: FakeServer, chance = 0.99) {
  const sky: Sky = { silent: null, posts: null, inSight: true, takes: { look: 150, delivery: 150 } }
  const tries: number[] = []
  const ears: LineEars[] = []
  const reachable: (() => void)[] = []
  const elsewhere: (() => void)[] = []
  const wait = (ms: number, cut?: AbortSignal) =>
    new Promise<void>((done) => {
      setTimeout(done, ms)
      cut?.addEventListener('abort', () => done(), { once: true })
    })
  /** True when the request came through. A request that hangs is lost with its connection, whatever comes back. */
  async function through(what: keyof Sky['takes'], cut?: AbortSignal): Promise<boolean> {
    const { silent } = sky
    await wait(
      silent === null ? sky.takes[what] : silent === 'slowly' ? 1_500 : silent === 'never' ? PATIENCE_MS : 1,
      cut,
    )
    return silent === null
  }
  const phone: Phone = {
    store: memoryStore(randomUUID),
    async post(_link, delivery, cut) {
      tries.push(Date.now())
      if (!(await through('delivery', cut))) return { kind: 'unknown' }
      return sky.posts ?? server.deliver(delivery)
    },
    fetchPack: async (_link, _looking, _tag, cut) =>
      (await through('look', cut)) ? { kind: 'pack', pack: server.pack } : { kind: 'unknown' },
    locks: undefined,
    me: randomUUID(),
    now: () => new Date(),
    chance: () => chance,
    later(run, ms) {
      const timer = setTimeout(run, ms)
      return () => clearTimeout(timer)
    },
    tell: () => {},
    hear: () => () => {},
    liveLine: (_link, own) => {
      ears.push(own)
      return () => {}
    },
    tellReached: () => {},
    whenReached: (run) => {
      elsewhere.push(run)
      return () => {}
    },
    whenReachable: (run) => {
      reachable.push(run)
      return () => {}
    },
    looking: () => sky.inSight,
    askBackground: () => {},
  }
  const all = (runs: readonly (() => void)[]) => () => {
    for (const run of runs) run()
  }
  return {
    phone,
    sky,
    tries,
    online: all(reachable),
    anotherTab: all(elsewhere),
    lineOpens: () => {
      for (const own of ears) own.opened()
    },
  }
}

let stop = () => {}
beforeEach(() => {
  vi.useFakeTimers({ now: Date.parse('2026-04-25T12:53:00.000Z') })
})
afterEach(() => {
  stop()
  vi.useRealTimers()
})

async function opened(around: ReturnType<typeof phoneUnder>): Promise<GroupBook> {
  const book = openGroupBook(LINK, around.phone)
  stop = book.start()
  await vi.advanceTimersByTimeAsync(1_000)
  await book.hold(asId('trevennor'))
  return book
}

const now = (book: GroupBook) => book.snapshot() as GroupSnapshot

/** Milliseconds until nothing waits any more. */
async function untilReceived(book: GroupBook): Promise<number> {
  for (let ms = 0; ms <= 120_000; ms += 50) {
    if (now(book).waitingScores === 0) return ms
    await vi.advanceTimersByTimeAsync(50)
  }
  return Number.POSITIVE_INFINITY
}

const RETURNS = {
  'without a word from the phone': () => {},
  'with the event of the phone': (around: ReturnType<typeof phoneUnder>) => around.online(),
  'with the live line': (around: ReturnType<typeof phoneUnder>) => around.lineOpens(),
  'known to another tab': (around: ReturnType<typeof phoneUnder>) => around.anotherTab(),
}

describe.each(['refused at once', 'slowly', 'never'] as const)(
  'a signal that is gone, requests ending %s',
  (silent) => {
    it.each(Object.entries(RETURNS))('comes back %s: received within three seconds', async (_, back) => {
      for (const gone of [300, 4_000, 11_000, 61_000, 127_500]) {
        const around = phoneUnder(new FakeServer(aldermossPack()))
        const book = await opened(around)
        around.sky.silent = silent
        for (let hole = 1; hole <= 12; hole++) await book.write(asId('card-trevennor'), hole, 5)
        await vi.advanceTimersByTimeAsync(gone)
        expect(now(book).waitingScores).toBe(12)
        around.sky.silent = null
        back(around)
        expect(await untilReceived(book), `gone for ${gone} ms`).toBeLessThan(3_000)
        stop()
      }
    })

    it('is sent by a card that was opened while it was gone', async () => {
      const around = phoneUnder(new FakeServer(aldermossPack()))
      const first = await opened(around)
      around.sky.silent = silent
      for (let hole = 1; hole <= 3; hole++) await first.write(asId('card-trevennor'), hole, 5)
      stop()
      const again = openGroupBook(LINK, around.phone)
      stop = again.start()
      await vi.advanceTimersByTimeAsync(184_000)
      expect(now(again).waitingScores).toBe(3)
      around.sky.silent = null
      expect(await untilReceived(again)).toBeLessThan(3_000)
    })
  },
)

it('leaves a delivery on a thin line its time', async () => {
  const around = phoneUnder(new FakeServer(aldermossPack()))
  const book = await opened(around)
  around.sky.takes = { look: 600, delivery: 12_000 }
  for (let hole = 1; hole <= 12; hole++) await book.write(asId('card-trevennor'), hole, 5)
  const { length } = around.tries
  expect(await untilReceived(book)).toBeLessThan(30_000)
  expect(around.tries.length - length).toBeLessThanOrEqual(3)
})

describe('a pocket', () => {
  it('asks nothing while nobody looks, and sends as soon as somebody does', async () => {
    const around = phoneUnder(new FakeServer(aldermossPack()))
    let looks = 0
    const { fetchPack } = around.phone
    Object.assign(around.phone, {
      fetchPack: (...asked: Parameters<typeof fetchPack>) => {
        looks++
        return fetchPack(...asked)
      },
    })
    const book = await opened(around)
    around.sky.silent = 'refused at once'
    await book.write(asId('card-trevennor'), 1, 5)
    around.sky.inSight = false
    await vi.advanceTimersByTimeAsync(1_000)
    looks = 0
    await vi.advanceTimersByTimeAsync(300_000)
    expect(looks).toBe(0)
    around.sky.silent = null
    around.sky.inSight = true
    around.online()
    expect(await untilReceived(book)).toBeLessThan(3_000)
  })

  it('looks every twenty seconds, not every two, when nothing waits', async () => {
    const around = phoneUnder(new FakeServer(aldermossPack()))
    let looks = 0
    Object.assign(around.phone, {
      fetchPack: async () => {
        looks++
        return { kind: 'unknown' }
      },
    })
    await opened(around)
    await vi.advanceTimersByTimeAsync(200_000)
    expect(looks).toBeLessThanOrEqual(12)
  })
})

describe('a server that answers, and takes no scores', () => {
  /** Tries in ten minutes, with a sign of life every half second. */
  async function triesUnder(posts: Posted): Promise<number> {
    const around = phoneUnder(new FakeServer(aldermossPack()))
    const book = await opened(around)
    around.sky.posts = posts
    await book.write(asId('card-trevennor'), 1, 5)
    for (let ms = 0; ms < 600_000; ms += 500) {
      await vi.advanceTimersByTimeAsync(500)
      around.lineOpens()
    }
    expect(now(book).waitingScores).toBe(1)
    const { length } = around.tries
    around.sky.posts = null
    await vi.advanceTimersByTimeAsync(80_000)
    expect(now(book).waitingScores).toBe(0)
    return length
  }

  it('is not asked at once again after its own no', async () => {
    const said = { kind: 'unknown', heard: true, sentence: 'That is not understood.' } as const
    expect(await triesUnder(said)).toBeLessThanOrEqual(16)
  })

  it('is left alone for as long as it asks', async () => {
    const said = { kind: 'unknown', heard: true, waitSeconds: 100, sentence: 'Too many at once.' } as const
    expect(await triesUnder(said)).toBeLessThanOrEqual(7)
  })

  it('is tried less and less where deliveries alone get no answer', async () => {
    expect(await triesUnder({ kind: 'unknown' })).toBeLessThanOrEqual(20)
  })
})
