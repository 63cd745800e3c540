// Promise: a paper card is entered by keyboard, and no total of the paper ever falls into a hole; what differs is said in
// its own row and accepted by a button; a card accepted by a slip is opened again; nobody is mistaken for a namesake.
import { endOwnBooks, type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const RETURNS = '/desk/fernbrake/days/downland-day-2026/returns'
/** The first four cards of the demonstration's day that nothing is written on, in the order of the list. */
const [FIRST, SECOND, THIRD, FOURTH] = [
  'Anjali Verrow',
  'Rohan Pellisade',
  'Basil Quennerton',
  'Vikram Sundale',
] as const
let book: OwnBook
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  await signInAtDesk(page, book.origin)
})
test.afterAll(({ browser }) => endOwnBooks(browser))

const hole = (number: number) => page.locator(`[data-place="${number - 1}"]`)
const paper = (which: string) => page.getByLabel(`${which} on the paper`)
const scores = () => page.locator('.key-in').evaluateAll((boxes) => boxes.map((one) => (one as HTMLInputElement).value))
async function press(...keys: string[]) {
  for (const key of keys) await page.keyboard.press(key)
}
const choose = async (name: string) => {
  await page.goto(`${book.origin}${RETURNS}`)
  // Pressing the link of a card that is open already would only take the hand off it.
  const address = await page.getByRole('link', { name: new RegExp(`^${name},`) }).getAttribute('href')
  await page.goto(`${book.origin}${address}`)
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible()
}
const hasFocus = (which: string) => expect(page.locator(which)).toBeFocused()

test('the plain address puts the hand in hole 1 of the first card to enter, and names everybody in full', async () => {
  await page.goto(`${book.origin}${RETURNS}`)
  await expect(page.getByRole('heading', { level: 1, name: FIRST })).toBeVisible()
  await hasFocus('[data-place="0"]')
  await expect(page.getByRole('link', { name: `${FOURTH}, not started` })).toHaveText(FOURTH)
})

test('with a hole skipped the total of the paper stays a total, and the hole is named', async () => {
  await press(...'5544', 'Tab', ...'5545544554456')
  await hasFocus('[data-paper="total"]')
  await expect(page.getByText('Hole 5 has no score yet.').first()).toBeVisible()
  const before = await scores()
  await press(...'83')
  expect(await scores()).toEqual(before)
  expect([before[4], before[17]]).toEqual(['', '6'])
  await expect(paper('Total')).toHaveValue('83')
  await expect(page.getByText('Total: hole 5 must be 4.')).toBeVisible()

  await press('Enter')
  await hasFocus('[data-place="4"]')
  await press('5')
  await hasFocus('[data-paper="total"]')
  expect((await scores())[5]).toBe('5')
})

test('a total that differs is said in its row, Enter never accepts it, and the button does', async () => {
  const row = page.getByRole('row').filter({ has: paper('Total') })
  await expect(row).toContainText('The paper says 83, the holes come to 84.')
  const said = await row.getByText('The paper says 83').boundingBox()
  expect(said!.width).toBeGreaterThan(300)
  expect(said!.height).toBeLessThan(80)
  await press('s', 'Enter', 'Enter')
  await expect(page.getByText('A total on the paper differs.')).toBeVisible()
  await expect(page.getByRole('heading', { level: 1, name: FIRST })).toBeVisible()
  await expect(page.getByText('Rules of Golf 3.3b(4)').first()).toBeVisible()
  await page.getByRole('button', { name: /^The holes are right: accept \d+ points$/ }).click()
  await expect(page.getByText(`Accepted: ${FIRST}`)).toBeVisible()
  await expect(page.getByRole('heading', { level: 1, name: SECOND })).toBeVisible()
  await hasFocus('[data-place="0"]')
})

test('the last card accepted is opened again and entered again, without a ruling, and the record says so', async () => {
  await page.getByRole('button', { name: 'Open this card again' }).click()
  await expect(page.getByRole('heading', { level: 1, name: FIRST })).toBeVisible()
  await expect(hole(1)).toBeFocused()
  await hole(18).focus()
  await press('5', 'Enter')
  await expect(page.getByText(`Accepted: ${FIRST}`)).toBeVisible()

  await choose(FIRST)
  await expect(page.locator('.key-in')).toHaveCount(0)
  await expect(page.locator('.read-score').last()).toHaveText('5')
  await expect(
    page.getByText(new RegExp(`^Signed on paper by the player, ${FIRST} and the marker, .* entered at`)),
  ).toBeVisible()
  await page.getByLabel('Why (optional)').fill('The 9th was read wrong')
  await page.getByRole('button', { name: 'Open this card again' }).click()
  await expect(hole(1)).toBeFocused()
  await hole(9).focus()
  await press('7', 'Enter')
  // The total of the paper, entered long before, is still with the card and has to be settled again.
  await expect(page.getByText(/^The paper says 83, the holes come to \d\d\./)).toBeVisible()
  await page.getByRole('button', { name: /^The holes are right: accept \d+ points$/ }).click()
  await expect(page.getByText(`Accepted: ${FIRST}`)).toBeVisible()
  await expect(page.getByText('None yet. Each ruling is kept')).toBeVisible()
  await page.goto(`${book.origin}/desk/fernbrake/record?act=reopen-card`)
  await expect(page.getByText('opened a card again').filter({ visible: true }).first()).toBeVisible()
  await expect(page.getByText('The 9th was read wrong').first()).toBeVisible()
})

test('a card left half entered is found as it was, totals of the paper too', async () => {
  await choose(SECOND)
  await hasFocus('[data-place="0"]')
  await press(...'455')
  await paper('Out').fill('43')
  await expect(page.getByText('Out: holes 4, 5, 6, 7, 8, 9 must come to 29.')).toBeVisible()
  await page.goto(`${book.origin}/desk/fernbrake`)
  await choose(SECOND)
  await expect(page.getByText('What was entered here before and not saved is still in the fields.')).toBeVisible()
  expect((await scores()).slice(0, 4)).toEqual(['4', '5', '5', ''])
  await expect(paper('Out')).toHaveValue('43')
  await hasFocus('[data-place="3"]')
})

test('figures for the next card go on while the server answers, skipped holes and totals included', async () => {
  await choose(THIRD)
  await hasFocus('[data-place="0"]')
  // The answer is held back until the first figure of the total is pressed too: the second comes to the card itself.
  let answer = () => {}
  const held = new Promise<void>((resolve) => {
    answer = resolve
  })
  await page.route('**/returns*', async (route) => {
    if (route.request().method() === 'POST') await held
    await route.continue()
  })
  await press(...'455445544554455445', ...'81', 's', 'Enter', ...'5544', 'Tab', ...'5545544554456', '8')
  answer()
  await expect(page.getByRole('heading', { level: 1, name: FOURTH })).toBeVisible()
  await expect(paper('Total')).toHaveValue('8')
  await page.unrouteAll({ behavior: 'wait' })
  await press('4')
  await expect(paper('Total')).toHaveValue('84')
  const now = await scores()
  expect([now[4], now[5], now[17]]).toEqual(['', '5', '6'])
})

test('a phone-sized window keeps the totals in sight, and nothing goes sideways but the card', async () => {
  await page.setViewportSize({ width: 360, height: 780 })
  await page.goto(`${book.origin}${RETURNS}`)
  await page.getByRole('button', { name: /all cards/ }).click()
  await page.getByRole('link', { name: /^Petra Ashgill,/ }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Petra Ashgill' })).toBeVisible()
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over).toBeLessThanOrEqual(0)
  const box = await paper('Total').boundingBox()
  expect(box!.x + box!.width).toBeLessThanOrEqual(360)
  await page.setViewportSize({ width: 1280, height: 900 })
})

test('the one card of a side on one ball is headed with everybody of the side', async () => {
  await page.goto(`${book.origin}/desk/fernbrake/days/four-ball-scramble-2026/returns`)
  await page.locator('.card-states a').first().click()
  const title = page.getByRole('heading', { level: 1 })
  await expect(title).toHaveText(/^\S+ \S+, \S+ \S+, \S+ \S+ and \S+ \S+$/)
  await expect(page.getByText('the marker, marker')).toHaveCount(0)
})

test('a wrong handicap is ruled as the right index, and a score too low is told what the hole is worth', async () => {
  await choose('Freya Holmgarth')
  await page.getByText('Rule on this card').click()
  await page.getByLabel('What was wrong with the card').selectOption('handicap-wrong')
  await page.getByLabel('Handicap index that counts').fill('twelve')
  await page.getByLabel('Reason, kept with the card').first().fill('The list of May says so')
  await page.getByRole('button', { name: 'Rule it', exact: true }).first().click()
  await expect(page.getByText('“twelve” is no handicap.').first()).toBeVisible()
  await page.getByLabel('Handicap index that counts').fill('12.6')
  await page.getByRole('button', { name: 'Rule it', exact: true }).first().click()
  await expect(page.getByText('Handicap index 12.6 counts.').first()).toBeVisible()

  await choose(FIRST)
  await page.getByText('Rule on this card').click()
  await page.getByLabel('What was wrong with the card').selectOption('score-lower')
  await page.getByRole('radio', { name: /^No penalty: the hole comes out the same/ }).check()
  await page.getByLabel('On hole').selectOption('5')
  await page.getByLabel('Strokes that were made').fill('7')
  await expect(page.getByText('Hole 5: 5 on the card, 7 made: 0 points either way.')).toBeVisible()
  await page.getByLabel('Reason, kept with the card').first().fill('Said so at the table')
  await page.getByRole('button', { name: 'Rule it', exact: true }).first().click()
  await expect(page.getByText('Hole 5 counts as 5.').first()).toBeVisible()
})

test('two desks on one card: the later one sees which holes differ, chooses, and a refusal goes with its reason', async () => {
  await page.goto(`${book.origin}${RETURNS}`)
  // From the end of the list: what an earlier story left half entered is found again, hand and all.
  const blank = page.locator('.card-states a[aria-label$=", not started"]').last()
  const name = (await blank.getAttribute('aria-label'))!.replace(', not started', '')
  await choose(name)
  await hasFocus('[data-place="0"]')
  const other = await page.context().newPage()
  await other.goto(page.url())
  await expect(other.locator('[data-place="0"]')).toBeFocused()

  for (const key of '5556') await other.keyboard.press(key)
  await expect(other.locator('[data-place="4"]')).toBeFocused()

  // Without signatures: what is entered is saved, and it says why it is not accepted.
  await page.bringToFront()
  await press(...'666766576666576665')
  await page.getByRole('button', { name: 'Accept', exact: true }).click()
  await expect(page.getByText('What you entered is saved; the card is not accepted yet.')).toBeVisible()
  await other.bringToFront()
  const notice = other.getByText('Since you began to enter this card, these holes were changed:')
  await expect(notice).toBeVisible()
  await expect(other.getByText('Hole 1: 5 in your field, 6 by another desk.')).toBeVisible()
  await expect(other.getByText(/^Hole 5: /)).toHaveCount(0)
  await expect(other.locator('[data-place="4"]')).toHaveValue('6')
  await other.getByRole('button', { name: 'Keep mine' }).click()
  await expect(notice).toHaveCount(0)
  await other.getByLabel(/^the player, /).check()
  await other.getByLabel(/^the marker/).check()
  await other.getByRole('button', { name: 'Accept', exact: true }).click()
  await expect(other.getByText(`Accepted: ${name}`)).toBeVisible()
  await other.close()

  await expect(page.getByText('Accepted: the scores can only be read.')).toBeVisible()
  await expect(page.getByText('What you entered is saved; the card is not accepted yet.')).toHaveCount(0)
  await expect(page.locator('.read-score').first()).toHaveText('5')
})

test('a total that differs stays with the card, and what is handed in with nothing open is accepted by one press', async () => {
  await page.goto(`${book.origin}${RETURNS}`)
  const blank = page.locator('.card-states a[aria-label$=", not started"]').last()
  const name = (await blank.getAttribute('aria-label'))!.replace(', not started', '')
  await choose(name)
  await hasFocus('[data-place="0"]')
  await press(...'455445544554455445', ...'90')
  await page.getByRole('button', { name: 'Save what is entered' }).click()
  await expect(page.getByText(`Saved: the card of ${name}.`)).toBeVisible()
  await page.goto(`${book.origin}/desk/fernbrake`)
  await choose(name)
  await expect(paper('Total')).toHaveValue('90')
  await expect(page.getByText('The paper says 90, the holes come to 81.', { exact: false })).toBeVisible()
  await page.getByLabel(/^the player, /).check()
  await page.getByLabel(/^the marker/).check()
  await page.getByRole('button', { name: 'Save what is entered' }).click()
  await expect(page.getByText('Signed and handed in: the scores can only be read.', { exact: false })).toBeVisible()
  await expect(page.getByRole('button', { name: /^The holes are right: accept/ })).toBeVisible()

  const all = page.getByRole('form', { name: 'Accept the cards handed in' })
  const many = all.getByRole('button', { name: /^\d+ handed in, nothing open: accept (it|them)$/ })
  const ready = Number(/^\d+/.exec((await many.textContent())!)![0])
  await many.click()
  await expect(all.getByText(`${ready} card${ready === 1 ? '' : 's'} accepted.`)).toBeVisible()
  await expect(all.getByRole('button')).toHaveCount(0)
  // The one with another total on its paper is not among them.
  await expect(page.getByRole('button', { name: /^The holes are right: accept/ })).toBeVisible()
})
