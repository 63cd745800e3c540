// The pictures of the README, taken from a running demonstration:
//   npm run seed && npm start, then npm run screenshots [-- http://127.0.0.1:3000 [one picture, as board-360]]
// The day must be the one that is in play in the demonstration: run it on a freshly seeded book.

import { mkdirSync, statSync } from 'node:fs'
import { type Browser, chromium, type Page } from 'playwright'
import { OFFICERS, PASSWORD } from '../seed/members'

const origin = process.argv[2] ?? 'http://127.0.0.1:3000'
const only = process.argv[3]
const FOLDER = 'docs/pictures'
const MOST_BYTES = 150_000
const PATIENCE = 180_000

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
  ...([360, 768, 1280] as const).map((wide) => ({ name: 'board', wide, tall: wide === 360 ? 1000 : 1150 }) as const),
  { name: 'board', wide: 1280, tall: 900, light: 'dark' },
  { name: 'card', wide: 360, tall: 780, first: holdTheCard },
  { name: 'card', wide: 360, tall: 780, light: 'dark', first: holdTheCard },
  { name: 'desk', wide: 768, tall: 1200 },
  { name: 'desk', wide: 1280, tall: 1300 },
  { name: 'returns', wide: 1280, tall: 1250 },
  { name: 'result', wide: 768, tall: 1200 },
  { name: 'result', wide: 1280, tall: 1250 },
  { name: 'member', wide: 360, tall: 1000 },
  { name: 'member', wide: 1280, tall: 1150 },
  { name: 'working', wide: 360, tall: 1000 },
  { name: 'working', wide: 1280, tall: 1100 },
]

/** A phone asks once who holds it; the first name will do. */
async function holdTheCard(page: Page) {
  await page.getByRole('button', { name: /\w/ }).first().click()
  await page.getByRole('radio').first().waitFor()
}

async function linkOn(page: Page, address: string, matching: RegExp): Promise<string> {
  await page.goto(address, { waitUntil: 'domcontentloaded' })
  const links = await page.$$eval('a[href]', (all) => all.map((link) => link.getAttribute('href') ?? ''))
  const found = links.find((link) => matching.test(link))
  if (!found) throw new Error(`No link like ${matching} on ${address}. Is the demonstration seeded?`)
  return found
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
  const card = await linkOn(page, `${desk}/draw`, /^\/card\/[^/]+$/)
  const person = await linkOn(page, `/desk/${society}/members`, /\/members\/[^/]+$/)
  const member = await linkOn(page, person, /^\/member\//)
  const whole = await linkOn(page, `/${society}/days/${published}/result`, /\/cards\/[^/?]+/).catch(() =>
    linkOn(page, `/${society}/days/${published}`, /\/cards\/[^/?]+/),
  )
  const working = await linkOn(page, whole, /\?.*hole=\d+/)
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
  await page.screenshot({ path })
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
