// Promise: what weighs on the server, and every try to get in, is counted: a desk may take the book away, or have it copied, so many times an hour
// and is told so in a sentence; another society is not kept waiting; and the next hour begins anew.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exportSociety } from '@/lib/society/export-society'
import { copyBook } from '@/lib/society/keep-copies'
import { signInHandlers } from '@/lib/society/sign-in'
import { groupLinkOfCode } from '@/lib/society/who-is-asking'
import { mayTry } from '@/lib/store/attempts'
import { book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { type World, world } from '../setup/world'

let close: () => Promise<void>
let here: World
let there: World
beforeAll(async () => {
  close = (await ownBook()).close
  here = await world('fernbrake')
  there = await world('wetherlam')
})
afterAll(() => close())

const NOON = Date.parse('2031-06-14T12:00:00Z')
const at = (minutes: number) => new Date(NOON + minutes * 60_000)

it('an export is given twelve times an hour to each society', async () => {
  for (let time = 0; time < 12; time++) expect((await exportSociety(here.actor, at(time))).ok).toBe(true)
  expect(await exportSociety(here.actor, at(12))).toMatchObject({ ok: false, code: 'too-many-tries' })
  expect((await exportSociety(there.actor, at(12))).ok).toBe(true)
  expect((await exportSociety(here.actor, at(90))).ok).toBe(true)
})

it('a copy of the installation is made six times an hour, whoever asks', async () => {
  for (let time = 0; time < 6; time++)
    expect((await copyBook(time % 2 ? here.actor : there.actor, at(time))).ok).toBe(true)
  expect(await copyBook(here.actor, at(7))).toMatchObject({ ok: false, code: 'too-many-tries' })
  expect((await copyBook(here.actor, at(90))).ok).toBe(true)
})

describe('tries', () => {
  const counters = () => book().$queryRaw<{ digest: string; count: number }[]>`SELECT "digest", "count" FROM "Attempt"`
  const signIn = (email: string) =>
    signInHandlers.POST(
      new Request('http://days.example.org/api/auth/sign-in/email', {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          host: 'days.example.org',
          origin: 'http://days.example.org',
          'x-forwarded-for': '192.0.2.9',
        },
        body: JSON.stringify({ email, password: 'not the password' }),
      }),
    )

  it('stay counted while the sign-in library empties its own table', async () => {
    for (let time = 0; time < 30; time++) await groupLinkOfCode(`fern ${100_000 + time}`, '192.0.2.1', at(200))
    expect(await groupLinkOfCode('fern 999999', '192.0.2.1', at(202))).toMatchObject({ code: 'too-many-tries' })
    // Every request of a new minute makes the library delete what is older than one.
    await book().rateLimit.deleteMany({})
    expect((await signIn('nobody@example.org')).status).toBe(401)
    expect(await groupLinkOfCode('fern 999999', '192.0.2.1', at(203))).toMatchObject({ code: 'too-many-tries' })
    expect(await groupLinkOfCode('fern 999999', '192.0.2.1', at(211))).toMatchObject({ code: 'no-such-code' })
  })

  it('for one e-mail address are twenty in a quarter of an hour, from wherever and in whatever minute', async () => {
    for (let time = 0; time < 20; time++) {
      expect((await signIn('captain@example.org')).status).toBe(401)
      await book().rateLimit.deleteMany({})
    }
    expect((await signIn('captain@example.org')).status).toBe(429)
    expect((await signIn('CAPTAIN@example.org')).status).toBe(429)
  })

  it('store nothing of what was typed, however long', async () => {
    const before = await counters()
    expect((await signIn(`${'a'.repeat(300)}@example.org`)).status).toBe(400)
    expect((await signIn('a'.repeat(5_000_000))).status).toBe(413)
    expect(await counters()).toEqual(before)
    await signIn('wrongly.typed@example.org')
    const after = await counters()
    expect(after.length).toBe(before.length + 1)
    for (const { digest } of after) expect(digest).toMatch(/^[\w-]{43}$/)
    for (const { key } of await book().rateLimit.findMany()) expect(key).not.toContain('typed')
  })

  it('are bounded in number: the counters that would end first give way', async () => {
    const moment = at(400)
    const until = BigInt(moment.getTime() + 60_000)
    await book().$executeRaw`
      WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 20100)
      INSERT INTO "Attempt" ("digest", "count", "began", "until")
      SELECT printf('%043d', i), 1, 1, ${until} + i FROM n`
    expect(await mayTry('one more', 3, 3_600_000, moment)).toBe(true)
    const [{ many } = { many: 0 }] = await book().$queryRaw<{ many: number }[]>`SELECT count(*) AS many FROM "Attempt"`
    expect(Number(many)).toBe(20_000)
    await mayTry('one more', 3, 3_600_000, moment)
    await mayTry('one more', 3, 3_600_000, moment)
    expect(await mayTry('one more', 3, 3_600_000, moment)).toBe(false)
  })
})
