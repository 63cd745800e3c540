// Promise: what members and officers do with their own links, passwords and details is done by the buttons of their own
// pages: contact details, a correction, a new private link, leaving; a member's link and details at the desk; duties,
// sessions and passwords of officers; the privacy settings, a copy of the book and its export.

import { OFFICERS, PASSWORD } from '@/seed/members'
import { endOwnBooks, type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { publicBook } from './public-book'
import { type Browser, expect, type Page, test } from './walk'

const DESK = '/desk/fernbrake'
let book: OwnBook
let page: Page

const newPage = async (browser: Browser) =>
  (await browser.newContext({ viewport: { width: 1280, height: 900 }, baseURL: book.origin })).newPage()

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  page = await newPage(browser)
  await signInAtDesk(page, book.origin)
})
test.afterAll(({ browser }) => endOwnBooks(browser))

const button = (name: string | RegExp) => page.getByRole('button', { name })
const form = (name: string | RegExp) => page.getByRole('form', { name })

test('a member corrects contact details, asks for a correction, renews the link, and leaves', async ({ browser }) => {
  const own = await newPage(browser)
  const { member } = publicBook(book.file)
  const held = async () => {
    await own.getByRole('link', { name: 'What is held about you' }).click()
    await expect(own.getByRole('heading', { name: 'Put it right' })).toBeVisible()
  }
  await own.goto(`/member/${member}`)
  await held()
  const details = own.getByRole('form', { name: 'Change your contact details' })
  await details.getByLabel('Telephone').fill('01632 960 412')
  await details.getByRole('button').click()
  await expect(details.getByRole('status')).toBeVisible()
  await own.reload()
  await expect(details.getByLabel('Telephone')).toHaveValue('01632 960 412')

  const correction = own.getByRole('form', { name: 'Ask for a correction' })
  await correction.getByLabel('Anything else that is wrong').fill('My handicap in May was 14.2')
  await correction.getByRole('button', { name: 'Ask the officers' }).click()
  await expect(correction.getByRole('status')).toBeVisible()

  await own.getByRole('button', { name: 'Make a new link' }).click()
  await expect(own).not.toHaveURL(new RegExp(member))
  const before = await own.request.get(`/member/${member}`)
  expect(before.status()).toBe(404)
  await held()

  await own.getByLabel('I want to leave').check()
  await own.getByRole('button', { name: 'Leave the society' }).click()
  await expect(own.getByText(/^You left on /)).toBeVisible()
  await own.context().close()

  await page.goto(`${DESK}/record`)
  await expect(page.getByText('My handicap in May was 14.2').first()).toBeVisible()
})

test('the desk renews and ends a member’s link, changes a handicap, and takes details out', async () => {
  await page.goto(`${DESK}/members`)
  await page
    .getByRole('link', { name: /Gethin Maesgoch/ })
    .first()
    .click()
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Maesgoch')
  await form('Make a new link').getByRole('button').click()
  await expect(form('Make a new link').getByRole('status')).toBeVisible()
  await form('End the link').getByRole('button').click()
  await expect(form('End the link')).toHaveCount(0)

  await form('Change the figure').getByLabel('New figure').fill('9.7')
  await form('Change the figure').getByLabel('Reason').fill('Three good cards')
  await form('Change the figure').getByRole('button').click()
  await expect(page.getByText('Three good cards').first()).toBeVisible()

  await page.getByText('Take the details out of the book').click()
  await button('Take the details out').click()
  await expect(form(/^Take .* details out$/).getByRole('status')).toBeVisible()
})

test('duties are handed over and ended, links made, officers signed out', async ({ browser }) => {
  await page.goto(`${DESK}/officers`)
  const give = form('Give a duty')
  await give.getByLabel('Name').fill('Nora Quarrington')
  await give.getByLabel('E-mail').fill('nora@example.org')
  await give.getByLabel('Duty').selectOption('committee')
  await give.getByRole('button', { name: 'Give the duty' }).click()
  const link = await page.getByLabel('One-time link').inputValue()
  const hers = await newPage(browser)
  await hers.goto(link)
  await hers.getByRole('textbox', { name: 'Password' }).fill('a password of her own')
  await hers.getByRole('button', { name: 'Set the password and sign in' }).click()
  await hers.waitForURL(/\/desk\//)

  await page.reload()
  await page.getByText('Change the duty of Nora Quarrington').click()
  await form('New link for Nora Quarrington').getByRole('button').click()
  await expect(form('New link for Nora Quarrington').getByLabel('One-time link')).toHaveValue(/\/sign-in\//)
  await form('Sign out Nora Quarrington').getByRole('button').click()
  await expect(form('Sign out Nora Quarrington').getByRole('status')).toBeVisible()
  await hers.goto(`${DESK}/members`)
  await expect(hers).toHaveURL(/sign-in/)
  await hers.context().close()

  const handOver = form(/^Hand over: .*Nora Quarrington/)
  await handOver.getByText('To somebody new').click()
  await handOver.getByLabel('Name').fill('Piers Ottermere')
  await handOver.getByLabel('E-mail').fill('piers@example.org')
  await handOver.getByRole('button', { name: 'Hand it over' }).click()
  await expect(page.getByText('Change the duty of Piers Ottermere')).toBeVisible()
  await page.getByText('Change the duty of Piers Ottermere').click()
  await form(/^End: .*Piers Ottermere/)
    .getByRole('button')
    .click()
  await expect(page.getByText('Change the duty of Piers Ottermere')).toHaveCount(0)
})

test('privacy settings are saved, and the book is copied and exported', async () => {
  await page.goto(`${DESK}/privacy`)
  await form('Privacy settings').getByLabel('Whom to ask').fill('the secretary')
  await form('Privacy settings').getByRole('button').click()
  await expect(form('Privacy settings').getByRole('status')).toBeVisible()

  await page.goto(`${DESK}/book`)
  await form('Copy the book').getByRole('button').click()
  await expect(form('Copy the book').getByRole('status')).toBeVisible()
  const download = page.waitForEvent('download')
  await page
    .getByRole('link', { name: /take it away|download/i })
    .first()
    .click()
  expect((await download).suggestedFilename()).toMatch(/\.zip$/)
})

test('one’s own sessions are ended, and the password is changed', async ({ browser }) => {
  const others = [await newPage(browser), await newPage(browser)]
  for (const other of others) await signInAtDesk(other, book.origin)
  await page.goto('/desk/account')
  await button('End it').first().click()
  await expect(button('End it')).toHaveCount(1)
  await button('End all others').click()
  await expect(button('End it')).toHaveCount(0)
  for (const other of others) {
    await other.goto('/desk/account')
    await expect(other).toHaveURL(/sign-in/)
  }
  await form('Change the password').getByLabel('Present password').fill(PASSWORD)
  await form('Change the password').getByLabel('New password').fill('fernbrake, and another year')
  await form('Change the password').getByRole('button').click()
  await expect(form('Change the password').getByRole('status')).toBeVisible()
  const [again] = others
  await again!.goto('/sign-in')
  await again!.getByLabel('E-mail').fill(OFFICERS[0].email)
  await again!.getByLabel('Password').fill('fernbrake, and another year')
  await again!.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(again!).toHaveURL(/\/desk/)
})
