// Promise: at its own screens a day is called off and put back on, an empty one deleted; frozen handicaps are unfrozen or
// frozen again for some; a frozen day whose field has grown is moved to another date; a day is closed over cards that are
// out only when that was meant; prizes are seen before anything is published, and a second sheet only when it says
// something else.

import { type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Locator, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

let book: OwnBook
let page: Page
const desk = () => `${book.origin}/desk/fernbrake`
let links = ''

test.beforeAll(async ({ browser }) => {
  test.setTimeout(480_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  await signInAtDesk(page, book.origin)
  links = await addressOf('Links Day')
})
test.afterAll(() => book.stop())

async function addressOf(day: string): Promise<string> {
  await page.goto(desk())
  await page.getByRole('link', { name: day, exact: true }).click()
  await expect(page).toHaveURL(/\/days\/[^/]+$/)
  return page.url()
}

async function fits() {
  for (const width of [360, 768, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(over).toBeLessThanOrEqual(0)
  }
}

test('a day is called off with its reason and put back on', async () => {
  await page.goto(links)
  await page.getByText('Call the day off or delete it').click()
  const form = page.getByRole('form', { name: 'Call the day off' })
  await form.getByLabel('Reason').fill('The course is waterlogged.')
  await form.getByRole('button', { name: 'Call the day off' }).click()
  await expect(page.getByRole('heading', { name: 'Put the day back on' })).toBeVisible()
  await expect(page.getByText('The course is waterlogged.').first()).toBeVisible()
  await fits()
  await page.goto(`${book.origin}/fernbrake`)
  await expect(page.getByText('The course is waterlogged.').first()).toBeVisible()
  await page.goto(links)
  await page.getByRole('button', { name: 'Put the day back on' }).click()
  await expect(page.getByText('Call the day off or delete it')).toBeVisible()
})

test('a day with entries is not deleted and says why; an empty one is', async () => {
  await page.goto(links)
  await page.getByText('Call the day off or delete it').click()
  await expect(page.getByText(/^It cannot be deleted: /)).toBeVisible()
  await page.goto(`${desk()}/new-day`)
  await page.getByLabel('Name of the day').fill('Called by mistake')
  await page.getByRole('button', { name: 'Call the day', exact: true }).click()
  await expect(page).toHaveURL(/\/days\/called-by-mistake/)
  await page.goto(await addressOf('Called by mistake'))
  await page.getByText('Call the day off or delete it').click()
  await page.getByRole('button', { name: 'Delete the day' }).click()
  await expect(page).toHaveURL(desk())
  await expect(page.getByRole('link', { name: 'Called by mistake' })).toHaveCount(0)
})

test('frozen handicaps are unfrozen, frozen, and two of them frozen again', async () => {
  const freeze = async () => {
    await page.goto(`${links}/handicaps`)
    await page.getByRole('button', { name: /^Freeze \d+ handicaps$/ }).click()
    await expect(page.getByRole('heading', { name: 'If a handicap is wrong' })).toBeVisible()
  }
  await page.goto(`${links}/entries`)
  await page.getByRole('button', { name: 'All regulars' }).click()
  await page.getByRole('button', { name: /^Enter \d+$/ }).click()
  await expect(page.getByText(/^Saved\. \d+ players entered\./)).toBeVisible()
  await freeze()
  await page.getByText('Unfreeze all handicaps').first().click()
  const all = page.getByRole('form', { name: 'Unfreeze all handicaps' })
  await all.getByLabel('Reason').fill('Frozen a week too early')
  await all.getByRole('button', { name: /^Unfreeze \d+ handicaps$/ }).click()
  await expect(page.getByRole('button', { name: /^Freeze \d+ handicaps$/ })).toBeVisible()
  await freeze()
  for (const [name, figure] of [
    ['Emrys Coldbrook', '17.1'],
    ['Jago Trevennor', '19.2'],
  ] as const) {
    await page.goto(`${desk()}/members`)
    await page.getByRole('link', { name, exact: true }).click()
    await page.getByLabel(/^New (figure|handicap)$/).fill(figure)
    await page.getByLabel('Reason').fill('A card was missing')
    await page.getByRole('button', { name: /^Change the (figure|handicap)$/ }).click()
    await expect(page.getByText('A card was missing').first()).toBeVisible()
  }
  await page.goto(`${links}/handicaps`)
  const some = page.getByRole('form', { name: 'Freeze some players again' })
  await expect(some.getByRole('checkbox', { name: /Emrys Coldbrook, frozen .*, now 17\.1/ })).toBeChecked()
  await expect(some.getByRole('checkbox', { name: /Jago Trevennor, frozen .*, now 19\.2/ })).toBeChecked()
  await some.getByLabel('Reason').fill('Corrected by the home club')
  await some.getByRole('button', { name: 'Freeze these players again' }).click()
  await expect(page.getByRole('row', { name: /Emrys Coldbrook/ })).toContainText('17.1')
  await expect(page.getByRole('row', { name: /Jago Trevennor/ })).toContainText('19.2')
  await fits()
})

test('a frozen day is postponed although the field has crossed thirty, and what stays is said first', async () => {
  await page.goto(`${links}/entries`)
  const entered = await page.getByRole('checkbox', { checked: true }).count()
  expect(entered).toBeGreaterThan(30)
  await page.goto(links)
  await page.getByRole('link', { name: 'Change the day' }).click()
  await expect(page.getByText('Handicaps are frozen')).toBeVisible()
  await expect(page.getByText('These stay as they are')).toBeVisible()
  for (const gone of ['Course', 'Tees, men', 'Players expected', 'Holes'])
    await expect(page.getByLabel(gone, { exact: true })).toHaveCount(0)
  await fits()
  const date = page.getByLabel('Date', { exact: true })
  const was = await date.inputValue()
  const moved = new Date(Date.parse(`${was}T00:00:00Z`) + 7 * 86_400_000).toISOString().slice(0, 10)
  await date.fill(moved)
  await page.getByLabel('First tee').fill('10:30')
  await page.getByRole('button', { name: 'Change the day' }).click()
  await expect(page).toHaveURL(links)
  await page.getByRole('link', { name: 'Change the day' }).click()
  await expect(page.getByLabel('Date', { exact: true })).toHaveValue(moved)
  await expect(page.getByLabel('First tee')).toHaveValue('10:30')
})

test('prizes are seen before publishing, cards still out are asked about, and sheet 2 waits for a difference', async () => {
  test.setTimeout(300_000)
  const day = await addressOf('Downland Day')
  await page.goto(`${day}/result`)
  await expect(page.getByRole('heading', { name: 'Prizes, if play ended now' })).toBeVisible()
  await acceptWhatIsHandedIn(day)
  await page.goto(`${day}/result`)
  await page.getByText(/^Close it without (that card|those cards)$/).click()
  await page.getByRole('button', { name: /^Close the day: \d+ cards? not returned$/ }).click()
  await expect(page.getByRole('heading', { name: 'Prizes, before sheet 1 is published' })).toBeVisible()
  const prizes = page.getByRole('table', { name: 'Prizes, before sheet 1 is published' })
  await expect(prizes.getByText('Who stood where').first()).toBeVisible()
  await fits()
  await page.getByRole('button', { name: 'Publish sheet 1' }).click()
  await expect(page.getByText('Nothing differs from sheet 1: there is nothing to publish.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Publish sheet 2' })).toHaveCount(0)
  await expect(page.getByRole('heading', { name: 'Prizes on sheet 1' })).toBeVisible()

  await page.locator('summary', { hasText: 'Open the day again' }).click()
  await page.getByLabel('Reason', { exact: true }).fill('A penalty was forgotten.')
  await page.getByRole('button', { name: 'Open the day again' }).click()
  await expect(page.getByRole('button', { name: 'Close the day' })).toBeVisible()
  await page.goto(`${day}/returns`)
  await openCard(page.locator('.card-states a').first())
  await page.getByText('Rule on this card').click()
  await page.getByRole('radio', { name: /^Penalty strokes/ }).check()
  await page.getByLabel('Strokes to add').fill('2')
  await page.getByLabel('Reason, kept with the card').fill('Ball dropped outside the relief area.')
  await page.getByRole('button', { name: 'Rule it', exact: true }).click()
  await expect(page.getByText('Ball dropped outside the relief area.')).toBeVisible()
  await page.goto(`${day}/result`)
  await page.getByRole('button', { name: 'Close the day' }).click()
  await expect(page.getByText('What sheet 2 says otherwise')).toBeVisible()
  await expect(page.getByText(/^New\. Ruling \d+, .*Ball dropped outside the relief area\./)).toBeVisible()
  await page.getByLabel('Reason for sheet 2').fill('Two penalty strokes were left out.')
  await page.getByRole('button', { name: 'Publish sheet 2' }).click()
  await expect(page.getByText('Nothing differs from sheet 2: there is nothing to publish.')).toBeVisible()
})

/** The card that was chosen, and not the one that was offered before, is on the page. */
async function openCard(link: Locator) {
  const asked = (await link.getAttribute('href'))?.replace(/^[^?]*/, '') ?? ''
  await link.click()
  await expect(page).toHaveURL((url) => url.search === asked)
}

/** What is handed in must be accepted or ruled upon before the day is closed. */
async function acceptWhatIsHandedIn(day: string) {
  await page.goto(`${day}/returns`)
  const waiting = page.locator('.card-states').getByRole('link', { name: /, handed in/ })
  const accepted = page.locator('.big-of .fig')
  await expect(accepted).toBeVisible()
  for (let left = await waiting.count(); left > 0; left--) {
    const so = Number(await accepted.textContent())
    await openCard(waiting.first())
    await page.getByRole('button', { name: 'Accept', exact: true }).click()
    await expect(accepted).toHaveText(String(so + 1))
    await expect(waiting).toHaveCount(left - 1)
  }
}
