// A phone in the hand of a test: its timers, its signal and its clock are turned by hand.

import { randomUUID } from 'node:crypto'
import type { EntryId } from '@/lib/facts/ids'
import type { PlayNow } from '@/lib/facts/play-stop'
import type { CardNow } from '@/lib/outbox/card-now'
import { type GroupSnapshot, openGroupBook } from '@/lib/outbox/group-book'
import type { LineEars } from '@/lib/outbox/live-line'
import { memoryStore } from '@/lib/outbox/memory-store'
import type { Phone } from '@/lib/outbox/phone'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'

export const LINK = 'fern-group-3'

export function phoneFor(server: FakeServer) {
  const timers: { run: () => void; ms: number }[] = []
  const signal = { on: true }
  let clock = Date.parse('2026-04-25T12:53:00.000Z')
  const ears: LineEars[] = []
  const phone: Phone = {
    store: memoryStore(randomUUID),
    post: async (_link, delivery) => (signal.on ? server.deliver(delivery) : { kind: 'unknown' }),
    fetchPack: async (_link, looking) => {
      if (!signal.on) return { kind: 'unknown' }
      return server.ended
        ? { kind: 'ended', ...server.ended }
        : { kind: 'pack', pack: looking ? server.look(looking) : server.pack }
    },
    locks: undefined,
    me: randomUUID(),
    now: () => {
      clock += 1000
      return new Date(clock)
    },
    chance: () => 0.5,
    later: (run, ms) => {
      const timer = { run, ms }
      timers.push(timer)
      return () => void (timers.includes(timer) && timers.splice(timers.indexOf(timer), 1))
    },
    tell: () => {},
    hear: () => () => {},
    liveLine: (_link, own) => {
      ears.push(own)
      return () => {}
    },
    tellReached: () => {},
    whenReached: () => () => {},
    whenReachable: () => () => {},
    looking: () => true,
    askBackground: () => {},
  }
  const fire = () => {
    for (const each of timers.splice(0)) each.run()
  }
  const hear = (play: PlayNow) => {
    for (const own of ears) own.play(play)
  }
  const advance = (ms: number) => {
    clock += ms
  }
  return { phone, signal, timers, fire, hear, advance }
}

export const quiet = async () => {
  for (let i = 0; i < 60; i++) await Promise.resolve()
}

export async function opened(server = new FakeServer(aldermossPack())) {
  const around = phoneFor(server)
  const book = openGroupBook(LINK, around.phone)
  const stop = book.start()
  await quiet()
  await book.hold(asId('trevennor'))
  const now = () => book.snapshot() as GroupSnapshot
  const card = (entryId: EntryId) => now().cards.find((each) => each.card.entryId === entryId) as CardNow
  return { ...around, server, book, stop, now, card }
}
