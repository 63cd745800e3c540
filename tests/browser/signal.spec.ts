// Promise: when the signal is back, whether or not the phone says so, what waits is received within three seconds; a
// second phone of the group shows a score within two; and a phone that has the newest cards is not sent them again.

import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import { untilKept } from './kept-on-phone'
import { type OwnBook, startOwnBook } from './own-book'
import { quietGroups } from './quiet-groups'
import { type BrowserContext, expect, type Page, test } from './walk'

const PHONE = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true } as const

let book: OwnBook
test.beforeAll(async () => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
})
test.afterAll(() => book.stop())

const level = (card: PackCard, hole: number) => card.holes[hole - 1]!.par + card.holes[hole - 1]!.strokes

const row = (page: Page, card: PackCard) =>
  page.getByRole('radiogroup', { name: `${card.firstName} ${card.familyName}` })

async function pick(page: Page, card: PackCard, score: number) {
  const radio = row(page, card).locator(`input[value="${score}"]`)
  await radio.click()
  await expect(radio).toBeChecked()
}

async function opened(context: BrowserContext, link: string, holder: number): Promise<{ page: Page; pack: CardPack }> {
  const page = await context.newPage()
  const pack = (await (await page.request.get(`${book.origin}/api/group/${link}`)).json()) as CardPack
  await page.goto(`${book.origin}/card/${link}`)
  await page.getByRole('button', { name: `${pack.cards[holder]!.firstName} ${pack.cards[holder]!.familyName}` }).click()
  await expect(page.getByRole('heading', { name: 'Hole 1', exact: true })).toBeVisible()
  return { page, pack }
}

/** What one score takes with a signal: nothing on a quiet machine, and all of the difference on a busy one. */
async function plainly(page: Page, card: PackCard): Promise<number> {
  const began = Date.now()
  await pick(page, card, level(card, 1))
  await untilReceived(page)
  await pick(page, card, level(card, 1) - 1)
  await untilReceived(page)
  return (Date.now() - began) / 2
}

/** Milliseconds until the foot of the card says that everything is received. */
async function untilReceived(page: Page): Promise<number> {
  const began = Date.now()
  await expect
    .poll(() => page.getByRole('status').last().textContent(), { intervals: [50], timeout: 70_000 })
    .toMatch(/All (received|sent)/)
  return Date.now() - began
}

for (const said of [true, false])
  test(`scores are received within three seconds of the signal, the phone ${said ? 'saying' : 'not saying'} that it is back`, async ({
    browser,
  }) => {
    test.setTimeout(180_000)
    const { link } = quietGroups(book.file).at(-1)!
    const context = await browser.newContext(PHONE)
    const { page, pack } = await opened(context, link, 0)
    await untilKept(page)
    const plain = await plainly(page, pack.cards[0]!)
    const gone = async (on: boolean) => {
      if (said) return context.setOffline(on)
      if (on) await context.route('**/api/group/**', (route) => route.abort('internetdisconnected'))
      else await context.unroute('**/api/group/**')
    }
    await gone(true)
    for (const card of pack.cards) await pick(page, card, level(card, 1) + 1)
    await page.close()
    // Opened while nothing gets through: it finds itself connected, and hears of no change.
    const again = await context.newPage()
    await again.goto(`${book.origin}/card/${link}`)
    await expect(again.getByRole('status').last()).toContainText('4 scores')
    // Long enough that the sender waits a quarter of a minute between its tries.
    await again.waitForTimeout(20_000)
    await gone(false)
    expect(await untilReceived(again)).toBeLessThan(3_000 + 4 * plain)
    await context.close()
  })

test('a second phone of the group shows a score within two seconds, and fetches nothing it has', async ({
  browser,
}) => {
  test.setTimeout(180_000)
  const { link } = quietGroups(book.file).at(-1)!
  const [one, two] = [await browser.newContext(PHONE), await browser.newContext(PHONE)]
  const mine = await opened(one, link, 0)
  const theirs = await opened(two, link, 1)
  await theirs.page.waitForTimeout(3_000) // its line is open
  const plain = await plainly(mine.page, mine.pack.cards[0]!)
  const took: number[] = []
  for (const card of mine.pack.cards) {
    const score = level(card, 1)
    await pick(mine.page, card, score)
    const began = Date.now()
    await expect
      .poll(() => row(theirs.page, card).locator(`input[value="${score}"]`).isChecked(), { intervals: [50] })
      .toBe(true)
    took.push(Date.now() - began)
  }
  expect(Math.max(...took)).toBeLessThan(2_000 + 4 * plain)

  await untilReceived(mine.page)
  const looks: number[] = []
  theirs.page.on('response', (response) => {
    if (response.url().endsWith(`/api/group/${link}`)) looks.push(response.status())
  })
  await theirs.page.waitForTimeout(1_000)
  looks.splice(0)
  await theirs.page.evaluate(() => window.dispatchEvent(new Event('online')))
  await expect.poll(() => looks).toEqual([304])
  await one.close()
  await two.close()
})
