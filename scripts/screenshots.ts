// The pictures of the README, taken from a running demonstration:
//   npm run seed && npm start, then npm run screenshots [-- http://127.0.0.1:3000 [one picture, as board-360]]
// The day must be the one that is in play in the demonstration: run it on a freshly seeded book.

import { mkdirSync, statSync } from 'node:fs'
import { type Browser, chromium, type Page } from 'playwright'
import type { CardPack } from '../lib/facts/card-pack'
import { OFFICERS, PASSWORD } from '../seed/members'

const origin = process.argv[2] ?? 'http://127.0.0.1:3000'
const only = process.argv[3]
const FOLDER = 'docs/pictures'
const MOST_BYTES = 150_000
const PATIENCE = 60_000
/** Played every day of the season, so that the page has something to show. */
const MEMBER = /Trevennor/

interface Addresses {
  board: string
  desk: string
  returns: string
  result: string
  card: string
  member: string
  working: string
}

interface Picture {
  name: keyof Addresses
  wide: number
  tall: number
  light?: 'light' | 'dark'
  /** What has to be done on the page before it is worth a picture. */
  first?: (page: Page) => Promise<void>
}

const PICTURES: readonly Picture[] = [
  ...([360, 768, 1280] as const).map((wide) => ({ name: 'board', wide, tall: wide === 360 ? 1000 : 1050 }) as const),
  { name: 'board', wide: 1280, tall: 900, light: 'dark' },
  { name: 'card', wide: 360, tall: 780, first: scoreWithoutSignal },
  { name: 'card', wide: 360, tall: 780, light: 'dark', first: scoreWithoutSignal },
  { name: 'desk', wide: 768, tall: 1200 },
  { name: 'desk', wide: 1280, tall: 850 },
  { name: 'returns', wide: 1280, tall: 900 },
  { name: 'result', wide: 768, tall: 1080 },
  { name: 'result', wide: 1280, tall: 860 },
  { name: 'member', wide: 360, tall: 1000 },
  { name: 'member', wide: 1280, tall: 1150 },
  { name: 'working', wide: 360, tall: 1000 },
  { name: 'working', wide: 1280, tall: 960 },
]

/** A phone asks once who holds it. Then the signal goes, and three of the four answer. */
async function scoreWithoutSignal(page: Page) {
  await page.getByRole('button').first().click()
  const players = page.getByRole('radiogroup')
  await players.first().waitFor()
  await page.context().setOffline(true)
  for (const [row, column] of [3, 2, 2].entries()) await players.nth(row).getByRole('radio').nth(column).click()
  await page.waitForTimeout(400)
}

async function linksOn(page: Page, address: string, matching: RegExp): Promise<[string, ...string[]]> {
  await page.goto(address, { waitUntil: 'domcontentloaded' })
  const links = await page.$$eval('a[href]', (all) => all.map((link) => link.getAttribute('href') ?? ''))
  const [found, ...more] = links.filter((link) => matching.test(link))
  if (!found) throw new Error(`No link like ${matching} on ${address}. Is the demonstration seeded?`)
  return [found, ...more]
}

/** The card of the last group that is still out: it has the least to show on the board and the most on the card. */
async function cardInPlay(page: Page, desk: string): Promise<string> {
  for (const link of (await linksOn(page, `${desk}/draw`, /^\/card\/[^/]+$/)).reverse()) {
    const answer = await page.request.get(link.replace('/card/', '/api/group/'))
    const pack: CardPack = await answer.json()
    if (pack.cards.every((card) => card.state === 'out')) return link
  }
  throw new Error('Every group is in. Seed a new book.')
}

async function signIn(page: Page) {
  const officer = OFFICERS[0]
  await page.goto('/sign-in')
  await page.locator('input[name="email"]').fill(officer.email)
  await page.locator('input[name="password"]').fill(PASSWORD)
  await page.locator('input[name="password"]').press('Enter')
  await page.waitForURL(/\/desk/)
}

/** The addresses are looked up as somebody would: from the fixture card and from the desk. */
async function lookUp(page: Page): Promise<Addresses> {
  const front = await page.goto('/')
  const society = new URL(front?.url() ?? origin).pathname.split('/')[1] ?? ''
  const days = await page.$$eval('a[href*="/days/"]', (links) => [
    ...new Set(links.map((link) => link.getAttribute('href')?.match(/\/days\/([^/?#]+)/)?.[1] ?? '')),
  ])
  let inPlay = ''
  let published = ''
  for (const day of days) {
    const answer = await page.request.get(`/api/board/${society}/${day}`)
    const board: { status: string; published: number | null } = await answer.json()
    if (board.status === 'in-play') inPlay = day
    if (board.published !== null) published = day
  }
  if (!inPlay || !published) throw new Error('The demonstration has no day in play today. Seed a new book.')

  await signIn(page)
  const desk = `/desk/${society}/days/${inPlay}`
  const card = await cardInPlay(page, desk)
  await page.goto(`/desk/${society}/members`, { waitUntil: 'domcontentloaded' })
  const person = await page.getByRole('link', { name: MEMBER }).first().getAttribute('href')
  if (!person) throw new Error(`${MEMBER} is not on the list of members.`)
  const [member] = await linksOn(page, person, /^\/member\//)
  const [whole] = await linksOn(page, `/${society}/days/${published}/result`, /\/cards\/[^/?]+/).catch(() =>
    linksOn(page, `/${society}/days/${published}`, /\/cards\/[^/?]+/),
  )
  const [working] = await linksOn(page, whole, /\?.*hole=\d+/)
  return {
    board: `/${society}/days/${inPlay}`,
    desk,
    returns: `${desk}/returns`,
    result: `/${society}/days/${published}/result`,
    card,
    member,
    working,
  }
}

async function take(browser: Browser, picture: Picture, address: string, signedIn: string) {
  const context = await browser.newContext({
    baseURL: origin,
    viewport: { width: picture.wide, height: picture.tall },
    colorScheme: picture.light ?? 'light',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    reducedMotion: 'reduce',
    storageState: JSON.parse(signedIn),
  })
  context.setDefaultTimeout(PATIENCE)
  const page = await context.newPage()
  await page.goto(address, { waitUntil: 'load' })
  await picture.first?.(page)
  await page.evaluate(() => document.fonts.ready)
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
  const path = `${FOLDER}/${picture.name}-${picture.wide}${picture.light === 'dark' ? '-dark' : ''}.png`
  // Hiding the caret would write a style into every field, and a page still being hydrated would complain of it.
  await page.screenshot({ path, caret: 'initial' })
  await context.close()
  const { size } = statSync(path)
  const faults = [
    over > 0 ? `scrolls sideways by ${over} px` : '',
    size > MOST_BYTES ? `is over ${MOST_BYTES / 1000} kB` : '',
  ].filter(Boolean)
  console.log(`${path}  ${Math.round(size / 1000)} kB${faults.length > 0 ? `  ${faults.join(', ')}` : ''}`)
  return faults.length === 0
}

const browser = await chromium.launch({
  executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
  args: ['--disable-gpu', '--disable-dev-shm-usage', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
})
try {
  mkdirSync(FOLDER, { recursive: true })
  const first = await browser.newContext({ baseURL: origin })
  first.setDefaultTimeout(PATIENCE)
  const addresses = await lookUp(await first.newPage())
  const signedIn = JSON.stringify(await first.storageState())
  await first.close()
  let good = true
  for (const picture of PICTURES) {
    const name = `${picture.name}-${picture.wide}${picture.light === 'dark' ? '-dark' : ''}`
    if (only && only !== name) continue
    good = (await take(browser, picture, addresses[picture.name], signedIn)) && good
  }
  process.exitCode = good ? 0 : 1
} finally {
  await browser.close()
}
