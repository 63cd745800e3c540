// Promise: officers get in with their own password and nobody else does; tries are counted; a visitor cannot make an
// account; sessions end when they are signed out.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { foundSociety, isBookEmpty, societyList } from '@/lib/society/found-society'
import { giveDuty } from '@/lib/society/give-duty'
import { setFirstPassword } from '@/lib/society/set-first-password'
import { changePassword, signedInUser, signInHandlers, signInWithPassword, signOut } from '@/lib/society/sign-in'
import { desksOf, officerAt } from '@/lib/society/who-is-asking'
import { ownBook } from '../../setup/copy'

const password = 'a long enough password'
const host = { host: 'daybook.test' }
let close: () => Promise<void>

beforeAll(async () => {
  close = (await ownBook()).close
})
afterAll(() => close())

const withCookies = (cookies: readonly { name: string; value: string }[]) =>
  new Headers({ ...host, cookie: cookies.map((one) => `${one.name}=${encodeURIComponent(one.value)}`).join('; ') })

describe('the first officer', () => {
  it('founds a society once, on an address part of its own', async () => {
    expect(await isBookEmpty()).toBe(true)
    const officer = { name: 'Petra Ashgill', email: 'Petra@example.org', password }
    const made = await foundSociety({ name: 'Fernbrake Golf Society', slug: 'fernbrake', officer })
    expect(made.ok).toBe(true)
    const again = await foundSociety({ name: 'Another', slug: 'fernbrake', officer })
    expect(again).toMatchObject({ ok: false, code: 'address-taken' })
    expect(await isBookEmpty()).toBe(false)
    expect(await societyList()).toEqual([{ slug: 'fernbrake', name: 'Fernbrake Golf Society', isDemo: false }])
  })

  it('refuses a weak password and an address part with spaces, each at its place', async () => {
    const bad = await foundSociety({
      name: 'X',
      slug: 'two words',
      officer: { name: 'A', email: 'not-an-address', password: 'short' },
    })
    expect(bad).toMatchObject({ ok: false, code: 'not-understood' })
    if (!bad.ok) expect(bad.faults.map((fault) => fault.place)).toEqual(['slug', 'officer.email', 'officer.password'])
  })

  it('signs in, is known by the cookie, and is an officer of that society only', async () => {
    const signed = await signInWithPassword(new Headers(host), { email: 'petra@example.org', password })
    if (!signed.ok) throw new Error(signed.sentence)
    const session = signed.value.cookies.find((one) => one.name.includes('session_token'))
    expect(session).toMatchObject({ httpOnly: true, sameSite: 'lax', path: '/' })
    const headers = withCookies(signed.value.cookies)
    expect(await signedInUser(headers)).toMatchObject({ name: 'Petra Ashgill', email: 'petra@example.org' })
    expect(await officerAt(headers, 'fernbrake')).toMatchObject({ kind: 'officer', duties: ['secretary'] })
    expect(await officerAt(headers, 'elsewhere')).toBeNull()
    expect((await desksOf(headers)).map((desk) => desk.slug)).toEqual(['fernbrake'])
    await signOut(headers)
    expect(await signedInUser(headers)).toBeNull()
  })

  it('gives a duty to a second officer, who sets the own password behind a one-time link', async () => {
    const signed = await signInWithPassword(new Headers(host), { email: 'petra@example.org', password })
    if (!signed.ok) throw new Error(signed.sentence)
    const actor = await officerAt(withCookies(signed.value.cookies), 'fernbrake')
    if (!actor) throw new Error('no officer')
    const duty = { name: 'Kester Dunmallet', email: 'kester@example.org', duty: 'treasurer' as const }
    const given = await giveDuty(actor, duty)
    if (!given.ok || !given.value.token) throw new Error('no one-time link')
    expect((await setFirstPassword(given.value.token, password)).ok).toBe(true)
    const kester = await signInWithPassword(new Headers(host), { email: 'kester@example.org', password })
    if (!kester.ok) throw new Error(kester.sentence)
    const treasurer = await officerAt(withCookies(kester.value.cookies), 'fernbrake')
    expect(treasurer?.duties).toEqual(['treasurer'])
    expect(await giveDuty(treasurer!, { ...duty, password })).toMatchObject({ ok: false, code: 'not-allowed' })
  })
})

describe('a password', () => {
  it('is changed with the present one, and ends the other sessions', async () => {
    const enter = async (secret: string) => {
      const signed = await signInWithPassword(new Headers(host), { email: 'kester@example.org', password: secret })
      if (!signed.ok) throw new Error(signed.sentence)
      return withCookies(signed.value.cookies)
    }
    const [here, elsewhere] = [await enter(password), await enter(password)]
    const wrong = { currentPassword: 'not the present one', newPassword: 'another long password' }
    expect(await changePassword(here, wrong)).toMatchObject({ ok: false, code: 'wrong-password' })
    expect(await changePassword(here, { currentPassword: password, newPassword: 'short' })).toMatchObject({
      code: 'weak-password',
    })
    expect((await changePassword(here, { currentPassword: password, newPassword: 'another long password' })).ok).toBe(
      true,
    )
    expect(await signedInUser(elsewhere)).toBeNull()
    expect(await signedInUser(await enter('another long password'))).toMatchObject({ name: 'Kester Dunmallet' })
  })
})

describe('a stranger', () => {
  it('is told the same for a wrong password and an unknown address', async () => {
    const wrong = await signInWithPassword(new Headers(host), {
      email: 'petra@example.org',
      password: 'wrong password',
    })
    const unknown = await signInWithPassword(new Headers(host), { email: 'nobody@example.org', password })
    expect(wrong).toEqual(unknown)
    expect(wrong).toMatchObject({ ok: false, code: 'wrong-sign-in' })
  })

  it('cannot make an account', async () => {
    const answer = await signInHandlers.POST(
      new Request('http://daybook.test/api/auth/sign-up/email', {
        method: 'POST',
        headers: { ...host, origin: 'http://daybook.test', 'content-type': 'application/json' },
        body: JSON.stringify({ email: 'x@example.org', password, name: 'X' }),
      }),
    )
    expect(answer.status).toBeGreaterThanOrEqual(400)
  })

  it('cannot sign in from another site', async () => {
    const answer = await signInHandlers.POST(
      new Request('http://daybook.test/api/auth/sign-in/email', {
        method: 'POST',
        headers: {
          ...host,
          origin: 'http://evil.test',
          cookie: 'better-auth.session_token=x',
          'content-type': 'application/json',
        },
        body: JSON.stringify({ email: 'petra@example.org', password }),
      }),
    )
    expect(answer.status).toBe(403)
  })

  it('is stopped after too many tries on one address, wherever they come from', async () => {
    let last = ''
    for (let turn = 0; turn < 25; turn++) {
      const from = new Headers({ ...host, 'x-forwarded-for': `10.0.0.${turn}` })
      const answer = await signInWithPassword(from, { email: 'kester@example.org', password: 'guess number x' })
      last = answer.ok ? 'in' : answer.code
    }
    expect(last).toBe('too-many-tries')
  })
})
