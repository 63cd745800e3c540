// Promise: a match that ends early is handed in, accepted and closed on the screens' own buttons, without a signal at its
// last hole; a hole and a match are conceded on the phone, without a signal too, and taken back; the one card of a scramble that is alone in its group is written and signed by two of its players.

import { button, nextHole, phoneOn, signButton, TODAY, writeHole } from './day-walk'
import { type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

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

/** From "Call a day" to a published start sheet; answers with the room of the day and the link of its only group. */
async function dayOf(name: string, format: string, players: number): Promise<{ room: string; link: string }> {
  await desk.goto('/desk/fernbrake')
  await desk.getByRole('link', { name: 'Call a day' }).first().click()
  await desk.getByLabel('Name of the day').fill(name)
  await desk.getByLabel('Date', { exact: true }).fill(TODAY)
  await desk.getByLabel('Format', { exact: true }).first().selectOption({ label: format })
  // One competition only: whatever the last day had besides is left out.
  const leaveOut = button(desk, /^Leave .* out$/)
  while ((await leaveOut.count()) > 0) await leaveOut.last().click()
  await button(desk, 'Call the day').click()
  await desk.getByRole('link', { name: 'To the entries', exact: true }).click()
  const room = new URL(desk.url()).pathname.replace(/\/entries$/, '')
  for (let at = 0; at < players; at++)
    await desk.locator('.entry-list input[type=checkbox]:not(:checked)').first().click()
  await button(desk, `Enter ${players}`).click()
  await desk.getByRole('link', { name: `Next: freeze ${players} handicaps` }).click()
  await button(desk, `Freeze ${players} handicaps`).click()
  await desk.getByRole('link', { name: 'Next: make the draw' }).click()
  await button(desk, `Draw ${players} players`).click()
  await button(desk, 'Publish the start sheet').click()
  const open = desk.getByRole('link', { name: 'Open the card of group 1' })
  await expect(open).toBeVisible()
  return { room, link: (await open.getAttribute('href'))! }
}

async function acceptFirst(room: string): Promise<void> {
  await desk.goto(`${room}/returns`)
  await desk
    .getByRole('link', { name: /handed in/ })
    .first()
    .click()
  await button(desk, /^Accept$/).click()
}

test('a match that is over after ten holes', async ({ browser }) => {
  test.setTimeout(120_000)
  const { room, link } = await dayOf('Heather Match', 'Singles match', 2)
  const phone = await phoneOn(browser, book.origin, link)
  await phone.getByRole('list').getByRole('button').first().click()

  await test.step('the phone says who is up, dormie and over, without a signal too', async () => {
    for (let hole = 1; hole <= 8; hole++) {
      await writeHole(phone, hole, [1, 4])
      if (hole === 1) await expect(phone.locator('.c-match')).toContainText(/1 up after 1, .* wins hole 1/)
      await nextHole(phone)
    }
    await phone.context().setOffline(true)
    await writeHole(phone, 9, [1, 4])
    await expect(phone.locator('.c-match')).toContainText('9 up, dormie: nine holes to play')
    await nextHole(phone)
    await writeHole(phone, 10, [1, 4])
    await expect(phone.locator('.c-match')).toContainText('wins 10 and 8')
    await nextHole(phone)
    await expect(phone.getByText('no score needed')).toHaveCount(2)
  })

  await test.step('both cards are signed on the spot, and handed in once there is a signal', async () => {
    await phone.getByRole('link', { name: 'All cards' }).click()
    await expect(phone.locator('.c-cards')).toContainText('Finished, not signed')
    await expect(phone.locator('.c-matches')).toContainText('wins 10 and 8')
    for (let card = 0; card < 2; card++) {
      await phone.goto(`${new URL(phone.url()).pathname}#cards`)
      await phone.locator('.c-cards a').nth(card).click()
      await signButton(phone, '(my card|as marker)').click()
      await button(phone, /^I am [^:]+$/).click()
      await signButton(phone, '(my card|as marker)').click()
      await expect(phone.getByRole('heading', { name: /card is signed$/ })).toBeVisible()
    }
    await phone.context().setOffline(false)
    await expect(phone.getByRole('heading', { name: /card is handed in$/ })).toBeVisible()
  })

  await test.step('the desk accepts both and closes the day', async () => {
    await acceptFirst(room)
    await expect(desk.locator('.big-of .fig')).toHaveText('1')
    await button(desk, '1 handed in, nothing open: accept it').click()
    await expect(desk.locator('.big-of .fig')).toHaveText('2')
    await desk.goto(`${room}/result`)
    await button(desk, 'Close the day').click()
    await expect(desk.getByText(/closed/i).first()).toBeVisible()
    await expect(button(desk, 'Close the day')).toHaveCount(0)
  })
  await phone.context().close()
})

test('a hole and the match conceded on the phone', async ({ browser }) => {
  test.setTimeout(120_000)
  const { room, link } = await dayOf('Bracken Match', 'Singles match', 2)
  const phone = await phoneOn(browser, book.origin, link)
  await phone.getByRole('list').getByRole('button').first().click()
  const ask = () => button(phone, 'Concede').click()
  const who = phone.getByRole('dialog', { name: 'Who concedes?' }).getByRole('button')

  await test.step('a hole, and it is taken back and conceded again', async () => {
    await expect(phone.getByRole('heading', { name: 'Hole 1', exact: true })).toBeVisible()
    await phone.context().setOffline(true)
    await ask()
    await expect(who).toHaveCount(5)
    await who.first().click()
    await expect(phone.locator('.c-match')).toContainText(/1 up after 1, .* wins hole 1 \(conceded\)/)
    await expect(phone.getByText('no score needed')).toHaveCount(2)
    await button(phone, 'Take it back').click()
    await expect(phone.locator('.c-match')).toContainText('not started')
    await ask()
    await who.first().click()
    await expect(phone.locator('.c-match')).toContainText('wins hole 1')
  })

  await test.step('then the match: both cards are finished as they are', async () => {
    await nextHole(phone)
    await ask()
    await who.nth(3).click()
    await expect(phone.locator('.c-match')).toContainText('by concession')
    await expect(button(phone, 'Concede')).toHaveCount(0)
    await phone.getByRole('link', { name: 'All cards' }).click()
    await expect(phone.locator('.c-cards').getByText('Finished, not signed')).toHaveCount(2)
    await expect(phone.locator('.c-matches')).toContainText(/conceded hole 1.*conceded the match/)
    await phone.locator('.c-cards a').first().click()
    await expect(phone.getByText(/conceded hole 1\./)).toBeVisible()
    await phone.context().setOffline(false)
  })

  await test.step('the desk reads it beside the match', async () => {
    await expect(async () => {
      await desk.goto(`${room}/matches`)
      await expect(desk.getByLabel('How it ended')).toHaveValue('conceded b', { timeout: 1_000 })
    }).toPass()
    await expect(desk.getByLabel(/^Holes conceded to/).last()).toHaveValue('1')
  })
  await phone.context().close()
})

test('a scramble of four that is alone in its group', async ({ browser }) => {
  test.setTimeout(120_000)
  const { room, link } = await dayOf('Gorse Scramble', 'Scramble of four', 4)
  const phone = await phoneOn(browser, book.origin, link)

  await test.step('any of the four can hold the phone', async () => {
    const names = phone.getByRole('list').getByRole('button')
    await expect(names).toHaveCount(4)
    await names.nth(2).click()
    for (let hole = 1; hole <= 18; hole++) {
      await writeHole(phone, hole, [2])
      await nextHole(phone)
    }
  })

  await test.step('one signs as the player, another as the marker, and nobody as both', async () => {
    await phone.locator('.c-cards a').first().click()
    await expect(phone.getByText(/No other side is in this group/)).toBeVisible()
    const first = signButton(phone, 'our card')
    const signer = /^I am (.+): sign/.exec((await first.textContent()) ?? '')![1]!
    await first.click()
    await button(phone, /^I am [^:]+$/).click()
    await expect(button(phone, `I am ${signer}: sign as marker`)).toHaveCount(0)
    await signButton(phone, 'as marker').click()
    await expect(phone.getByRole('heading', { name: /card is handed in$/ })).toBeVisible()
  })

  await test.step('the desk accepts the card', async () => {
    await acceptFirst(room)
    await expect(desk.locator('.big-of .fig')).toHaveText('1')
  })

  await test.step('one card is printed for the side', async () => {
    await desk.goto(`${room}/print/cards`)
    await expect(desk.getByRole('article', { name: /^Card of / })).toHaveCount(1)
  })
  await phone.context().close()
})
