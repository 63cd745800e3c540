// Promise: what a visitor writes into forwarded headers is not believed unless the settings say a front server sets them;
// a method or a host that is none never reaches a page; only what a form of ours sends is let through to one.
import type { IncomingMessage } from 'node:http'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { isPlainForm, isScriptedForm } from '@/lib/facts/form-request'
import { isRouterState } from '@/lib/facts/router-state'

/** Acts of three arguments, and of the form alone. */
const ID = '70'.padEnd(42, 'a')
const FORM_ALONE = '40'.padEnd(42, 'a')

const request = (method: string, headers: Record<string, string>) =>
  ({
    method,
    url: '/fernbrake',
    headers: { host: 'days.example.org', ...headers },
    socket: { remoteAddress: '192.0.2.7' },
  }) as unknown as IncomingMessage

async function door(behindProxy: boolean) {
  vi.resetModules()
  vi.stubEnv('DAYBOOK_BEHIND_PROXY', behindProxy ? '1' : '')
  return (await import('@/lib/society/at-the-door')).atTheDoor
}
afterEach(() => vi.unstubAllEnvs())

describe('the door', () => {
  it('believes no forwarded header by itself', async () => {
    const one = request('GET', {
      'x-forwarded-for': '1.2.3.4',
      'x-forwarded-host': 'elsewhere.example',
      'x-forwarded-proto': 'https',
      forwarded: 'for=1.2.3.4',
      'x-real-ip': '1.2.3.4',
    })
    ;(await door(false))(one)
    expect(one.headers).toEqual({ host: 'days.example.org', 'x-forwarded-for': '192.0.2.7' })
    expect(one.url).toBe('/fernbrake')
  })

  it('believes the front server when there is one', async () => {
    const one = request('GET', { 'x-forwarded-for': '1.2.3.4', 'x-forwarded-proto': 'https' })
    ;(await door(true))(one)
    expect(one.headers['x-forwarded-for']).toBe('1.2.3.4')
    expect(one.headers['x-forwarded-proto']).toBe('https')
  })

  it.each([
    ['TRACE', {}, 'method'],
    ['PROPFIND', {}, 'method'],
    ['GET', { host: 'a b' }, 'host'],
    ['GET', { host: '' }, 'host'],
    ['GET', { host: 'x/../y' }, 'host'],
  ])('turns %s with %j away', async (method, headers, why) => {
    const one = request(method, { cookie: 'a=b', ...headers })
    ;(await door(false))(one)
    expect(one).toMatchObject({ method: 'GET', url: `/api/not-understood?why=${why}`, headers: { host: 'localhost' } })
  })

  it.each([
    ['GET', '/%', {}, 'address'],
    ['HEAD', '/card/%ff%fe', {}, 'address'],
    ['PUT', '/api/board/fernbrake/spring-cup', {}, 'method'],
    ['POST', '/api/nowhere', {}, 'method'],
    ['POST', '/_next/image', {}, 'method'],
    ['POST', '/api/group/abc/facts', { 'content-type': 'multipart/form-data; boundary=x' }, 'kind'],
  ])('turns %s %s with %j away', async (method, url, headers, why) => {
    const one = Object.assign(request(method, headers), { url })
    ;(await door(false))(one)
    expect(one).toMatchObject({ method: 'GET', url: `/api/not-understood?why=${why}`, headers: { host: 'localhost' } })
  })

  it.each(['/api/group/abc/facts', '/api/auth/sign-in/email'])('lets a delivery in at %s, and no act', async (url) => {
    const one = Object.assign(request('POST', { 'content-type': 'application/json', 'next-action': ID }), { url })
    ;(await door(false))(one)
    expect(one.url).toBe(url)
    expect(one.headers['next-action']).toBeUndefined()
  })

  it('leaves out what a page is said to show when it says nothing of the kind', async () => {
    const sound = [
      '',
      { children: [['society', 'fernbrake', 'd', null], { children: ['__PAGE__', {}] }, null, null, 0] },
    ]
    const header = (value: unknown) => encodeURIComponent(JSON.stringify(value))
    for (const [text, stays] of [
      [header(sound), true],
      [header(['', {}]), true],
      ['null', false],
      ['%', false],
      [header(['', []]), false],
      [header(['', { children: 'x' }]), false],
      [header(['', {}, null, 'elsewhere']), false],
      [header(['', {}, null, null, 0, 'x', 'y']), false],
      [header(['a'.repeat(50_000), {}]), false],
    ] as const) {
      expect(isRouterState(text), text.slice(0, 60)).toBe(stays)
      const one = request('GET', { 'next-router-state-tree': text })
      ;(await door(false))(one)
      expect(one.headers['next-router-state-tree']).toBe(stays ? text : undefined)
    }
  })

  it.each(['days.example.org', 'localhost:3000', '127.0.0.1:3190', '[::1]:3000'])('lets %s in', async (host) => {
    const one = request('POST', { host })
    ;(await door(false))(one)
    expect(one.url).toBe('/fernbrake')
  })
})

describe('a form', () => {
  const parts = (fields: Record<string, string>) => {
    const form = new FormData()
    for (const [name, value] of Object.entries(fields)) form.append(name, value)
    return form
  }
  const state = '{"attempt":0,"refused":null,"typed":{}}'

  it('of our own pages is let through', () => {
    expect(isScriptedForm(ID, parts({ _1_name: 'x', 0: `["fernbrake",${state},"$K1"]` }))).toBe(true)
    expect(isScriptedForm(ID, parts({ 0: `[{"society":"fernbrake","day":"spring-cup"},${state},"$K1"]` }))).toBe(true)
    expect(isScriptedForm(FORM_ALONE, parts({ 0: '["$K1"]' }))).toBe(true)
    expect(
      isPlainForm(
        parts({
          $ACTION_REF_1: '',
          '$ACTION_1:0': `{"id":"${ID}","bound":"$@1"}`,
          '$ACTION_1:1': `["fernbrake",${state}]`,
          $ACTION_KEY: 'k',
          name: 'x',
        }),
      ),
    ).toBe(true)
    expect(isPlainForm(parts({ [`$ACTION_ID_${FORM_ALONE}`]: '' }))).toBe(true)
  })

  it.each(['{', 'null', '[]', '["$K1"]', '[null,"$K1"]', '["$F1","x"]', '[{},"$T"]', `[[["x"]],{},"$K1"]`])(
    'with %s is not',
    (text) => {
      expect(isScriptedForm(ID, parts({ 0: text }))).toBe(false)
    },
  )

  it('without a form of ours in it, or with a broken one, is not', () => {
    expect(isScriptedForm('x', parts({ 0: `[${state},"$K1"]` }))).toBe(false)
    expect(isScriptedForm(ID, parts({ 0: `[${state},"$K1"]` }))).toBe(false)
    expect(isScriptedForm(FORM_ALONE, parts({ 0: `["fernbrake",${state},"$K1"]` }))).toBe(false)
    expect(isPlainForm(parts({ [`$ACTION_ID_${ID}`]: '' }))).toBe(false)
    expect(
      isPlainForm(
        parts({ $ACTION_REF_1: '', '$ACTION_1:0': `{"id":"${ID}","bound":"$@1"}`, '$ACTION_1:1': `[${state}]` }),
      ),
    ).toBe(false)
    expect(isPlainForm(parts({ name: 'x' }))).toBe(false)
    expect(isPlainForm(parts({ $ACTION_REF_1: '' }))).toBe(false)
    expect(isPlainForm(parts({ $ACTION_REF_1: '', '$ACTION_1:0': '{"id":"x","bound":null}' }))).toBe(false)
    expect(isPlainForm(parts({ $ACTION_ID_x: '' }))).toBe(false)
    expect(isPlainForm(parts({ '$ACTION_1:1': '[' }))).toBe(false)
  })
})
