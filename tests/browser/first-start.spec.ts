// Promise: an empty book leads a new secretary through its first steps, each ticking itself, and offers to add the
// secretary as a member; with one officer it advises a second; a forgotten password is helped with, by another officer
// and by a command on the server.

import { spawnSync } from 'node:child_process'
import AxeBuilder from '@axe-core/playwright'
import { endOwnBooks, type OwnBook, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

let book: OwnBook
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(480_000)
  book = await startOwnBook('empty')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
})
test.afterAll(({ browser }) => endOwnBooks(browser))

async function looksRight() {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
  for (const width of [360, 768]) {
    await page.setViewportSize({ width, height: 900 })
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(over).toBeLessThanOrEqual(0)
  }
  await page.setViewportSize({ width: 1280, height: 900 })
}

const desk = () => `${book.origin}/desk/old-mill-wanderers`
const steps = () => page.getByRole('region', { name: 'Setting up, in order' })

test('a new society begins with a list of what to do', async () => {
  await page.goto(book.firstLink)
  await page.getByLabel('Name of the society').fill('Old Mill Wanderers Golf Society')
  await page.getByLabel('Your name').fill('Dorcas Ellerthwaite')
  await page.getByLabel('Your e-mail').fill('dorcas@example.org')
  await page.getByRole('textbox', { name: 'Password' }).fill('a password of her own')
  await page.getByRole('button', { name: /society$/ }).click()
  await page.waitForURL(/\/desk\//)
  await expect(steps()).toContainText('0 of 5 done')
  await expect(steps().getByRole('heading', { level: 3 })).toHaveText('Add a season')
  await looksRight()
})

test('each step ticks itself and opens the next', async () => {
  await steps().getByRole('link', { name: 'Add a season' }).click()
  await page.getByRole('form', { name: 'Open a season' }).getByRole('button').click()
  await expect(steps()).toContainText('1 of 5 done')
  await expect(steps().getByRole('heading', { level: 3 })).toHaveText('Add the members')
  await expect(steps().getByRole('link', { name: 'Import a spreadsheet' })).toBeVisible()

  await steps().getByRole('link', { name: 'add Dorcas Ellerthwaite' }).click()
  await expect(page.getByLabel('First name')).toHaveValue('Dorcas')
  await expect(page.getByLabel('Family name')).toHaveValue('Ellerthwaite')
  await page.getByLabel('Tees').selectOption('women')
  await page.getByRole('button', { name: 'Add the member' }).click()
  await expect(page.getByText('Dorcas Ellerthwaite is added.')).toBeVisible()
  await page.goto(`${desk()}/members/new`)
  await page.getByLabel('First name').fill('Piers')
  await page.getByLabel('Family name').fill('Ravenhall')
  await page.getByRole('button', { name: 'Add the member' }).click()

  await page.goto(desk())
  await expect(steps()).toContainText('2 of 5 done')
  await expect(steps()).not.toContainText('You are not a member yourself yet')
  await expect(steps().getByRole('heading', { level: 3 })).toHaveText('Add a course')
  await expect(steps().getByRole('link', { name: 'Add an officer' })).toBeVisible()
})

test('with one officer the page of officers advises a second, and a one-time link has its copy button', async ({
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await page.goto(`${desk()}/officers`)
  await expect(page.getByText('nobody can let you in again')).toBeVisible()
  await looksRight()
  const give = page.getByRole('form', { name: 'Give a duty' })
  await give.getByLabel('Name').fill('Piers Ravenhall')
  await give.getByLabel('E-mail').fill('piers@example.org')
  await give.getByLabel('Duty').selectOption('captain')
  await give.getByRole('button').last().click()
  await expect(page.getByLabel('One-time link')).toHaveValue(/\/sign-in\/link\//)
  await page.getByRole('button', { name: 'Copy the link' }).click()
  await expect(page.getByText(/Copied\.|The link is marked/)).toBeVisible()
})

test('a forgotten password: the page says what to do, and each way opens the desk again', async ({ browser }) => {
  const link = await page.getByLabel('One-time link').inputValue()
  const his = await (await browser.newContext()).newPage()
  await his.goto(link)
  await his.getByRole('textbox', { name: 'Password' }).fill('a password of his own')
  await his.getByRole('button', { name: 'Set the password and sign in' }).click()
  await his.waitForURL(/\/desk\//)

  // The secretary has forgotten hers: the captain makes a link.
  const lost = await (await browser.newContext()).newPage()
  await lost.goto(`${book.origin}/sign-in`)
  await lost.getByText('Forgotten your password?').click()
  await expect(lost.getByText('Another officer of your society')).toBeVisible()
  await expect(lost.getByText('npm run password-link')).toBeVisible()
  await his.goto(`${desk()}/officers`)
  await his.getByText('Change the duty of Dorcas Ellerthwaite').click()
  await his.getByRole('button', { name: 'Make a link for a new password' }).click()
  await lost.goto(await his.getByLabel('One-time link').inputValue())
  await lost.getByRole('textbox', { name: 'Password' }).fill('another one of her own')
  await lost.getByRole('button', { name: 'Set the password and sign in' }).click()
  await lost.waitForURL(/\/desk\//)

  // Nobody else can help: a command on the server makes one.
  const run = spawnSync(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', 'scripts/password-link.ts', 'Dorcas@example.org'],
    { env: { ...process.env, DATABASE_URL: `file:${book.file}`, DAYBOOK_ORIGIN: '' }, encoding: 'utf8' },
  )
  expect(run.stderr).toBe(`The book: ${book.file}\n`)
  const path = /\/sign-in\/link\/\S+/.exec(run.stdout)?.[0]
  await lost.goto(`${book.origin}${path}`)
  await expect(lost.getByRole('heading', { name: 'Welcome, Dorcas Ellerthwaite' })).toBeVisible()
})
