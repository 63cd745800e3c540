// Promise: the card on the home screen opens without a signal and leads to the group's card, with what is not yet sent in
// sight, however often; and a code can still be typed.

import AxeBuilder from '@axe-core/playwright'
import { dateInWords } from '@/lib/boards/dates-in-words'
import type { CardPack } from '@/lib/facts/card-pack'
import { untilKept } from './kept-on-phone'
import { type OwnBook, startOwnBook } from './own-book'
import { quietGroups } from './quiet-groups'
import { expect, type Page, test } from './walk'

const PHONE = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true } as const

let book: OwnBook
test.beforeAll(async () => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
})
test.afterAll(() => book.stop())

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

test('the home screen opens the group’s card without a signal, and says what is not yet sent', async ({ browser }) => {
  test.setTimeout(240_000)
  const { link } = quietGroups(book.file).at(-1)!
  const context = await browser.newContext({ ...PHONE, baseURL: book.origin })
  const page = await context.newPage()
  await page.goto(`/card/${link}`)
  const pack = (await (await page.request.get(`/api/group/${link}`)).json()) as CardPack
  const me = `${pack.cards[0]!.firstName} ${pack.cards[0]!.familyName}`
  await expect(page.getByText('add it before the first score')).toBeVisible()
  await page.screenshot({ path: 'test-results/home-who.png', fullPage: true })
  await page.getByRole('button', { name: me }).click()
  await untilKept(page)

  await context.setOffline(true)
  for (const hole of [1, 2, 3]) {
    await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
    for (const card of pack.cards) {
      const line = card.holes[hole - 1]!
      const row = page.getByRole('radiogroup', { name: `${card.firstName} ${card.familyName}` })
      await row.locator(`input[value="${line.par + line.strokes}"]`).click()
    }
    await page.getByRole('navigation', { name: 'Holes' }).getByRole('button').last().click()
  }
  await expect(page.getByRole('status').last()).toContainText('12 scores')

  const arrives = async (on: Page) => {
    await on.goto('/card')
    await expect(on).toHaveURL(new RegExp(`/card/${link}`))
    await expect(on.getByRole('heading', { name: 'Hole 4', exact: true })).toBeVisible()
    await expect(on.getByRole('status').last()).toContainText('12 scores')
  }
  await arrives(page)
  await page.close()
  const again = await context.newPage()
  await arrives(again)

  await test.step('another group’s code can still be typed, and the list says what waits', async () => {
    await again.goto(`/card/${link}#cards`)
    await again.getByRole('link', { name: 'Open the card of another group' }).click()
    await expect(again.getByRole('heading', { name: 'Open your group’s card' })).toBeVisible()
    const mine = again.getByRole('link', { name: new RegExp(`${pack.dayName}, group ${pack.group.number}`) })
    await expect(mine).toContainText(`${dateInWords(pack.date)} · 12 scores not yet sent`)
    await looksRight(again)
    await again.screenshot({ path: 'test-results/home-list.png', fullPage: true })
    await again.getByRole('textbox', { name: 'Code' }).fill('371529')
    await again.getByRole('button', { name: 'Open the card' }).click()
    await expect(again.getByRole('alert').filter({ hasText: 'did not get through' })).toBeVisible()
    await expect(again.getByRole('textbox', { name: 'Code' })).toHaveValue('371529')
    await mine.click()
    await expect(again.getByRole('status').last()).toContainText('12 scores')
  })

  await context.setOffline(false)
  await expect(again.getByRole('status').last()).toContainText(/All (received|sent)/, { timeout: 5_000 })
  await arrivesReceived(again, link)
  await context.close()
})

/** With a signal it leads to the card as well. */
async function arrivesReceived(page: Page, link: string) {
  await page.goto('/card')
  await expect(page).toHaveURL(new RegExp(`/card/${link}`))
}

test('the code is taken by its figures, on a number pad', async ({ browser }) => {
  const { link, code } = quietGroups(book.file)[0]!
  const [word = '', figures = ''] = code.split(' ')
  for (const typed of [figures, `${word.slice(0, -1)}q ${figures}`.toUpperCase()]) {
    const context = await browser.newContext({ ...PHONE, baseURL: book.origin })
    const page = await context.newPage()
    await page.goto('/card')
    const field = page.getByRole('textbox', { name: 'Code' })
    await expect(field).toBeFocused()
    await expect(field).toHaveAttribute('inputmode', 'numeric')
    await page.screenshot({ path: 'test-results/home-code.png', fullPage: true })
    if (typed !== figures) {
      await page.getByRole('button', { name: 'Type letters as well' }).click()
      await expect(field).toHaveAttribute('inputmode', 'text')
      await expect(field).toBeFocused()
    }
    await field.fill(typed)
    await page.getByRole('button', { name: 'Open the card' }).click()
    await expect(page).toHaveURL(new RegExp(`/card/${link}`))
    await context.close()
  }
})
