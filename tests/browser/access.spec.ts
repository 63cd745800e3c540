// Promise: an officer adds a passkey and signs in with it alone, sees the own sessions and ends them; hands a duty to
// somebody new by a link that opens once; every act stands in the record; a member reads what is held; no public page
// of the demonstration tells a contact detail. In a real browser, with an authenticator of the browser's own making.

import AxeBuilder from '@axe-core/playwright'
import { contactDetails, publicBook } from './public-book'
import { expect, type Page, test } from './walk'

// A passkey belongs to a name, not to a number: the same server by its name.
const port = Number(process.env.BROWSER_PORT ?? 3190)
test.use({ baseURL: process.env.ACCESS_ADDRESS ?? `http://localhost:${port}` })
test.describe.configure({ mode: 'serial' })

const SECRETARY = { email: 'secretary@example.org', password: 'fernbrake since 1987' }

async function signIn(page: Page, { email, password } = SECRETARY) {
  await page.goto('/sign-in')
  await page.getByLabel('E-mail').fill(email)
  await page.getByLabel('Password').fill(password)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await page.waitForURL(/\/desk\//)
}

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over).toBeLessThanOrEqual(0)
}

test('a passkey is added at the account and opens the desk without a password', async ({ page, context }) => {
  const chrome = await context.newCDPSession(page)
  await chrome.send('WebAuthn.enable')
  await chrome.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  })
  await signIn(page)
  await page.goto('/desk/account')
  await page.getByLabel('Name of the device').fill('The club laptop')
  await page.getByRole('button', { name: 'Add a passkey', exact: true }).click()
  await expect(page.getByText('The club laptop signs you in from now on.')).toBeVisible()
  await looksRight(page)
  await page.getByRole('button', { name: 'Sign out' }).first().click()
  await page.waitForURL(/sign-in/)
  await page.goto('/desk/account')
  await page.waitForURL(/sign-in/)
  await page.getByRole('button', { name: 'Sign in with a passkey' }).click()
  await page.waitForURL((url) => url.pathname === '/desk/account')
  await expect(page.getByRole('heading', { name: 'Where you are signed in' })).toBeVisible()
  const cookie = (await context.cookies()).find((one) => one.name.includes('session_token'))
  expect(cookie).toMatchObject({ httpOnly: true, sameSite: 'Lax' })
  await page.getByRole('button', { name: 'Remove it' }).click()
  await expect(page.getByText('The club laptop', { exact: true })).toHaveCount(0)
})

test('a duty goes to somebody new by a link that opens once, and the record tells it', async ({ page, browser }) => {
  await signIn(page)
  await page.goto(page.url().replace(/(\/desk\/[^/]+).*/, '$1/officers'))
  const give = page.getByRole('form', { name: 'Give a duty' })
  await give.getByLabel('Name').fill('Nora Quarrington')
  await give.getByLabel('E-mail').fill(`nora-${Date.now()}@example.org`)
  await give.getByLabel('Duty').selectOption('committee')
  await give.getByRole('button', { name: 'Give the duty' }).click()
  const link = await page.getByLabel('One-time link').inputValue()
  await looksRight(page)
  const hers = await (await browser.newContext()).newPage()
  await hers.goto(link)
  await hers.getByRole('textbox', { name: 'Password' }).fill('a password of her own')
  await hers.getByRole('button', { name: 'Set the password and sign in' }).click()
  await hers.waitForURL(/\/desk\//)
  await hers.goto(link)
  await expect(hers.getByRole('heading', { name: 'This link has ended' })).toBeVisible()
  await page.goto(page.url().replace('officers', 'record?area=access'))
  await expect(page.getByRole('table').getByText('gave a duty').first()).toBeVisible()
  await looksRight(page)
  await page.setViewportSize({ width: 360, height: 740 })
  await looksRight(page)
})

test('no public page tells a contact detail, and a member reads what is held', async ({ page }) => {
  const { society, live, published, member } = publicBook()
  await page.goto(`/member/${member}`)
  await page.getByRole('link', { name: 'What is held about you' }).click()
  await expect(page.getByRole('heading', { name: 'What is held about you' })).toBeVisible()
  await looksRight(page)
  const secrets = contactDetails()
  expect(secrets.length).toBeGreaterThan(3)
  const seen = new Set<string>()
  const open = [`/${society}`, `/${society}/days/${live.slug}`, `/${society}/days/${published.slug}`, '/']
  while (open.length > 0 && seen.size < 60) {
    const path = open.shift()!
    if (seen.has(path)) continue
    seen.add(path)
    const html = await (await page.request.get(path, { headers: { cookie: '' } })).text()
    for (const secret of secrets) expect(html.includes(secret), `${secret} on ${path}`).toBe(false)
    for (const [, found] of html.matchAll(/href="(\/[^"#]*)"/g))
      if (found?.startsWith(`/${society}`) && !seen.has(found)) open.push(found.replaceAll('&amp;', '&'))
  }
  expect(seen.size).toBeGreaterThan(20)
})
