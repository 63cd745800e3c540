// Promise: a society that has nothing yet sets itself up by the screens' own buttons, from the founder's link to a start
// sheet that is out: thirty members out of a spreadsheet, a course as it is printed, a day called for today, two guests,
// and a withdrawal on the morning. The board and the score command on the day's own file say the same.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { DayBoard } from '@/lib/boards/views'
import { type OwnBook, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

const SOCIETY = 'thornbeck-wanderers'
const TODAY = new Date().toLocaleDateString('en-CA', { timeZone: 'Europe/London' })
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

const chooseFile = (name: string, text: string) =>
  page
    .getByLabel('Spreadsheet, CSV or XLSX')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text, 'utf8') })

interface Scored {
  readonly results: readonly { readonly standings: readonly Record<(typeof COMPARED)[number], unknown>[] }[]
}
const COMPARED = ['place', 'tied', 'playingHandicap', 'score', 'holesPlayed'] as const
const compared = (rows: readonly Record<(typeof COMPARED)[number], unknown>[]) =>
  rows.map((row) => COMPARED.map((key) => row[key]))

/** The board everybody sees, and the score command on the file that the desk hands out, say the same of every row. */
async function boardAndFileAgree(): Promise<DayBoard> {
  const file = join(mkdtempSync(join(tmpdir(), 'daybook-whole-day-')), 'day.json')
  const exported = await page.request.get(`${dayRoom('/export')}`)
  expect(exported.status()).toBe(200)
  writeFileSync(file, await exported.body())
  const run = spawnSync('npm', ['run', '--silent', 'score', '--', file], { encoding: 'utf8' })
  expect(run.stderr).toBe('')
  const scored = JSON.parse(run.stdout) as Scored
  const board = (await (await page.request.get(`/api/board/${SOCIETY}/${DAY}`)).json()) as DayBoard
  expect(scored.results).toHaveLength(board.competitions.length)
  for (const [at, competition] of board.competitions.entries())
    expect(compared(scored.results[at]!.standings)).toEqual(compared(competition.rows))
  return board
}

test('the society is set up, with its members and its course', async () => {
  await page.goto(book.firstLink)
  await page.getByLabel('Name of the society').fill('Thornbeck Wanderers')
  await page.getByLabel(/part of the address|Web address/i).fill(SOCIETY)
  await page.getByLabel('Your name').fill('Maud Fellgate')
  await page.getByLabel('Your e-mail').fill('maud@example.org')
  await page.getByRole('textbox', { name: 'Password' }).fill('a long enough password')
  await button(/society$/).click()
  await page.waitForURL((url) => url.pathname === desk())
  await page.getByRole('link', { name: 'Add a season' }).click()
  await page.getByRole('form', { name: 'Open a season' }).getByRole('button').click()

  await page.getByRole('link', { name: 'Import a spreadsheet' }).click()
  const rows = MEMBERS.map(
    ({ first, family, woman, index }) => `${family}, ${first};${woman ? 'F' : 'M'};${String(index).replace('.', ',')}`,
  )
  await chooseFile('members.csv', ['Surname, First name;Sex (M/F);Handicap Index', ...rows].join('\r\n'))
  await button('Import 30 people').click()
  await expect(page.getByText('Imported: 30 new')).toBeVisible()

  await page.goto(desk('/courses'))
  await page.getByRole('link', { name: 'Import a card' }).click()
  const across = (label: string, cells: readonly (string | number)[]) => [label, ...cells].join(';')
  await chooseFile(
    'course.csv',
    [
      'Thornbeck Heath',
      across(
        'Hole',
        PARS.map((_, at) => at + 1),
      ),
      across(
        'Yellow',
        PARS.map((_, at) => 330 + at),
      ),
      across(
        'Red',
        PARS.map((_, at) => 300 + at),
      ),
      across('Par', PARS),
      across('S.I.', INDEXES),
    ].join('\n'),
  )
  for (const [tee, rating, slope] of [
    ['Yellow, men', '70.2', '125'],
    ['Red, women', '71.9', '124'],
  ] as const) {
    await page.getByLabel(`Course rating, ${tee}`).fill(rating)
    await page.getByLabel(`Course rating, ${tee}`).press('Enter')
    await page.getByLabel(`Slope rating, ${tee}`).fill(slope)
    await page.getByLabel(`Slope rating, ${tee}`).press('Enter')
  }
  await button('Import Thornbeck Heath').click()
  await expect(page.getByRole('link', { name: 'Thornbeck Heath' })).toBeVisible()
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
  expect((await boardAndFileAgree()).competitions[0]!.rows).toHaveLength(32)
})

test('somebody is withdrawn on the morning, and everything follows', async () => {
  await page.goto(dayRoom('/entries'))
  await page.getByRole('checkbox', { name: /^Owen Eskmoor/ }).uncheck()
  await button('Withdraw 1').click()
  await expect(page.getByText('Saved. Owen Eskmoor is withdrawn.')).toBeVisible()
  await expect(page.getByRole('region', { name: 'Not saved' })).toHaveCount(0)
  await page.goto(dayRoom('/draw'))
  await expect(page.getByText('8 groups, 31 players')).toBeVisible()
  const rows = (await boardAndFileAgree()).competitions[0]!.rows
  expect(rows).toHaveLength(31)
  expect(JSON.stringify(rows)).not.toContain('Owen Eskmoor')
})
