// Promise: an officer sets a day up from the last one, draws it, publishes the start sheet, keys the paper cards by
// keyboard alone, rules with a reason, closes, publishes, and corrects with a second sheet. Two desks never overwrite
// each other, and nothing typed is lost on a refusal. Axe finds nothing on any page of the desk.

import AxeBuilder from '@axe-core/playwright'
import { OFFICERS, PASSWORD } from '@/seed/members'
import { isLive } from './day-walk'
import { type Browser, type BrowserContext, expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const DESK = '/desk/fernbrake'
const PLAYERS = ['Haldane', 'Ashgill', 'Trevennor', 'Holmgarth', 'Coldbrook', 'Tarrablane', 'Storrey', 'Fairclose']

let day = ''

async function signIn(page: Page) {
  await page.goto(`/sign-in?next=${DESK}`)
  await page.getByLabel('E-mail').fill(OFFICERS[0].email)
  await page.getByLabel('Password').fill(PASSWORD)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await page.waitForURL((url) => url.pathname === DESK)
}

/** Signed in once for the whole file: an address has twenty tries in a quarter of an hour, and all files share one server. */
let session: Awaited<ReturnType<BrowserContext['storageState']>> | undefined

async function deskPage(browser: Browser) {
  const viewport = { width: 1280, height: 900 }
  const page = await (await browser.newContext({ viewport, ...(session ? { storageState: session } : {}) })).newPage()
  if (session) await page.goto(DESK)
  else await signIn(page)
  session ??= await page.context().storageState()
  return page
}

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

/** A wide page is no page: nothing but a table's own scroll area may go sideways. */
async function fitsThePhone(page: Page) {
  await page.setViewportSize({ width: 360, height: 780 })
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over).toBeLessThanOrEqual(0)
  await page.setViewportSize({ width: 1280, height: 900 })
}

test('a wrong password is refused in place, and the address typed stays', async ({ page }) => {
  await page.goto('/sign-in')
  await page.getByLabel('E-mail').fill('nobody@fernbrake.example')
  await page.getByLabel('Password').fill('not-the-password')
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page.getByText('Not done', { exact: true })).toBeVisible()
  await expect(page.getByLabel('E-mail')).toHaveValue('nobody@fernbrake.example')
  await looksRight(page)
})

test('nobody comes to the desk without signing in', async ({ page }) => {
  await page.goto(`${DESK}/members`)
  await expect(page).toHaveURL(/\/sign-in\?next=/)
  expect((await page.request.get(`${DESK}/days/any/export`)).status()).toBe(401)
})

test('a day is called from the last one; the allowance is proposed and an own figure asks for its reason', async ({
  browser,
}) => {
  const page = await deskPage(browser)
  await looksRight(page)
  await fitsThePhone(page)
  await page.getByRole('link', { name: 'Call a day' }).first().click()
  await expect(page.getByRole('heading', { name: 'Call a day' })).toBeVisible()
  await page.getByLabel('Name of the day').fill('Lantern Plate')
  await page.getByLabel('Minutes between groups').fill('8')
  await expect(page.getByText(/8 minutes between four-balls is short/)).toBeVisible()

  const competitions = page.getByRole('group', { name: /^Competition \d/ })
  while ((await competitions.count()) > 1)
    await page
      .getByRole('button', { name: /^Leave .* out$/ })
      .last()
      .click()
  const first = competitions.first()
  await first.getByLabel('Format').selectOption('stableford')
  await first.getByLabel('Handicap allowance, %').fill('88')
  await first.getByLabel('House choice, because').fill('Voted at the annual meeting')
  await page.getByRole('button', { name: 'Add a competition' }).click()
  await expect(competitions).toHaveCount(2)
  await expect(competitions.nth(1).getByLabel('Handicap allowance, %')).toHaveValue('85')
  await competitions.nth(1).getByLabel('Name or trophy').fill('Pairs')

  const proposed = await page.getByLabel('Date', { exact: true }).inputValue()
  await page.getByLabel('Date', { exact: true }).fill('2061-06-01')
  await page.getByRole('button', { name: 'Call the day' }).click()
  await expect(page.getByText('Not done', { exact: true })).toBeVisible()
  await expect(page.getByLabel('Name of the day')).toHaveValue('Lantern Plate')
  await expect(first.getByLabel('House choice, because')).toHaveValue('Voted at the annual meeting')
  await looksRight(page)

  await page.getByLabel('Date', { exact: true }).fill(proposed)
  await page.getByRole('button', { name: 'Call the day' }).click()
  await expect(page).toHaveURL(/\/days\/lantern-plate/)
  day = new URL(page.url()).pathname
  await expect(page.getByText('House choice: Voted at the annual meeting')).toBeVisible()
  await looksRight(page)
  await fitsThePhone(page)
})

test('members are found and ticked by name, a guest comes with a host; a second desk is told what changed', async ({
  browser,
}) => {
  const page = await deskPage(browser)
  const other = await deskPage(browser)
  await page.goto(`${day}/entries`)
  await other.goto(`${day}/entries`)
  for (const name of PLAYERS) {
    await page.getByLabel('Find a player').fill(name)
    await page.getByLabel('Find a player').press('Enter')
  }
  await page.getByRole('button', { name: `Enter ${PLAYERS.length}` }).click()
  await expect(page.getByText('Saved. 8 players entered.')).toBeVisible()

  const form = other.getByRole('form', { name: 'Add a guest' })
  await form.getByLabel('First name').fill('Sorley')
  await form.getByLabel('Family name').fill('Maddock')
  await form.getByLabel('Guest of').selectOption({ label: 'Storrey, Magnus' })
  await form.getByLabel('Handicap on this day').fill('eleven')
  await form.getByRole('button', { name: 'Add the guest' }).click()
  await expect(form.getByText('“eleven” is no handicap.').first()).toBeVisible()
  await form.getByLabel('Handicap on this day').fill('11.0')
  await form.getByRole('button', { name: 'Add the guest' }).click()
  await expect(form.getByText('The day moved on')).toBeVisible()
  await expect(form.getByText(/changed the entries .*Corin Haldane/)).toBeVisible()
  await expect(form.getByLabel('First name')).toHaveValue('Sorley')
  await form.getByRole('button', { name: 'Add the guest' }).click()
  await expect(form.getByText('There is already a Sorley Maddock. Is this somebody else?')).toBeVisible()
  await form.getByRole('button', { name: 'The same person' }).click()
  await expect(form.getByText('Sorley Maddock is entered as a guest.')).toBeVisible()
  await looksRight(other)
  await fitsThePhone(other)
})

test('every handicap opens into its working and is frozen', async ({ browser }) => {
  const page = await deskPage(browser)
  await page.goto(`${day}/handicaps`)
  await page
    .getByRole('link', { name: /Playing handicap .* Jago Trevennor/ })
    .first()
    .click()
  await expect(page.getByRole('heading', { name: 'Course handicap', exact: true })).toBeVisible()
  await expect(page.getByText('× 88 %')).toBeVisible()
  await looksRight(page)
  await page.getByRole('button', { name: 'Freeze 9 handicaps' }).click()
  await expect(page.getByText(/^Frozen/)).toBeVisible()
  await expect(page.getByRole('button', { name: /^Freeze/ })).toHaveCount(0)
  await fitsThePhone(page)
})

test('groups are drawn, a player is moved by keys, sides are made, the start sheet goes out', async ({ browser }) => {
  const page = await deskPage(browser)
  await page.goto(`${day}/draw`)
  await page.getByLabel('Groups of', { exact: true }).selectOption('3')
  await page.getByRole('button', { name: 'Draw 9 players' }).click()
  await expect(page.getByRole('region', { name: /^Group 3/ })).toBeVisible()

  const groupOf = (number: number) => page.getByRole('region', { name: new RegExp(`^Group ${number},`) })
  const mover = groupOf(1).getByRole('button').first()
  const name = (await mover.getAttribute('aria-label'))?.split(',')[0] ?? ''
  await mover.focus()
  await page.keyboard.press('2')
  await expect(groupOf(2).getByRole('button', { name })).toBeFocused()
  await expect(groupOf(2)).toHaveAccessibleName('Group 2, 4 players')
  await page.getByRole('button', { name: 'Keep these 3 groups' }).click()
  await expect(page.getByText('The draw is kept as it stands here.')).toBeVisible()

  await page.getByRole('button', { name: 'Keep the sides of Pairs' }).click()
  await expect(page.getByText('The sides are kept.')).toBeVisible()
  await looksRight(page)
  await page.getByRole('button', { name: 'Publish the start sheet' }).click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).toBeVisible()
  const code = await page.locator('.code').first().textContent()
  await page.getByRole('button', { name: 'New link and code for group 1' }).click()
  await expect(page.locator('.code').first()).not.toHaveText(code ?? '')
  await looksRight(page)
  await fitsThePhone(page)
})

test('paper cards are keyed by keyboard alone; no return and a penalty are ruled with a reason', async ({
  browser,
}) => {
  const page = await deskPage(browser)
  await page.goto(`${day}/returns`)
  // The day is still ahead: no card is entered before somebody says that it is played early.
  await expect(page.getByText('This day has not come yet')).toBeVisible()
  await looksRight(page)
  await page.getByRole('button', { name: /^Played early: enter cards before / }).click()
  await expect(page.getByText('This day has not come yet')).toHaveCount(0)
  await looksRight(page)
  await fitsThePhone(page)
  await page.setViewportSize({ width: 360, height: 780 })
  await expect(page.getByRole('button', { name: /^9 cards, 0 accepted/ })).toBeVisible()
  await expect(page.locator('.card-states a').first()).toBeHidden()
  await page.setViewportSize({ width: 1280, height: 900 })

  // The first card: ten with T, one more with +, no score with 0, the total of the paper finds what is open.
  await isLive(page.locator('[data-place="0"]'))
  await page.locator('[data-place="0"]').focus()
  for (const key of ['t', '+', '0', ...'4554554']) await page.keyboard.press(key)
  await expect(page.locator('[data-place="0"]')).toHaveValue('11')
  await expect(page.locator('[data-place="1"]')).toHaveValue('–')
  await expect(page.getByRole('button', { name: 'Accept: 9 holes to enter' })).toBeVisible()
  for (const key of '455445545') await page.keyboard.press(key)
  await page.keyboard.press('Enter')
  await expect(page.getByText('The player has not signed.').first()).toBeVisible()
  await expect(page.getByText('What you entered is saved')).toBeVisible()
  await page.locator('[data-place="17"]').focus()
  await page.keyboard.press('s')
  await page.keyboard.press('Enter')
  await expect(page.getByText('of 9 cards')).toBeVisible()
  await expect(page.locator('.big-of .fig')).toHaveText('1')

  // The hand does not wait for the server: what is pressed before the next card has come is that card's.
  const pile = ['554455445544554455', '445544554455445544', '545454545454545454', '455445544554455445']
  for (let taken = 1; taken < 8; taken += 1) {
    for (const key of pile[taken % 4]!) await page.keyboard.press(key)
    await page.keyboard.press('s')
    await page.keyboard.press('Enter')
  }
  await expect(page.locator('.big-of .fig')).toHaveText('8', { timeout: 60_000 })

  await page.getByRole('link', { name: 'No return' }).click()
  await page.getByLabel('Reason, kept with the card').fill('Walked in after nine, back pain.')
  await page.getByRole('button', { name: 'Rule: no return' }).click()
  await expect(page.getByText('Walked in after nine, back pain.')).toBeVisible()
  await looksRight(page)
})

test('the day is closed and published; a correction makes sheet 2 with its reason', async ({ browser }) => {
  const page = await deskPage(browser)
  await page.goto(`${day}/result`)
  await looksRight(page)
  await page.getByRole('button', { name: 'Close the day' }).click()
  await expect(page.getByRole('button', { name: 'Publish sheet 1' })).toBeVisible()
  await page.getByRole('button', { name: 'Publish sheet 1' }).click()
  await expect(page.getByRole('heading', { name: 'Sheet 1 is published', exact: true })).toBeVisible()
  await looksRight(page)
  await fitsThePhone(page)

  await page.getByText('Open the day again').first().click()
  await page.getByLabel('Reason', { exact: true }).fill('A penalty was forgotten.')
  await page.getByRole('button', { name: 'Open the day again' }).click()
  await expect(page.getByRole('button', { name: 'Close the day' })).toBeVisible()

  await page.goto(`${day}/returns`)
  await page.locator('.card-states a').first().click()
  await page.getByText('Rule on this card').click()
  await page.getByRole('radio', { name: /^Penalty strokes/ }).check()
  await page.getByLabel('Strokes to add').fill('2')
  await page.getByLabel('Reason, kept with the card').fill('Ball dropped outside the relief area.')
  await page.getByRole('button', { name: 'Rule it', exact: true }).click()
  await expect(page.getByText('Ball dropped outside the relief area.')).toBeVisible()

  await page.goto(`${day}/result`)
  await page.getByRole('button', { name: 'Close the day' }).click()
  await page.getByLabel('Reason for sheet 2').fill('Two penalty strokes were left out.')
  await page.getByRole('button', { name: 'Publish sheet 2' }).click()
  await expect(page.getByRole('heading', { name: 'Sheet 2 is published', exact: true })).toBeVisible()
  await expect(page.getByText('Two penalty strokes were left out.')).toBeVisible()
  const file = await page.request.get(`${day}/export`)
  expect(file.ok()).toBe(true)
  expect(await file.json()).toMatchObject({ dayFile: 1 })
})

test('members and courses: lists, forms and a card whose faults are named cell by cell', async ({ browser }) => {
  const page = await deskPage(browser)
  await page.goto(`${DESK}/members`)
  await page.getByLabel('Find a member').fill('trev')
  await expect(page.getByRole('row')).toHaveCount(2)
  await looksRight(page)
  await fitsThePhone(page)
  await page.getByRole('link', { name: 'Jago Trevennor' }).click()
  await page.getByLabel('New figure').fill('19.9')
  await page.getByLabel('Reason').fill('Won the Lantern Plate')
  await page.getByRole('button', { name: 'Change the figure' }).click()
  await expect(page.getByText('Won the Lantern Plate').first()).toBeVisible()
  await expect(page.getByLabel('Address of the page')).toHaveValue(/^http.*\/member\/.+/)
  await looksRight(page)

  await page.goto(`${DESK}/courses/new`)
  await page.getByLabel('Course', { exact: true }).fill('Thistlewick Down')
  await page.getByLabel('Course rating').fill('70.1')
  await page.getByLabel('Slope rating').fill('121')
  await page.getByLabel('Stroke index, hole 1', { exact: true }).fill('7')
  await page.getByLabel('Stroke index, hole 2', { exact: true }).fill('7')
  await expect(page.getByText('Hole 1: Stroke index 7 is on hole 2 too.')).toBeVisible()
  await looksRight(page)
  await page.getByRole('button', { name: 'Enter the course' }).click()
  await expect(page.getByText('Not done', { exact: true })).toBeVisible()
  await expect(page.getByLabel('Course', { exact: true })).toHaveValue('Thistlewick Down')
  await page.goto(`${DESK}/members/import`)
  await looksRight(page)
})
