// Promise: whoever has the link sees the board move within a moment, without losing place or open card; every figure
// opens into its working; the result, a match and a member's page read as published; all of it works without script,
// on a phone and in the bar, and axe finds nothing in either light.

import { randomUUID } from 'node:crypto'
import AxeBuilder from '@axe-core/playwright'
import type { DayBoard } from '@/lib/boards/views'
import type { CardPack } from '@/lib/facts/card-pack'
import { type PublicBook, publicBook } from './public-book'
import { expect, type Page, test } from './walk'

let book: PublicBook
let board = ''
let result = ''

test.beforeAll(() => {
  book = publicBook()
  board = `/${book.society}/days/${book.live.slug}`
  result = `/${book.society}/days/${book.published.slug}`
})

async function looksRight(page: Page) {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

async function fitsTheWidth(page: Page) {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over).toBeLessThanOrEqual(0)
}

/** Writes a run of good holes for one player of the group, after the last hole he has. */
async function goodHoles(page: Page, count: number) {
  const pack = (await (await page.request.get(`/api/group/${book.live.link}`)).json()) as CardPack
  const now = (await (await page.request.get(`/api/board/${book.society}/${book.live.slug}`)).json()) as DayBoard
  const card = pack.cards[0]!
  const row = now.competitions[0]!.rows.find(({ entrant }) => entrant === card.entryId)!
  const next = row.holes.filter(({ gross }) => gross === null).slice(0, count)
  expect(next.length).toBe(count)
  const facts = next.map(({ hole, par, strokes }, at) => ({
    kind: 'score',
    seq: at + 1,
    cardId: card.cardId,
    writer: card.entryId,
    writtenAt: new Date().toISOString(),
    hole,
    score: Math.max(1, par + strokes - 2),
  }))
  const answer = await page.request.post(`/api/group/${book.live.link}/facts`, {
    data: { deviceId: randomUUID(), facts },
  })
  expect(answer.ok(), await answer.text()).toBe(true)
  return { entrant: row.entrant, name: row.name, before: row.score ?? 0, holes: row.holesPlayed + count }
}

test('every public page is right in both lights, on a phone and on a desk', async ({ browser }) => {
  test.setTimeout(300_000)
  const cards = `${result}/cards/${book.published.a}`
  const pages = [
    `/${book.society}`,
    `/${book.society}/how-we-count`,
    board,
    `${board}?v=groups&c=2`,
    `${board}?v=mine`,
    `${board}/start`,
    `${result}/result`,
    cards,
    `${cards}?c=1&hole=11`,
    `${cards}?c=1&hole=all`,
    `${result}/match?a=${book.published.a}&b=${book.published.b}`,
    `/member/${book.member}`,
  ]
  for (const [width, light] of [
    [360, 'light'],
    [1280, 'dark'],
  ] as const) {
    const context = await browser.newContext({ viewport: { width, height: 800 }, colorScheme: light })
    const page = await context.newPage()
    for (const address of pages) {
      await test.step(`${address} at ${width}, ${light}`, async () => {
        expect((await page.goto(address))?.status()).toBe(200)
        await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
        await fitsTheWidth(page)
        await looksRight(page)
      })
    }
    await context.close()
  }
})

test('the board moves by itself, marks the change in words, and keeps what was open', async ({ page }) => {
  await page.goto(board)
  const rows = page.locator('.board > tbody > tr[id^="row-"]')
  const leader = rows.first().locator('.opener')
  await leader.click()
  await expect(leader).toHaveAttribute('aria-expanded', 'true')
  const opened = await rows.first().getAttribute('id')
  await page.evaluate(() => window.scrollTo(0, 400))

  const moved = await goodHoles(page, 4)
  const row = page.locator(`[id="row-${moved.entrant}"]`)
  await expect(row.locator('.count').last()).toHaveText(String(moved.holes), { timeout: 5_000 })
  expect(Number(await row.locator('.score-fig').textContent())).toBeGreaterThan(moved.before)
  await expect(row).toHaveClass(/changed/)
  await expect(row.locator('.just-moved')).toHaveText(/^up from \d+(st|nd|rd|th)$/)
  await expect(page.getByRole('status').filter({ hasText: moved.name.split(' ').at(-1)! })).toHaveCount(1)
  await expect(page.locator(`[id="${opened}"] .opener`)).toHaveAttribute('aria-expanded', 'true')
  expect(await page.evaluate(() => window.scrollY)).toBeGreaterThan(0)

  await page.getByRole('checkbox', { name: /Show changes of the last five minutes/ }).uncheck()
  await expect(row).not.toHaveClass(/changed/)
  await page.reload()
  await expect(page.getByRole('checkbox', { name: /Show changes of the last five minutes/ })).not.toBeChecked()
})

test('a board without a line says of what time it is, and goes on when the line is back', async ({ page, context }) => {
  await page.goto(board)
  await expect(page.locator('.board')).toBeVisible()
  await page.waitForTimeout(500)
  await context.setOffline(true)
  await expect(page.getByText(/^As of \d+\.\d\d [ap]m; the line is down$/)).toBeVisible({ timeout: 15_000 })
  await context.setOffline(false)
  await expect(page.getByText(/the line is down$/)).toBeHidden({ timeout: 30_000 })
})

test('without script the board has its tabs, views, cards and workings', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false })
  const page = await context.newPage()
  await page.goto(board)
  await page.getByRole('navigation', { name: 'Competitions' }).getByRole('link').nth(1).click()
  await expect(page).toHaveURL(/c=2/)
  await page.getByRole('link', { name: 'Group by group' }).click()
  await expect(page.getByRole('heading', { name: /^Group 1/ })).toBeVisible()
  await page.goto(`${board}?v=groups`)
  await expect(page.getByRole('img', { name: '1 stroke received' }).first()).toBeVisible()
  await page.goto(board)
  await page.locator('.opener').first().click()
  await expect(page.locator('.opened .mini').first()).toBeVisible()
  await page.locator('.opened .opens').first().click()
  await expect(page.getByRole('heading', { level: 1, name: /hole 1$/ })).toBeVisible()
  await context.close()
})

test('my card is remembered on this device', async ({ page }) => {
  await page.goto(`${board}?v=mine`)
  const name = ((await page.locator('.my-choose a').first().textContent()) ?? '').trim()
  await page.locator('.my-choose a').first().click()
  await expect(page.getByRole('heading', { level: 2, name })).toBeVisible()
  await page.goto(`${board}?v=mine`)
  await expect(page.getByRole('heading', { level: 2, name })).toBeVisible()
})

test('a figure opens into its working, with clause, band and other scores', async ({ page }) => {
  await page.goto(`${result}/cards/${book.published.a}`)
  await page
    .getByRole('link', { name: /^\d, hole 11, .*open the working$/ })
    .first()
    .click()
  await expect(page.getByRole('heading', { level: 1, name: 'Jago Trevennor, hole 11' })).toBeVisible()
  await expect(page.locator('.steps > li')).toHaveCount(7)
  await expect(page.locator('.steps')).toContainText('20.7 × 125 ÷ 113')
  await expect(page.locator('.band .here')).toHaveCount(1)
  await expect(page.locator('.if .here')).toHaveCount(3)
})

test('two cards make a match that can be sent on by its address', async ({ page }) => {
  await page.goto(`${result}/match`)
  await page.getByLabel('One card').selectOption(book.published.a)
  await page.getByLabel('against').selectOption(book.published.b)
  await page.getByRole('button', { name: 'See the match' }).click()
  await expect(page).toHaveURL(new RegExp(`a=${book.published.a}&b=${book.published.b}`))
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Jago Trevennor against Una Tarrablane')
  await expect(page.locator('.match-result')).toHaveText('2&1')
  await expect(page.locator('.match-holes tbody tr')).toHaveCount(18)
  await page.goto(`${result}/match?a=${book.published.a}&b=${book.published.a}`)
  await expect(page.getByRole('alert').first()).toBeVisible()
  await expect(page.getByLabel('One card')).toHaveValue(book.published.a)
})

test('the screen in the bar turns its pages and can be read from eight metres', async ({ browser }) => {
  const context = await browser.newContext({ viewport: { width: 1920, height: 1080 } })
  const page = await context.newPage()
  await page.clock.install()
  await page.goto(`${board}/bar`)
  const rows = page.locator('.bar-table tbody tr')
  await expect(rows).toHaveCount(6)
  const size = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((cell) => Number.parseFloat(getComputedStyle(cell).fontSize))
  expect(await size('.bar-table tbody th')).toBeGreaterThanOrEqual(88)
  expect(await size('.bar-table tbody .bar-pts')).toBeGreaterThanOrEqual(118)
  const first = (await rows.first().locator('th').textContent()) ?? ''
  await page.clock.runFor(15_500)
  await expect(rows.first().locator('th')).not.toHaveText(first)
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(1080)
  await context.close()
})

test('the sheet is the record: numbered, on one page of A4, never more than was published', async ({ page }) => {
  await page.goto(`${result}/result`)
  await expect(page.locator('.sheet-no')).toHaveText(/Sheet\s*\d/i)
  await expect(page.locator('.first-three').first().locator('li')).toHaveCount(3)
  await expect(page.getByRole('heading', { name: 'Prizes' })).toBeVisible()
  expect((await page.goto(`${result}/result/99`))?.status()).toBe(404)
  expect((await page.goto(`${result}/result/one`))?.status()).toBe(404)
})

test('a member’s page is hidden from searches and tells nobody where the reader came from', async ({ page }) => {
  const answer = await page.goto(`/member/${book.member}`)
  await expect(page.locator('meta[name="robots"]').first()).toHaveAttribute('content', /noindex/)
  // The address of the site may go along, the path with the key in it never.
  expect(answer?.headers()['referrer-policy']).toBe('strict-origin')
  await expect(page.getByRole('heading', { level: 1, name: 'Jago Trevennor' })).toBeVisible()
  expect((await page.goto('/member/not-a-key-of-anybody'))?.status()).toBe(404)
})

test('no public page lets a code, a link or an address out, and a wrong address is a 404', async ({ page }) => {
  for (const address of [board, `${board}/start`, `/api/board/${book.society}/${book.live.slug}`, `${result}/result`]) {
    const text = await (await page.request.get(address)).text()
    expect(text).not.toContain(book.live.link)
    expect(text).not.toContain(book.member)
    expect(text).not.toMatch(/[\w.]+@example\.org/)
  }
  for (const address of [`/${book.society}/days/no-such-day`, '/no-such-society', `${result}/cards/nobody`]) {
    expect((await page.request.get(address)).status(), address).toBe(404)
  }
})
