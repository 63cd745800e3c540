// Promise: no page of ours asks for anything its content policy forbids, on any screen, in a real browser; and the policy
// forbids what it should.
import { expect, type Page, test } from '@playwright/test'
import { publicBook } from '../browser/public-book'
import { signIn } from './http/client'

const SECRETARY = { email: 'secretary@example.org', password: 'fernbrake since 1987' }

async function visit(page: Page, path: string): Promise<readonly string[]> {
  const wrong: string[] = []
  page.on('console', (message) => {
    if (/Content Security Policy|Refused to|violates/i.test(message.text())) wrong.push(`${path}: ${message.text()}`)
  })
  page.on('request', (request) => {
    const url = new URL(request.url())
    if (
      /^https?:$/.test(url.protocol) &&
      url.origin !== new URL(page.url() === 'about:blank' ? request.url() : page.url()).origin
    )
      wrong.push(`${path}: asks ${url.origin}`)
  })
  const answer = await page.goto(path, { waitUntil: 'load' })
  expect(answer?.status(), path).toBeLessThan(400)
  // The page's own scripts run: React has taken the page over.
  await page.waitForFunction(
    () =>
      Object.keys(document.body).some((key) => key.startsWith('__react')) || document.querySelector('body *') !== null,
  )
  page.removeAllListeners('console')
  page.removeAllListeners('request')
  return wrong
}

test('the policy of a page is strict, and new for each answer', async ({ request }) => {
  const policies = await Promise.all(
    ['/', '/card', '/sign-in', '/no-such-society'].map(async (path) => {
      const answer = await request.get(path, { maxRedirects: 5 })
      return answer.headers()['content-security-policy'] ?? ''
    }),
  )
  for (const policy of policies) {
    const parts = new Map(policy.split('; ').map((part) => [part.split(' ')[0], part]))
    expect(parts.get('script-src')).toMatch(/^script-src 'self' 'nonce-[A-Za-z0-9+/=]{24}' 'strict-dynamic'$/)
    for (const [name, value] of Object.entries({
      'object-src': "'none'",
      'base-uri': "'none'",
      'frame-ancestors': "'none'",
      'form-action': "'self'",
      'connect-src': "'self'",
      'worker-src': "'self'",
      'script-src-attr': "'none'",
    }))
      expect(parts.get(name)).toBe(`${name} ${value}`)
    expect(policy).not.toMatch(/https?:|unsafe-eval|script-src[^;]*unsafe-inline/)
  }
  expect(new Set(policies).size).toBe(policies.length)
})

test('every answer carries the other headers', async ({ request }) => {
  const { society, live } = publicBook()
  for (const path of [
    '/card',
    `/${society}`,
    `/api/board/${society}/${live.slug}`,
    '/api/health',
    '/card-worker.js',
    '/manifest.webmanifest',
  ]) {
    const headers = (await request.get(path)).headers()
    expect(headers['x-content-type-options'], path).toBe('nosniff')
    expect(headers['referrer-policy'], path).toBe('strict-origin')
    expect(headers['x-frame-options'], path).toBe('DENY')
    expect(headers['permissions-policy'], path).toContain('camera=()')
    expect(headers['x-powered-by'], path).toBeUndefined()
  }
  expect((await request.get('/api/health')).headers()['content-security-policy']).toMatch(/^default-src 'none'/)
})

test('search engines are asked to list nothing until the society says otherwise', async ({ request }) => {
  const { society, live, published } = publicBook()
  for (const path of [`/${society}`, `/${society}/days/${live.slug}`, `/${society}/days/${published.slug}/result`])
    expect(await (await request.get(path)).text(), path).toContain('<meta name="robots" content="noindex, nofollow"/>')
  expect((await request.get(`/api/board/${society}/${live.slug}`)).headers()['x-robots-tag']).toBe('noindex, nofollow')
  const robots = await (await request.get('/robots.txt')).text()
  for (const part of ['/desk', '/card', '/member', '/sign-in', '/api']) expect(robots).toContain(`Disallow: ${part}`)
  expect((await request.get('/_next/image?url=%2Fcard%2Fx&w=64&q=75')).status()).toBe(404)
})

test('no screen asks for what is forbidden', async ({ page, context }) => {
  const { society, live, published, member } = publicBook()
  const day = `/${society}/days`
  const open = [
    '/',
    `/${society}`,
    `/${society}/how-we-count`,
    `${day}/${live.slug}`,
    `${day}/${live.slug}?c=2`,
    `${day}/${live.slug}/bar`,
    `${day}/${live.slug}/start`,
    `${day}/${published.slug}/result`,
    `${day}/${published.slug}/match?a=${published.a}&b=${published.b}`,
    `${day}/${published.slug}/cards/${published.a}?hole=3&c=1`,
    '/card',
    `/card/${live.link}`,
    `/member/${member}`,
    '/sign-in',
    '/house-style',
  ]
  for (const path of open) expect(await visit(page, path)).toEqual([])
  const { origin } = new URL(page.url())
  const cookies = (await signIn(origin, SECRETARY.email, SECRETARY.password)).split('; ').map((pair) => {
    const at = pair.indexOf('=')
    return { name: pair.slice(0, at), value: pair.slice(at + 1), url: origin }
  })
  await context.addCookies(cookies)
  const desk = `/desk/${society}`
  const rooms = [
    '',
    '/change',
    '/entries',
    '/handicaps',
    '/draw',
    '/returns',
    '/result',
    '/print',
    '/print/cards',
    '/print/start',
    '/course',
  ]
  const inside = [
    desk,
    `${desk}/members`,
    `${desk}/members/new`,
    `${desk}/members/import`,
    `${desk}/courses`,
    `${desk}/courses/new`,
    `${desk}/new-day`,
    `${desk}/officers`,
    `${desk}/record`,
    `${desk}/privacy`,
    `${desk}/book`,
    ...rooms.map((room) => `${desk}/days/${live.slug}${room}`),
  ]
  for (const path of inside) {
    expect(await visit(page, path)).toEqual([])
    // Turned away, every room would be the page of signing in, and this would say nothing of the desk.
    expect(new URL(page.url()).pathname, path).toBe(path)
  }
})

test('a script that somebody slipped in does not run', async ({ page }) => {
  await page.goto('/sign-in')
  const ran = await page.evaluate(() => {
    const script = document.createElement('div')
    script.innerHTML = '<img src="/no-such.png" onerror="window.slippedIn = true">'
    document.body.append(script)
    return new Promise((resolve) => setTimeout(() => resolve('slippedIn' in window), 500))
  })
  expect(ran).toBe(false)
})
