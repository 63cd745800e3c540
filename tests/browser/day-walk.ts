// Steps that several stories walk: a society out of nothing, a day from the call to its start sheet, a card on a phone,
// and from the last card to the published sheet. All by the screens' own buttons.

import { type Browser, expect, type Locator, type Page } from '@playwright/test'
import type { CardPack, PackCard } from '@/lib/facts/card-pack'

export const TODAY = new Date().toLocaleDateString('en-CA', { timeZone: 'Europe/London' })
const PHONE = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true }

export const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

const chooseFile = (page: Page, name: string, text: string) =>
  page
    .getByLabel('Spreadsheet, CSV or XLSX')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text, 'utf8') })

/** From the founder's one-time link to a society with a season. */
export async function foundSociety(page: Page, firstLink: string, name: string, slug: string): Promise<void> {
  await page.goto(firstLink)
  await page.getByLabel('Name of the society').fill(name)
  await page.getByLabel(/part of the address|Web address/i).fill(slug)
  await page.getByLabel('Your name').fill('Maud Fellgate')
  await page.getByLabel('Your e-mail').fill('maud@example.org')
  await page.getByRole('textbox', { name: 'Password' }).fill('a long enough password')
  await button(page, /society$/).click()
  await page.waitForURL((url) => url.pathname === `/desk/${slug}`)
  await page.getByRole('link', { name: 'Add a season' }).click()
  await page.getByRole('form', { name: 'Open a season' }).getByRole('button').click()
}

export interface Imported {
  readonly first: string
  readonly family: string
  readonly woman?: boolean
  readonly index: number
}

export async function importMembers(page: Page, members: readonly Imported[]): Promise<void> {
  await page.getByRole('link', { name: 'Import a spreadsheet' }).click()
  const rows = members.map(
    ({ first, family, woman, index }) => `${family}, ${first};${woman ? 'F' : 'M'};${String(index).replace('.', ',')}`,
  )
  await chooseFile(page, 'members.csv', ['Surname, First name;Sex (M/F);Handicap Index', ...rows].join('\r\n'))
  await button(page, `Import ${members.length} people`).click()
  await expect(page.getByText(`Imported: ${members.length} new`)).toBeVisible()
}

export interface ImportedCourse {
  readonly name: string
  readonly pars: readonly number[]
  readonly indexes: readonly number[]
  /** "Yellow, men" with its course and slope rating. */
  readonly tees: readonly (readonly [tee: string, rating: string, slope: string])[]
}

export async function importCourse(page: Page, { name, pars, indexes, tees }: ImportedCourse): Promise<void> {
  await page.getByRole('link', { name: 'Import a card' }).click()
  const across = (label: string, cells: readonly number[]) => [label, ...cells].join(';')
  await chooseFile(
    page,
    'course.csv',
    [
      name,
      across(
        'Hole',
        pars.map((_, at) => at + 1),
      ),
      ...tees.map(([tee], row) =>
        across(
          tee.split(',')[0]!,
          pars.map((_, at) => 330 - 30 * row + at),
        ),
      ),
      across('Par', pars),
      across('S.I.', indexes),
    ].join('\n'),
  )
  for (const [tee, rating, slope] of tees) {
    await page.getByLabel(`Course rating, ${tee}`).fill(rating)
    await page.getByLabel(`Course rating, ${tee}`).press('Enter')
    await page.getByLabel(`Slope rating, ${tee}`).fill(slope)
    await page.getByLabel(`Slope rating, ${tee}`).press('Enter')
  }
  await button(page, `Import ${name}`).click()
  await expect(page.getByRole('link', { name })).toBeVisible()
}

/** One column of figures for every row, null for one that is left: the first is two under, the last but one two over. */
export async function writeHole(page: Page, hole: number, columns: readonly (number | null)[]): Promise<void> {
  await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
  for (const [row, column] of columns.entries()) {
    if (column === null) continue
    const figure = page.getByRole('radiogroup').nth(row).locator('.c-pick').nth(column)
    // A touch so soon after the last one on the same card is taken for wet glass and not counted.
    await expect(async () => {
      await figure.click()
      await expect(figure.locator('input')).toBeChecked({ timeout: 500 })
    }).toPass()
  }
}

export const nextHole = (page: Page) => page.locator('.c-nav button').last().click()

/** The name on "I am Jago: sign my card". */
export const signButton = (page: Page, what: string) => button(page, new RegExp(`^I am .+: sign ${what}$`)).first()

/** An open card is signed by its marker and then by its player, as the phone calls him. */
export async function signByBoth(phone: Page, player: string): Promise<void> {
  const asPlayer = phone.getByRole('button', { name: `I am ${player}`, exact: true })
  // A card that has just come takes no touch for half a second: the thumb of the last one may still be on its way.
  await expect(async () => {
    if (!(await asPlayer.isVisible()))
      await button(phone, /: sign as marker$/)
        .first()
        .click({ timeout: 2_000 })
    await expect(asPlayer).toBeVisible({ timeout: 2_000 })
  }).toPass()
  await asPlayer.click()
  await button(phone, `I am ${player}: sign my card`).click()
}

/** A field that a page came with takes keys once the page's script has reached it. */
export const isLive = (field: Locator) =>
  expect
    .poll(() => field.evaluate((element) => Object.keys(element).some((key) => key.startsWith('__react'))))
    .toBe(true)

export async function phoneOn(browser: Browser, origin: string, link: string): Promise<Page> {
  const page = await (await browser.newContext({ ...PHONE, baseURL: origin })).newPage()
  await page.goto(link)
  await expect(page.getByRole('heading', { name: 'Whose phone is this?' })).toBeVisible()
  return page
}

export const packOf = async (page: Page, link: string) =>
  (await (await page.request.get(`/api/group/${link.split('/').at(-1)}`)).json()) as CardPack

export type Gross = (family: string, hole: number) => number

const grossOf = (card: PackCard, gross: Gross, hole: number) => gross(card.familyName, hole)

/** To the address a phone sends to: the holes asked for, and the signatures once the card is whole. */
export async function send(
  page: Page,
  link: string,
  gross: Gross,
  isPlayed: (hole: number) => boolean,
  signed: boolean,
): Promise<CardPack> {
  const pack = await packOf(page, link)
  let seq = 0
  const facts = pack.cards.flatMap((card) => {
    const scores = card.holes.map(({ hole }) => (isPlayed(hole) ? grossOf(card, gross, hole) : null))
    const common = { cardId: card.cardId, writtenAt: new Date().toISOString() }
    const marker = card.markerId ?? card.sharedWith?.[0]?.entryId
    return [
      ...card.holes.flatMap(({ hole }, at) =>
        scores[at] === null
          ? []
          : [{ kind: 'score', seq: ++seq, ...common, writer: card.entryId, hole, score: scores[at] }],
      ),
      ...(signed
        ? [
            { kind: 'signature', seq: ++seq, ...common, writer: card.entryId, role: 'player', scores },
            { kind: 'signature', seq: ++seq, ...common, writer: marker, role: 'marker', scores },
          ]
        : []),
    ]
  })
  const answer = await page.request.post(`/api/group/${link.split('/').at(-1)}/facts`, {
    data: { deviceId: `phone-of-a-story-${link.slice(-8)}`, facts },
  })
  expect(answer.status()).toBe(200)
  const { answers } = (await answer.json()) as { answers: readonly { answer: string }[] }
  expect(answers.filter((one) => one.answer !== 'received')).toEqual([])
  return pack
}

export const everyHole = () => true

/** All holes but the last one played are there: the phone writes that one, and every card is signed and handed in on it. */
export async function handInOnPhone(
  browser: Browser,
  origin: string,
  link: string,
  last: number,
  columns: readonly (number | null)[],
  before?: (phone: Page) => Promise<void>,
): Promise<void> {
  const phone = await phoneOn(browser, origin, link)
  await phone.getByRole('list').getByRole('button').first().click()
  await expect(phone.getByRole('radiogroup').first()).toBeVisible()
  await before?.(phone)
  await phone.goto(`${new URL(phone.url()).pathname}#hole-${last}`)
  await writeHole(phone, last, columns)
  await nextHole(phone)
  for (let card = 0; card < columns.length; card++) {
    await phone.goto(`${new URL(phone.url()).pathname}#cards`)
    await phone.locator('.c-cards a').nth(card).click()
    await signButton(phone, '(my card|our card|as marker)').click()
    await button(phone, /^I am [^:]+$/).click()
    await signButton(phone, '(my card|our card|as marker)').click()
    await expect(phone.getByRole('heading', { name: /card is handed in$/ })).toBeVisible()
  }
  await phone.context().close()
}

/** Each line of a competition on the sheet: the figure, then the name. */
export async function expectSheet(
  page: Page,
  competition: string,
  lines: readonly (readonly [figure: string, name: string])[],
) {
  const section = page.getByRole('region', { name: competition, exact: true })
  for (const [figure, name] of lines) {
    const line = section.getByRole('listitem').or(section.getByRole('row')).filter({ hasText: name }).first()
    await expect(line.locator('.f-pts, .pts')).toHaveText(new RegExp(`^${figure}( |$)`))
  }
}
