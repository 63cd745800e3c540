// Promise: a society that has nothing yet comes by the screens' own buttons from the founder's link to its third sheet:
// thirty members out of a spreadsheet, a course as it is printed, a day called for today, two guests, a withdrawal on the
// morning, two phones under one name of which one dies, a pile of paper cards, a wrong handicap, and two corrections. At
// every step the board, the score command on the day's own file, and the desk say the same.

import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { DayBoard } from '@/lib/boards/views'
import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import { foundSociety, importCourse, importMembers, signByBoth, TODAY } from './day-walk'
import { type OwnBook, startOwnBook } from './own-book'
import { scoreFile } from './score-file'
import { type Browser, type BrowserContext, expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial', timeout: 360_000 })

const SOCIETY = 'thornbeck-wanderers'
const DAY = `harvest-cup-${TODAY.slice(0, 4)}`

const FIRST = 'Adam Bryn Celia Dora Evan Faye Glyn Hope Ivor June Kit Lena Moss Nell Owen'.split(' ')
const FAMILY = 'Alderby Birkwith Coldstone Dunkeswell Eskmoor'.split(' ')
/** Thirty people: six of each family name, men and women in turn, handicaps from 4.1 upwards. */
const MEMBERS = Array.from({ length: 30 }, (_, at) => ({
  first: FIRST[at % FIRST.length]!,
  family: FAMILY[Math.floor(at / 6)]!,
  woman: at % 3 === 2,
  index: (41 + at * 11) / 10,
}))

const PARS = '4 5 3 4 4 5 4 3 4 4 4 3 4 5 4 3 4 5'.split(' ').map(Number)
const INDEXES = '5 11 17 1 13 7 9 15 3 10 4 18 2 14 8 12 16 6'.split(' ').map(Number)

let book: OwnBook
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(480_000)
  book = await startOwnBook('empty')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 }, baseURL: book.origin })).newPage()
})
test.afterAll(async () => {
  await page?.context().close()
  await book?.stop()
})

const desk = (room = '') => `/desk/${SOCIETY}${room}`
const dayRoom = (room = '') => desk(`/days/${DAY}${room}`)
const button = (name: string | RegExp) => page.getByRole('button', { name })

interface Scored {
  readonly results: readonly { readonly standings: readonly Record<(typeof COMPARED)[number], unknown>[] }[]
}
const COMPARED = ['place', 'tied', 'playingHandicap', 'score', 'holesPlayed'] as const
const compared = (rows: readonly Record<(typeof COMPARED)[number], unknown>[]) =>
  rows.map((row) => COMPARED.map((key) => row[key]))

/** The board everybody sees, the score command on the file that the desk hands out, and the desk say the same. */
async function allAgree(): Promise<DayBoard> {
  const file = join(mkdtempSync(join(tmpdir(), 'daybook-whole-day-')), 'day.json')
  const exported = await page.request.get(dayRoom('/export'), { maxRetries: 2 })
  expect(exported.status()).toBe(200)
  writeFileSync(file, await exported.body())
  const scored = JSON.parse(await scoreFile(file)) as Scored
  const board = (await (await page.request.get(`/api/board/${SOCIETY}/${DAY}`, { maxRetries: 2 })).json()) as DayBoard
  expect(scored.results).toHaveLength(board.competitions.length)
  for (const [at, competition] of board.competitions.entries())
    expect(compared(scored.results[at]!.standings)).toEqual(compared(competition.rows))
  await page.goto(dayRoom('/result'))
  const lines = page
    .getByRole('group', { name: /^Standings/ })
    .first()
    .locator('tbody tr')
  if (board.competitions[0]!.rows.some((row) => row.score !== null)) await expect(lines.first()).toBeVisible()
  const shown = await lines.evaluateAll((all) =>
    all.map((line) =>
      [line.querySelector('td'), line.querySelector('a'), line.lastElementChild].map((one) => one?.textContent),
    ),
  )
  const placed = board.competitions[0]!.rows.filter((row) => row.place !== null)
  expect(shown.slice(0, placed.length)).toEqual(
    placed.map(({ place, tied, name, score }) => [`${place}${tied ? '=' : ''}`, name, String(score)]),
  )
  return board
}

test('the society is set up, with its members and its course', async () => {
  await foundSociety(page, book.firstLink, 'Thornbeck Wanderers', SOCIETY)
  await importMembers(page, MEMBERS)
  await page.goto(desk('/courses'))
  await importCourse(page, {
    name: 'Thornbeck Heath',
    pars: PARS,
    indexes: INDEXES,
    tees: [
      ['Yellow, men', '70.2', '125'],
      ['Red, women', '71.9', '124'],
    ],
  })
})

test('a day is called for today, thirty members and two guests are entered', async () => {
  await page.goto(desk())
  await page
    .getByRole('link', { name: /Call a day|New golf day|golf day/i })
    .first()
    .click()
  await page.getByLabel('Name of the day').fill('Harvest Cup')
  await page.getByLabel('Date', { exact: true }).fill(TODAY)
  await button('Call the day').click()
  await expect(page).toHaveURL(new RegExp(`${dayRoom()}$`))
  await page.getByRole('link', { name: 'To the entries', exact: true }).click()
  await button('All regulars').click()
  await button('Enter 30').click()
  await expect(page.getByText('30 players entered')).toBeVisible()
  for (const [first, family, handicap, host] of [
    ['Rook', 'Garside', '18.2', 'Alderby, Adam'],
    ['Wren', 'Hollin', '24.0', 'Birkwith, Glyn'],
  ] as const) {
    const form = page.getByRole('form').filter({ has: page.getByLabel('First name') })
    await form.getByLabel('Guest of').selectOption({ label: host })
    await form.getByLabel('First name').fill(first)
    await form.getByLabel('Family name').fill(family)
    await form.getByLabel(/^Handicap/).fill(handicap)
    await form.getByRole('button', { name: 'Add the guest', exact: true }).click()
    await expect(page.getByText(`${first} ${family} is entered as a guest.`)).toBeVisible()
  }
})

test('handicaps are fixed, the groups are drawn, and the start sheet goes out', async () => {
  await page.goto(dayRoom('/handicaps'))
  await button('Freeze 32 handicaps').click()
  await page.getByRole('link', { name: 'Next: make the draw' }).click()
  await button('Draw 32 players').click()
  await button('Publish the start sheet').click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).toBeVisible()
  expect((await allAgree()).competitions[0]!.rows).toHaveLength(32)
})

test('somebody is withdrawn on the morning, and everything follows', async () => {
  await page.goto(dayRoom('/entries'))
  await page.getByRole('checkbox', { name: /^Owen Eskmoor/ }).uncheck()
  await button('Withdraw 1').click()
  await expect(page.getByText('Saved. Owen Eskmoor is withdrawn.')).toBeVisible()
  await expect(page.getByRole('region', { name: 'Not saved' })).toHaveCount(0)
  await page.goto(dayRoom('/draw'))
  await expect(page.getByText('8 groups, 31 players')).toBeVisible()
  const rows = (await allAgree()).competitions[0]!.rows
  expect(rows).toHaveLength(31)
  expect(JSON.stringify(rows)).not.toContain('Owen Eskmoor')
})

const scoreOf = (person: number, hole: number, par: number) =>
  par + ((person * 7 + hole * 5) % 4 === 0 ? 2 : (person + hole) % 2)

interface Phone {
  readonly context: BrowserContext
  readonly page: Page
}
async function phone(browser: Browser, link: string): Promise<Phone> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 780 },
    hasTouch: true,
    isMobile: true,
    baseURL: book.origin,
  })
  const card = await context.newPage()
  await card.goto(link)
  return { context, page: card }
}
/** Two of a group who share a first name, as the draw may have it, are told apart by an initial. */
const onThePhone = (pack: CardPack, { entryId, firstName, familyName }: PackCard) =>
  pack.cards.some((other) => other.entryId !== entryId && other.firstName === firstName)
    ? `${firstName} ${familyName.charAt(0)}.`
    : firstName
const fullNameOf = (card: PackCard) => `${card.firstName} ${card.familyName}`
const pick = (on: Page, card: PackCard, score: number) =>
  on
    .getByRole('radiogroup', { name: fullNameOf(card) })
    .locator(`input[value="${score}"]`)
    .click()
const allSent = (on: Page) => expect(on.locator('.c-sent')).toContainText('All sent')
const rows = async () => (await allAgree()).competitions[0]!.rows
const rowOf = async (name: string) => (await rows()).find((row) => row.name === name)!

/** Cards that came by phone. */
let byPhone = 0

test('a group plays with two phones under one name; one dies, and the other hands all cards in', async ({
  browser,
}) => {
  test.setTimeout(300_000)
  await page.goto(dayRoom('/draw'))
  const link = (await page.getByRole('link', { name: 'Open the card of group 1' }).getAttribute('href'))!
  const a = await phone(browser, link)
  const pack = (await (await a.page.request.get(`/api/group/${link.split('/').at(-1)}`)).json()) as CardPack
  const [me] = pack.cards as [PackCard]
  byPhone = pack.cards.length
  await a.page.getByRole('button', { name: fullNameOf(me) }).click()
  for (const [at, card] of pack.cards.entries()) await pick(a.page, card, scoreOf(at, 1, card.holes[0]!.par))
  await allSent(a.page)

  const b = await phone(browser, link)
  await expect(b.page.getByRole('button', { name: fullNameOf(me) })).toContainText(/on another phone since/)
  await b.page.getByRole('button', { name: fullNameOf(me) }).click()
  await b.page.getByRole('button', { name: 'Yes, use this phone now' }).click()
  await expect(a.page.getByText(/is on another phone as well, since/)).toBeVisible()
  await a.context.close()

  await test.step('the phone that is left enters what is missing', async () => {
    for (let hole = 2; hole <= 18; hole += 1) {
      await expect(b.page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
      for (const [at, card] of pack.cards.entries())
        await pick(b.page, card, scoreOf(at, hole, card.holes[hole - 1]!.par))
      await b.page.getByRole('navigation', { name: 'Holes' }).getByRole('button').last().click()
    }
    await expect(b.page.getByRole('heading', { name: 'The cards' })).toBeVisible()
    await expect(b.page.getByText('Finished, not signed')).toHaveCount(byPhone)
  })
  await test.step('each card is signed by its marker and its player, one after the other', async () => {
    await b.page.getByRole('link', { name: new RegExp(fullNameOf(me)) }).click()
    for (const [at, card] of pack.cards.entries()) {
      await expect(b.page.getByRole('heading', { name: fullNameOf(card) })).toBeVisible()
      const player = onThePhone(pack, card)
      await signByBoth(b.page, player)
      await expect(b.page.getByText(`${player}’s card is handed in`)).toBeVisible()
      if (at < byPhone - 1) await b.page.getByRole('link', { name: /^Next: / }).click()
    }
    await allSent(b.page)
  })
  await b.context.close()

  for (const [at, card] of pack.cards.entries()) {
    const row = await rowOf(fullNameOf(card))
    const gross = card.holes.reduce((sum, { hole, par }) => sum + scoreOf(at, hole, par), 0)
    expect([row.holesPlayed, row.gross]).toEqual([18, gross])
  }
})

/** What was keyed, by name. */
const keyed = new Map<string, readonly number[]>()

test('the other cards come on paper and are keyed one after the other', async () => {
  test.setTimeout(480_000)
  await page.goto(dayRoom('/returns'))
  const accepted = page.locator('.big-of .fig')
  for (let at = 0; at < 31 - byPhone; at += 1) {
    const name = (await page.locator('.ret-head h1').textContent())!.trim()
    expect(keyed.has(name)).toBe(false)
    const scores = PARS.map((par, hole) => scoreOf(at + byPhone, hole + 1, par))
    keyed.set(name, scores)
    await expect(page.locator('[data-place="0"]')).toBeFocused()
    await page.keyboard.type(`${scores.join('')}${scores.reduce((sum, score) => sum + score, 0)}s`)
    await page.keyboard.press('Enter')
    await expect(accepted).toHaveText(String(at + 1))
  }
  const board = await rows()
  for (const [name, scores] of keyed) {
    const row = board.find((one) => one.name === name)
    expect([name, row?.gross]).toEqual([name, scores.reduce((sum, score) => sum + score, 0)])
  }
  // Those that came by phone are handed in and wait for the desk.
  for (let at = 31 - byPhone; at < 31; at += 1) {
    await page.goto(dayRoom('/returns'))
    await page
      .getByRole('link', { name: /, handed in$/ })
      .first()
      .click()
    await button(/^Accept/).click()
    await expect(accepted).toHaveText(String(at + 1))
  }
})

const openRuling = async (name: string) => {
  await page.goto(dayRoom('/returns'))
  await page.getByRole('link', { name: new RegExp(`^${name},`) }).click()
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible()
  await page.getByText('Rule on this card').click()
}
const penalty = async (name: string, strokes: number, reason: string) => {
  await openRuling(name)
  await page.getByRole('radio', { name: /^Penalty strokes/ }).check()
  await page.getByLabel('Strokes to add').fill(String(strokes))
  await page.getByLabel('Reason, kept with the card').fill(reason)
  await page.getByRole('button', { name: 'Rule it', exact: true }).click()
  await expect(page.getByText(reason).first()).toBeVisible()
}

test('a wrong handicap is ruled by its index, and the playing handicap follows', async () => {
  const { first, family } = MEMBERS.find(({ first, family, woman }) => !woman && keyed.has(`${first} ${family}`))!
  const name = `${first} ${family}`
  await openRuling(name)
  await page.getByLabel('What was wrong with the card').selectOption('handicap-wrong')
  await page.getByLabel('Handicap index that counts').fill('12.6')
  await page.getByLabel('Reason, kept with the card').first().fill('The list of September says so')
  await page.getByRole('button', { name: 'Rule it', exact: true }).first().click()
  await expect(page.getByText('Handicap index 12.6 counts.').first()).toBeVisible()
  // Rules of Handicapping 6.1a and 6.2a: (12.6 x 125 / 113 + 70.2 - 72) x 95 % = 11.5, rounded to 12.
  expect((await rowOf(name)).playingHandicap).toBe(12)
})

test('the day is closed and published, and two corrections make sheets 2 and 3', async () => {
  const close = async () => {
    await page.goto(dayRoom('/result'))
    await button('Close the day').click()
    await expect(button(/^Publish sheet/)).toBeVisible()
  }
  const openAgain = async (reason: string) => {
    await page.goto(dayRoom('/result'))
    await page.getByText('Open the day again').first().click()
    await page.getByLabel('Reason', { exact: true }).fill(reason)
    await button('Open the day again').click()
    await expect(button('Close the day')).toBeVisible()
  }
  await close()
  const closed = await rows()
  await button('Publish sheet 1').click()
  await expect(page.getByRole('heading', { name: 'Sheet 1 is published', exact: true })).toBeVisible()
  expect(await rows()).toEqual(closed)

  for (const [number, place, strokes, reason] of [
    [2, 0, 2, 'Two penalty strokes were left out.'],
    [3, 1, 4, 'A wrong ball was played at the 7th.'],
  ] as const) {
    const before = await rows()
    const { name, gross } = before[place]!
    await openAgain(reason)
    await penalty(name, strokes, reason)
    expect((await rowOf(name)).gross).toBe(gross! + strokes)
    await close()
    const now = await rows()
    await page.getByLabel(`Reason for sheet ${number}`).fill(reason)
    await button(`Publish sheet ${number}`).click()
    await expect(page.getByRole('heading', { name: `Sheet ${number} is published`, exact: true })).toBeVisible()
    await expect(page.getByText(`Nothing differs from sheet ${number}`)).toBeVisible()
    expect(await rows()).toEqual(now)

    await page.goto(`/${SOCIETY}/days/${DAY}/result`)
    await expect(page.getByText(`Sheet ${number}`).first()).toBeVisible()
    await expect(page.getByText(reason).first()).toBeVisible()
    for (const row of now.slice(0, 3))
      await expect(
        page
          .getByRole('row')
          .filter({ hasText: row.name })
          .filter({ hasText: String(row.score) })
          .first(),
      ).toBeVisible()
  }
})
