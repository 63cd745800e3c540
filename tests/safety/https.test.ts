// Promise: behind an address that begins with https a session's cookie is secure, says so in its name, and is no script's;
// and browsers are told to stay with https for a year. Without https nothing of the kind is claimed.
import type { NextConfig } from 'next'
import { afterEach, describe, expect, it, vi } from 'vitest'

const password = 'a long enough password'

async function cookiesOf(origin: string) {
  vi.resetModules()
  vi.stubEnv('DAYBOOK_ORIGIN', origin)
  const { close } = await (await import('../setup/copy')).ownBook()
  try {
    const { foundSociety } = await import('@/lib/society/found-society')
    const { signInWithPassword } = await import('@/lib/society/sign-in')
    const officer = { name: 'Petra Ashgill', email: 'petra@example.org', password }
    await foundSociety({ name: 'Fernbrake Golf Society', slug: 'fernbrake', officer })
    const headers = new Headers({ host: new URL(origin).host })
    const answer = await signInWithPassword(headers, { email: officer.email, password })
    return answer.ok ? answer.value.cookies : []
  } finally {
    await close()
  }
}

afterEach(() => vi.unstubAllEnvs())

describe('a session', () => {
  it('is secure over https', async () => {
    const cookies = await cookiesOf('https://golf.example.org')
    expect(cookies.length).toBeGreaterThan(0)
    for (const cookie of cookies) {
      expect(cookie.name).toMatch(/^__Secure-/)
      expect(cookie).toMatchObject({ secure: true, httpOnly: true, sameSite: 'lax' })
    }
  })

  it('is not called secure where it is not', async () => {
    const [cookie] = await cookiesOf('http://127.0.0.1:3000')
    expect(cookie).toMatchObject({ secure: false, httpOnly: true, sameSite: 'lax' })
    expect(cookie?.name).not.toMatch(/^__/)
  })
})

it('browsers stay with https for a year once the front server has said so', async () => {
  const settings: string = '../../next.config.js'
  const { default: nextConfig } = (await import(settings)) as { default: NextConfig }
  const rules = await nextConfig.headers!()
  const strict = rules.filter((rule) => rule.headers.some((one) => one.key === 'strict-transport-security'))
  expect(strict).toEqual([
    {
      source: '/:path*',
      has: [{ type: 'header', key: 'x-forwarded-proto', value: 'https' }],
      headers: [{ key: 'strict-transport-security', value: 'max-age=31536000; includeSubDomains' }],
    },
  ])
})
