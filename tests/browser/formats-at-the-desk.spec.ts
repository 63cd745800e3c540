// Promise: at the desk a format says what it needs. Own balls and one ball are not called on one card; the draw says before it is
// made whom the number leaves over; a side's handicap is shown with its making; and a result in which nobody has anything is
// published only with a reason that everybody reads.

import { type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const TODAY = new Date().toLocaleDateString('en-CA', { timeZone: 'Europe/London' })

let book: OwnBook
let desk: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  desk = await (await browser.newContext({ viewport: { width: 1280, height: 900 }, baseURL: book.origin })).newPage()
  await signInAtDesk(desk, book.origin)
})
test.afterAll(async () => {
  await desk?.context().close()
  await book?.stop()
})

const button = (name: string | RegExp) => desk.getByRole('button', { name })

async function formFor(name: string, format: string, trophy: string) {
  await desk.goto('/desk/fernbrake')
  await desk.getByRole('link', { name: 'Call a day' }).first().click()
  await desk.getByLabel('Name of the day').fill(name)
  await desk.getByLabel('Date', { exact: true }).fill(TODAY)
  const leaveOut = button(/^Leave .* out$/)
  while ((await leaveOut.count()) > 0) await leaveOut.last().click()
  await desk.getByLabel('Format', { exact: true }).selectOption({ label: format })
  await desk.getByLabel('Name or trophy').fill(trophy)
}

async function called(players: number): Promise<string> {
  await button('Call the day').click()
  await desk.getByRole('link', { name: 'To the entries', exact: true }).click()
  const room = new URL(desk.url()).pathname.replace(/\/entries$/, '')
  for (let at = 0; at < players; at++)
    await desk.locator('.entry-list input[type=checkbox]:not(:checked)').first().click()
  await button(`Enter ${players}`).click()
  await desk.getByRole('link', { name: `Next: freeze ${players} handicaps` }).click()
  await button(`Freeze ${players} handicaps`).click()
  await desk.getByRole('link', { name: 'Next: make the draw' }).click()
  return room
}

test('a foursomes day of six: one kind of ball, the draw that fits, the handicap of a side', async () => {
  test.setTimeout(90_000)
  await formFor('Quaich Day', 'Foursomes, medal', 'Quaich')
  await button('Add a competition').click()
  await button('Call the day').click()
  await expect(desk.getByText(/with one ball a side: they cannot share the cards/).first()).toBeVisible()
  await button(/^Leave .* out$/)
    .last()
    .click()
  await desk.getByText(/^More terms/).click()
  await desk.getByLabel('Which tees is the side’s card from?').selectOption({ index: 1 })
  const room = await called(6)

  await expect(desk.getByText('One group of four and one group of two.')).toBeVisible()
  await desk.getByLabel('Groups as even as they can be').check()
  await button('Draw 6 players').click()
  await expect(desk.getByText(/ have no partner in Quaich and take no place in it\./).first()).toBeVisible()
  await desk.getByText('Draw again').click()
  await desk.getByLabel('Keep partners and opponents together').check()
  await button('Draw all 6 again').click()
  await expect(desk.getByText(/ and take no place in it/)).toHaveCount(0)
  await expect(desk.getByRole('heading', { name: 'What the sides play off' })).toBeVisible()
  await desk.goto(`${room}/handicaps`)
  await expect(desk.getByRole('table', { name: /What each side of Quaich plays off/ }).getByRole('row')).toHaveCount(4)
})

test('a game of three for two players is not published without a reason', async () => {
  test.setTimeout(90_000)
  await formFor('Sixes Day', 'Split sixes', 'Sixes')
  const room = await called(2)
  await expect(desk.getByLabel('Groups of', { exact: true })).toHaveValue('3')
  await expect(desk.getByText(/have no part in Sixes: it is for groups of three/)).toBeVisible()
  await button('Draw 2 players').click()
  await expect(desk.getByText(/Sixes is for groups of three, so nothing counts there/).first()).toBeVisible()
  await button('Publish the start sheet').click()
  await desk.goto(`${room}/result`)
  await desk.getByText(/^Close it without/).click()
  await button('Close the day: 2 cards not returned').click()
  await expect(desk.getByText('Nobody has a result in Sixes: no group has the three players it is for.')).toBeVisible()
  await desk.getByLabel(/^Published without a result in Sixes, because/).fill('One of the three fell ill.')
  await button('Publish sheet 1 without it').click()
  await expect(desk.getByRole('heading', { name: 'Sheet 1 is published', exact: true })).toBeVisible()
  await desk.getByRole('link', { name: 'The sheet as members see it' }).click()
  await expect(desk.getByText('Published without a result in Sixes, because: One of the three fell ill.')).toBeVisible()
})
