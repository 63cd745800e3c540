// Promise: a server that is killed by SIGKILL two hundred times in the middle of its work never loses what it has
// acknowledged. After each death the book opens, SQLite finds it whole and without loose ends, every score that a phone
// called received is there exactly once, and everything else is still in an outbox.
//
// Eighteen phones of six groups write and deliver all the time, several at once; the moment of death is rolled: after so
// many answers and so many milliseconds more. Where it falls then is the machine's affair: what holds must hold anywhere. (phones.test.ts has the same deaths at places that replay.)
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { asId } from '../setup/ids'
import { contradictions, openedBook } from './book-check'
import { dice } from './dice'
import { Network, withNetwork } from './network'
import { copyOf, GROUPS, type PreparedBook, preparedBook } from './prepared-book'
import { bundledServer, ServerProcess } from './server-process'
import { SimPhone } from './sim-phone'

const KILLS = Number(process.env.KILLS ?? 20)
/** A book is one society's day, not two hundred of them. */
const KILLS_A_BOOK = 20
const PHONES = 18

// Nothing here is about time; a busy machine starts a process in a minute instead of a second.
vi.setConfig({ testTimeout: 1_800_000, hookTimeout: 600_000 })

let book: PreparedBook
let bundle: string
const started: ServerProcess[] = []

beforeAll(async () => {
  ;[book, bundle] = await Promise.all([preparedBook(), bundledServer('kill-server')])
})
afterAll(() => Promise.all(started.map((server) => server.stop())))

interface Lane {
  readonly server: ServerProcess
  readonly roll: (sides: number) => number
  phones: readonly SimPhone[]
}

const newPhones = (roll: Lane['roll'], name: string) =>
  Array.from({ length: PHONES }, (_, at) => {
    const group = book.groups[at % GROUPS]!
    return new SimPhone(asId(`${name}-phone-${at}-of-eighteen`), group, group.entryIds[roll(4)]!, 0)
  })

/** Everybody writes and delivers; after some answers, and a moment more, the server is gone. */
async function underLoad({ server, roll, phones }: Lane, network: Network): Promise<void> {
  let over = false
  let answers = roll(PHONES * 2)
  let heardEnough = () => {}
  const enough = new Promise<void>((resolve) => {
    heardEnough = resolve
  })
  const busy = phones.map(async (phone) => {
    while (!over) {
      for (let count = 1 + roll(4); count > 0; count--)
        await phone.write(phone.group.cardIds[roll(4)]!, 1 + roll(18), 2 + roll(8))
      await withNetwork(network, () => phone.talk())
      if (--answers <= 0) heardEnough()
    }
  })
  await enough
  await new Promise((resolve) => setTimeout(resolve, roll(12)))
  over = true
  await server.killed()
  await Promise.all(busy)
}

async function check(lane: Lane): Promise<{ received: number; waiting: number; inTheBookUntold: number }> {
  const opened = openedBook(lane.server.file)
  try {
    const found = [...opened.damage()]
    const sum = { received: 0, waiting: 0, inTheBookUntold: 0 }
    for (const phone of lane.phones) {
      const of = opened.ofDevice(`${phone.group.groupId}.${phone.deviceId}`)
      const facts = await phone.facts()
      found.push(...contradictions(of, phone.wrote, facts))
      const received = facts.filter((one) => one.state === 'received').length
      sum.received += received
      sum.waiting += facts.length - received
      sum.inTheBookUntold += of.scores.length - received
    }
    expect(found).toEqual([])
    return sum
  } finally {
    opened.close()
  }
}

it(`loses nothing it acknowledged, killed ${KILLS} times under load`, async () => {
  const began = Date.now()
  let kills = 0
  const sum = { received: 0, waiting: 0, inTheBookUntold: 0 }
  const lane = async (name: string, seed: number) => {
    const server = new ServerProcess(bundle, copyOf(book))
    started.push(server)
    await server.start()
    const me: Lane = { server, roll: dice(seed), phones: [] }
    for (let mine = 0; kills < KILLS; mine++) {
      kills++
      if (mine % KILLS_A_BOOK === 0) {
        me.phones = newPhones(me.roll, `${name}-${mine}`)
        if (mine) await server.open(copyOf(book))
      }
      const network = new Network(server, me.roll, { left: 0, sigkill: true })
      network.good = true
      await underLoad(me, network)
      const [now] = await Promise.all([check(me), server.start()])
      for (const key of Object.keys(sum) as (keyof typeof sum)[]) sum[key] += now[key]
      expect([network.broken, server.errors]).toEqual([[], ''])
    }
    return server.kills
  }
  const done = await Promise.all([lane('left', 11), lane('right', 23)])
  process.stdout.write(
    `${done.reduce((all, one) => all + one, 0)} kills in ${Math.round((Date.now() - began) / 1000)} s; summed over the ` +
      `checks ${sum.received} received, ${sum.waiting} waiting, ${sum.inTheBookUntold} of them committed with the answer lost\n`,
  )
  expect(done.reduce((all, one) => all + one, 0)).toBe(KILLS)
  // A load that never is in the server when it dies would prove nothing.
  if (KILLS >= 100) expect(sum.inTheBookUntold).toBeGreaterThan(KILLS / 4)
  expect(sum.received).toBeGreaterThan(KILLS)
})
