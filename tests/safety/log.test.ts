// Promise: no name, mail address, key or anything typed is in the log; a line says what was asked, how it ended and how
// long it took; a fault is told without its message.

import { readdirSync, statSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'

const lines: string[] = []

// The log's own stream is standard output, opened by its number: written down here instead.
vi.mock('pino', () => {
  const said = (level: string) => (details: object, msg: string) =>
    void lines.push(JSON.stringify({ level, ...details, msg }))
  const make = () => ({ info: said('info'), error: said('error') })
  return { default: Object.assign(make, { stdTimeFunctions: { isoTime: () => '' } }) }
})

const { addressForLog, logRequests, noteOutcome } = await import('@/lib/society/request-log')
const { logFault } = await import('@/lib/store/log')

const KEY = 'G1GX4xfx3j9ONAutUZY7dDDOlJhZuiI5'
const SECRETS = [KEY, 'petra', 'ashgill', 'example.org', 'fernbrake since', '01632']

let server: Server
let base: string
beforeAll(async () => {
  logRequests()
  server = createServer((request, response) => {
    request.resume()
    request.on('end', () => {
      if (request.url?.includes('refused')) noteOutcome('not-allowed')
      response.statusCode = request.url?.includes('broken') ? 500 : 200
      response.end('Petra Ashgill')
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
})
afterAll(() => server.close())

const ask = async (path: string, method = 'GET', body?: string) => {
  const answer = await fetch(`${base}${path}`, {
    method,
    headers: { cookie: `session=${KEY}` },
    ...(body ? { body } : {}),
  })
  await answer.text()
}

describe('the log', () => {
  it('of a session holds nothing of anybody', async () => {
    await ask(`/api/group/${KEY}/facts`, 'POST', JSON.stringify({ name: 'Petra Ashgill' }))
    await ask(`/api/auth/sign-in/email?email=petra@example.org`, 'POST', 'petra@example.org fernbrake since 1987')
    await ask(`/desk/fernbrake/members/petra-ashgill?refused=1`, 'POST', 'phone=01632 960000')
    await ask(`/member/${KEY}`, 'POST', 'x')
    await ask(`/card/${KEY}`)
    await ask(`/petra@example.org/broken`)
    await ask('/api/health')
    await vi.waitFor(() => expect(lines).toHaveLength(5))
    const all = lines.join('\n').toLowerCase()
    expect(SECRETS.filter((secret) => all.includes(secret.toLowerCase()))).toEqual([])
    const told = lines.map((line) => JSON.parse(line))
    expect(told.map(({ method, address, status, outcome }) => [method, address, status, outcome])).toEqual([
      ['POST', '/api/group/…/facts', 200, undefined],
      ['POST', '/api/auth/sign-in/email', 200, undefined],
      ['POST', '/desk/…/members/…', 200, 'not-allowed'],
      ['POST', '/member/…', 200, undefined],
      ['GET', '/…/…', 500, undefined],
    ])
    expect(told.at(-1)).toMatchObject({ level: 'error' })
    for (const line of told) expect(line.ms).toBeGreaterThanOrEqual(0)
  })

  it('shortens any address to our own words, on one line', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 9, maxLength: 40 }), { maxLength: 12 }), (parts) => {
        const shown = addressForLog(`/${parts.join('/')}?name=${parts[0] ?? ''}`)
        expect(shown).toMatch(/^(\/|(\/[a-z0-9_.…-]+)+)$/)
        for (const part of parts) if (!/^[a-z._-]+$/.test(part)) expect(shown.split('/')).not.toContain(part)
      }),
    )
  })

  it('knows every word that stands in an address of ours', () => {
    const folders = (folder: string): string[] =>
      readdirSync(folder).flatMap((name) => {
        const path = join(folder, name)
        if (!statSync(path).isDirectory() || name.startsWith('_')) return []
        return [...(/^[[(]/.test(name) ? [] : [name]), ...folders(path)]
      })
    const own = new Set(folders('app').filter((name) => name !== 'styles'))
    expect([...own].filter((word) => addressForLog(`/${word}`) !== `/${word}`)).toEqual([])
  })

  it('tells a fault without its message', () => {
    lines.length = 0
    logFault('answering', Object.assign(new TypeError('Petra Ashgill has no handicap'), { code: 'P2002' }))
    logFault('answering', 'Petra Ashgill')
    expect(lines.join('')).not.toMatch(/petra/i)
    expect(JSON.parse(lines[0]!)).toMatchObject({ kind: 'TypeError', code: 'P2002', msg: 'answering' })
    expect(JSON.parse(lines[0]!).at[0]).toMatch(/tests\/safety\/log\.test\.ts/)
  })
})
