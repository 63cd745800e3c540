// Promise: at the screen of a day anybody who is entered can be withdrawn, before the handicaps are frozen, after it and
// with the start sheet out, having read what it means; an earlier guest is entered without typing, a host is never chosen
// by itself; a father and a son of one name are told apart; a day leads back to all days.

import AxeBuilder from '@axe-core/playwright'
import { endOwnBooks, type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

let book: OwnBook
let page: Page
let day = ''

test.beforeAll(async ({ browser }) => {
  test.setTimeout(480_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  await signInAtDesk(page, book.origin)
  await page.getByRole('link', { name: 'Links Day' }).click()
  await page.waitForURL('**/desk/fernbrake/days/*')
  day = page.url()
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

const entryForm = () => page.getByRole('form', { name: 'Entries' })
const box = (name: string | RegExp) => page.getByRole('checkbox', { name })

async function withdraw(name: string) {
  await page.goto(`${day}/entries`)
  await box(new RegExp(`^${name}`)).uncheck()
  await expect(entryForm().getByText(`To withdraw: ${name}.`)).toBeVisible()
}

async function pressWithdraw(name: string) {
  await page.getByRole('button', { name: 'Withdraw 1' }).click()
  await expect(page.getByText(`Saved. ${name} is withdrawn.`)).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Withdrawn' })).toBeVisible()
}

async function enterAgain(name: string) {
  await page
    .getByRole('form', { name: `Enter ${name} again` })
    .getByRole('button')
    .click()
  await expect(box(new RegExp(`^${name}`))).toBeChecked()
}

test('a day says where it stands, and leads to all days and to its neighbours', async () => {
  const line = page.getByRole('navigation', { name: 'Golf days' })
  await expect(line).toContainText('Day 5 of 9, Links Day')
  await line.getByRole('link', { name: /^The next day/ }).click()
  await expect(line).toContainText('Day 6 of 9, Team Day')
  await line.getByRole('link', { name: /^The day before/ }).click()
  await expect(line).toContainText('Day 5 of 9')
  await line.getByRole('link', { name: 'All golf days' }).click()
  await expect(page).toHaveURL(`${book.origin}/desk/fernbrake`)
  await expect(page.getByRole('navigation', { name: 'Golf days' })).toHaveCount(0)
})

test('a player is withdrawn before the freeze and entered again', async () => {
  await withdraw('Emrys Coldbrook')
  await expect(page.getByText('You can enter them again afterwards.')).toBeVisible()
  await looksRight()
  await pressWithdraw('Emrys Coldbrook')
  await looksRight()
  await enterAgain('Emrys Coldbrook')
})

test('a guest of an earlier day is chosen, with the handicap of that day and no host chosen for the secretary', async () => {
  await page.goto(`${day}/entries`)
  const form = page.getByRole('form', { name: 'Enter a guest you know' })
  await form.getByLabel('Guest', { exact: true }).selectOption({ label: 'Wensleigh, Priya, last at Downland Day' })
  await expect(form.getByLabel('Handicap on this day')).toHaveValue('33.0')
  await form.getByLabel('Guest of').selectOption('')
  await form.getByRole('button', { name: 'Enter this guest' }).click()
  await expect(form.getByText('Choose whose guest it is.').first()).toBeVisible()
  await form.getByLabel('Guest of').selectOption({ label: 'Holmgarth, Freya' })
  await form.getByRole('button', { name: 'Enter this guest' }).click()
  await expect(form.getByText('Priya Wensleigh is entered as a guest.')).toBeVisible()
  await expect(page.getByText('guest of Freya Holmgarth')).toBeVisible()
})

test('a guest has another host without withdrawing, is known when added again, and has a handicap on the own page', async () => {
  const host = page.getByRole('form', { name: 'Host of Priya Wensleigh' })
  await host.getByLabel('Priya Wensleigh is the guest of').selectOption({ label: 'Coldbrook, Emrys' })
  await host.getByRole('button', { name: 'Change the host' }).click()
  await expect(host.getByText('Priya Wensleigh is now the guest of Emrys Coldbrook.')).toBeVisible()
  await expect(entryForm().getByText('guest of Emrys Coldbrook')).toBeVisible()
  await expect(page.getByRole('region', { name: 'Not saved' })).toHaveCount(0)

  const form = page.getByRole('form', { name: 'Add a guest' })
  await form.getByLabel('First name').fill('Priya')
  await form.getByLabel('Family name').fill('Wensleigh')
  await expect(page.getByRole('button', { name: 'Save the list: finish or clear “Add a guest” first' })).toBeVisible()
  await form.getByLabel('Guest of').selectOption({ label: 'Holmgarth, Freya' })
  await form.getByLabel('Handicap on this day').fill('33')
  await form.getByRole('button', { name: 'Add the guest' }).click()
  await expect(form.getByText('Priya Wensleigh, guest, entered on this day already.')).toBeVisible()
  await form.getByRole('button', { name: 'The same person' }).click()
  await expect(
    form.getByText('Priya Wensleigh is entered on this day already, as the guest of Coldbrook.'),
  ).toBeVisible()
  await form.getByRole('link', { name: 'Change the host under “Guests of this day”' }).click()
  await expect(page.getByRole('heading', { name: 'Guests of this day' })).toBeInViewport()

  await page.goto(`${book.origin}/desk/fernbrake/members`)
  await page.getByRole('link', { name: 'Priya Wensleigh' }).click()
  await expect(page.getByText('33.0 on Links Day, as told by the host; not checked.')).toBeVisible()
})

test('a guest added under Members is among those to choose from', async () => {
  await page.goto(`${book.origin}/desk/fernbrake/members/new`)
  await page.getByLabel('First name').fill('Osric')
  await page.getByLabel('Family name').fill('Vellacombe')
  await page.getByLabel('Is a').selectOption('guest')
  await page.getByLabel(/^(Figure|Handicap)$/).fill('16.0')
  await page.getByRole('button', { name: 'Add the member' }).click()
  await expect(page.getByText('Osric Vellacombe is added.')).toBeVisible()
  await page.goto(`${day}/entries`)
  const form = page.getByRole('form', { name: 'Enter a guest you know' })
  await form.getByLabel('Guest', { exact: true }).selectOption({ label: 'Vellacombe, Osric' })
  await form.getByLabel('Guest of').selectOption({ label: 'Holmgarth, Freya' })
  await form.getByRole('button', { name: 'Enter this guest' }).click()
  await expect(form.getByText('Osric Vellacombe is entered as a guest.')).toBeVisible()
})

test('a son of his father’s name is asked about, told apart, and both play', async () => {
  await page.goto(`${book.origin}/desk/fernbrake/members/new`)
  await page.getByLabel('First name').fill('Emrys')
  await page.getByLabel('Family name').fill('Coldbrook')
  await page.getByLabel(/^(Figure|Handicap)$/).fill('24.0')
  await page.getByRole('button', { name: 'Add the member' }).click()
  await expect(page.getByText('There is already an Emrys Coldbrook. Is this somebody else?')).toBeVisible()
  await expect(page.getByRole('link', { name: 'The same person: open Emrys Coldbrook' })).toBeVisible()
  await looksRight()
  await page.getByRole('button', { name: 'Somebody else' }).click()
  await expect(page.getByText(/^Write a word that tells this Emrys Coldbrook/).first()).toBeVisible()
  await page.getByLabel('If somebody else: told apart by').fill('junior')
  await page.getByRole('button', { name: 'Somebody else' }).click()
  await expect(page.getByText('Emrys Coldbrook is added.')).toBeVisible()
  await expect(page.getByRole('link', { name: 'Emrys Coldbrook (junior)' })).toBeVisible()
  await page.goto(`${day}/entries`)
  await page.getByLabel('Find a player').fill('junior')
  await page.getByLabel('Find a player').press('Enter')
  await expect(entryForm().getByText('To enter: Emrys Coldbrook (junior).')).toBeVisible()
  await page.getByRole('button', { name: 'Enter 1' }).click()
  await expect(page.getByText('Saved. 1 player entered.')).toBeVisible()
})

test('a member typed by mistake is deleted; one who has played stays, and it says why', async () => {
  await page.goto(`${book.origin}/desk/fernbrake/members/new`)
  await page.getByLabel('First name').fill('Typed')
  await page.getByLabel('Family name').fill('Twice')
  await page.getByRole('button', { name: 'Add the member' }).click()
  await page.getByRole('link', { name: 'Typed Twice' }).click()
  await page.getByText('Delete this member').click()
  await page.getByRole('button', { name: 'Delete Typed Twice' }).click()
  await expect(page.getByText('Typed Twice was deleted.')).toBeVisible()
  await page.getByRole('link', { name: 'Jago Trevennor' }).click()
  await page.getByText('Delete this member').click()
  await page.getByRole('button', { name: 'Delete Jago Trevennor' }).click()
  await expect(page.getByText('Jago Trevennor cannot be deleted.')).toBeVisible()
  await expect(page.getByText('Entered on Spring Cup, withdrawn or not.')).toBeVisible()
  await looksRight()
})

test('who has no handicap is named at the freeze, given one there, and the freeze goes on', async () => {
  await page.goto(`${book.origin}/desk/fernbrake/members/new`)
  await page.getByLabel('First name').fill('New')
  await page.getByLabel('Family name').fill('Comer')
  await page.getByRole('button', { name: 'Add the member' }).click()
  await page.goto(`${day}/entries`)
  await box(/^New Comer/).check()
  await page.getByRole('button', { name: 'Enter 1' }).click()
  await expect(page.getByText('Saved. 1 player entered.')).toBeVisible()
  await expect(page.getByRole('region', { name: 'Not saved' })).toHaveCount(0)
  await page.goto(`${day}/handicaps`)
  await expect(page.getByRole('button', { name: /Freeze .* New Comer has no handicap yet/ })).toHaveAttribute(
    'aria-disabled',
    'true',
  )
  await looksRight()
  const missing = page.getByRole('form', { name: 'Handicap of New Comer' })
  await missing.getByRole('link', { name: 'New Comer' }).click()
  await page.getByRole('link', { name: 'Back to Links Day' }).click()
  await missing.getByLabel('Handicap').fill('27.5')
  await missing.getByRole('button', { name: 'Save' }).click()
  await expect(missing).toHaveCount(0)
  await page.getByRole('button', { name: /^Freeze \d+ handicaps$/ }).click()
  await expect(page.getByText(/was called with 95 %\. With \d+ entered it is 100 %/).first()).toBeVisible()
  await page.getByRole('button', { name: /^Freeze \d+ handicaps with this allowance$/ }).click()
  await expect(page.getByText(/are frozen into the day|Frozen /).first()).toBeVisible()
})

test('a player is withdrawn after the freeze', async () => {
  await withdraw('Jago Trevennor')
  await pressWithdraw('Jago Trevennor')
  await enterAgain('Jago Trevennor')
})

test('with the start sheet out the screen says what becomes of the group, and the sheet follows', async () => {
  await page.goto(`${day}/draw`)
  await page.getByRole('button', { name: /^Draw \d+/ }).click()
  await page.getByRole('button', { name: 'Publish the start sheet' }).click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1', exact: true })).toBeVisible()
  await withdraw('Jago Trevennor')
  await expect(page.getByText(/^Group \d+, \d+\.\d\d( [ap]m)?: .* play on\.$/)).toBeVisible()
  await expect(page.getByText('The start sheet everybody sees changes at once.')).toBeVisible()
  await looksRight()
  await pressWithdraw('Jago Trevennor')
  await page.goto(day.replace('/desk/', '/').concat('/start'))
  await expect(page.getByText('Emrys Coldbrook (junior)').first()).toBeVisible()
  await expect(page.getByText('Jago Trevennor')).toHaveCount(0)
  await page.goto(`${day}/entries`)
  await expect(page.getByText('Whoever is entered again is in no group until put into one under Draw.')).toBeVisible()
  await enterAgain('Jago Trevennor')
})

test('somebody with scores on the card is not withdrawn here, and it says where', async () => {
  await page.goto(`${book.origin}/desk/fernbrake`)
  await page.getByRole('link', { name: 'Downland Day', exact: true }).click()
  await page.getByRole('link', { name: 'Entries', exact: true }).click()
  await box(/^Corin Haldane/).uncheck()
  await expect(page.getByText('Corin Haldane has scores on the card: rule the card withdrawn instead')).toBeVisible()
  await expect(page.getByRole('button', { name: /^Withdraw 1/ })).toHaveAttribute('aria-disabled', 'true')
})
