// Promise: whatever is dropped, cut, repeated or forgotten on the way, every kept fact ends on the server exactly once
// and in order, or is still on the phone; and the phone calls received only what the server has.

import { randomUUID } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CardId, EntryId } from '@/lib/facts/ids'
import { memoryStore } from '@/lib/outbox/memory-store'
import { alone, type LockManagerLike } from '@/lib/outbox/one-sender'
import { type Post, type Posted, sendWaiting } from '@/lib/outbox/sender'
import type { OutboxStore } from '@/lib/outbox/store'
import { asId } from '../setup/ids'
import { aldermossPack, FOUR } from './aldermoss-four'
import { FakeServer } from './fake-server'

const now = () => new Date('2026-04-25T12:53:00.000Z')
const LINK = 'fern-group-3'

async function write(store: OutboxStore, hole: number, score: number, link = LINK, player: string = 'trevennor') {
  const draft = {
    kind: 'score',
    cardId: asId<CardId>(`card-${player}`),
    writer: asId<EntryId>('trevennor'),
    hole,
    score,
  } as const
  await store.keep(link, { draft, before: null }, now().toISOString())
}

const states = async (store: OutboxStore) => (await store.facts(LINK)).map((each) => each.state)

/** The network: does with a delivery what its next letter says. */
type Weather =
  | 'good' // asked and answered
  | 'lost' // the request never arrives
  | 'cut' // the server has it, the answer is lost
  | 'twice' // the network sends the request twice
  | 'portal' // a sign-in page answers instead
  | 'half' // only the first half arrives, and is answered

function through(server: FakeServer, weather: readonly Weather[]): { post: Post; sent: number[][] } {
  let turn = 0
  const sent: number[][] = []
  const post: Post = async (_link, delivery) => {
    sent.push(delivery.facts.map((fact) => fact.seq))
    const now = weather[turn++] ?? 'good'
    const ask = (facts = delivery.facts): Posted => server.deliver({ ...delivery, facts })
    switch (now) {
      case 'good':
        return ask()
      case 'lost':
      case 'portal':
        return { kind: 'unknown' }
      case 'cut':
        ask()
        return { kind: 'unknown' }
      case 'twice':
        ask()
        return ask()
      case 'half':
        return ask(delivery.facts.slice(0, Math.ceil(delivery.facts.length / 2)))
    }
  }
  return { post, sent }
}

async function until(store: OutboxStore, post: Post, tries: number) {
  for (let i = 0; i < tries; i++) {
    const sent = await sendWaiting(store, post, LINK, now)
    if (sent.kind !== 'try-later') return sent
  }
  return { kind: 'try-later' }
}

describe('sending what waits', () => {
  it('sends the oldest first and calls them received', async () => {
    const store = memoryStore(randomUUID)
    const server = new FakeServer(aldermossPack())
    for (let hole = 1; hole <= 3; hole++) await write(store, hole, 5)
    const { post, sent } = through(server, [])
    expect(await sendWaiting(store, post, LINK, now)).toEqual({ kind: 'empty' })
    expect(sent).toEqual([[1, 2, 3]])
    expect(await states(store)).toEqual(['received', 'received', 'received'])
  })

  it('concludes nothing from silence', async () => {
    const store = memoryStore(randomUUID)
    await write(store, 1, 5)
    const { post } = through(new FakeServer(aldermossPack()), ['lost'])
    expect((await sendWaiting(store, post, LINK, now)).kind).toBe('try-later')
    expect(await states(store)).toEqual(['kept'])
  })

  it('learns of what the server had already when the answer was cut off', async () => {
    const store = memoryStore(randomUUID)
    const server = new FakeServer(aldermossPack())
    await write(store, 1, 5)
    const { post } = through(server, ['cut', 'good'])
    await until(store, post, 2)
    expect(server.taken).toHaveLength(1)
    expect(await states(store)).toEqual(['received'])
  })

  it('shows a refusal and goes on with the next', async () => {
    const store = memoryStore(randomUUID)
    const server = new FakeServer(aldermossPack())
    server.refuses = (fact) => (fact.seq === 1 ? { code: 'no-such-hole', sentence: 'There is no such hole.' } : null)
    await write(store, 1, 5)
    await write(store, 2, 5)
    await until(store, through(server, []).post, 1)
    const facts = await store.facts(LINK)
    expect(facts.map((each) => each.state)).toEqual(['refused', 'received'])
    expect(facts[0]?.sentence).toBe('There is no such hole.')
  })

  it('keeps everything when the link has ended, and sends no more', async () => {
    const store = memoryStore(randomUUID)
    const server = new FakeServer(aldermossPack())
    server.ended = { code: 'link-ended', sentence: 'The day is over.' }
    await write(store, 1, 5)
    const { post, sent } = through(server, [])
    expect((await sendWaiting(store, post, LINK, now)).kind).toBe('ended')
    await write(store, 2, 5)
    expect((await sendWaiting(store, post, LINK, now)).kind).toBe('ended')
    expect(sent).toHaveLength(1)
    expect(await states(store)).toEqual(['kept', 'kept'])
    expect((await store.queue(LINK)).ended?.sentence).toBe('The day is over.')
  })

  it('sends again what a server put back from a copy has forgotten', async () => {
    const store = memoryStore(randomUUID)
    const server = new FakeServer(aldermossPack())
    for (let hole = 1; hole <= 5; hole++) await write(store, hole, 5)
    await until(store, through(server, []).post, 1)
    const { deviceId } = await store.queue(LINK)
    server.forgetAfter(deviceId, 2)
    await write(store, 6, 4)
    await until(store, through(server, []).post, 2)
    expect(server.taken.map((each) => each.fact.seq)).toEqual([1, 2, 3, 4, 5, 6])
    expect(new Set(await states(store))).toEqual(new Set(['received']))
  })

  it('never sends a fact under another link', async () => {
    const store = memoryStore(randomUUID)
    await write(store, 1, 5, 'other')
    await write(store, 1, 6, LINK)
    const seen: string[] = []
    const post: Post = async (link, delivery) => {
      seen.push(`${link} ${delivery.facts.map((fact) => fact.kind === 'score' && fact.score).join()}`)
      return { kind: 'unknown' }
    }
    await sendWaiting(store, post, LINK, now)
    expect(seen).toEqual([`${LINK} 6`])
  })

  it('lets a fault in its own bookkeeping be seen, instead of calling it a lost connection', async () => {
    const store = memoryStore(randomUUID)
    await write(store, 1, 5)
    const broken = { ...store, settle: () => Promise.reject(new Error('bookkeeping')) }
    const { post } = through(new FakeServer(aldermossPack()), [])
    await expect(sendWaiting(broken, post, LINK, now)).rejects.toThrow('bookkeeping')
  })

  it('steps back from an answer that settles nothing', async () => {
    const store = memoryStore(randomUUID)
    await write(store, 1, 5)
    const nothing: Post = async () => ({ kind: 'answered', answer: { lastSeq: 0, answers: [], scoreVersion: 0 } })
    expect((await sendWaiting(store, nothing, LINK, now)).kind).toBe('try-later')
    expect(await states(store)).toEqual(['kept'])
  })
})

describe('one sender', () => {
  it('lets only one of two tabs send, by lock and by lease', async () => {
    for (const locks of [undefined, fakeLocks()]) {
      const store = memoryStore(randomUUID)
      let open = () => {}
      const gate = new Promise<void>((done) => {
        open = done
      })
      const first = alone(
        store,
        LINK,
        locks,
        'tab-1',
        () => 0,
        async () => {
          await gate
          return 'sent'
        },
      )
      await Promise.resolve()
      expect(
        await alone(
          store,
          LINK,
          locks,
          'tab-2',
          () => 1,
          async () => 'sent',
        ),
      ).toBe('busy')
      open()
      expect(await first).toBe('sent')
      expect(
        await alone(
          store,
          LINK,
          locks,
          'tab-2',
          () => 2,
          async () => 'sent',
        ),
      ).toBe('sent')
    }
  })

  it('takes over from a tab that died in the middle, when its lease has run out', async () => {
    const store = memoryStore(randomUUID)
    void alone(
      store,
      LINK,
      undefined,
      'dead',
      () => 0,
      () => new Promise(() => {}),
    )
    await Promise.resolve()
    expect(
      await alone(
        store,
        LINK,
        undefined,
        'living',
        () => 10_000,
        async () => 'sent',
      ),
    ).toBe('busy')
    expect(
      await alone(
        store,
        LINK,
        undefined,
        'living',
        () => 60_000,
        async () => 'sent',
      ),
    ).toBe('sent')
  })
})

function fakeLocks(): LockManagerLike {
  const held = new Set<string>()
  return {
    async request<T>(
      name: string,
      _options: { ifAvailable: true },
      run: (lock: unknown) => Promise<T>,
    ): Promise<Awaited<T>> {
      if (held.has(name)) return await run(null)
      held.add(name)
      try {
        return await run({ name })
      } finally {
        held.delete(name)
      }
    },
  }
}

describe('through any weather', () => {
  const weather = fc.array(fc.constantFrom<Weather>('good', 'lost', 'cut', 'twice', 'portal', 'half'), {
    maxLength: 25,
  })
  const step = fc.oneof(
    {
      weight: 5,
      arbitrary: fc.record({
        do: fc.constant('write' as const),
        hole: fc.integer({ min: 1, max: 18 }),
        score: fc.integer({ min: 1, max: 12 }),
        player: fc.constantFrom(...FOUR),
      }),
    },
    { weight: 3, arbitrary: fc.record({ do: fc.constant('send' as const) }) },
    { weight: 1, arbitrary: fc.record({ do: fc.constant('forget' as const), back: fc.integer({ min: 1, max: 6 }) }) },
  )

  it('has every fact on the server once and in order, or still on the phone', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 60 }), weather, async (steps, sky) => {
        const store = memoryStore(randomUUID)
        const server = new FakeServer(aldermossPack())
        const { post } = through(server, sky)
        const written: string[] = []
        let forgot = false
        for (const each of steps) {
          if (each.do === 'write') {
            await write(store, each.hole, each.score, LINK, each.player)
            written.push(`${each.player} ${each.hole} ${each.score}`)
          } else if (each.do === 'send') {
            const sent = await sendWaiting(store, post, LINK, now)
            // A server that forgot is found out by its next answer, not before.
            if (forgot && sent.kind !== 'empty') continue
            forgot = false
            const onServer = new Set(server.taken.map((taken) => taken.fact.seq))
            for (const kept of await store.facts(LINK))
              if (kept.state === 'received') expect(onServer.has(kept.seq)).toBe(true)
          } else {
            forgot = true
            // A copy put back: what came after it is gone there, and must come again from the phone.
            const { deviceId } = await store.queue(LINK)
            const has = server.answers.get(deviceId)?.length ?? 0
            server.forgetAfter(deviceId, Math.max(0, has - each.back))
            await write(store, 1, 4, LINK)
            written.push('trevennor 1 4')
            await sendWaiting(store, post, LINK, now)
          }
        }
        await until(store, post, sky.length + 2)
        const taken = server.taken.map(({ fact }) =>
          fact.kind === 'score' ? `${fact.cardId.slice(5)} ${fact.hole} ${fact.score}` : '',
        )
        expect(taken).toEqual(written)
        expect(server.taken.map((each) => each.fact.seq)).toEqual(written.map((_, index) => index + 1))
        expect((await states(store)).every((each) => each === 'received')).toBe(true)
      }),
      { numRuns: 400 },
    )
  })
})
