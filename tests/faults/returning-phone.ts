// A phone with its card open, on a clock that the test turns: the group's book as the page opens it, the outbox's own
// way to the server, and between them a network that may be gone in one way or another.
import type { DeviceId } from '@/lib/facts/ids'
import { openGroupBook } from '@/lib/outbox/group-book'
import { memoryStore } from '@/lib/outbox/memory-store'
import type { Phone } from '@/lib/outbox/phone'
import { fetchPack, postDelivery } from '@/lib/outbox/post'
import { Network, withNetwork } from './network'

/** What a request meets while there is no way through. */
export const GONE = ['lost', 'hangs', 'answer-lost', 'hotel-page', 'bad-gateway'] as const
export type Gone = (typeof GONE)[number]

const PATIENCE_MS = 20_000

interface Timer {
  readonly at: number
  readonly run: () => void
}

/** Time that passes when the test says so. */
export class Clock {
  now = Date.UTC(2031, 5, 14, 9)
  #timers: Timer[] = []

  later(run: () => void, ms: number): () => void {
    const timer = { at: this.now + ms, run }
    this.#timers.push(timer)
    return () => {
      this.#timers = this.#timers.filter((one) => one !== timer)
    }
  }

  /** Everything that falls due, one after another, each with what follows from it. */
  async pass(ms: number, settled: () => Promise<void>): Promise<void> {
    const until = this.now + ms
    for (;;) {
      await settled()
      const next = this.#timers.filter((one) => one.at <= until).sort((a, b) => a.at - b.at)[0]
      if (!next) break
      this.#timers = this.#timers.filter((one) => one !== next)
      this.now = next.at
      next.run()
    }
    this.now = until
  }
}

/** All through, or all gone in one way. */
export class Valley extends Network {
  gone: Gone | null = null
  underWay = 0
  clock!: Clock

  override async fetch(path: string, init: RequestInit): Promise<Response> {
    const asked = { path, init }
    switch (this.gone) {
      case null:
        return this.#answered(asked)
      case 'answer-lost':
        await this.#answered(asked)
        throw new TypeError('fetch failed')
      case 'lost':
        throw new TypeError('fetch failed')
      case 'hangs':
        return new Promise((_, fail) => {
          const end = () => fail(new TypeError('fetch failed'))
          this.clock.later(end, PATIENCE_MS)
          init.signal?.addEventListener('abort', end, { once: true })
        })
      case 'hotel-page':
        return new Response('<html><title>Welcome</title>Sign in to use the network</html>')
      case 'bad-gateway':
        return new Response('Bad gateway', { status: 502 })
    }
  }

  async #answered(asked: Parameters<Network['send']>[0]): Promise<Response> {
    this.underWay++
    try {
      return await this.send(asked)
    } finally {
      this.underWay--
    }
  }
}

export function returningPhone(deviceId: DeviceId, link: string, network: Valley, chance: () => number) {
  const clock = new Clock()
  network.clock = clock
  const reachable: (() => void)[] = []
  let tries = 0
  const phone: Phone = {
    store: memoryStore(() => deviceId),
    post: (...asked) => {
      tries++
      return postDelivery(...asked)
    },
    fetchPack,
    locks: undefined,
    me: deviceId,
    now: () => new Date(clock.now),
    chance,
    later: (run, ms) => clock.later(run, ms),
    tell: () => {},
    hear: () => () => {},
    tellReached: () => {},
    whenReached: () => () => {},
    whenReachable: (run) => {
      reachable.push(run)
      return () => {}
    },
    looking: () => true,
    askBackground: () => {},
  }
  const book = openGroupBook(link, phone)
  /** Until nothing is under way to the server, and what its answers set going has come to rest. */
  async function settled(): Promise<void> {
    for (let still = 0; still < 3; still++) {
      await new Promise((resolve) => setImmediate(resolve))
      if (network.underWay > 0) still = -1
    }
  }
  return {
    book,
    clock,
    store: phone.store,
    tries: () => tries,
    start: () => withNetwork(network, async () => book.start()),
    pass: (ms: number) => clock.pass(ms, settled),
    online: () => {
      for (const run of reachable) run()
    },
    /** Milliseconds until nothing waits here. */
    async untilReceived(most = 120_000): Promise<number> {
      const from = clock.now
      while (clock.now - from < most) {
        await settled()
        if ((await phone.store.waiting(link, 1)).length === 0) return clock.now - from
        await clock.pass(50, settled)
      }
      return Number.POSITIVE_INFINITY
    },
  }
}
