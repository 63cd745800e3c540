// Promise: what is typed at the desk and not saved is never passed over. The bar says it, the title and the tab say it,
// another button of the page waits for it, leaving the page asks once, and a draw moved by hand is what is published.
// Every form of every page of the desk takes part.

import Database from 'better-sqlite3'
import { type OwnBook, signInAtDesk, startOwnBook } from './own-book'
import { type Dialog, expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial' })

let book: OwnBook
let page: Page
/** A day with players that is still ahead. */
let day = ''

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('demo')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  await signInAtDesk(page, book.origin)
  day = `/desk/fernbrake/days/${ahead()}`
})

test.afterAll(async () => {
  await page.context().close()
  await book.stop()
})

function ahead(): string {
  const read = new Database(book.file, { readonly: true })
  try {
    const found = read
      .prepare(
        `SELECT d."slug" AS slug FROM "Day" d JOIN "Entry" e ON e."dayId" = d."id"
          WHERE d."status" = 'called' GROUP BY d."id" ORDER BY count(*) DESC LIMIT 1`,
      )
      .get() as { slug: string }
    return found.slug
  } finally {
    read.close()
  }
}

const bar = () => page.getByRole('region', { name: 'Not saved' })
const question = () => page.getByRole('dialog', { name: 'Leave without saving?' })
const groupOf = (number: number) => page.getByRole('region', { name: new RegExp(`^Group ${number},`) })

/** The page, and the script that makes its forms live. */
const go = async (path: string) => {
  await page.goto(`${book.origin}${path}`)
  await ready()
}

const ready = () =>
  page.waitForFunction(() =>
    [...document.querySelectorAll('form')].every((form) => Object.keys(form).some((key) => key.startsWith('__react'))),
  )

/** Moves the first player of the first group down a group; the name as it is on the screen. */
async function moveOne(): Promise<string> {
  const mover = groupOf(1).getByRole('button').first()
  const name = (await mover.getAttribute('aria-label'))?.split(',')[0] ?? ''
  await mover.focus()
  await page.keyboard.press('ArrowDown')
  await expect(groupOf(2).getByRole('button', { name })).toBeVisible()
  return name
}

test('a move that is not saved is said, and can be taken back', async () => {
  await go(`${day}/draw`)
  if ((await groupOf(1).count()) === 0) {
    await page.getByRole('button', { name: /^Draw \d+ players/ }).click()
    await expect(groupOf(1)).toBeVisible()
  }
  const name = await moveOne()
  await expect(bar()).toContainText(name)
  await expect(bar()).toContainText('Members see no start sheet yet.')
  await expect(page).toHaveTitle(/^Not saved: /)
  await expect(page.getByRole('link', { name: 'Draw · not saved' })).toBeVisible()
  await expect(page.getByText('Not everything here is saved.')).toBeVisible()
  await expect(groupOf(2).getByRole('button', { name: new RegExp(`${name}`) })).toContainText('was ')

  await bar().getByRole('button', { name: 'Undo' }).click()
  await expect(groupOf(1).getByRole('button', { name })).toBeVisible()
  await expect(bar()).toHaveCount(0)
  await moveOne()
  await bar().getByRole('button', { name: 'Back to what was saved' }).click()
  await expect(groupOf(1).getByRole('button', { name })).toBeVisible()
  await expect(bar()).toHaveCount(0)
  await expect(page).not.toHaveTitle(/Not saved/)
})

test('following a link, Back and signing out ask once in plain words', async () => {
  await go(day)
  await page.getByRole('link', { name: 'Draw', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Draw', exact: true })).toBeVisible()
  const name = await moveOne()
  await page.getByRole('link', { name: 'Handicaps', exact: true }).click()
  await expect(question()).toContainText(name)
  await question().getByRole('button', { name: 'Stay on this page' }).click()
  await expect(question()).toBeHidden()
  await expect(groupOf(2).getByRole('button', { name })).toBeVisible()

  await page.goBack()
  await expect(question()).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(question()).toBeHidden()
  await expect(page).toHaveURL(/\/draw$/)
  await expect(groupOf(2).getByRole('button', { name })).toBeVisible()

  await page.getByRole('button', { name: 'Sign out' }).click()
  await expect(question()).toBeVisible()
  await question().getByRole('button', { name: 'Stay on this page' }).click()

  await page.goBack()
  await question().getByRole('button', { name: 'Leave without saving' }).click()
  await expect(page).toHaveURL(new RegExp(`${day}$`))
  await expect(bar()).toHaveCount(0)

  await page.getByRole('link', { name: 'Draw', exact: true }).click()
  await expect(groupOf(1).getByRole('button', { name })).toBeVisible()
  await moveOne()
  await page.getByRole('link', { name: 'Handicaps', exact: true }).click()
  await question().getByRole('button', { name: 'Leave without saving' }).click()
  await expect(page.getByRole('heading', { name: 'Handicaps', exact: true })).toBeVisible()
})

test('closing the tab is asked by the browser, and not when all is saved', async () => {
  await go(`${day}/draw`)
  await moveOne()
  await expect(bar()).toBeVisible()
  const asked: string[] = []
  const onDialog = async (dialog: Dialog) => {
    asked.push(dialog.type())
    await dialog.accept()
  }
  page.on('dialog', onDialog)
  await page.reload()
  await ready()
  expect(asked).toEqual(['beforeunload'])
  await page.reload()
  await ready()
  expect(asked).toEqual(['beforeunload'])
  page.off('dialog', onDialog)
})

test('saved from the bar, the page is clean and Back leads away at once', async () => {
  await go(day)
  await page.getByRole('link', { name: 'Draw', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Draw', exact: true })).toBeVisible()
  const name = await moveOne()
  await bar().getByRole('button', { name: 'Save', exact: true }).click()
  await expect(bar()).toHaveCount(0)
  await page.goBack()
  await expect(page).toHaveURL(new RegExp(`${day}$`))
  await go(`${day}/draw`)
  await expect(groupOf(2).getByRole('button', { name })).toBeVisible()
})

test('what is moved on the screen is what is published: saved and published by one button', async () => {
  await go(`${day}/handicaps`)
  await page.getByRole('button', { name: /^Freeze \d+ handicaps$/ }).click()
  await page.getByRole('button', { name: /^Freeze \d+ handicaps with this allowance$/ }).click()
  await expect(page.getByText(/^Frozen/)).toBeVisible()
  await go(`${day}/draw`)
  const name = await moveOne()
  await expect(page.getByRole('button', { name: 'Publish the start sheet', exact: true })).toHaveCount(0)
  // What only prepares waits for it.
  await page.getByText('Draw again').click()
  await expect(page.getByRole('button', { name: /again: save first$/ })).toBeVisible()
  await page.getByRole('button', { name: 'Save, then: Publish the start sheet' }).click()
  await expect(page.getByRole('link', { name: 'Open the card of group 1' })).toBeVisible()
  await expect(bar()).toHaveCount(0)
  await go(`${day.replace('/desk', '')}/start`)
  const sheet = await page.locator('main').textContent()
  await go(`${day}/draw`)
  await expect(groupOf(2).getByRole('button', { name })).toBeVisible()
  expect(sheet).toContain(name)

  await moveOne()
  await expect(bar()).toContainText('Members still see the start sheet of')
  await expect(page.getByRole('button', { name: /^New link and code for group 1: save first/ })).toBeVisible()
  await bar().getByRole('button', { name: 'Back to what was saved' }).click()
})

const chooseFile = (name: string, text: string) =>
  page
    .getByLabel('Spreadsheet, CSV or XLSX')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text, 'utf8') })

test('leaving an import with its choices asks once, and putting a row right does not', async () => {
  await go('/desk/fernbrake/members')
  await page.getByRole('link', { name: 'Import a spreadsheet' }).click()
  await expect(page.getByRole('heading', { name: 'Import members' })).toBeVisible()
  await expect(bar()).toHaveCount(0)
  await chooseFile('late.csv', 'Name,M/F,Index\nMoss Tarrant,M,9.0\nFern Tarrant,F,eight\n')
  await expect(bar()).toContainText('Not done yet: Import members. late.csv')
  await page.getByLabel('Import row 2, Moss Tarrant').click()
  await expect(page.getByText('Row 2, “Moss Tarrant”: left out by you.')).toBeVisible()
  await page.getByLabel('Handicap, row 3').fill('8.0')
  await page.getByRole('button', { name: 'Put right' }).click()
  await expect(page.getByLabel('Handicap, row 3')).toHaveCount(0)
  await expect(question()).toBeHidden()

  await page.getByRole('link', { name: 'Courses', exact: true }).click()
  await expect(question()).toContainText('late.csv')
  await question().getByRole('button', { name: 'Stay on this page' }).click()
  await expect(page.getByText('Row 2, “Moss Tarrant”: left out by you.')).toBeVisible()
  await page.goBack()
  await question().getByRole('button', { name: 'Stay on this page' }).click()
  await bar().getByRole('button', { name: 'Show it' }).click()
  await expect(page.getByRole('button', { name: /^Import one person/ })).toBeFocused()
  await page.getByRole('link', { name: 'Courses', exact: true }).click()
  await question().getByRole('button', { name: 'Leave without saving' }).click()
  await expect(page.getByRole('heading', { name: 'Courses', exact: true })).toBeVisible()
  await expect(bar()).toHaveCount(0)

  await page.getByRole('link', { name: 'Import a card' }).click()
  await chooseFile('card.csv', 'Thistle Links\nHole;1;2;3\nPar;4;3;5\n')
  await expect(bar()).toContainText('Import a course card. card.csv')
  await bar().getByRole('button', { name: 'Clear' }).click()
  await expect(bar()).toHaveCount(0)
  await expect(page.getByLabel('Spreadsheet, CSV or XLSX')).toHaveValue('')
  await page.getByRole('link', { name: 'Members', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Members', exact: true })).toBeVisible()
})

interface FormSeen {
  readonly label: string
  /** What went wrong; empty when the change was said and could be taken back. */
  readonly wrong: string
}

/**
 * Every form of the page in turn: the first thing in it that can be changed is changed, the bar says so, and the bar's own
 * button takes it back. In the page itself, so that thirty pages of forms take no minutes.
 */
async function changeEveryForm(): Promise<readonly FormSeen[]> {
  return page.evaluate(async () => {
    const bar = () => document.querySelector('section[aria-label="Not saved"]')
    const until = async (is: () => boolean) => {
      for (const end = performance.now() + 5_000; performance.now() < end; ) {
        if (is()) return true
        await new Promise((done) => setTimeout(done, 20))
      }
      return false
    }
    // By the property of the class, so that React hears of it.
    const set = (control: HTMLInputElement | HTMLSelectElement, value: string, event: string) => {
      const of = control instanceof HTMLSelectElement ? HTMLSelectElement.prototype : HTMLInputElement.prototype
      Object.getOwnPropertyDescriptor(of, 'value')?.set?.call(control, value)
      control.dispatchEvent(new Event(event, { bubbles: true }))
      return true
    }
    const changed = (form: HTMLFormElement): boolean => {
      for (let fold = form.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
        fold.open = true
      for (const fold of form.querySelectorAll('details')) fold.open = true
      for (const control of form.elements) {
        if (control instanceof HTMLSelectElement && control.name && control.options.length > 1) {
          const other = [...control.options].find((one) => one.value !== control.value)
          if (other) return set(control, other.value, 'change')
        }
        if (!(control instanceof HTMLInputElement) || !control.name || control.readOnly || control.disabled) continue
        if (control.type === 'checkbox' || (control.type === 'radio' && !control.checked)) {
          control.click()
          return true
        }
        if (!['text', 'email', 'tel', 'password', 'number', 'search'].includes(control.type)) continue
        // A field for figures takes nothing else: a word in it is no change.
        const figures = control.type === 'number' || control.inputMode === 'numeric'
        return set(control, figures ? (control.value === '7' ? '8' : '7') : `${control.value}x`, 'input')
      }
      return false
    }
    const seen: { label: string; wrong: string }[] = []
    const forms = () => document.querySelectorAll<HTMLFormElement>('form[data-desk-form]')
    for (let at = 0; at < forms().length; at++) {
      const form = forms()[at]!
      const label = form.getAttribute('aria-label') ?? ''
      if (!changed(form)) continue
      if (!(await until(() => bar() !== null && document.title.startsWith('Not saved: ')))) {
        seen.push({ label, wrong: 'says nothing' })
        continue
      }
      const back = [...(bar()?.querySelectorAll('button') ?? [])].find((button) =>
        /^(Back to what was saved|Clear)$/.test(button.textContent?.trim() ?? ''),
      )
      back?.click()
      const gone = await until(() => bar() === null)
      seen.push({ label, wrong: gone ? '' : 'does not go back' })
      if (!gone) break
    }
    return seen
  })
}

test('every form of the desk takes part', async () => {
  test.setTimeout(240_000)
  const desk = '/desk/fernbrake'
  const rooms = ['', '/entries', '/handicaps', '/draw', '/matches', '/course', '/returns', '/result', '/change']
  const live = liveDay()
  const pages = [
    ...rooms.map((room) => `${day}${room}`),
    ...rooms.map((room) => `${desk}/days/${live}${room}`),
    desk,
    `${desk}/new-day`,
    `${desk}/members`,
    `${desk}/members/new`,
    `${desk}/members/${somebody()}`,
    `${desk}/courses`,
    `${desk}/courses/new`,
    `${desk}/officers`,
    `${desk}/record`,
    `${desk}/privacy`,
    `${desk}/book`,
    '/desk/account',
  ]
  const silent: string[] = []
  const opened: string[] = []
  page.on('request', (request) => {
    if (request.isNavigationRequest()) opened.push(`${request.method()} ${new URL(request.url()).pathname}`)
  })
  let changed = 0
  for (const path of pages) {
    opened.length = 0
    await go(path)
    const outside = await page
      .locator('form:not([data-desk-form])')
      .evaluateAll((forms) => forms.map((form) => form.getAttribute('aria-label') ?? form.textContent?.trim() ?? ''))
    // Two forms hold nothing of the officer's: leaving the desk, and choosing what the record shows.
    silent.push(
      ...outside
        .filter((label) => !['Sign out', 'Choose from the record'].includes(label))
        .map((one) => `${path}: ${one}`),
    )
    const seen = await changeEveryForm().catch((cause: Error) => {
      throw new Error(`${path}: ${cause.message}. Pages opened: ${opened.join(', ')}`)
    })
    changed += seen.length
    silent.push(...seen.flatMap(({ label, wrong }) => (wrong === '' ? [] : [`${path}: ${label} ${wrong}`])))
  }
  expect(silent).toEqual([])
  expect(changed).toBeGreaterThan(15)
})

function liveDay(): string {
  const read = new Database(book.file, { readonly: true })
  try {
    return (read.prepare(`SELECT "slug" FROM "Day" WHERE "status" = 'in-play' LIMIT 1`).get() as { slug: string }).slug
  } finally {
    read.close()
  }
}

function somebody(): string {
  const read = new Database(book.file, { readonly: true })
  try {
    return (read.prepare(`SELECT "id" FROM "Person" WHERE "kind" = 'member' LIMIT 1`).get() as { id: string }).id
  } finally {
    read.close()
  }
}
