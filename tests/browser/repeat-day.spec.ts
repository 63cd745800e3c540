// Promise: a day like the last one, for thirty players, goes from signing in to a published start sheet in the order the
// desk itself proposes, with twelve interactions at the most. The start sheet of forty players is one page of A4.

import { inflateSync } from 'node:zlib'
import Database from 'better-sqlite3'
import { type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Locator, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const PLAYERS = 30
const MOST = 12

let book: OwnBook
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
})

test.afterAll(async () => {
  await page.context().close()
  await book.stop()
})

let interactions = 0

const press = async (button: Locator) => {
  interactions += 1
  await button.click()
}

test('thirty players, from signed in to a published start sheet', async () => {
  test.setTimeout(180_000)
  await signInAtDesk(page, book.origin)
  await press(page.getByRole('link', { name: 'Call a day' }).first())
  interactions += 1
  await page.getByLabel('Name of the day').fill('Autumn Lantern')
  await press(page.getByRole('button', { name: 'Call the day' }))
  await expect(page).toHaveURL(/\/days\/autumn-lantern/)
  // What is due next, and from room to room what the desk says comes next.
  await press(page.getByRole('link', { name: 'To the entries' }))
  await press(page.getByRole('button', { name: 'All regulars' }))
  const enter = page.getByRole('button', { name: /^Enter \d+$/ })
  const regulars = Number((await enter.textContent())?.replace(/\D/g, ''))
  // The invented society has a few regulars more or fewer: the rest of the thirty is ticked or taken out, uncounted.
  const boxes = page.locator('.entry-list input[type=checkbox]')
  const wanted = regulars > PLAYERS ? ':checked' : ':not(:checked)'
  for (let left = Math.abs(regulars - PLAYERS); left > 0; left--)
    await page.locator(`.entry-list input[type=checkbox]${wanted}`).first().click()
  expect(await boxes.count()).toBeGreaterThanOrEqual(PLAYERS)
  await press(page.getByRole('button', { name: `Enter ${PLAYERS}`, exact: true }))
  await press(page.getByRole('link', { name: `Next: freeze ${PLAYERS} handicaps` }))
  await press(page.getByRole('button', { name: `Freeze ${PLAYERS} handicaps` }))
  await press(page.getByRole('link', { name: 'Next: make the draw' }))
  await press(page.getByRole('button', { name: `Draw ${PLAYERS} players` }))
  await press(page.getByRole('button', { name: 'Publish the start sheet' }))
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).toBeVisible()
  expect(interactions).toBeLessThanOrEqual(MOST)
})

/** Pages of a PDF: the page objects, in the open or in compressed object streams. */
function pagesOf(pdf: Buffer): number {
  const count = (text: string) => text.match(/\/Type\s*\/Page(?![a-z])/gi)?.length ?? 0
  const streams = [...pdf.toString('latin1').matchAll(/\/ObjStm[\s\S]*?stream\r?\n([\s\S]*?)endstream/g)].map(
    ([, body = '']) => inflateSync(Buffer.from(body, 'latin1')).toString('latin1'),
  )
  return count(pdf.toString('latin1')) + streams.reduce((sum, text) => sum + count(text), 0)
}

test('the start sheet is one page of A4 up to forty players, and no refusal is a dead end before', async () => {
  const day = new URL(page.url()).pathname.replace(/\/draw$/, '')
  await page.goto(`${book.origin}${day}/print/start`)
  expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1)
  // Forty, in ten groups of four with a partner each: made on the page itself, of the rows that are there.
  await page.evaluate(() => {
    const table = document.querySelector('.paper-starts')
    const full = [...(table?.querySelectorAll('tbody') ?? [])].find((one) => one.rows.length === 4)
    if (!table || !full) throw new Error('no group of four on the sheet')
    for (const group of [...table.querySelectorAll('tbody')]) group.remove()
    for (let at = 0; at < 10; at++) {
      const group = full.cloneNode(true)
      if (!(group instanceof HTMLTableSectionElement)) continue
      for (const name of group.querySelectorAll('.who')) {
        name.querySelector('.second')?.remove()
        const partner = document.createElement('span')
        partner.className = 'second'
        partner.textContent = 'with Featherstonehaugh'
        name.append(' ', partner)
      }
      table.append(group)
    }
  })
  expect(await page.locator('.paper-starts .who').count()).toBe(40)
  expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1)
})

test('publishing before the freeze says so on its button and leads to the handicaps', async () => {
  const read = new Database(book.file, { readonly: true })
  const called = read
    .prepare(
      `SELECT d."slug" AS slug FROM "Day" d JOIN "Entry" e ON e."dayId" = d."id"
      WHERE d."status" = 'called' GROUP BY d."id" HAVING count(*) > 3 LIMIT 1`,
    )
    .get() as { slug: string }
  read.close()
  await page.goto(`${book.origin}/desk/fernbrake/days/${called.slug}/draw`)
  const draw = page.getByRole('button', { name: /^Draw \d+ players/ })
  if (await draw.isVisible()) await draw.click()
  await expect(page.getByRole('button', { name: 'Publish the start sheet: freeze the handicaps first' })).toBeVisible()
  await page.getByRole('link', { name: 'Go to the handicaps' }).click()
  await expect(page.getByRole('heading', { name: 'Handicaps', exact: true })).toBeVisible()
  // The foot of the page is one line, with nothing left over on a line of its own.
  await expect(page.locator('.folio > .fig')).toHaveCount(0)
})
