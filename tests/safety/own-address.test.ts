// Promise: what is printed leads to the address that was set, else to the one the request came to; and an address that only
// this machine can open is known for one.
import { afterEach, describe, expect, it, vi } from 'vitest'

afterEach(() => vi.unstubAllEnvs())

async function own(origin: string, headers: Record<string, string>): Promise<string> {
  vi.resetModules()
  vi.stubEnv('DAYBOOK_ORIGIN', origin)
  return (await import('@/lib/society/own-address')).ownAddress(new Headers(headers))
}

describe('the own address', () => {
  it('is the one that was set, or that of the request', async () => {
    expect(await own('https://days.example.org', { host: '192.0.2.5:3000' })).toBe('https://days.example.org')
    expect(await own('', { host: '192.0.2.5:3000' })).toBe('http://192.0.2.5:3000')
    expect(await own('', { host: 'x', 'x-forwarded-host': 'days.example.org', 'x-forwarded-proto': 'https' })).toBe(
      'https://days.example.org',
    )
  })

  it('is this machine alone where every machine would find itself', async () => {
    const { isThisMachine } = await import('@/lib/society/own-address')
    for (const here of ['http://127.0.0.1:3000', 'http://localhost', 'http://[::1]:3000', 'http://127.1.2.3'])
      expect(isThisMachine(here), here).toBe(true)
    for (const there of ['http://192.168.1.5:3000', 'https://days.example.org', 'http://localhost.example.org'])
      expect(isThisMachine(there), there).toBe(false)
  })
})
