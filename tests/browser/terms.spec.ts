// Promise: a day with divisions and a tie list of its own is called at the desk in one go; the words that are set are read
// back; and a published sheet shows its divisions and opens each prize into how it was won.

import AxeBuilder from '@axe-core/playwright'
import { OFFICERS, PASSWORD } from '@/seed/members'
import { expect, type Page, test } from './walk'

const DESK = '/desk/fernbrake'

async function signIn(page: Page) {
  await page.goto(`/sign-in?next=${DESK}`)
  await page.getByLabel('E-mail').fill(OFFICERS[0].email)
  await page.getByLabel('Password').fill(PASSWORD)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await page.waitForURL((url) => url.pathname === DESK)
}

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

test('divisions and a tie list are set, read back and kept', async ({ page }) => {
  await signIn(page)
  await page.goto(`${DESK}/new-day`)
  await page.getByLabel('Name of the day').fill('Division Plate')
  const first = page.getByRole('group', { name: /^Competition 1/ })
  const more = first.locator('details.more-terms')
  await more.locator('summary').click()
  await more.getByRole('button', { name: 'Two by handicap' }).click()
  await expect(more.getByText('Division 2: everybody with a playing handicap of 16 or more.')).toBeVisible()

  await more.getByRole('button', { name: 'Take last nine out' }).click()
  await more.getByLabel('Another step').selectOption('lower-handicap')
  await more.getByRole('button', { name: 'Add the step' }).click()
  const steps = more.locator('.tie-steps > ol > li')
  await expect(steps.last()).toContainText('Lower handicap')
  await steps.last().getByRole('button', { name: 'Move lower handicap up' }).press('Alt+ArrowUp')
  await expect(steps.nth((await steps.count()) - 2)).toContainText('Lower handicap')
  await expect(first.getByLabel('Ties', { exact: true })).toHaveValue('as-it-is')
  await looksRight(page)
  await page.setViewportSize({ width: 360, height: 780 })
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBeLessThanOrEqual(0)
  await page.setViewportSize({ width: 1280, height: 900 })

  await first.getByLabel('Division of prize 1', { exact: true }).selectOption({ label: 'Division 1' })
  await page.getByRole('button', { name: 'Call the day' }).click()
  await expect(page).toHaveURL(/\/days\/division-plate/)
  await page.goto(`${new URL(page.url()).pathname}/change`)
  await expect(page.getByLabel('Division of prize 1', { exact: true }).first()).toHaveValue('division-1')
  await expect(page.getByText('Division 1: everybody with a playing handicap of 15 or less.').first()).toBeVisible()
})

test('a published prize opens into how it was won', async ({ page }) => {
  await page.goto('/fernbrake')
  await page
    .getByRole('link', { name: /result|sheet/i })
    .first()
    .click()
  const prize = page.locator('.prize-how').first()
  await prize.locator('summary').click()
  await expect(prize.getByText(/It is for /)).toBeVisible()
  await expect(prize.getByText(/[Ww]ins it\.|shared\./).first()).toBeVisible()
  await looksRight(page)
})
