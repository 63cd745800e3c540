// Promise: an officer imports the spreadsheet there is, points at its columns, puts rows right or leaves them out, and
// nothing chosen is lost on a refusal; a course card comes in as it is printed, is asked for what it has not, carries a day
// of eighteen holes on nine, and is deleted again when it was a mistake.

import AxeBuilder from '@axe-core/playwright'
import ExcelJS from 'exceljs'
import { endOwnBooks, type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

let book: OwnBook
let page: Page
const desk = (path: string) => `${book.origin}/desk/fernbrake/${path}`

test.beforeAll(async ({ browser }) => {
  test.setTimeout(180_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  await signInAtDesk(page, book.origin)
})
test.afterAll(({ browser }) => endOwnBooks(browser))

async function looksRight() {
  // The title of a page that was made anew is a moment behind it.
  await expect(page).toHaveTitle(/./)
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target).join(' | ')}`)).toEqual([])
}

async function fitsThePhone() {
  for (const width of [360, 768]) {
    await page.setViewportSize({ width, height: 780 })
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(over).toBeLessThanOrEqual(0)
  }
  await page.setViewportSize({ width: 1280, height: 900 })
}

async function xlsx(rows: readonly (readonly ExcelJS.CellValue[])[]): Promise<Buffer> {
  const workbook = new ExcelJS.Workbook()
  const sheet = workbook.addWorksheet('Members')
  for (const row of rows) sheet.addRow([...row])
  return Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer)
}

const chooseFile = (name: string, buffer: Buffer) =>
  page.getByLabel('Spreadsheet, CSV or XLSX').setInputFiles({ name, mimeType: 'application/octet-stream', buffer })

test('a messy spreadsheet is imported by pointing at its columns', async () => {
  await page.goto(desk('members'))
  await page.getByRole('link', { name: 'Import a spreadsheet' }).click()
  await expect(page.getByRole('heading', { name: 'Import members' })).toBeVisible()
  await chooseFile(
    'Old Mill.xlsx',
    await xlsx([
      ['Old Mill Wanderers'],
      [],
      ['Player name & surname', 'Sex (M/F)', 'Hcp', 'Mail', 'Locker'],
      ['Corwin Thistlefen', 'M', 12.4, 'corwin@example.org', 'A1'],
      ['Petra Pinfold', 'Lady', '+1.2', '', 'A2'],
      ['Terry Highmoor', 'Male', 'sixteen', 'terry@example.org', 'A3'],
      ['Ada Quillfern', 'F', 26.2, 'ada@example', 'A4'],
      ['Ludo Harrowfen', 'M', 25.4, 'ludo@example.org', 'A5'],
      ['Ludo Harrowfen', 'M', 9.1, 'young.ludo@example.org', 'A6'],
      ['Nobody', 'M', 20, '', 'A7'],
      [],
      ['Total members', '', 7],
    ]),
  )
  await expect(page.getByRole('status').filter({ hasText: 'Nothing is saved yet' })).toContainText('4 need a look')
  await expect(page.getByLabel('What is “Player name & surname”?')).toHaveValue('firstSurname')
  await expect(page.getByLabel('What is “Sex (M/F)”?')).toHaveValue('gender')
  await expect(page.getByText('Row 12, “Total members, 7”: a total, not a person.')).toBeVisible()
  await looksRight()
  await fitsThePhone()

  await page.getByLabel('What is “Locker”?').selectOption('membershipNumber')
  await expect(page.getByText('Left out: “Locker”')).toHaveCount(0)
  await page.getByLabel('Society handicaps: our own').check()
  await page.getByLabel('Handicap, row 6').fill('16,2')
  await page.getByRole('button', { name: 'Put right' }).first().click()
  await expect(page.getByLabel('Handicap, row 6')).toHaveCount(0)
  await page.getByRole('button', { name: 'Import without e-mail' }).click()
  await page.getByRole('button', { name: 'Two people' }).click()
  await page.getByLabel('Told apart by, row 9').fill('junior')
  await page.getByRole('button', { name: 'Put right' }).first().click()
  await expect(page.getByRole('button', { name: 'Import: one row needs a look first' })).toBeVisible()
  await page.getByRole('button', { name: 'Leave row 10 out' }).click()
  await expect(page.getByText('Row 10, “Nobody”: left out by you.')).toBeVisible()
  await expect(page.getByRole('row', { name: /Harrowfen/ })).toHaveCount(2)
  await page.getByRole('button', { name: 'Import 6 people' }).click()
  await expect(page.getByText('Imported: 6 new, 0 changed, 0 as they were, 2 rows left out.')).toBeVisible()
  await page.getByRole('link', { name: /Thistlefen/ }).click()
  await expect(page.getByLabel('Membership number')).toHaveValue('A1')
})

test('a file of semicolons in older letters asks one question, and a row can be unticked', async () => {
  await page.goto(desk('members/import'))
  const text = 'Surname, First name;Handicap Index\r\nLefèvre, Zoë;12,4\r\nÅberg, Nils;+0,3\r\nQuist, Olaf;20,0\r\n'
  await chooseFile('old.csv', Buffer.from(text, 'latin1'))
  await expect(page.getByLabel('What is “Surname, First name”?')).toHaveValue('surnameFirst')
  await expect(page.getByRole('heading', { name: 'One question' })).toBeVisible()
  await page.getByLabel('All of them men; I change single ones below').check()
  await page.getByLabel('Tees, row 2').selectOption('women')
  await expect(page.getByLabel('Tees, row 2')).toHaveValue('women')
  await page.getByLabel('Import row 4, Olaf Quist').click()
  await expect(page.getByText('Row 4, “Olaf Quist”: left out by you.')).toBeVisible()
  await page.getByRole('button', { name: 'Bring row 4 back' }).click()
  await expect(page.getByRole('button', { name: 'Import 3 people' })).toBeVisible()
  await page.getByLabel('Import row 4, Olaf Quist').click()
  await page.getByRole('button', { name: 'Import 2 people' }).click()
  await expect(page.getByText('Imported: 2 new, 0 changed, 0 as they were, 1 row left out.')).toBeVisible()
  await expect(page.getByRole('link', { name: /Lefèvre/ })).toBeVisible()
})

test('an import that is refused keeps everything that was chosen', async () => {
  await page.goto(desk('members/import'))
  await chooseFile('late.csv', Buffer.from('Name,Index\nMoss Tarrant,9.0\nFern Tarrant,8.0\n'))
  await page.getByLabel('All of them women; I change single ones below').check()
  await page.getByLabel('Import row 3, Fern Tarrant').click()
  await expect(page.getByRole('button', { name: 'Import one person' })).toBeVisible()
  const second = await page.context().newPage()
  await second.goto(desk('members/new'))
  await second.getByLabel('First name').fill('Moss')
  await second.getByLabel('Family name').fill('Tarrant')
  await second.getByRole('button', { name: /Add the member/ }).click()
  await expect(second.getByText(/Tarrant/).first()).toBeVisible()
  await second.close()
  await page.getByRole('button', { name: 'Import one person' }).click()
  await expect(page.getByText('Nothing was imported: look at it again, then import.')).toBeVisible()
  await expect(page.getByText('Row 3, “Fern Tarrant”: left out by you.')).toBeVisible()
})

const PARS = '4 5 3 4 4 5 4 3 4 4 4 3 4 5 4 3 4 5'.split(' ')
const INDEXES = '5 11 17 1 13 7 9 15 3 10 4 18 2 14 8 12 16 6'.split(' ')

test('a course card comes in as it is printed, and is asked for what it has not', async () => {
  await page.goto(desk('courses'))
  await page.getByRole('link', { name: 'Import a card' }).click()
  const across = (label: string, cells: readonly (string | number)[], sums: readonly (string | number)[]) =>
    [label, ...cells.slice(0, 9), sums[0], ...cells.slice(9), sums[1], sums[2]].join(';')
  const numbers = PARS.map((_, at) => at + 1)
  const yards = (from: number) => PARS.map((_, at) => from + at)
  const text = [
    'Thistle Links',
    across('Hole', numbers, ['Out', 'In', 'Total']),
    across('White', yards(350), [3186, 3267, 6453]),
    across('Yellow', yards(330), [3006, 3087, 6093]),
    across('Red', yards(300), [2736, 2817, 5553]),
    across('Par', PARS, [36, 36, 72]),
    across('S.I.', INDEXES, ['', '', '']),
  ].join('\n')
  await chooseFile('thistle.csv', Buffer.from(text))
  await expect(page.getByLabel('Name of the course')).toHaveValue('Thistle Links')
  await expect(page.getByRole('button', { name: 'Import: 3 sets of tees need an answer first' })).toBeVisible()
  await looksRight()
  await fitsThePhone()
  await page.getByRole('button', { name: 'Leave White, men out' }).click()
  for (const [tee, rating, slope] of [
    ['Yellow, men', '69.2', '125'],
    ['Red, women', '70.9', '124'],
  ] as const) {
    await page.getByLabel(`Course rating, ${tee}`).fill(rating)
    await page.getByLabel(`Course rating, ${tee}`).press('Enter')
    await page.getByLabel(`Slope rating, ${tee}`).fill(slope)
    await page.getByLabel(`Slope rating, ${tee}`).press('Enter')
  }
  await page.getByRole('button', { name: 'Import Thistle Links' }).click()
  await expect(page.getByRole('link', { name: 'Thistle Links' })).toBeVisible()
  await expect(page.getByRole('row', { name: /Yellow, men 72 69.2 125 6,?093/ })).toBeVisible()
})

test('a course entered by mistake is deleted; one with a golf day names the day', async () => {
  await page.getByRole('link', { name: 'Thistle Links' }).click()
  await page.getByText('Delete this course').click()
  await page.getByRole('button', { name: 'Delete Thistle Links' }).click()
  await expect(page.getByText('Thistle Links was deleted.')).toBeVisible()
  await expect(page.getByRole('link', { name: 'Thistle Links' })).toHaveCount(0)
  const used = page.locator('.course-name a').first()
  const name = await used.textContent()
  await used.click()
  await page.getByText('Delete this course').click()
  await page.getByRole('button', { name: `Delete ${name}` }).click()
  await expect(page.getByText(new RegExp(`${name} cannot be deleted`))).toBeVisible()
})

test('a course of nine holes carries a golf day of eighteen', async () => {
  await page.goto(desk('courses/new'))
  await page.getByLabel('Course', { exact: true }).fill('Moss End')
  await page.getByLabel('Holes', { exact: true }).selectOption('9')
  await expect(page.getByText('Such as 34.6, for nine holes.')).toBeVisible()
  await page.getByLabel('Course rating').fill('33.1')
  await page.getByLabel('Slope rating').fill('118')
  const odd = [1, 15, 7, 11, 3, 17, 5, 9, 13]
  const pars = [4, 3, 4, 5, 4, 3, 4, 4, 3]
  for (let hole = 1; hole <= 9; hole++) {
    await page.getByLabel(`Par, hole ${hole}`).fill(String(pars[hole - 1]))
    await page.getByLabel(`Stroke index, hole ${hole}`).fill(String(odd[hole - 1]))
  }
  await expect(page.getByText('these are the odd stroke indexes of eighteen')).toBeVisible()
  await page.getByRole('button', { name: /(Enter|Save) the course/ }).click()
  await expect(page.getByRole('link', { name: 'Moss End' })).toBeVisible()
  await page.goto(desk('new-day'))
  await page.getByLabel('Course', { exact: true }).selectOption({ label: 'Moss End' })
  await page.getByLabel('Holes', { exact: true }).selectOption('18')
  await expect(page.getByText(/Nine holes played twice: course rating 66.2, twice 33.1; slope 118/)).toBeVisible()
  await page.getByLabel('Name of the day').fill('Twice Round')
  await page.getByLabel('Value of prize 1 in pounds').fill('ten')
  await page.getByRole('button', { name: /^(Call the day|Create the golf day)$/ }).click()
  const why = 'Value of prize 1 in pounds: Write pounds, or pounds and pence: 20 or 12.50.'
  await expect(page.getByText(why).first()).toBeVisible()
  await page.getByLabel('Value of prize 1 in pounds').fill('10')
  await page.getByRole('button', { name: /^(Call the day|Create the golf day)$/ }).click()
  await expect(page.getByRole('navigation', { name: 'Golf days' })).toContainText('Day 10 of 10, Twice Round')
  await expect(page.getByText('Moss End, nine holes twice').first()).toBeVisible()
})

test('somebody without a tee on the day is named, and the others are entered without waiting', async () => {
  await page.getByRole('link', { name: 'Entries', exact: true }).click()
  const box = (name: string) => page.getByRole('checkbox', { name: new RegExp(`^${name}`) })
  await box('Emrys Coldbrook').check()
  await box('Freya Holmgarth').check()
  await page.getByRole('button', { name: 'Enter 2', exact: true }).click()
  await expect(page.getByText(/^Freya Holmgarth has no tee to play from: the day has no tee for women\./)).toBeVisible()
  await expect(page.getByRole('link', { name: 'Change the day, and choose their tees' })).toBeVisible()
  await page.getByRole('button', { name: 'Enter the other one, without Freya Holmgarth' }).click()
  await expect(page.getByText('Saved. 1 player entered.')).toBeVisible()
  await expect(box('Freya Holmgarth')).toBeChecked()
  await expect(page.getByRole('button', { name: 'Enter 1', exact: true })).toBeVisible()
})
