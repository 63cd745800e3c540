// Promise: a duty is given, handed over and ended with its date and its line in the record; one secretary who can sign
// in always remains, also when two desks end each other's duty at once; a one-time link opens once, in time, and for
// one person; nobody learns from the sign-in who has an account.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { deviceInWords } from '@/lib/boards/device-in-words'
import type { Actor } from '@/lib/facts/actor'
import type { SocietyId } from '@/lib/facts/ids'
import { endDuty, handOver } from '@/lib/society/end-duty'
import { firstSociety, foundFirstSociety, foundingLink } from '@/lib/society/first-start'
import { foundSociety } from '@/lib/society/found-society'
import { giveDuty } from '@/lib/society/give-duty'
import { endOfficerSessions, newOneTimeLink, officerList } from '@/lib/society/officer-list'
import { endOwnSessions, ownAccount } from '@/lib/society/own-account'
import { behindLink, setFirstPassword } from '@/lib/society/set-first-password'
import { signedInUser, signInWithPassword } from '@/lib/society/sign-in'
import { officerAt } from '@/lib/society/who-is-asking'
import type { Book } from '@/lib/store/client'
import { ownBook } from '../../setup/copy'
import { got } from '../setup/world'

const password = 'a long enough password'
const host = { host: 'daybook.test', 'x-forwarded-for': '203.0.113.77', 'user-agent': 'Firefox/140 Windows' }
type Officer = Extract<Actor, { kind: 'officer' }>

let close: () => Promise<void>
let book: Book
let petra: Officer
let other: Officer
beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
})
afterAll(() => close())

async function enter(email: string, secret = password): Promise<Headers> {
  const { cookies } = got(await signInWithPassword(new Headers(host), { email, password: secret }))
  return new Headers({
    ...host,
    cookie: cookies.map((one) => `${one.name}=${encodeURIComponent(one.value)}`).join('; '),
  })
}

const actorAt = async (headers: Headers, slug: string) => {
  const actor = await officerAt(headers, slug)
  if (!actor) throw new Error('no officer')
  return actor
}
const lastAct = (societyId: SocietyId) =>
  book.actRecord.findFirstOrThrow({ where: { societyId }, orderBy: { id: 'desc' } })
const dutyOf = async (actor: Actor, name: string) =>
  got(await officerList(actor)).present.find((line) => line.name === name)!

describe('the first start', () => {
  const input = {
    name: 'Fernbrake Golf Society',
    slug: 'fernbrake',
    foundedYear: 1987,
    officer: { name: 'Petra Ashgill', email: 'petra@example.org', password },
  }
  it('prints a link that founds the society once and within two days', async () => {
    const now = new Date()
    const first = got(await firstSociety(now))
    if (first?.kind !== 'link') throw new Error('no link')
    const second = got(await firstSociety(now))
    if (second?.kind !== 'link') throw new Error('no link')
    const [old, token] = [first, second].map((one) => one.path.split('/').at(-1)!) as [string, string]
    expect(await foundingLink(old)).toBeNull()
    expect(await foundingLink(token)).toBe('first')
    expect(await foundingLink(token, new Date(now.getTime() + 49 * 3_600_000))).toBeNull()
    expect(await foundFirstSociety(old, input)).toMatchObject({ code: 'link-ended' })
    expect(await foundFirstSociety(token, { ...input, slug: 'desk' })).toMatchObject({ code: 'address-taken' })
    const twice = await Promise.all([foundFirstSociety(token, input), foundFirstSociety(token, input)])
    expect(twice.map((one) => one.ok).sort()).toEqual([false, true])
    expect(await book.society.count()).toBe(1)
    expect(got(await firstSociety())).toBeNull()
    const { slug } = await book.society.findFirstOrThrow()
    petra = await actorAt(await enter('petra@example.org'), slug)
    expect(await lastAct(petra.societyId)).toMatchObject({ act: 'found-society', actorKind: 'server', area: 'access' })
    expect(petra.from).toBe('203.0.113.77')
  })
})

describe('a one-time link', () => {
  it('sets the password of the new officer once, and is kept nowhere as it is', async () => {
    const given = got(await giveDuty(petra, { name: 'Kester Dunmallet', email: 'kester@example.org', duty: 'captain' }))
    const token = given.token!
    expect(JSON.stringify(await book.verification.findMany())).not.toContain(token)
    expect(JSON.stringify(await book.actRecord.findMany())).not.toContain(token)
    expect(got(await behindLink(token))).toMatchObject({ name: 'Kester Dunmallet', email: 'kester@example.org' })
    expect(await behindLink(token, new Date(Date.now() + 8 * 86_400_000))).toMatchObject({ code: 'link-ended' })
    expect(await setFirstPassword(token, 'short')).toMatchObject({ code: 'weak-password' })
    const both = await Promise.all([setFirstPassword(token, password), setFirstPassword(token, `${password} too`)])
    expect(both.filter((one) => one.ok)).toHaveLength(1)
    expect(await setFirstPassword(token, password)).toMatchObject({ code: 'link-ended' })
  })

  it('is made anew for whoever waits, and never for oneself', async () => {
    expect(await newOneTimeLink(petra, { userId: petra.userId })).toMatchObject({ code: 'own-link' })
    const given = got(await giveDuty(petra, { name: 'Una Tarrablane', email: 'una@example.org', duty: 'treasurer' }))
    const fresh = got(await newOneTimeLink(petra, { userId: given.userId }))
    expect(await behindLink(given.token!)).toMatchObject({ code: 'link-ended' })
    expect((await behindLink(fresh.token)).ok).toBe(true)
  })

  it('of one society opens no desk of another', async () => {
    const made = await foundSociety({
      name: 'Copsewood',
      slug: 'copsewood',
      officer: { name: 'Jago Trevennor', email: 'jago@example.org', password },
    })
    got(made)
    other = await actorAt(await enter('jago@example.org'), 'copsewood')
    const asked = { name: 'Una Tarrablane', email: 'una@example.org', duty: 'captain' as const }
    expect(await giveDuty(other, asked)).toMatchObject({ code: 'awaited-elsewhere' })
  })
})

describe('a duty', () => {
  it('goes over at once to whoever can sign in, with both names in the record', async () => {
    const captain = got(await officerList(petra)).present.find((line) => line.duty === 'captain')!
    expect(captain.name).toBe('Kester Dunmallet')
    const handed = got(await handOver(petra, { dutyId: captain.dutyId, name: 'x', email: 'petra@example.org' }))
    expect(handed).toEqual({ name: 'Petra Ashgill', token: null })
    const act = await lastAct(petra.societyId)
    expect([act.act, act.before, act.after]).toEqual([
      'give-duty',
      '{"Held by":"Kester Dunmallet"}',
      '{"Held by":"Petra Ashgill","From":"now"}',
    ])
    expect(act.from).toBe('203.0.113.0/24')
    expect(await endDuty(petra, { dutyId: captain.dutyId })).toMatchObject({ code: 'ended-already' })
  })

  it('of the last secretary is not ended, and handed over to somebody new only when the link is used', async () => {
    const mine = got(await officerList(petra)).present.find((line) => line.duty === 'secretary')!
    expect(await endDuty(petra, { dutyId: mine.dutyId })).toMatchObject({ code: 'last-secretary' })
    const handed = got(
      await handOver(petra, { dutyId: mine.dutyId, name: 'Freya Holmgarth', email: 'freya@example.org' }),
    )
    expect(await endDuty(petra, { dutyId: mine.dutyId })).toMatchObject({ code: 'last-secretary' })
    got(await setFirstPassword(handed.token!, password))
    const present = got(await officerList(petra)).present.filter((line) => line.duty === 'secretary')
    expect(present.map((line) => line.name)).toEqual(['Freya Holmgarth'])
  })

  it('two secretaries who end each other at once: one remains', async () => {
    const freya = await actorAt(await enter('freya@example.org'), 'fernbrake')
    got(await giveDuty(freya, { name: 'Petra Ashgill', email: 'petra@example.org', duty: 'secretary' }))
    const secretary = await actorAt(await enter('petra@example.org'), 'fernbrake')
    const lines = got(await officerList(freya)).present.filter((line) => line.duty === 'secretary')
    const of = (name: string) => lines.find((line) => line.name === name)!.dutyId
    const answers = await Promise.all([
      endDuty(freya, { dutyId: of('Petra Ashgill'), endSessions: true }),
      endDuty(secretary, { dutyId: of('Freya Holmgarth'), endSessions: true }),
    ])
    expect(answers.map((one) => (one.ok ? 'ended' : one.code)).sort()).toEqual(['ended', 'last-secretary'])
    expect(await book.dutyHeld.count({ where: { societyId: freya.societyId, duty: 'secretary', until: null } })).toBe(1)
  })

  it('is of one society: another’s desk finds nothing', async () => {
    const line = await dutyOf(other, 'Jago Trevennor')
    expect(await endDuty(petra, { dutyId: line.dutyId })).toMatchObject({ code: 'not-found' })
    expect(await handOver(petra, { dutyId: line.dutyId, name: 'x', email: 'x@example.org' })).toMatchObject({
      code: 'not-found',
    })
    expect(await endOfficerSessions(petra, { userId: other.userId })).toMatchObject({ code: 'not-found' })
  })
})

describe('sessions', () => {
  it('are told with device and network, and ended one by one or all but this', async () => {
    const [here, , third] = [
      await enter('jago@example.org'),
      await enter('jago@example.org'),
      await enter('jago@example.org'),
    ]
    const account = got(await ownAccount(here))
    expect(account.sessions.length).toBeGreaterThanOrEqual(3)
    expect(account.sessions[0]).toMatchObject({ from: '203.0.113.0/24', device: 'Firefox on a Windows computer' })
    expect(account.sessions.filter((one) => one.here)).toHaveLength(1)
    const gone = got(await ownAccount(third)).sessions.find((one) => one.here)!
    expect(got(await endOwnSessions(here, { sessionId: gone.sessionId }))).toEqual({ ended: 1 })
    expect(await signedInUser(third)).toBeNull()
    expect(await endOwnSessions(here, { sessionId: gone.sessionId })).toMatchObject({ code: 'not-found' })
    got(await endOwnSessions(here, 'others'))
    expect(got(await ownAccount(here)).sessions).toHaveLength(1)
    await enter('freya@example.org')
    const session = await book.session.findFirstOrThrow({ where: { userId: { not: other.userId } } })
    expect(await endOwnSessions(here, { sessionId: session.id })).toMatchObject({ code: 'not-found' })
  })

  it('of another officer are ended by the secretary', async () => {
    const given = { name: 'Petra Ashgill', email: 'petra@example.org', duty: 'committee' as const }
    got(await giveDuty(other, given))
    const theirs = await enter('petra@example.org')
    expect(got(await endOfficerSessions(other, { userId: petra.userId })).ended).toBeGreaterThan(0)
    expect(await signedInUser(theirs)).toBeNull()
  })

  it('devices are told in words', () => {
    expect(deviceInWords(null)).toBe('A device that does not say what it is')
    expect(deviceInWords('Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) Version/18 Mobile Safari/604')).toBe(
      'Safari on an iPhone',
    )
  })
})

describe('the sign-in', () => {
  it('answers the same for a known and an unknown address, and takes about as long', async () => {
    const took = async (email: string) => {
      const began = performance.now()
      const answer = await signInWithPassword(new Headers(host), { email, password: 'not the password at all' })
      return { answer, ms: performance.now() - began }
    }
    await took('warm@example.org')
    const known = [await took('jago@example.org'), await took('jago@example.org'), await took('jago@example.org')]
    const unknown = [await took('n1@example.org'), await took('n2@example.org'), await took('n3@example.org')]
    // An account that was invited and never opened has no password to check: it must not answer sooner either.
    const waiting = [await took('una@example.org'), await took('una@example.org')]
    const answers = [...known, ...unknown, ...waiting].map((one) => JSON.stringify(one.answer))
    expect(new Set(answers).size).toBe(1)
    const least = (some: readonly { ms: number }[]) => Math.min(...some.map((one) => one.ms))
    // Both hash: without the hash an answer comes in a tenth of the time. Wide bounds, for a machine that is busy.
    expect(least(unknown)).toBeGreaterThan(least(known) / 3)
    expect(least(waiting)).toBeGreaterThan(least(known) / 3)
  })
})
