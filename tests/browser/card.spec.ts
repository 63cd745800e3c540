// Promise: four cards can be scored and signed on one phone with the signal gone in the middle, through a reload and a
// closed page; the phone says what it holds, and in the end the board has every score, once.

import AxeBuilder from '@axe-core/playwright'
import type { DayBoard } from '@/lib/boards/views'
import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import { signByBoth } from './day-walk'
import { untilKept } from './kept-on-phone'
import { quietGroups } from './quiet-groups'
import { type BrowserContext, expect, type Page, test } from './walk'

const PHONE = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true } as const

/** A score that shows mistakes of row or hole: never the same twice running, within the five of every player. */
const scoreOn = (card: PackCard, row: number, hole: number) => {
  const line = card.holes[hole - 1]
  return Math.max(1, (line?.par ?? 4) + (line?.strokes ?? 0) + ((hole * 2 + row) % 4) - 1)
}

async function pick(page: Page, card: PackCard, score: number | 'x') {
  const row = page.getByRole('radiogroup', { name: `${card.firstName} ${card.familyName}` })
  const radio = row.locator(`input[value="${score}"]`)
  await radio.click()
  await expect(radio).toBeChecked()
}

async function enterHole(page: Page, pack: CardPack, hole: number) {
  await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
  for (const [row, card] of pack.cards.entries()) await pick(page, card, scoreOn(card, row, hole))
}

const wayOn = (page: Page) => page.getByRole('navigation', { name: 'Holes' }).getByRole('button').last()

const packOf = async (page: Page, link: string) =>
  (await (await page.request.get(`/api/group/${link}`)).json()) as CardPack

async function openCard(
  context: BrowserContext,
  link: string,
  holder: number,
): Promise<{ page: Page; pack: CardPack }> {
  const page = await context.newPage()
  await page.goto(`/card/${link}`)
  const pack = await packOf(page, link)
  const name = `${pack.cards[holder]?.firstName} ${pack.cards[holder]?.familyName}`
  await page.getByRole('button', { name }).click()
  return { page, pack }
}

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'wcag2aaa'])
    .analyze()
  expect(found.violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

test('a group scores 18 holes and signs, with no signal from the seventh on', async ({ browser }) => {
  test.setTimeout(480_000)
  const { link, code, society, day } = quietGroups().at(-1)!
  const context = await browser.newContext(PHONE)
  const first = await context.newPage()

  await test.step('a wrong code is said, and what was typed stays', async () => {
    await first.goto('/card')
    await first.getByRole('textbox', { name: 'Code' }).fill('nothing 0000')
    await first.getByRole('button', { name: 'Open the card' }).click()
    await expect(first.getByRole('alert').filter({ hasText: 'No group has that code' })).toBeVisible()
    await expect(first.getByRole('textbox', { name: 'Code' })).toHaveValue('nothing 0000')
    await first.getByRole('textbox', { name: 'Code' }).fill(code.toUpperCase())
    await first.getByRole('button', { name: 'Open the card' }).click()
    await expect(first.getByRole('heading', { name: 'Whose phone is this?' })).toBeVisible()
    await looksRight(first)
    await first.close()
  })

  const { page, pack } = await openCard(context, link, 2)
  await untilKept(page)

  await test.step('six holes with a signal', async () => {
    for (let hole = 1; hole <= 6; hole++) {
      await enterHole(page, pack, hole)
      if (hole === 1) await looksRight(page)
      await expect(wayOn(page)).toContainText('all entered')
      await wayOn(page).click()
    }
    await expect(page.getByRole('status')).toContainText('All sent')
  })

  await test.step('six without', async () => {
    await context.setOffline(true)
    for (let hole = 7; hole <= 12; hole++) {
      await enterHole(page, pack, hole)
      await wayOn(page).click()
    }
    await expect(page.getByRole('status')).toContainText('24 scores saved here, not yet sent')
  })

  await test.step('a correction and an undo, named', async () => {
    await pick(page, pack.cards[0]!, 'x')
    const undo = page.getByRole('button', { name: /^Undo/ })
    await expect(undo).toContainText(`${pack.cards[0]!.firstName} –`)
    await undo.click()
    await expect(page.getByRole('radiogroup').first().locator('input:checked')).toHaveCount(0)
  })

  await test.step('the page opens again from the phone', async () => {
    await page.reload()
    await expect(page.getByRole('heading', { name: 'Hole 13', exact: true })).toBeVisible()
    await expect(page.getByRole('status')).toContainText('26 scores saved here')
    for (let hole = 13; hole <= 18; hole++) {
      await enterHole(page, pack, hole)
      await wayOn(page).click()
    }
    await expect(page.getByRole('heading', { name: 'The cards' })).toBeVisible()
    await page.close()
  })

  const again = await context.newPage()
  await test.step('all four cards are signed by both, still without', async () => {
    await again.goto(`/card/${link}#cards`)
    for (const card of pack.cards) {
      await again.getByRole('link', { name: new RegExp(`${card.firstName} ${card.familyName}`) }).click()
      await expect(again.getByRole('heading', { name: `${card.firstName} ${card.familyName}` })).toBeVisible()
      await signByBoth(again, card.firstName)
      await expect(again.getByText('Both have signed. It is handed in when this phone has a signal')).toBeVisible()
      await again.getByRole('link', { name: 'All cards' }).click()
    }
    await expect(again.getByRole('status').last()).toContainText(/\d+ saved here, not yet sent/)
  })

  await test.step('the signal is back: all of it is received, once', async () => {
    await context.setOffline(false)
    await expect(again.getByRole('status').last()).toContainText('All sent', { timeout: 30_000 })
    await expect(again.getByText('Handed in')).toHaveCount(4)
    await looksRight(again)
    const now = await packOf(again, link)
    for (const [row, card] of now.cards.entries()) {
      expect(card.state).toBe('handed-in')
      const holder = now.cards[2]!.entryId
      expect(Object.keys(card.written).map((key) => key.split('~')[0])).toEqual([holder])
      expect(Object.values(card.written)[0]).toEqual(card.holes.map((hole) => scoreOn(card, row, hole.hole)))
      expect(card.signatures).toHaveLength(2)
    }
  })

  await test.step('the board has them', async () => {
    const answer = await again.request.get(`/api/board/${society}/${day}`)
    const board = (await answer.json()) as DayBoard
    const rows = board.competitions[0]!.rows.filter((row) =>
      row.entryIds.some((id) => pack.cards.some((card) => card.entryId === id)),
    )
    expect(rows).toHaveLength(4)
    for (const row of rows) {
      const index = pack.cards.findIndex((card) => card.entryId === row.entryIds[0])
      const card = pack.cards[index]!
      expect(row.holesPlayed).toBe(18)
      expect(row.gross).toBe(card.holes.reduce((sum, hole) => sum + scoreOn(card, index, hole.hole), 0))
    }
    await again.goto(`/${society}/days/${day}`)
    await expect(again.getByText(pack.cards[0]!.familyName).first()).toBeVisible()
  })
  await context.close()
})

test('two phones that differ on a hole are both told, and either answer settles it', async ({ browser }) => {
  const { link } = quietGroups().at(-1)!
  const one = await browser.newContext(PHONE)
  const two = await browser.newContext(PHONE)
  const mine = await openCard(one, link, 0)
  const theirs = await openCard(two, link, 1)
  const [card] = mine.pack.cards
  if (!card) throw new Error('a group without cards')
  const level = card.holes[0]!.par + card.holes[0]!.strokes

  await pick(mine.page, card, level)
  await expect(mine.page.getByRole('status')).toContainText('All sent')
  await pick(theirs.page, card, level + 1)
  await expect(theirs.page.getByText('not agreed', { exact: true })).toBeVisible({ timeout: 30_000 })
  await mine.page.evaluate(() => window.dispatchEvent(new Event('online')))
  await expect(mine.page.locator('.c-differs')).toContainText(`you wrote ${level}`)
  await looksRight(mine.page)
  await expect(wayOn(mine.page)).toContainText('1 not agreed')

  await theirs.page.waitForTimeout(600) // rows have just moved: touches in the first half second are not taken
  await theirs.page.getByRole('button', { name: `Yes, it was ${level}`, exact: true }).click()
  await expect(theirs.page.getByText('not agreed', { exact: true })).toHaveCount(0)
  await expect(theirs.page.getByRole('status')).toContainText('All sent')
  await mine.page.evaluate(() => window.dispatchEvent(new Event('online')))
  await expect(mine.page.locator('.c-differs')).toHaveCount(0)
  await one.close()
  await two.close()
})

test('the card fits a narrow phone, large text and a phone on its side', async ({ browser }) => {
  const { link } = quietGroups().at(-1)!
  for (const [width, height, size] of [
    [320, 640, 100],
    [430, 932, 100],
    [320, 640, 200],
    [780, 360, 100],
  ] as const) {
    const context = await browser.newContext({ viewport: { width, height }, colorScheme: 'dark' })
    const { page } = await openCard(context, link, 0)
    await page.evaluate((percent) => {
      document.documentElement.style.fontSize = `${percent}%`
    }, size)
    for (const place of ['#hole-11', '#cards', `#card-${(await packOf(page, link)).cards[1]!.entryId}`]) {
      await page.evaluate((hash) => window.location.assign(hash), place)
      await page.waitForTimeout(150)
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(over, `${place} at ${width}, ${size} %`).toBeLessThanOrEqual(0)
      // Nor is anything of a card out of sight in a box of its own: whoever signs reads every score of it.
      const hidden = await page.evaluate(() =>
        [...document.querySelectorAll('.scroll')].map((box) => box.scrollWidth - box.clientWidth),
      )
      expect(Math.max(0, ...hidden), `scores beside ${place} at ${width}, ${size} %`).toBe(0)
    }
    await looksRight(page)
    await context.close()
  }
})

test('a link that leads nowhere says so', async ({ page }) => {
  await page.goto('/card/nothing-behind-this-link')
  await expect(page.getByRole('heading', { name: 'This link opens no card' })).toBeVisible()
  await expect(page.getByText('That link leads to no group.')).toBeVisible()
})
