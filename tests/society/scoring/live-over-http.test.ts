// Promise, over real HTTP: a watcher whose stream is cut hears, when it comes back, of the newest version and misses
// nothing; whoever has the newest already is not told again; and a burst under many watchers is counted once.

import { createServer, get, type IncomingMessage, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { GET as board } from '@/app/api/board/[society]/[day]/route'
import { GET as watch } from '@/app/api/live/[society]/[day]/route'
import { openStreams } from '@/app/api/live/open-streams'
import type { EntryId } from '@/lib/facts/ids'
import { liveHere } from '@/lib/society/live'
import { dayBoard } from '@/lib/society/read-board'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, Phone } from './day-in-play'

let day: DayInPlay
let server: Server
let address: string
const open = new Set<Watcher>()

/** The routes as they are, behind a socket that can be cut. */
function served(): Server {
  return createServer(async (request, response) => {
    const [, , kind, society = '', daySlug = ''] = (request.url ?? '').split('/')
    const gone = new AbortController()
    response.on('close', () => gone.abort())
    const headers = new Headers()
    for (const [name, value] of Object.entries(request.headers)) headers.set(name, String(value))
    const params = Promise.resolve({ society, day: daySlug })
    const asked = new Request(`http://x${request.url}`, { headers, signal: gone.signal })
    const answer = await (kind === 'live' ? watch : board)(asked, { params })
    response.writeHead(answer.status, Object.fromEntries(answer.headers))
    const reader = answer.body?.getReader()
    for (;;) {
      const part = await reader?.read()
      if (!part || part.done) break
      response.write(part.value)
    }
    response.end()
  })
}

class Watcher {
  readonly heard: string[] = []
  private last: string | null = null
  private stream: IncomingMessage | null = null
  told: (version: string) => void = () => undefined

  async connect(): Promise<this> {
    open.add(this)
    const headers = this.last === null ? {} : { 'last-event-id': this.last }
    const stream = await new Promise<IncomingMessage>((done) =>
      get(`${address}/api/live/${day.slug}/${day.daySlug}`, { headers, agent: false }, done),
    )
    this.stream = stream
    let text = ''
    stream.on('error', () => undefined)
    stream.on('data', (part: Buffer) => {
      text += part.toString()
      for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
        const id = /^id: (.+)$/m.exec(text.slice(0, end))?.[1]
        text = text.slice(end + 2)
        if (id === undefined) continue
        this.last = id
        this.heard.push(id)
        this.told(id)
      }
    })
    return this
  }

  cut(): void {
    this.stream?.destroy()
    open.delete(this)
  }
}

const until = async (held: () => boolean) => {
  for (let tries = 0; tries < 400 && !held(); tries++) await new Promise((resolve) => setTimeout(resolve, 10))
  expect(held()).toBe(true)
}
const newest = async () => got(await dayBoard(day.slug, day.daySlug)).version

beforeAll(async () => {
  day = await dayInPlay()
  server = served()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
})
afterAll(async () => {
  for (const watcher of [...open]) watcher.cut()
  for (const one of [...openStreams()]) one.close()
  server.closeAllConnections()
  await new Promise((resolve) => server.close(resolve))
  await day.close()
})

it('resumes after a cut with the newest version, and is not told what it has', async () => {
  const [a] = day.players(1) as [EntryId]
  const phone = new Phone(day, 1, a)
  const watcher = await new Watcher().connect()
  const before = await newest()
  await until(() => watcher.heard.at(-1) === before)

  watcher.cut()
  for (const hole of [1, 2, 3]) await phone.score(asId(a), hole, 5).send()
  const after = await newest()
  expect(after).not.toBe(before)
  await watcher.connect()
  await until(() => watcher.heard.at(-1) === after)

  const told = watcher.heard.length
  watcher.cut()
  await watcher.connect()
  await new Promise((resolve) => setTimeout(resolve, 150))
  expect(watcher.heard.length).toBe(told)
  await phone.score(asId(a), 4, 5).send()
  const last = await newest()
  await until(() => watcher.heard.at(-1) === last)
  expect(watcher.heard.length).toBe(told + 1)
  watcher.cut()
})

it('counts a burst once for many watchers, and each ends at its last version', async () => {
  const [a] = day.players(1) as [EntryId]
  const phone = new Phone(day, 1, a)
  const watchers = await Promise.all(Array.from({ length: 25 }, () => new Watcher().connect()))
  const start = await newest()
  await until(() => watchers.every((one) => one.heard.at(-1) === start))
  const counts = new Map<string, Set<string>>()
  const asked: Promise<void>[] = []
  const ask = async () => {
    const answer = (await (await fetch(`${address}/api/board/${day.slug}/${day.daySlug}`)).json()) as {
      version: string
      countedAt: string
    }
    counts.set(answer.version, (counts.get(answer.version) ?? new Set()).add(answer.countedAt))
  }
  for (const one of watchers) one.told = () => asked.push(ask())
  for (let hole = 5; hole <= 12; hole++) await phone.score(asId(a), hole, 5).send()
  const last = await newest()
  await until(() => watchers.every((one) => one.heard.at(-1) === last))
  await Promise.all(asked)
  // No version was counted twice, however many asked for it at once.
  for (const moments of counts.values()) expect(moments.size).toBe(1)
  expect(counts.has(last)).toBe(true)
  for (const one of watchers) expect(new Set(one.heard).size).toBe(one.heard.length)
  for (const one of watchers) one.cut()
}, 30_000)

it('tells a late watcher what the others were told while it was on its way', () => {
  const line = liveHere(async () => null)
  line.watch(asId('d'), () => undefined)
  line.announce(asId('d'), '3.12')
  const heard: string[] = []
  line.watch(asId('d'), (version) => void heard.push(version), '3.9')
  line.watch(asId('d'), (version) => void heard.push(`never ${version}`), '3.12')
  line.watch(asId('d'), (version) => void heard.push(`never ${version}`), '4.0')
  expect(heard).toEqual(['3.12'])
})
