// Promise: while the disk is full, or the book was moved away under its server, nothing is acknowledged that is not in the
// book its address names; a phone is told why; boards can still be read; and readiness says so.
import { copyFileSync, renameSync } from 'node:fs'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { POST } from '@/app/api/group/[link]/facts/route'
import type { DeliveryAnswer } from '@/lib/facts/score-fact'
import { dayBoard } from '@/lib/society/read-board'
import { book, bookFile } from '@/lib/store/client'
import { notReady } from '@/lib/store/ready'
import { type DayInPlay, dayInPlay, got } from '../society/scoring/day-in-play'

let day: DayInPlay
let link: string
beforeAll(async () => {
  day = await dayInPlay()
  link = (await day.record()).groups[0]!.linkKey
})
afterAll(() => day.close())

let seq = 0
async function deliver(hole: number): Promise<{ status: number; body: DeliveryAnswer & { sentence?: string } }> {
  const [entryId] = day.players(1)
  const fact = {
    kind: 'score',
    seq: seq + 1,
    cardId: day.cardOf(entryId!),
    writer: entryId,
    writtenAt: '2031-06-14T10:00:00Z',
    hole,
    score: 5,
  }
  const answer = await POST(
    new Request(`http://days.example.org/api/group/${link}/facts`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ deviceId: 'phone-of-the-full-disk', facts: [fact] }),
    }),
    { params: Promise.resolve({ link }) },
  )
  if (answer.status === 200) seq += 1
  return { status: answer.status, body: (await answer.json()) as DeliveryAnswer }
}

const inBook = (file: string) => {
  const read = new Database(file, { readonly: true })
  const many = read
    .prepare(`SELECT count(*) FROM "ScoreFact" WHERE "deviceId" LIKE '%phone-of-the-full-disk'`)
    .pluck()
    .get()
  read.close()
  return many as number
}

describe('a full disk', () => {
  it('acknowledges nothing that is not saved, says why, lets boards be read, and takes the rest with space again', async () => {
    await deliver(1)
    const [{ page_count: pages } = { page_count: 0n }] = await book().$queryRaw<
      { page_count: bigint }[]
    >`PRAGMA page_count`
    await book().$queryRawUnsafe(`PRAGMA max_page_count = ${Number(pages)}`)
    let last = { status: 200, body: {} as { sentence?: string } }
    for (let tries = 0; tries < 4_000 && last.status === 200; tries++) last = await deliver((tries % 18) + 1)
    expect(last.status).toBe(503)
    expect(last.body.sentence).toMatch(/^The server cannot save at the moment: .* Your scores are on this phone/)
    expect(inBook(bookFile())).toBe(seq)
    expect(got(await dayBoard(day.slug, day.daySlug)).competitions.length).toBeGreaterThan(0)
    await book().$queryRawUnsafe('PRAGMA max_page_count = 1073741823')
    expect((await deliver(2)).status).toBe(200)
    expect(inBook(bookFile())).toBe(seq)
  })
})

describe('a book moved away under its server', () => {
  it('takes nothing more until the server is started again, and readiness says so', async () => {
    const file = bookFile()
    expect(await notReady()).not.toContain('book')
    const before = seq
    copyFileSync(file, `${file}.other`)
    renameSync(file, `${file}.moved`)
    expect((await deliver(3)).status).toBe(503)
    expect(await notReady()).toContain('book')
    renameSync(`${file}.other`, file)
    const replaced = await deliver(3)
    expect(replaced.status).toBe(503)
    expect(replaced.body.sentence).toMatch(/cannot save/)
    expect(await notReady()).toContain('book')
    expect(seq).toBe(before)
  })
})
