// Promise: a phone that opened its card once, before the first tee, needs no signal for the rest of the round; the browser
// may be killed in the middle of it, twice, and everything that the card said it holds is there when it is opened again,
// still without a signal. In the end the board has all of it, and the score command says the same of the day's file.
// A server that is killed, or stopped, while phones deliver keeps what it has acknowledged.
//
// Killed means SIGKILL of the browser's own process, on a profile that stays: what a phone does when its battery is flat.
// Without a signal means that there is no server: it is killed too, and starts again when the round is over. It is a
// second server on a copy of the book, so that the other stories are not disturbed.

import { existsSync, mkdtempSync, readlinkSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { DayBoard } from '@/lib/boards/views'
import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import type { CardId, EntryId, GroupId } from '@/lib/facts/ids'
import { type BenchServer, benchServer } from '@/scripts/bench-server'
import { OFFICERS, PASSWORD } from '@/seed/members'
import { contradictions, openedBook } from '../faults/book-check'
import { dice } from '../faults/dice'
import { Network, withNetwork } from '../faults/network'
import { SimPhone } from '../faults/sim-phone'
import { asId } from '../setup/ids'
import { quietGroups } from './quiet-groups'
import { scoreFile } from './score-file'
import { type BrowserContext, chromium, expect, type Page, test } from './walk'

interface Scored {
  readonly results: readonly { readonly standings: readonly Record<(typeof COMPARED)[number], unknown>[] }[]
}
const COMPARED = ['place', 'tied', 'playingHandicap', 'score', 'holesPlayed'] as const
const compared = (rows: readonly Record<(typeof COMPARED)[number], unknown>[]) =>
  rows.map((row) => COMPARED.map((key) => row[key]))

/** Never the same twice running, and within the five figures every player sees. */
const scoreOn = (card: PackCard, row: number, hole: number) => {
  const line = card.holes[hole - 1]
  return Math.max(1, (line?.par ?? 4) + (line?.strokes ?? 0) + ((hole + row * 2) % 4) - 1)
}

/** The process behind the profile: Chromium writes it into the lock it holds. */
const processOf = (profile: string) => Number(readlinkSync(join(profile, 'SingletonLock')).split('-').at(-1))

async function killed(profile: string): Promise<void> {
  const pid = processOf(profile)
  process.kill(pid, 'SIGKILL')
  await expect.poll(() => existsSync(`/proc/${pid}/exe`)).toBe(false)
}

async function enterHoles(page: Page, pack: CardPack, holes: readonly number[], held: number): Promise<number> {
  let count = held
  for (const hole of holes) {
    await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
    for (const [row, card] of pack.cards.entries()) {
      const radio = page
        .getByRole('radiogroup', { name: `${card.firstName} ${card.familyName}` })
        .locator(`input[value="${scoreOn(card, row, hole)}"]`)
      await radio.click()
      count++
    }
    await expect(page.getByRole('status').first()).toContainText(`${count} scores saved here`)
    await page.getByRole('navigation', { name: 'Holes' }).getByRole('button').last().click()
  }
  return count
}

const from = (first: number, last: number) => Array.from({ length: last - first + 1 }, (_, at) => first + at)

let folder: string
let file: string
let server: BenchServer

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'daybook-killed-'))
  file = join(folder, 'book.db')
  const seeded = new Database(process.env.BROWSER_BOOK ?? 'data/browser/book.db')
  seeded.exec(`VACUUM INTO '${file}'`)
  seeded.close()
  server = await benchServer(file)
})
test.afterAll(async () => {
  await server.stop()
  rmSync(folder, { recursive: true, force: true })
})

test('a round of four without a signal, through two deaths of the browser', async ({ browser }, info) => {
  test.setTimeout(480_000)
  const { link, society, day } = quietGroups(file).at(-1)!
  const profile = join(folder, 'phone')
  const { executablePath, args } = info.project.use.launchOptions ?? {}
  const open = (): Promise<BrowserContext> =>
    chromium.launchPersistentContext(profile, {
      executablePath,
      args,
      baseURL: server.base,
      viewport: { width: 360, height: 780 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
    })
  /** Opens the card from the phone's own copy: nothing can come from anywhere else. */
  const openAgain = async () => {
    const context = await open()
    const page = await context.newPage()
    const began = Date.now()
    await page.goto(`/card/${link}`)
    await expect(page.getByRole('navigation', { name: 'Holes' })).toBeVisible()
    return { context, page, took: Date.now() - began }
  }

  const first = await open()
  const page = await first.newPage()
  await page.goto(`/card/${link}`)
  const pack = (await (await page.request.get(`/api/group/${link}`)).json()) as CardPack
  await expect(page.getByText('The card is saved on this phone')).toBeVisible()
  await server.kill()
  await page.getByRole('button', { name: `${pack.cards[1]?.firstName} ${pack.cards[1]?.familyName}` }).click()

  let held = await enterHoles(page, pack, from(1, 7), 0)
  await killed(profile)

  const second = await openAgain()
  await test.step(`the card opens from the phone in ${second.took} ms after the first death`, async () => {
    await expect(second.page.getByRole('status').first()).toContainText(`${held} scores saved here`)
    held = await enterHoles(second.page, pack, from(8, 13), held)
  })
  await killed(profile)

  const third = await openAgain()
  await test.step(`and in ${third.took} ms after the second`, async () => {
    await expect(third.page.getByRole('status').first()).toContainText(`${held} scores saved here`)
    held = await enterHoles(third.page, pack, from(14, 18), held)
    expect(held).toBe(72)
  })

  await test.step('the signal is back: everything is received, once', async () => {
    server = await benchServer(file, server.port)
    // A phone tells its pages when the signal is back; here only the server was away.
    await third.page.evaluate(() => window.dispatchEvent(new Event('online')))
    await expect(third.page.getByRole('status').first()).toContainText('All sent', { timeout: 60_000 })
    const now = (await (await third.page.request.get(`/api/group/${link}`)).json()) as CardPack
    const holder = pack.cards[1]!.entryId
    for (const [row, card] of now.cards.entries()) {
      expect(Object.keys(card.written).map((key) => key.split('~')[0])).toEqual([holder])
      expect(Object.values(card.written)).toEqual([card.holes.map((hole) => scoreOn(card, row, hole.hole))])
    }
  })

  await test.step('the board is what the score command makes of the exported day', async () => {
    const desk = await (await browser.newContext({ baseURL: server.base })).newPage()
    await desk.goto(`/sign-in?next=/desk/${society}/days/${day}/returns`)
    await desk.getByLabel('E-mail').fill(OFFICERS[0].email)
    await desk.getByLabel('Password').fill(PASSWORD)
    await desk.getByRole('button', { name: 'Sign in', exact: true }).click()
    await desk.waitForURL((url) => url.pathname.endsWith('/returns'))
    const dayFile = join(folder, 'day.json')
    writeFileSync(dayFile, await (await desk.request.get(`/desk/${society}/days/${day}/export`)).body())
    const scored = JSON.parse(await scoreFile(dayFile)) as Scored
    const shown = (await (await desk.request.get(`/api/board/${society}/${day}`)).json()) as DayBoard
    expect(scored.results.map((one) => compared(one.standings))).toEqual(
      shown.competitions.map((one) => compared(one.rows)),
    )
    const mine = shown.competitions[0]!.rows.filter((row) =>
      row.entryIds.some((id) => pack.cards.some((card) => card.entryId === id)),
    )
    expect(mine.map((row) => row.holesPlayed)).toEqual([18, 18, 18, 18])
  })
  await third.context.close()
})

test('the built server, killed three times and then asked to stop while phones deliver, has lost nothing it acknowledged', async () => {
  test.setTimeout(480_000)
  const db = new Database(file, { readonly: true })
  const groups = db
    .prepare(`SELECT g."id" AS groupId, g."linkKey" AS link FROM "Group" g JOIN "Round" r ON r."id" = g."roundId"
      JOIN "Day" d ON d."id" = r."dayId" WHERE d."status" = 'in-play'`)
    .all() as { groupId: GroupId; link: string }[]
  const places = db.prepare(`SELECT p."entryId" AS entryId, c."id" AS cardId FROM "GroupPlace" p
    JOIN "Card" c ON c."entryId" = p."entryId" WHERE p."groupId" = ?`)
  const roll = dice(5)
  const phones = groups.map(({ groupId, link }, at) => {
    const cards = places.all(groupId) as { entryId: EntryId; cardId: CardId }[]
    const entryIds = cards.map((one) => one.entryId)
    const group = { groupId, link, entryIds, cardIds: cards.map((one) => one.cardId), markerIds: entryIds }
    return new SimPhone(asId(`killed-phone-${at}-of-many`), group, entryIds[0]!, 0)
  })
  db.close()
  let answered = 0
  for (let end = 0; end < 4; end++) {
    const network = new Network(server, roll, { left: 0, sigkill: true })
    network.good = true
    let over = false
    const busy = phones.map(async (phone) => {
      while (!over) {
        await phone.write(phone.group.cardIds[roll(phone.group.cardIds.length)]!, 1 + roll(18), 3 + roll(4))
        const sent = await withNetwork(network, () => phone.talk())
        if (sent !== 'busy' && sent.kind === 'empty') answered++
      }
    })
    const enough = answered + phones.length
    await expect.poll(() => answered, { intervals: [5], timeout: 60_000 }).toBeGreaterThan(enough)
    // Asked to stop, it answers what it has begun, and goes by itself.
    if (end === 3) expect(await server.stop()).toBe(128 + 15)
    else await server.kill()
    over = true
    await Promise.all(busy)
    const book = openedBook(file)
    const found = [...book.damage()]
    for (const phone of phones)
      found.push(
        ...contradictions(book.ofDevice(`${phone.group.groupId}.${phone.deviceId}`), phone.wrote, await phone.facts()),
      )
    book.close()
    expect(found).toEqual([])
    server = await benchServer(file, server.port)
  }
})
