// Promise: two phones under one name never overwrite each other silently; a dead phone's place is taken on purpose; every
// button answers; four players stand above the foot; a signature that comes off says so; and signing leads on.

import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import type { CardId } from '@/lib/facts/ids'
import { signByBoth } from './day-walk'
import { chooseHolder } from './holder'
import { type OwnBook, startOwnBook } from './own-book'
import { quietGroups } from './quiet-groups'
import { type Browser, type BrowserContext, expect, type Page, test } from './walk'

let book: OwnBook
let links: string[]
test.beforeAll(async () => {
  test.setTimeout(180_000)
  book = await startOwnBook('demo')
  links = quietGroups(book.file).map((group) => group.link)
})
test.afterAll(() => book.stop())

const PHONE = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true }

const CLEAR = 'rgba(0, 0, 0, 0)'

interface Opened {
  readonly context: BrowserContext
  readonly page: Page
  readonly pack: CardPack
}

const packOf = async (page: Page, link: string) =>
  (await (await page.request.get(`${book.origin}/api/group/${link}`)).json()) as CardPack

async function phone(browser: Browser, link: string, settings: object = PHONE): Promise<Opened> {
  const context = await browser.newContext({ ...settings, baseURL: book.origin })
  const page = await context.newPage()
  await page.goto(`/card/${link}`)
  return { context, page, pack: await packOf(page, link) }
}

const nameOf = (card: PackCard) => `${card.firstName} ${card.familyName}`
const holderButton = (page: Page, card: PackCard) => page.getByRole('button', { name: nameOf(card) })
const row = (page: Page, card: PackCard) => page.getByRole('radiogroup', { name: nameOf(card) })
const level = (card: PackCard, hole = 1) => card.holes[hole - 1]!.par + card.holes[hole - 1]!.strokes
const pick = (page: Page, card: PackCard, score: number) => row(page, card).locator(`input[value="${score}"]`).click()
const looks = (page: Page) => page.evaluate(() => window.dispatchEvent(new Event('online')))
const sent = (page: Page) => expect(page.locator('.c-sent')).toContainText('All sent')
/** Rows have just moved: touches in the first half second are not taken. */
const still = (page: Page) => page.waitForTimeout(600)

/** Scores as another phone of the group sends them. */
async function deliver(
  page: Page,
  link: string,
  deviceId: string,
  writer: string,
  scores: readonly { cardId: CardId; hole: number; score: number }[],
) {
  const facts = scores.map((one, at) => ({
    ...one,
    kind: 'score',
    seq: at + 1,
    writer,
    writtenAt: '2026-06-13T10:00:00.000Z',
  }))
  // A kept line may just have been closed; a repeat gets its first answer.
  await expect(async () => {
    const answer = await page.request.post(`${book.origin}/api/group/${link}/facts`, { data: { deviceId, facts } })
    expect(answer.ok()).toBe(true)
  }).toPass()
}

test('two phones under one name, one of them dies, and a third goes on', async ({ browser }) => {
  test.setTimeout(240_000)
  const link = links.at(-1)!
  const a = await phone(browser, link)
  const [me, , third] = a.pack.cards as [PackCard, PackCard, PackCard, PackCard]
  await holderButton(a.page, me).click()
  await pick(a.page, me, level(me))
  await sent(a.page)

  const b = await phone(browser, link)
  await test.step('the list says whose phone is somewhere else already, and asks before it is taken over', async () => {
    await expect(b.page.getByRole('heading', { name: 'Whose phone is this?' })).toBeVisible()
    await expect(holderButton(b.page, me)).toContainText(/on another phone since \d{1,2}\.\d\d [ap]m/)
    await holderButton(b.page, me).click()
    await expect(b.page.getByRole('dialog')).toContainText('Does this phone take over from the other one?')
    await b.page.getByRole('button', { name: 'No, go back' }).click()
    await expect(b.page.getByRole('heading', { name: 'Whose phone is this?' })).toBeVisible()
    await holderButton(b.page, me).click()
    await b.page.getByRole('button', { name: 'Yes, use this phone now' }).click()
    await expect(row(b.page, me).locator(`input[value="${level(me)}"]`)).toBeChecked()
  })

  await test.step('the earlier phone is told', async () => {
    await expect(async () => {
      await looks(a.page)
      await expect(a.page.getByText(/is on another phone as well, since .*Scores you still enter here/)).toBeVisible({
        timeout: 2_000,
      })
    }).toPass()
    await a.page.getByRole('button', { name: 'I have read it' }).click()
    await expect(a.page.getByText(/is on another phone as well/)).toHaveCount(0)
  })

  await test.step('different scores are not agreed on either phone, and the new phone settles it', async () => {
    await pick(a.page, third, level(third))
    await sent(a.page)
    await pick(b.page, third, level(third) + 1)
    await expect(async () => {
      await looks(b.page)
      await expect(b.page.locator('.c-differs')).toBeVisible({ timeout: 2_000 })
    }).toPass()
    await expect(b.page.locator('.c-differs')).toContainText(`${me.firstName}’s other phone wrote ${level(third)}`)
    await expect(async () => {
      await looks(a.page)
      await expect(a.page.locator('.c-differs')).toBeVisible({ timeout: 2_000 })
    }).toPass()
    await still(b.page)
    await b.page.getByRole('button', { name: `Yes, it was ${level(third) + 1}` }).click()
    await expect(b.page.locator('.c-differs')).toHaveCount(0)
    await sent(b.page)
  })

  await test.step('Undo on the earlier phone touches nothing and says why', async () => {
    await expect(async () => {
      await looks(a.page)
      await expect(a.page.locator('.c-differs')).toHaveCount(0, { timeout: 2_000 })
    }).toPass()
    const undo = a.page.getByRole('button', { name: /^Undo/ })
    await expect(undo).toHaveAttribute('aria-disabled', 'true')
    // Marked as out of use, and it answers all the same: only a script waits until it may be pressed.
    await undo.click({ force: true })
    await expect(a.page.locator('.c-sent')).toContainText(
      `${third.firstName} was changed to ${level(third) + 1} on another phone`,
    )
    const now = await packOf(a.page, link)
    const says = Object.values(now.cards.find((card) => card.cardId === third.cardId)!.written).map((one) => one[0])
    expect(says.filter((score) => score !== null)).toEqual([level(third) + 1])
  })

  await test.step('both phones die; a third takes over and corrects without a false difference', async () => {
    await a.context.close()
    await b.context.close()
    const c = await phone(browser, link)
    await holderButton(c.page, me).click()
    await c.page.getByRole('button', { name: 'Yes, use this phone now' }).click()
    await pick(c.page, me, level(me) + 2)
    await pick(c.page, third, level(third))
    await sent(c.page)
    await expect(c.page.locator('.c-differs')).toHaveCount(0)
    await c.page.getByRole('button', { name: /^Undo/ }).click()
    await expect(row(c.page, third).locator(`input[value="${level(third) + 1}"]`)).toBeChecked()
    await sent(c.page)
    const now = await packOf(c.page, link)
    for (const card of now.cards) {
      const says = Object.values(card.written).flatMap((one) => (one[0] === null ? [] : [one[0]]))
      expect(new Set(says).size).toBeLessThanOrEqual(1)
    }
    await c.context.close()
  })
})

test('in a difference between two people no button does nothing', async ({ browser }) => {
  const link = links.at(-2)!
  const a = await phone(browser, link)
  const [one, two, third] = a.pack.cards as [PackCard, PackCard, PackCard, PackCard]
  await holderButton(a.page, one).click()
  await pick(a.page, third, level(third))
  await sent(a.page)
  await deliver(a.page, link, 'another-phone-0123456789', two.entryId, [
    { cardId: third.cardId, hole: 1, score: level(third) + 1 },
  ])
  await looks(a.page)
  await expect(a.page.locator('.c-differs')).toBeVisible()
  await still(a.page)
  await a.page.getByRole('button', { name: `Yes, it was ${level(third)}`, exact: true }).click()
  await expect(a.page.getByText(`You say ${level(third)}. Waiting for ${two.firstName}.`)).toBeVisible()
  await a.page.screenshot({ path: `${test.info().outputDir}/waiting.png` })
  await still(a.page)
  await a.page.getByRole('button', { name: `Yes, it was ${level(third) + 1}` }).click()
  await expect(a.page.locator('.c-differs')).toHaveCount(0)
  await a.context.close()
})

test('four players stand above the foot on every usual phone, whatever the card has to say', async ({ browser }) => {
  test.setTimeout(180_000)
  const probe = await phone(browser, links[0]!)
  let link = links[0]!
  for (const each of links)
    if (new Set((await packOf(probe.page, each)).cards.map((card) => card.tee.name)).size > 1) link = each
  await probe.context.close()

  for (const [at, [width, height]] of (
    [
      [360, 780],
      [360, 640],
      [390, 844],
    ] as const
  ).entries()) {
    const { context, page, pack } = await phone(browser, link, { ...PHONE, viewport: { width, height } })
    const [one, two, third, fourth] = pack.cards as [PackCard, PackCard, PackCard, PackCard]
    const hole = 4 + at
    await chooseHolder(page, nameOf(one))
    await page.evaluate((to) => window.location.assign(`#hole-${to}`), hole)
    await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
    const over = async (what: string) => {
      await page.evaluate(() => window.scrollTo(0, 0))
      const gap = await page.evaluate(() => {
        const foot = document.querySelector('.c-foot')!.getBoundingClientRect()
        const rows = [...document.querySelectorAll('.c-row')].map((each) => each.getBoundingClientRect().bottom)
        return { rows: rows.length, over: Math.max(...rows) - foot.top, below: foot.bottom - window.innerHeight }
      })
      await page.screenshot({ path: `${test.info().outputDir}/foot-${width}x${height}-${what}.png` })
      expect.soft(gap.rows).toBe(4)
      expect.soft(gap.over, `${what} at ${width}x${height}: the last row`).toBeLessThanOrEqual(1)
      expect.soft(gap.below, `${what} at ${width}x${height}: the foot`).toBeLessThanOrEqual(1)
    }
    await over('nothing entered')
    await deliver(page, link, `another-phone-${width}x${height}-0123`, two.entryId, [
      { cardId: third.cardId, hole, score: level(third, hole) + 1 },
    ])
    await context.setOffline(true)
    await pick(page, one, level(one, hole))
    await pick(page, two, level(two, hole) + 1)
    await row(page, fourth).locator('input[value="x"]').click()
    const ask = page.getByRole('button', { name: `No score for ${fourth.firstName}` })
    if (await ask.isVisible()) await ask.click()
    await expect(page.locator('.c-sent')).toContainText('3 scores saved here, not yet sent')
    await over('scores waiting')
    await pick(page, third, level(third, hole))
    await context.setOffline(false)
    await looks(page)
    await expect(page.locator('.c-differs')).toBeVisible()
    await over('two different scores')
    await context.close()
  }
})

test('a card that is signed leads to the next one, and a signature that comes off says so', async ({ browser }) => {
  test.setTimeout(180_000)
  const link = links.at(-3)!
  const { context, page, pack } = await phone(browser, link)
  const [one] = pack.cards as [PackCard]
  const marker = pack.cards.find((card) => card.entryId === one.markerId)!
  const all = pack.cards.flatMap(({ cardId, holes }) =>
    holes.map(({ hole, par }) => ({ cardId, hole, score: par + 1 })),
  )
  const early = all.filter(({ hole, cardId }) => hole < 7 && !(hole === 3 && cardId === pack.cards[1]!.cardId))
  await deliver(page, link, 'the-marker-of-the-four-01', pack.cards[2]!.entryId, early)

  await test.step('it opens on the hole that was left out, and says why', async () => {
    await looks(page)
    await holderButton(page, pack.cards[3]!).click()
    // Opened by its link once more: a reload would stay on the hole that the address names.
    await page.goto('about:blank')
    await page.goto(`/card/${link}`)
    await expect(page.getByRole('heading', { name: 'Hole 3', exact: true })).toBeVisible()
    await expect(page.locator('.c-sent')).toContainText(`Hole 3 first: ${pack.cards[1]!.firstName} has no score`)
  })

  const rest = all.filter((each) => !early.includes(each))
  await deliver(page, link, 'the-marker-of-the-four-02', pack.cards[2]!.entryId, rest)
  await page.getByRole('link', { name: 'All cards' }).click()
  await looks(page)
  await expect(page.getByText('Finished, not signed')).toHaveCount(4)

  await page.getByRole('link', { name: new RegExp(nameOf(one)) }).click()
  await test.step('the signature stands under the thumb, and the phone is handed over in between', async () => {
    const sign = page.getByRole('button', { name: `I am ${marker.firstName}: sign as marker` })
    const inTheFoot = page.locator('.c-act').getByRole('button', { name: /: sign/ })
    await expect(inTheFoot).toBeInViewport()
    await sign.click()
    await expect(page.getByRole('heading', { name: `Now give the phone to ${one.firstName}` })).toBeVisible()
    await page.screenshot({ path: `${test.info().outputDir}/give.png` })
  })

  await test.step('a changed hole takes the signature off, and says which', async () => {
    await page.evaluate(() => window.location.assign('#hole-5'))
    await sent(page)
    const other = level(one, 5) === one.holes[4]!.par + 1 ? level(one, 5) + 1 : level(one, 5)
    await pick(page, one, other)
    await expect(page.locator('.c-differs')).toBeVisible()
    await page.evaluate((id) => window.location.assign(`#card-${id}`), one.entryId)
    const off = page.getByText(
      `${marker.firstName}’s signature came off because there are two different scores on hole 5: sign again.`,
    )
    await expect(off).toBeVisible()
    await sent(page)
    await page.reload()
    await expect(off).toBeVisible()
    await page.evaluate(() => window.location.assign('#hole-5'))
    await still(page)
    await page.getByRole('button', { name: `Yes, it was ${one.holes[4]!.par + 1}` }).click()
    await expect(page.locator('.c-differs')).toHaveCount(0)
  })

  await test.step('card after card', async () => {
    for (const [at, card] of pack.cards.entries()) {
      if (at === 0) await page.evaluate((id) => window.location.assign(`#card-${id}`), card.entryId)
      await expect(page.getByRole('heading', { name: nameOf(card) })).toBeVisible()
      await signByBoth(page, card.firstName)
      await expect(page.getByRole('heading', { name: `${card.firstName}’s card is handed in` })).toBeVisible()
      if (at === 0) await page.screenshot({ path: `${test.info().outputDir}/handed-in.png` })
      // A button of the house, not the browser's own grey one.
      await expect(page.getByRole('button', { name: 'The whole card' })).toHaveCSS('background-color', CLEAR)
      const next = pack.cards[at + 1]
      if (next) await page.getByRole('link', { name: `Next: ${next.firstName}’s card` }).click()
      else await expect(page.locator('.c-act').getByRole('link', { name: 'See the board' })).toHaveClass(/first/)
    }
  })
  await context.close()
})

test('the card’s pages hold at 320 px and with text at twice the size', async ({ browser }) => {
  const link = links.at(-3)!
  for (const size of [100, 200]) {
    const { context, page, pack } = await phone(browser, link, { viewport: { width: 320, height: 640 } })
    const sideways = async (what: string) => {
      await page.evaluate((percent) => {
        document.documentElement.style.fontSize = `${percent}%`
      }, size)
      await page.waitForTimeout(150)
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(over, `${what} at ${size} %`).toBeLessThanOrEqual(0)
    }
    await sideways('whose phone')
    await holderButton(page, pack.cards[3]!).click()
    const yes = page.getByRole('button', { name: 'Yes, use this phone now' })
    if (await yes.isVisible()) {
      await sideways('the question')
      await yes.click()
    }
    for (const place of ['#hole-5', '#cards', `#card-${pack.cards[0]!.entryId}`]) {
      await page.evaluate((hash) => window.location.assign(hash), place)
      await sideways(place)
    }
    if (size === 100) {
      // Every part of a card once more, the card read down the page among them.
      await page.goto(new URL('/house-style', page.url()).href)
      await sideways('the house style')
    }
    await context.close()
  }
})
