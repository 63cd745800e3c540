// One contract, held by every store: memory, the browser's database (a stand-in of it here), and a steady one over either.
// Promise: a number is taken once, a kept fact stays until the server has answered it, and nothing crosses links.

import type { EntryId } from '@/lib/facts/ids'
import 'fake-indexeddb/auto'
import { randomUUID } from 'node:crypto'
import { afterAll, describe, expect, it } from 'vitest'
import { browserStore, forgetBrowserStore } from '@/lib/outbox/browser-store'
import type { FactDraft } from '@/lib/outbox/kept-fact'
import { memoryStore } from '@/lib/outbox/memory-store'
import { steadyStore } from '@/lib/outbox/steady-store'
import type { OutboxStore } from '@/lib/outbox/store'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'

const HOLD = { holder: asId<EntryId>('trevennor'), holds: 1, tookOver: [] }
const AT = '2026-04-25T12:53:00.000Z'
const score = (hole: number, strokes: number): FactDraft => ({
  kind: 'score',
  cardId: asId('card-trevennor'),
  writer: asId('trevennor'),
  hole,
  score: strokes,
})
const keep = (store: OutboxStore, link: string, draft: FactDraft) => store.keep(link, { draft, before: null }, AT)
const seqs = (facts: readonly { readonly seq: number }[]) => facts.map((each) => each.seq)

const databases: string[] = []
const stores: readonly [string, () => Promise<OutboxStore>][] = [
  ['memory', async () => memoryStore(randomUUID)],
  [
    'the browser’s database',
    async () => {
      const name = `contract-${randomUUID()}`
      databases.push(name)
      return browserStore(randomUUID, name)
    },
  ],
  ['memory that may give way', async () => steadyStore(memoryStore(randomUUID), randomUUID)],
]

afterAll(async () => {
  for (const name of databases) void forgetBrowserStore(name)
})

describe.each(stores)('outbox in %s', (_name, open) => {
  it('numbers the facts of a link from 1 without a gap, also when they come at once', async () => {
    const store = await open()
    const kept = await Promise.all([1, 2, 3, 4, 5].map((hole) => keep(store, 'a', score(hole, 4))))
    expect(kept.map((each) => (each.ok ? each.value.seq : 0)).sort()).toEqual([1, 2, 3, 4, 5])
    expect(seqs(await store.facts('a'))).toEqual([1, 2, 3, 4, 5])
    expect((await store.facts('a')).every((each) => each.fact.seq === each.seq)).toBe(true)
  })

  it('keeps a device id and numbers for each link by itself', async () => {
    const store = await open()
    await keep(store, 'a', score(1, 4))
    await keep(store, 'b', score(1, 5))
    await keep(store, 'a', score(2, 4))
    expect(seqs(await store.waiting('a', 10))).toEqual([1, 2])
    expect(seqs(await store.waiting('b', 10))).toEqual([1])
    expect((await store.queue('a')).deviceId).not.toBe((await store.queue('b')).deviceId)
    expect((await store.queue('a')).deviceId).toBe((await store.queue('a')).deviceId)
  })

  it('lets the oldest go first, and no more than asked', async () => {
    const store = await open()
    for (let hole = 1; hole <= 12; hole++) await keep(store, 'a', score(hole, 4))
    expect(seqs(await store.waiting('a', 5))).toEqual([1, 2, 3, 4, 5])
  })

  it('settles by the answer: received, late with its sentence, refused with its code', async () => {
    const store = await open()
    for (let hole = 1; hole <= 4; hole++) await keep(store, 'a', score(hole, 4))
    await store.settle(
      'a',
      [1, 2, 3],
      {
        lastSeq: 3,
        scoreVersion: 7,
        answers: [
          { seq: 1, answer: 'received' },
          { seq: 2, answer: 'late', sentence: 'This card is signed and handed in.' },
          { seq: 3, answer: 'refused', code: 'no-such-hole', sentence: 'There is no hole 3.' },
        ],
      },
      AT,
    )
    const facts = await store.facts('a')
    expect(facts.map((each) => each.state)).toEqual(['received', 'late', 'refused', 'kept'])
    expect(facts[1]?.sentence).toBe('This card is signed and handed in.')
    expect(facts[2]?.code).toBe('no-such-hole')
    expect(facts[0]?.settledVersion).toBe(7)
    expect((await store.queue('a')).lastReceivedAt).toBe(AT)
  })

  it('never settles a fact that was not in the delivery', async () => {
    const store = await open()
    await keep(store, 'a', score(1, 4))
    await keep(store, 'a', score(2, 4))
    await store.settle('a', [1], { lastSeq: 9, scoreVersion: 1, answers: [] }, AT)
    expect((await store.facts('a')).map((each) => each.state)).toEqual(['received', 'kept'])
  })

  it('does not change an answer that was given', async () => {
    const store = await open()
    await keep(store, 'a', score(1, 4))
    const no = { seq: 1, answer: 'refused', code: 'no', sentence: 'No.' } as const
    await store.settle('a', [1], { lastSeq: 1, scoreVersion: 1, answers: [no] }, AT)
    await store.settle('a', [1], { lastSeq: 1, scoreVersion: 2, answers: [{ seq: 1, answer: 'received' }] }, AT)
    expect((await store.facts('a'))[0]).toMatchObject({ state: 'refused', code: 'no' })
  })

  it('lets what the server has forgotten wait again', async () => {
    const store = await open()
    for (let hole = 1; hole <= 3; hole++) await keep(store, 'a', score(hole, 4))
    await store.settle('a', [1, 2, 3], { lastSeq: 3, scoreVersion: 1, answers: [] }, AT)
    await store.waitAgain('a', 1)
    expect(seqs(await store.waiting('a', 10))).toEqual([2, 3])
  })

  it('keeps the holder, the pack, the end of a link, and what has been read', async () => {
    const store = await open()
    await store.setHolder('a', HOLD)
    await store.keepPack('a', aldermossPack(), AT)
    await store.setEnded('a', { code: 'link-ended', sentence: 'The day is over.', at: AT })
    await keep(store, 'a', score(1, 4))
    await store.markSeen('a', [1])
    expect(await store.queue('a')).toMatchObject({
      holder: asId<EntryId>('trevennor'),
      ended: { code: 'link-ended' },
      nextSeq: 2,
    })
    expect((await store.pack('a'))?.pack).toEqual(aldermossPack())
    expect(await store.pack('b')).toBeNull()
    expect((await store.facts('a'))[0]?.seen).toBe(true)
    expect((await store.packs()).map((each) => each.link)).toEqual(['a'])
  })

  it('names the links that wait, without the ended ones', async () => {
    const store = await open()
    await keep(store, 'a', score(1, 4))
    await keep(store, 'b', score(1, 4))
    await keep(store, 'c', score(1, 4))
    await store.setEnded('b', { code: 'link-ended', sentence: '', at: AT })
    await store.settle('c', [1], { lastSeq: 1, scoreVersion: 1, answers: [] }, AT)
    expect(await store.linksWaiting()).toEqual(['a'])
  })

  it('gives the lease to one sender until it is dropped or runs out', async () => {
    const store = await open()
    expect(await store.takeLease('a', 'one', 1000, 2000)).toBe(true)
    expect(await store.takeLease('a', 'two', 1500, 2500)).toBe(false)
    expect(await store.takeLease('a', 'two', 2001, 3000)).toBe(true)
    await store.dropLease('a', 'one')
    expect(await store.takeLease('a', 'one', 2500, 3500)).toBe(false)
    await store.dropLease('a', 'two')
    expect(await store.takeLease('a', 'one', 2500, 3500)).toBe(true)
  })
})

describe('the browser’s database', () => {
  it('has everything still when it is opened again, as after a closed tab', async () => {
    const name = `reopened-${randomUUID()}`
    databases.push(name)
    const before = await browserStore(randomUUID, name)
    await before.setHolder('a', HOLD)
    await keep(before, 'a', score(1, 5))
    const { deviceId } = await before.queue('a')
    const after = await browserStore(randomUUID, name)
    expect(seqs(await after.waiting('a', 10))).toEqual([1])
    expect(await after.queue('a')).toMatchObject({ deviceId, holder: asId<EntryId>('trevennor'), nextSeq: 2 })
  })

  it('takes no number twice when two tabs write at once', async () => {
    const name = `two-tabs-${randomUUID()}`
    databases.push(name)
    const one = await browserStore(randomUUID, name)
    const two = await browserStore(randomUUID, name)
    await Promise.all([1, 2, 3, 4, 5, 6].map((hole) => keep(hole % 2 ? one : two, 'a', score(hole, 4))))
    expect(seqs(await one.facts('a'))).toEqual([1, 2, 3, 4, 5, 6])
    expect(new Set((await two.facts('a')).map((each) => each.fact.kind === 'score' && each.fact.hole)).size).toBe(6)
  })
})
