// Promise: a watcher hears of every change, a burst once or twice and its last version for certain, also when another
// process made it; a board of one version is counted once, and never carries a key, a code or an address.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GET as readBoardAsJson } from '@/app/api/board/[society]/[day]/route'
import { POST as deliver } from '@/app/api/group/[link]/facts/route'
import { GET as openPack } from '@/app/api/group/[link]/route'
import { GET as watch } from '@/app/api/live/[society]/[day]/route'
import { addStream, type OpenStream, openStreams, streamFrom } from '@/app/api/live/open-streams'
import type { EntryId } from '@/lib/facts/ids'
import { live, liveHere } from '@/lib/society/live'
import { countedBoard, dayBoard } from '@/lib/society/read-board'
import { cardWorking, matchOf, playerCard } from '@/lib/society/read-card'
import { memberPage } from '@/lib/society/read-member'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, over, Phone } from './day-in-play'

let day: DayInPlay
let a: EntryId
let b: EntryId
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms))

beforeAll(async () => {
  day = await dayInPlay()
  ;[a, b] = day.players(1) as [EntryId, EntryId]
})
afterAll(() => day.close())

describe('the live line', () => {
  it('tells the newest version after a burst, and nobody who has gone', async () => {
    const line = liveHere(async () => null)
    const heard: string[] = []
    const gone: string[] = []
    const end = line.watch(asId('d'), (version) => void heard.push(version))
    line.watch(asId('d'), (version) => void gone.push(version))()
    for (let version = 1; version <= 50; version++) line.announce(asId('d'), `1.${version}`)
    await pause(250)
    expect(heard[0]).toBe('1.1')
    expect(heard.at(-1)).toBe('1.50')
    expect(heard.length).toBeLessThan(4)
    expect(gone).toEqual([])
    end()
    line.announce(asId('d'), '1.51')
    expect(heard.at(-1)).toBe('1.50')
  })

  it('finds what another process changed', async () => {
    let version = '1.1'
    const line = liveHere(async () => version)
    const heard: string[] = []
    const end = line.watch(asId('d'), (one) => void heard.push(one))
    await pause(1100)
    version = '1.2'
    await pause(1100)
    end()
    expect(heard).toEqual(['1.1', '1.2'])
  })

  it('as server-sent events begins with the version, resumes by it, tells a score, and closes on demand', async () => {
    const params = Promise.resolve({ society: day.slug, day: day.daySlug })
    const open = async (headers: Record<string, string> = {}) => {
      const answer = await watch(new Request('http://x/', { headers }), { params })
      expect(answer.headers.get('content-type')).toContain('text/event-stream')
      return answer.body!.getReader()
    }
    const decoder = new TextDecoder()
    const reader = await open()
    const next = async () => decoder.decode((await reader.read()).value)
    expect(await next()).toContain('retry')
    const first = await next()
    const version = got(await dayBoard(day.slug, day.daySlug)).version
    expect(first).toBe(`id: ${version}\nevent: version\ndata: {"version":"${version}"}\n\n`)
    const resumed = await open({ 'last-event-id': version })
    expect(decoder.decode((await resumed.read()).value)).toContain('retry')
    await new Phone(day, 1, a).score(asId(a), 1, 5).send()
    const told = await next()
    expect(told).toContain(got(await dayBoard(day.slug, day.daySlug)).version)
    // The resumed reader was not told the version it had, only the new one.
    expect(decoder.decode((await resumed.read()).value)).toBe(told)
    for (const one of [...openStreams()]) one.close()
    expect((await reader.read()).done).toBe(true)
    expect(openStreams().size).toBe(0)
    const nowhere = await watch(new Request('http://x/'), { params: Promise.resolve({ society: 'no', day: 'no' }) })
    expect(nowhere.status).toBe(404)
  })
})

describe('streams', () => {
  it('are limited for one address and in all; the oldest is given up and asked to come back later', () => {
    const said: string[] = []
    const stream = (name: string, from: string | undefined): OpenStream => ({
      from,
      say: (text) => said.push(`${name} ${text.trim()}`),
      close: () => said.push(`${name} closed`),
    })
    for (const name of ['a', 'b', 'c']) addStream(stream(name, '192.0.2.1'), 2, 10)
    expect(said.splice(0)).toEqual(['a retry: 60000', 'a closed'])
    for (const name of ['d', 'e', 'f']) addStream(stream(name, undefined), 2, 4)
    expect(said).toEqual(['b retry: 60000', 'b closed'])
    expect(openStreams().size).toBe(4)
    openStreams().clear()
    expect(streamFrom(new Headers({ 'x-forwarded-for': '192.0.2.1' }))).toBe('192.0.2.1')
    for (const here of ['127.0.0.1', '::1', '::ffff:127.0.0.1'])
      expect(streamFrom(new Headers({ 'x-forwarded-for': here }))).toBeUndefined()
  })
})

describe('the board', () => {
  it('is counted once for all who ask at once, kept, and given as 304 to who has it', async () => {
    await new Phone(day, 1, a).round(asId(a), over(10)).send()
    const all = await Promise.all(Array.from({ length: 25 }, () => countedBoard(day.slug, day.daySlug)))
    const texts = new Set(all.map((one) => got(one).text))
    // countedAt is in the text: two counts would differ.
    expect(texts.size).toBe(1)
    expect(got(await countedBoard(day.slug, day.daySlug)).text).toBe([...texts][0])
    expect((await book().standingsSnapshot.findFirst())?.board).toBe([...texts][0])
    const params = Promise.resolve({ society: day.slug, day: day.daySlug })
    const answer = await readBoardAsJson(new Request('http://x/'), { params })
    const etag = answer.headers.get('etag')!
    expect(await answer.json()).toMatchObject({ version: etag.replaceAll('"', '') })
    const again = await readBoardAsJson(new Request('http://x/', { headers: { 'if-none-match': etag } }), { params })
    expect([again.status, await again.text()]).toEqual([304, ''])
  })

  it('is counted anew when it was kept before this server began: an older program may have made it', async () => {
    await book().standingsSnapshot.updateMany({ data: { board: '{"of":"older"}', countedAt: new Date(0) } })
    const { text } = got(await countedBoard(day.slug, day.daySlug))
    expect(text).toContain('"competitions"')
    expect((await book().standingsSnapshot.findFirst())?.board).toBe(text)
  })

  it('leads with a sentence and tells where the groups are', async () => {
    const board = got(await dayBoard(day.slug, day.daySlug))
    expect(board.sentence).toMatch(/^\w+ leads on \d+ with seven players still to finish and one card to be signed\.$/)
    expect(board.groups).toMatchObject([
      { number: 1, started: true, onHole: 18 },
      { number: 2, started: false, onHole: null },
    ])
  })

  it('and the other public readings carry no key, code, address or telephone', async () => {
    const record = await day.record()
    const people = await book().person.findMany({ select: { pageKey: true } })
    await book().person.updateMany({ data: { email: 'somebody@example.org', phone: '01632 960000' } })
    const read = [
      got(await countedBoard(day.slug, day.daySlug)).text,
      JSON.stringify(got(await playerCard(day.slug, day.daySlug, asId(a)))),
      JSON.stringify(got(await cardWorking(day.slug, day.daySlug, asId(a), { hole: 1 }))),
      JSON.stringify(got(await matchOf(day.slug, day.daySlug, a, b))),
    ].join()
    for (const secret of [
      ...record.groups.flatMap((one) => [one.code, one.linkKey]),
      ...people.map((one) => one.pageKey),
    ])
      expect(read).not.toContain(secret)
    expect(read).not.toMatch(/@|01632/)
  })
})

describe('readings of a card', () => {
  it('say who wrote a score, what it counted, and how two cards stand as a match', async () => {
    await new Phone(day, 1, b).round(asId(b), over(30)).score(asId(a), 1, 5).send()
    const working = got(await cardWorking(day.slug, day.daySlug, asId(a), { hole: 1 }))
    expect(working.steps.map((step) => step.label)).toContain('Gross')
    expect(working.steps.find((step) => step.label === 'Gross')!.sentence).toMatch(
      /^Written by .+ and by .+ They agree\.$/,
    )
    expect(working.steps.find((step) => step.label === 'Handicap figure')!.sentence).toContain('Frozen on')
    const card = got(await playerCard(day.slug, day.daySlug, asId(a)))
    expect(card.readings.map((one) => one.formatName)).toEqual(['Stableford', 'Four-ball Stableford'])
    expect(card.readings[1]!.own.reduce((sum, line) => sum + (line.value ?? 0), 0)).toBeGreaterThan(0)
    const match = got(await matchOf(day.slug, day.daySlug, a, b))
    expect(
      match.a.holes.filter((line) => line.value === 1).length + match.b.holes.filter((line) => line.value === 1).length,
    ).toBeGreaterThan(0)
    expect(match.sentence).toMatch(/beat|halved/)
    expect(await matchOf(day.slug, day.daySlug, a, a)).toMatchObject({ code: 'no-such-card' })
    const total = got(await cardWorking(day.slug, day.daySlug, asId(a), {}))
    expect(total.sentence).toMatch(/^\d+ points: \d+ out and \d+ in\./)
  })

  it('and the member’s page has the live card', async () => {
    const entry = (await day.record()).entries.find((one) => one.id === a)!
    const page = got(await memberPage({ kind: 'member', societyId: day.w.actor.societyId, personId: entry.personId }))
    expect(page.cards).toMatchObject([{ entryId: a, live: true, daySlug: day.daySlug }])
    expect(page.records).toHaveLength(1)
    expect(await memberPage({ kind: 'anybody' })).toMatchObject({ code: 'not-allowed' })
  })
})

describe('the door of the phone', () => {
  const post = async (link: string, body: string) =>
    deliver(new Request('http://x/', { method: 'POST', body }), { params: Promise.resolve({ link }) })

  it('answers each case with its own status', async () => {
    const { linkKey } = (await day.record()).groups[0]!
    const phone = new Phone(day, 1, a).score(asId(a), 2, 5).score(asId(a), 3, 5)
    const body = (facts: object[]) => JSON.stringify({ deviceId: phone.deviceId, facts })
    expect((await post('no-such-link', '{}')).status).toBe(404)
    expect((await post(linkKey, 'not json')).status).toBe(400)
    expect((await post(linkKey, '{}')).status).toBe(400)
    expect((await post(linkKey, ' '.repeat(140_000))).status).toBe(413)
    const gap = await post(linkKey, body(phone.outbox.slice(1)))
    expect([gap.status, await gap.json()]).toMatchObject([409, { code: 'gap', expected: 1 }])
    const taken = await post(linkKey, body(phone.outbox))
    expect([taken.status, await taken.json()]).toMatchObject([200, { lastSeq: 2 }])
    expect((await openPack(new Request('http://x/'), { params: Promise.resolve({ link: linkKey }) })).status).toBe(200)
    await book().group.updateMany({ where: { linkKey }, data: { revokedAt: new Date() } })
    // What was taken before the link ended is still answered, so that the phone can let go of it; nothing new is taken.
    expect((await post(linkKey, body(phone.outbox))).status).toBe(200)
    expect((await post(linkKey, body(phone.score(asId(a), 4, 5).outbox.slice(2)))).status).toBe(410)
  })
})

it('keeps one line for the process', () => {
  expect(live()).toBe(live())
})
