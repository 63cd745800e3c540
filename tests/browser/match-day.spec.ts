// Promise: a day with singles matches, a yellow ball and a play-off is walked from the form that calls it to what is added
// up with other days, by the buttons of the desk: sides, pairings, teams, a match that was conceded, a ball that was lost,
// scores that come after a group's link was renewed, rulings on the day as a whole and their undoing, a further round.

import type { CardPack } from '@/lib/facts/card-pack'
import { isLive } from './day-walk'
import { endOwnBooks, type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const TODAY = new Date().toLocaleDateString('en-CA', { timeZone: 'Europe/London' })
const PLAYERS = ['Haldane', 'Storrey', 'Ashgill', 'Verrow', 'Trevennor', 'Pellmoor', 'Holmgarth', 'Maesgoch']
let book: OwnBook
let page: Page
let day = ''
let links: readonly string[] = []

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 }, baseURL: book.origin })).newPage()
  await signInAtDesk(page, book.origin)
})
test.afterAll(({ browser }) => endOwnBooks(browser))

const button = (name: string | RegExp) => page.getByRole('button', { name })
const form = (name: string | RegExp) => page.getByRole('form', { name })
const packOf = async (link: string) =>
  (await (await page.request.get(`/api/group/${link.split('/').at(-1)}`)).json()) as CardPack

test('a day with three competitions on the same cards is called, entered and frozen', async () => {
  await page.goto('/desk/fernbrake/new-day')
  await page.getByLabel('Name of the day').fill('Bramble Match')
  await page.getByLabel('Date', { exact: true }).fill(TODAY)
  const competitions = page.getByRole('group', { name: /^Competition \d/ })
  while ((await competitions.count()) > 1)
    await page
      .getByRole('button', { name: /^Leave .* out$/ })
      .last()
      .click()
  await competitions.first().getByLabel('Format').selectOption('stableford')
  const more = competitions.first().locator('details.more-terms')
  await more.locator('summary').click()
  await more.getByRole('button', { name: 'Take last nine out' }).click()
  await more.getByLabel('Another step').selectOption('play-off')
  await more.getByRole('button', { name: 'Add the step' }).click()
  for (const format of ['match', 'yellow-ball']) {
    await button('Add a competition').click()
    await competitions.last().getByLabel('Format').selectOption(format)
  }
  await button('Call the day').click()
  await expect(page).toHaveURL(/\/days\/bramble-match/)
  day = new URL(page.url()).pathname

  await page.goto(`${day}/entries`)
  for (const name of PLAYERS) {
    await page.getByLabel('Find a player').fill(name)
    await page.getByLabel('Find a player').press('Enter')
  }
  await button(`Enter ${PLAYERS.length}`).click()
  await expect(page.getByText(`Saved. ${PLAYERS.length} players entered.`)).toBeVisible()
  await page.goto(`${day}/handicaps`)
  await button(/^Freeze \d+ handicaps$/).click()
  // Called for a larger field: asked once.
  await button(/^Freeze \d+ handicaps with this allowance$/).click()
  await expect(page.getByRole('heading', { name: 'If a handicap is wrong' })).toBeVisible()
  await page.goto(`${day}/draw`)
  await button(`Draw ${PLAYERS.length} players`).click()
  await expect(page.getByRole('heading', { name: 'Group 2', exact: true })).toBeVisible()
})

test('sides, matches and teams are made, and the start sheet goes out', async () => {
  await page.goto(`${day}/matches`)
  const sides = form(/^Sides of /)
  await sides.getByRole('button', { name: 'Make them even by handicap' }).click()
  await expect(sides.getByRole('status')).toBeVisible()
  const teams = form('Teams')
  await teams.getByLabel('Team 1').fill('Heath')
  await teams.getByLabel('Team 2').fill('Links')
  await teams.getByRole('button').last().click()
  await expect(teams.getByRole('status')).toBeVisible()
  const matches = form(/^Matches of /)
  await matches.getByRole('button', { name: 'Pair them from the draw' }).click()
  await expect(matches.getByLabel('Match 4')).not.toHaveValue('')
  await page.goto(`${day}/draw`)
  await button('Publish the start sheet').click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).toBeVisible()
  links = await page
    .getByRole('link', { name: /^Open the card of group \d/ })
    .evaluateAll((all) => all.map((one) => one.getAttribute('href')!))
  expect(links).toHaveLength(2)
  await page.goto(day)
  await button(/^Allow|^Show/)
    .first()
    .click()
})

test('scores that come after the link was renewed wait for the desk, which takes them in', async ({ browser }) => {
  const [link] = links as [string]
  const pack = await packOf(link)
  const [one] = pack.cards
  const context = await browser.newContext({
    viewport: { width: 360, height: 780 },
    hasTouch: true,
    isMobile: true,
    baseURL: book.origin,
  })
  const phone = await context.newPage()
  await phone.goto(link)
  await phone.getByRole('button', { name: `${one!.firstName} ${one!.familyName}` }).click()
  await expect(phone.getByRole('radiogroup').first()).toBeVisible()
  await context.setOffline(true)
  await phone
    .getByRole('radiogroup')
    .first()
    .locator(`input[value="${one!.holes[0]!.par + one!.holes[0]!.strokes}"]`)
    .click()
  await page.goto(`${day}/draw`)
  await button('New link and code for group 1').click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).not.toHaveAttribute('href', link)
  links = [(await page.getByRole('link', { name: 'Open the card of group 1' }).getAttribute('href'))!, links[1]!]
  await context.setOffline(false)
  await expect(async () => {
    await page.goto(`${day}/course`)
    await expect(page.getByRole('heading', { name: 'Came after their link had ended' })).toBeVisible({ timeout: 2_000 })
  }).toPass()
  await button('Take them in').click()
  await expect(page.getByRole('heading', { name: 'Came after their link had ended' })).toHaveCount(0)
  expect(
    Object.values((await packOf(links[0]!)).cards.find((card) => card.cardId === one!.cardId)!.written),
  ).not.toEqual([])
  await context.close()
})

test('everybody comes in level, and the play-off, a concession and a lost ball are entered', async () => {
  const packs = await Promise.all(links.map(packOf))
  for (const [at, card] of packs.flatMap((pack) => pack.cards).entries()) {
    await page.goto(`${day}/returns?card=${card.cardId}`)
    await expect(page.getByRole('heading', { level: 1 })).toContainText(card.familyName)
    const first = page.locator('[data-place="0"]')
    await isLive(first)
    await first.focus()
    for (const { par, strokes } of card.holes) await page.keyboard.press(String(par + strokes))
    await page.keyboard.press('s')
    await page.keyboard.press('Enter')
    await expect(page.locator('.big-of .fig')).toHaveText(String(at + 1))
  }
  await page.goto(`${day}/matches`)
  await page.locator('.match-ends summary').first().click()
  const ending = page.locator('.match-ends form').first()
  await ending.getByLabel('How it ended').selectOption('conceded b')
  await ending.getByRole('button', { name: 'Keep how it ended' }).click()
  await expect(page.locator('.match-ends summary').first()).toContainText(/conce/)
  await page
    .locator('summary', { hasText: /ball|came home/ })
    .first()
    .click()
  const ball = form(/^The ball of /).first()
  await ball.getByLabel('The yellow ball').selectOption('7')
  await ball.getByRole('button', { name: 'Keep it' }).click()
  await expect(page.locator('summary', { hasText: /lost on hole 7|hole 7/ }).first()).toBeVisible()

  await page.goto(`${day}/result`)
  await page
    .getByText(/^Enter the play-off of /)
    .first()
    .click()
  const playOff = form(/^Enter the play-off of /).first()
  const places = playOff.getByRole('spinbutton')
  const winner = (await places.nth(1).getAttribute('name'))!
  await places.nth(1).fill('1')
  await places.nth(0).fill('2')
  await playOff.getByLabel('How it was played, on the sheet').fill('Three holes, from the 16th')
  await playOff.getByRole('button', { name: 'Enter the play-off' }).click()
  await expect(page.getByText('Three holes, from the 16th').first()).toBeVisible()
  const board = (await (await page.request.get(`/api/board/fernbrake/${day.split('/').at(-1)}`)).json()) as {
    competitions: readonly { rows: readonly { entrant: string; place: number | null; score: number | null }[] }[]
  }
  const [stableford] = board.competitions
  expect(stableford!.rows.map((row) => row.score)).toEqual(Array(8).fill(36))
  expect(stableford!.rows[0]).toMatchObject({ entrant: winner.replace('place ', ''), place: 1 })
})

test('a ruling on the day is taken back, days are added up, and a further round is called', async () => {
  await page.goto(`${day}/result`)
  await page.getByText('The round was abandoned').first().click()
  const abandoned = form('The round was abandoned')
  await abandoned.getByLabel('After hole').fill('9')
  await abandoned.getByLabel('Reason, on the sheet').fill('Lightning')
  await abandoned.getByRole('button', { name: 'Rule the round abandoned' }).click()
  await expect(page.getByText('Lightning').first()).toBeVisible()
  await page.getByText('Take it back').first().click()
  const back = form(/^Take ruling \d+ on the day back$/).first()
  await back.getByLabel('Reason').fill('Play went on after all')
  await back.getByRole('button').click()
  await expect(page.getByText('Play went on after all').first()).toBeVisible()

  await page.goto(`${day}/matches`)
  const added = form(/counts together with$/).first()
  await added.getByRole('checkbox').first().check()
  const under = added.getByLabel(/^Count days with other terms/)
  if (await under.isVisible()) await under.check()
  await added.getByRole('button', { name: 'Save what is added up' }).click()
  await expect(added.getByRole('status')).toBeVisible()
  await page.getByText('Call a further round from this day').click()
  await form('Call a further round').getByRole('button').click()
  await expect(page).toHaveURL(/second-round/)
})
