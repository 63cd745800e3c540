// Promise: a day of each family of formats goes from the form to the public sheet by the screens' own buttons, and the sheet
// shows the figures worked by hand here. Every hole of the course is a par four, hole 1 has stroke index 1 and so on, the
// course rating is par and the slope 113, so that a course handicap is the handicap index (Rules of Handicapping 6.1a).
// Where nothing else is said everybody takes five on every hole: two points with a stroke, one without (Rules of Golf 21.1b).

import {
  button,
  everyHole,
  expectSheet,
  foundSociety,
  type Gross,
  handInOnPhone,
  importCourse,
  importMembers,
  phoneOn,
  send,
  TODAY,
} from './day-walk'
import { type OwnBook, startOwnBook } from './own-book'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial', timeout: 120_000 })

const SOCIETY = 'level-green'
const MEMBERS = (
  [
    ['Adam', 'Alder', 4],
    ['Bram', 'Birch', 6],
    ['Cole', 'Cedar', 8],
    ['Dirk', 'Dogwood', 10],
    ['Evan', 'Elder', 12],
    ['Finn', 'Firth', 14],
    ['Glyn', 'Gorse', 16],
    ['Hugh', 'Heather', 19],
  ] as const
).map(([first, family, index]) => ({ first, family, index }))

let book: OwnBook
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  book = await startOwnBook('empty')
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 }, baseURL: book.origin })).newPage()
  await foundSociety(page, book.firstLink, 'Level Green', SOCIETY)
  await importMembers(page, MEMBERS)
  await page.goto(`/desk/${SOCIETY}/courses`)
  const inOrder = Array.from({ length: 18 }, (_, at) => at + 1)
  await importCourse(page, {
    name: 'Level Green',
    pars: inOrder.map(() => 4),
    indexes: inOrder,
    tees: [
      ['Yellow, men', '72.0', '113'],
      ['Red, women', '72.0', '113'],
    ],
  })
})
test.afterAll(async () => {
  await page?.context().close()
  await book?.stop()
})

interface Asked {
  readonly format: string
  /** Label of what a missing player counts as. */
  readonly missing?: string
  /** A format of the society's own: its name, and its choices by their labels. */
  readonly own?: { readonly name: string; readonly choices: Readonly<Record<string, string>> }
}

interface Called {
  readonly name: string
  /** Ids of the formats, with what else is chosen. */
  readonly formats: readonly (string | Asked)[]
  readonly players: number
  readonly groupsOf?: 'two' | 'three' | 'four'
  readonly shotgun?: true
}

interface Out {
  /** Room of the day at the desk. */
  readonly room: string
  readonly links: readonly string[]
}

/** The form, the entries, the freeze, the draw with the lowest handicaps first, the start sheet. */
async function startSheetOf({ name, formats, players, groupsOf = 'four', shotgun }: Called): Promise<Out> {
  await page.goto(`/desk/${SOCIETY}/new-day`)
  await page.getByLabel('Name of the day').fill(name)
  await page.getByLabel('Date', { exact: true }).fill(TODAY)
  // The form begins with the terms of the last day.
  await page.getByLabel('Start', { exact: true }).selectOption(shotgun ? 'shotgun' : 'tee-times')
  await page.getByLabel('Players expected').fill(String(players))
  const competitions = page.getByRole('group', { name: /^Competition \d/ })
  while ((await competitions.count()) > 1)
    await button(page, /^Leave .* out$/)
      .last()
      .click()
  for (const [at, one] of formats.entries()) {
    if (at > 0) await button(page, 'Add a competition').click()
    const { format, missing, own }: Asked = typeof one === 'string' ? { format: one } : one
    const fields = competitions.nth(at)
    await fields.getByLabel('Format', { exact: true }).selectOption(format)
    if (own) await fields.getByLabel('What you call it').fill(own.name)
    for (const [label, choice] of Object.entries(own?.choices ?? {}))
      await fields.getByLabel(label, { exact: true }).selectOption({ label: choice })
    if (missing === undefined) continue
    await fields.locator('details.more-terms summary').first().click()
    await fields.getByLabel('A player missing from a side').selectOption({ label: missing })
  }
  await button(page, 'Call the day').click()
  await page.getByRole('link', { name: 'To the entries', exact: true }).click()
  const room = new URL(page.url()).pathname.replace(/\/entries$/, '')
  for (const { first, family } of MEMBERS.slice(0, players))
    await page.getByRole('checkbox', { name: new RegExp(`^${first} ${family}`) }).check()
  await button(page, `Enter ${players}`).click()
  await page.getByRole('link', { name: `Next: freeze ${players} handicaps` }).click()
  await button(page, `Freeze ${players} handicaps`).click()
  await page.getByRole('link', { name: 'Next: make the draw' }).click()
  await page.getByRole('radio', { name: 'Grouped by handicap' }).check()
  await page.getByLabel('Groups of', { exact: true }).selectOption({ label: groupsOf })
  await button(page, `Draw ${players} players`).click()
  return { room, links: await publishStart() }
}

/** On the draw: the start sheet goes out, and each group has the link to its card. */
async function publishStart(): Promise<readonly string[]> {
  await button(page, 'Publish the start sheet').click()
  const open = page.getByRole('link', { name: /^Open the card of group \d/ })
  await expect(open.first()).toBeVisible()
  return open.evaluateAll((all) => all.map((one) => one.getAttribute('href')!))
}

/** Accepted, closed and published by the desk; the page then shows the sheet as everybody reads it. */
async function publish({ room }: Out, cards: number): Promise<void> {
  await page.goto(`${room}/returns`)
  await button(page, /handed in, nothing open: accept/).click()
  await expect(page.locator('.big-of .fig')).toHaveText(String(cards))
  await page.goto(`${room}/result`)
  await button(page, 'Close the day').click()
  await button(page, 'Publish sheet 1').click()
  await expect(page.getByRole('heading', { name: 'Sheet 1 is published', exact: true })).toBeVisible()
  await page.goto(`${room.replace('/desk', '')}/result`)
}

test('foursomes of four pairs: half of the two handicaps together', async ({ browser }) => {
  const out = await startSheetOf({ name: 'Foursomes Day', formats: ['foursomes-medal'], players: 8 })
  // Rules of Golf 22; Rules of Handicapping, Appendix C: 50 % of the combined course handicaps. 4 + 6: 5, 8 + 10: 9, 12 + 14:
  // 13, 16 + 19: 17.5, rounded to 18. All fives are 90; gross 80, 81, 84 and 94 with so many fours or sixes.
  const totals: Readonly<Record<string, number>> = { Alder: 80, Cedar: 81, Elder: 84, Gorse: 94 }
  const gross: Gross = (family, hole) => {
    const over = (totals[family] ?? 90) - 90
    return hole <= Math.abs(over) ? 5 + Math.sign(over) : 5
  }
  await send(page, out.links[0]!, gross, (hole) => hole < 18, false)
  await send(page, out.links[1]!, gross, everyHole, true)
  // On hole 18 neither pair has a stroke: five is one over.
  await handInOnPhone(browser, book.origin, out.links[0]!, 18, [3, 3])
  await publish(out, 4)
  await expectSheet(page, 'Foursomes, medal', [
    ['71', 'Elder and Firth'],
    ['72', 'Cedar and Dogwood'],
    ['75', 'Alder and Birch'],
    ['76', 'Gorse and Heather'],
  ])
})

test('greensomes of four pairs: 60 per cent of the lower handicap and 40 of the higher', async ({ browser }) => {
  const out = await startSheetOf({ name: 'Greensomes Day', formats: ['greensomes-stableford'], players: 8 })
  // Rules of Handicapping, Appendix C. 4 and 6: 2.4 + 2.4 = 4.8, 5. 8 and 10: 4.8 + 4 = 8.8, 9. 12 and 14: 7.2 + 5.6 = 12.8, 13.
  // 16 and 19: 9.6 + 7.6 = 17.2, 17, where foursomes have 18. All fives are 18 points and one for each stroke.
  const fives: Gross = () => 5
  await send(page, out.links[0]!, fives, (hole) => hole < 18, false)
  await send(page, out.links[1]!, fives, everyHole, true)
  await handInOnPhone(browser, book.origin, out.links[0]!, 18, [3, 3])
  await publish(out, 4)
  await expectSheet(page, 'Greensomes, Stableford', [
    ['35', 'Gorse and Heather'],
    ['31', 'Elder and Firth'],
    ['27', 'Cedar and Dogwood'],
    ['23', 'Alder and Birch'],
  ])
})

test('a format of the society’s own, and two rounds added up', async ({ browser }) => {
  const own = {
    name: 'Eagles count',
    choices: {
      'Who makes one entry': 'Sides of two',
      'The ball': 'An own ball each',
      'Strokes received': 'Each player’s handicap',
      'What a hole is worth': 'Modified points: 8, 5, 2, 0, −1, −3',
      'Which scores of the side count': 'The best score',
    },
  }
  const formats = ['stableford', { format: 'own-format', own }]
  const first = await startSheetOf({ name: 'Two Rounds', formats, players: 4 })
  await page.goto(`${first.room}/matches`)
  await page.getByText('Call a further round from this day').click()
  await page.getByRole('form', { name: 'Call a further round' }).getByRole('button').click()
  await expect(page).toHaveURL(/second-round/)
  const second = new URL(page.url()).pathname

  // Rules of Golf 21.1b; singles Stableford 95 % (Rules of Handicapping, Appendix C): 3.8, 5.7, 7.6 and 9.5, so 4, 6, 8 and 10.
  // Alder makes three on holes 1 to 4 and Cedar on 1 and 2: two under with the stroke, four points. Alder 16 + 14, Birch
  // 12 + 12, Cedar 8 + 12 + 10, Dogwood 20 + 8. The own format has no published figure and the full handicaps, the same
  // strokes: an eagle is worth 5, a par 0, one over −1. Alder and Birch 20 − 12, as neither has a stroke from the 7th on;
  // Cedar and Dogwood 10 − 8.
  const eagles: Gross = (family, hole) =>
    (family === 'Alder' && hole <= 4) || (family === 'Cedar' && hole <= 2) ? 3 : 5
  await send(page, first.links[0]!, eagles, everyHole, true)
  await publish(first, 4)
  await expectSheet(page, 'Eagles count', [
    ['8', 'Alder and Birch'],
    ['2', 'Cedar and Dogwood'],
  ])
  await expectSheet(page, 'Stableford', [
    ['28', 'Dirk Dogwood'],
    ['24', 'Bram Birch'],
  ])

  await page.goto(`${second}/handicaps`)
  await button(page, 'Freeze 4 handicaps').click()
  await page.goto(`${second}/draw`)
  const [link] = await publishStart()
  // All fives, 22, 24, 26 and 28, but for a four of Cedar’s on the 18th, one point more: with the first round 52, 48, 57 and 56.
  await send(
    page,
    link!,
    () => 5,
    (hole) => hole < 18,
    false,
  )
  await handInOnPhone(browser, book.origin, link!, 18, [3, 3, 2, 3])
  await publish({ room: second, links: [link!] }, 4)
  await expectSheet(page, 'Stableford', [
    ['57', 'Cole Cedar'],
    ['56', 'Dirk Dogwood'],
    ['52', 'Adam Alder'],
    ['48', 'Bram Birch'],
  ])
})

/** At the smallest size of a phone the keys of the fourth player stand above the foot, whatever the head says. */
async function expectFourInSight(phone: Page): Promise<void> {
  const fourth = (await phone.locator('.c-row .c-pick').last().boundingBox())!
  const foot = (await phone.locator('.c-foot').boundingBox())!
  expect(fourth.y + fourth.height).toBeLessThanOrEqual(foot.y)
}

test('a scramble of four, one side of three', async ({ browser }) => {
  const out = await startSheetOf({ name: 'Scramble Day', formats: ['scramble-4'], players: 7 })
  // Rules of Handicapping, Appendix C: four players 25, 20, 15 and 10 % of the course handicaps, lowest first: 1 + 1.2 + 1.2 + 1
  // = 4.4, rounded to 4. Three players 30, 20 and 10 %: 3.6 + 2.8 + 1.6 = 8. Both sides go round in 66.
  const gross: Gross = (_, hole) => (hole <= 6 ? 3 : 4)
  await send(page, out.links[0]!, gross, everyHole, true)
  await send(page, out.links[1]!, gross, (hole) => hole < 18, false)
  await handInOnPhone(browser, book.origin, out.links[1]!, 18, [2])
  await publish(out, 2)
  await expectSheet(page, 'Scramble of four', [
    ['58', 'Elder, Firth and Gorse'],
    ['62', 'Alder, Birch, Cedar and Dogwood'],
  ])
})

test('best two of four, yellow ball and waltz in a shotgun, a team of three', async ({ browser }) => {
  const again = { format: 'best-2-of-4-stableford', missing: 'The best of the others again' }
  const out = await startSheetOf({
    name: 'Team Day',
    formats: [again, 'yellow-ball', 'waltz'],
    players: 7,
    shotgun: true,
  })
  // 85 % in all three: Rules of Handicapping, Appendix C, for the best two of four; the others have no source. 4, 6, 8 and 10
  // give 3, 5, 7 and 9 strokes; 12, 14 and 16 give 10, 12 and 14. Elder makes four on the 18th: two points without a stroke.
  const gross: Gross = (family, hole) => (family === 'Elder' && hole === 18 ? 4 : 5)
  // Three competitions with words at the head of the hole: at the smallest size the fourth player still stands above the foot.
  const small = await phoneOn(browser, book.origin, out.links[0]!)
  await small.getByRole('list').getByRole('button').first().click()
  await small.goto(`${new URL(small.url()).pathname}#hole-2`)
  await expect(small.getByText('Waltz: the best two', { exact: false })).toBeVisible()
  await expectFourInSight(small)
  await small.context().close()
  await send(page, out.links[0]!, gross, everyHole, true)
  // The second group starts on the second hole and ends on the first, where all three have a stroke.
  await send(page, out.links[1]!, gross, (hole) => hole !== 1, false)
  await handInOnPhone(browser, book.origin, out.links[1]!, 1, [2, 2, 2], async (phone) => {
    // Lost on the 17th: that hole, the 18th and the first are played without it.
    await phone.goto(`${new URL(phone.url()).pathname}#hole-17`)
    await expect(phone.getByRole('heading', { name: 'Hole 17', exact: true })).toBeVisible()
    await button(phone, 'Lost on this hole').click()
    await expect(phone.getByText(/lost here/)).toBeVisible()
    await expect(phone.getByText('Yellow ball: only the best other', { exact: false })).toBeVisible()
    await expect(phone.locator('.c-sent')).toContainText('All sent')
  })
  await publish(out, 7)
  const [four, three] = ['Alder, Birch, Cedar and Dogwood', 'Elder, Firth and Gorse'] as const
  // Four: two strokes among the best two on holes 1 to 7 (4 points), one on 8 and 9 (3), none on 10 to 18 (2): 28 + 6 + 18.
  // Three, the best counted twice: 4 points wherever somebody has a stroke, holes 1 to 14, then 2, on the 18th 4: 56 + 6 + 4.
  await expectSheet(page, 'Best 2 of 4, Stableford', [
    ['66', three],
    ['52', four],
  ])
  // The ball goes round by the number of the hole. Four: the named scores 6 each, the best of the others 2 on holes 1 to 7 and 9,
  // else 1: 24 + 26. Three: named 10 each less 1, 1 and 2 on the 17th, the 18th and the first, which came after the loss; the
  // best of the others 2 on holes 1 to 14 and 18, else 1: 26 + 33.
  await expectSheet(page, 'Yellow ball', [
    ['59', three],
    ['50', four],
  ])
  // One score on holes 1, 4, 7 …, two on 2, 5, 8 …, three on 3, 6, 9 …: 9 + 17 + 24, and 11 + 21 + 30.
  await expectSheet(page, 'Waltz', [
    ['62', three],
    ['50', four],
  ])
})

test('skins and split sixes in groups of three', async ({ browser }) => {
  const out = await startSheetOf({
    name: 'Games Day',
    formats: ['skins', 'split-sixes'],
    players: 6,
    groupsOf: 'three',
  })
  // Common practice, no source; strokes off the lowest of the group as in a match: 0, 2 and 4 in both. Alder makes four on the
  // 18th, Elder on the 10th.
  const gross: Gross = (family, hole) =>
    (family === 'Alder' && hole === 18) || (family === 'Elder' && hole === 10) ? 4 : 5
  await send(page, out.links[0]!, gross, (hole) => hole < 18, false)
  await send(page, out.links[1]!, gross, everyHole, true)
  await handInOnPhone(browser, book.origin, out.links[0]!, 18, [2, 3, 3], async (phone) => {
    const address = new URL(phone.url()).pathname
    await phone.goto(`${address}#hole-18`)
    await expect(phone.getByText('This hole is worth 14 skins: thirteen were carried')).toBeVisible()
    await phone.goto(`${address}#cards`)
    await expect(phone.getByRole('region', { name: 'Skins, after seventeen holes' })).toContainText(/Cedar: 4 skins/)
  })
  await publish(out, 6)
  // First group: holes 1 and 2 tied by Birch and Cedar and carried, Cedar alone takes three on the 3rd and one on the 4th; 5 to
  // 17 are tied by all, and Alder takes fourteen on the 18th. Second: Firth three and one in the same way; 5 to 9 are carried,
  // Elder takes six on the 10th; what is carried after it nobody wins.
  await expectSheet(page, 'Skins', [
    ['14', 'Adam Alder'],
    ['4', 'Cole Cedar'],
    ['0', 'Bram Birch'],
    ['6', 'Evan Elder'],
    ['4', 'Finn Firth'],
    ['0', 'Dirk Dogwood'],
  ])
  // First group: on 1 and 2 two share 4 + 2; on 3 and 4 Cedar 4, the others share 2; on 5 to 17 all share 6; on the 18th Alder 4:
  // 6 + 8 + 26 + 1, 6 + 2 + 26 + 1, 0 + 2 + 26 + 4. Second, with the 10th as Elder’s: 6 + 8 + 26 + 1, 6 + 2 + 26 + 4, 0 + 2 + 26 + 1.
  await expectSheet(page, 'Split sixes', [
    ['41', 'Cole Cedar'],
    ['35', 'Bram Birch'],
    ['32', 'Adam Alder'],
    ['41', 'Finn Firth'],
    ['38', 'Evan Elder'],
    ['29', 'Dirk Dogwood'],
  ])
})

test('a singles match and a four-ball match on the same cards', async ({ browser }) => {
  const out = await startSheetOf({ name: 'Match Play Day', formats: ['match', 'four-ball-match'], players: 4 })
  // Alder makes four on holes 5 to 14; nobody else does anywhere.
  const gross: Gross = (family, hole) => (family === 'Alder' && hole >= 5 && hole <= 14 ? 4 : 5)
  await send(page, out.links[0]!, gross, (hole) => hole < 15, false)
  await handInOnPhone(browser, book.origin, out.links[0]!, 15, [null, 3, null, 3], expectFourInSight)
  await publish(out, 4)
  // Nobody meets the own partner: Alder plays Cedar, Birch plays Dogwood. Rules of Golf 3.2; Rules of Handicapping, Appendix C:
  // 100 % of the difference in singles. Cedar has four strokes and wins holes 1 to 4, Alder wins 5 to 14: six up with four to
  // play. Dogwood has four, wins 1 to 4, the rest is halved: four up with three to play.
  const singles = page.getByRole('region', { name: 'Singles match', exact: true })
  const result = (of: typeof singles, match: string) =>
    of.getByRole('row').filter({ hasText: match }).getByRole('cell').last()
  await expect(result(singles, 'Alder against')).toContainText(/Alder\D*6\D+4/)
  await expect(result(singles, 'Birch against')).toContainText(/Dogwood\D*4\D+3/)
  // Rules of Golf 23; Appendix C: 90 % in four-ball match play, off the lowest: 0, 2, 4 and 5 strokes. Cedar and Dogwood win the
  // 3rd and the 4th, Alder wins 6 to 13: six up with five to play.
  const fourBall = page.getByRole('region', { name: 'Four-ball match', exact: true })
  await expect(result(fourBall, 'against')).toContainText(/Alder and Birch\D*6\D+5/)
})
