// Promise: in whatever way there was no way through, and whether or not the phone says that there is one again, all that
// waits is received within three seconds of it, once; and while there is none, the server is not stormed.
//
// The phone is the page's own book of the group, on a clock that the test turns; the server is a process with the
// handlers of app/api on the real database. Seeds replay: FAULT_SEED=7 npx vitest run tests/faults/returns.test.ts

import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import type { DeviceId } from '@/lib/facts/ids'
import type { FactDraft } from '@/lib/outbox/kept-fact'
import { asId } from '../setup/ids'
import { contradictions, openedBook } from './book-check'
import { dice } from './dice'
import { withNetwork } from './network'
import { copyOf, GROUPS, type PreparedBook, preparedBook } from './prepared-book'
import { GONE, returningPhone, Valley } from './returning-phone'
import { bundledServer, ServerProcess } from './server-process'

const SEEDS = 8
const FIRST = Number(process.env.FAULT_SEED ?? 1)
const RECEIVED_MS = 3_000

vi.setConfig({ testTimeout: 600_000, hookTimeout: 600_000 })

let book: PreparedBook
let server: ServerProcess

beforeAll(async () => {
  const [prepared, bundle] = await Promise.all([preparedBook(), bundledServer('returns-server')])
  book = prepared
  server = new ServerProcess(bundle, copyOf(book))
  await server.start()
})
afterAll(() => server.stop())

function phoneOf(place: number, name: string, roll = dice(1)) {
  const group = book.groups[place]!
  const network = new Valley(server, roll, { left: 0, sigkill: false })
  const deviceId = asId<DeviceId>(`returning-phone-of-${name}`)
  const phone = returningPhone(deviceId, group.link, network, () => roll(100) / 100)
  const wrote: { seq: number; draft: FactDraft }[] = []
  async function write(at: number, hole: number, score: number): Promise<void> {
    const [cardId, writer] = [group.cardIds[at]!, group.entryIds[0]!]
    const kept = await phone.book.write(cardId, hole, score)
    if (!kept.ok) throw new Error(kept.sentence)
    const last = (await phone.store.facts(group.link)).at(-1)!
    if (wrote.at(-1)?.seq !== last.seq)
      wrote.push({ seq: last.seq, draft: { kind: 'score', cardId, writer, hole, score } })
  }
  async function opened(): Promise<() => void> {
    const stop = await phone.start()
    await phone.pass(1_000)
    await phone.book.hold(group.entryIds[0]!)
    return stop
  }
  async function broken(): Promise<readonly string[]> {
    const there = openedBook(server.file)
    try {
      const of = there.ofDevice(`${group.groupId}.${deviceId}`)
      return [...there.damage(), ...network.broken, ...contradictions(of, wrote, await phone.store.facts(group.link))]
    } finally {
      there.close()
    }
  }
  return { ...phone, network, write, opened, broken }
}

it.each(GONE.flatMap((gone) => [true, false].map((said) => [gone, said] as const)))(
  'a way that was gone (%s), the phone saying that it is back: %s',
  async (gone, said) => {
    const phone = phoneOf(GONE.indexOf(gone), `${gone}-${said}`)
    await withNetwork(phone.network, async () => {
      const stop = await phone.opened()
      phone.network.gone = gone
      for (let hole = 1; hole <= 6; hole++) await phone.write(hole % 4, hole, 3 + ((hole + Number(said)) % 4))
      const before = phone.tries()
      await phone.pass(4 * 60_000)
      // Four minutes of a valley: the scores themselves are tried seldom, whatever else is asked.
      expect(phone.tries() - before).toBeLessThanOrEqual(12)
      phone.network.gone = null
      if (said) phone.online()
      expect(await phone.untilReceived()).toBeLessThan(RECEIVED_MS)
      stop()
    })
    expect(await phone.broken()).toEqual([])
  },
)

it(`a way that goes and comes in any order, in ${SEEDS} seeded rounds`, async () => {
  for (let seed = FIRST; seed < FIRST + SEEDS; seed++) {
    const roll = dice(seed)
    if ((seed - FIRST) % GROUPS === 0) await server.open(copyOf(book))
    const phone = phoneOf(seed % GROUPS, `seed-${seed}`, roll)
    await withNetwork(phone.network, async () => {
      const stop = await phone.opened()
      for (let turn = 0; turn < 6; turn++) {
        phone.network.gone = GONE[roll(GONE.length)]!
        for (let count = 1 + roll(5); count > 0; count--) await phone.write(roll(4), 1 + roll(18), 2 + roll(8))
        await phone.pass([roll(3_000), roll(30_000), roll(90_000)][roll(3)]!)
        phone.network.gone = null
        if (roll(2)) phone.online()
        // Sometimes the way is open for a moment only, and nobody promises anything of that.
        if (roll(3) === 0) await phone.pass(roll(400))
        else expect(await phone.untilReceived(), `seed ${seed}, turn ${turn}`).toBeLessThan(RECEIVED_MS)
      }
      phone.network.gone = null
      expect(await phone.untilReceived(), `seed ${seed}, in the end`).toBeLessThan(RECEIVED_MS)
      stop()
    })
    expect(await phone.broken(), `seed ${seed}`).toEqual([])
  }
})

it('a server that is killed and starts again behind a phone that hears nothing of it', async () => {
  await server.open(copyOf(book))
  const phone = phoneOf(5, 'dead-server')
  await withNetwork(phone.network, async () => {
    const stop = await phone.opened()
    await server.killed()
    phone.network.gone = 'lost'
    for (let hole = 1; hole <= 4; hole++) await phone.write(0, hole, 5)
    await phone.pass(70_000)
    await server.start()
    phone.network.gone = null
    expect(await phone.untilReceived()).toBeLessThan(RECEIVED_MS)
    stop()
  })
  expect(await phone.broken()).toEqual([])
})
