// Public readings and deliveries on a copy of the book behind DATABASE_URL: the use cases themselves, without HTTP.

import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { deliverFacts } from '../../lib/society/enter-score'
import { countedBoard, fixtures } from '../../lib/society/read-board'
import { cardWorking, matchOf, playerCard } from '../../lib/society/read-card'
import { book, bookFile } from '../../lib/store/client'
import { readDayRecord } from '../../lib/store/day-record'
import type { Bench, Figure } from '../bench-figures'

type Figures = Awaited<ReturnType<Bench['measure']>>

const READS = 200
const DELIVERIES = 100
const SLUG = 'fernbrake'

export async function measure(): Promise<Figures> {
  const from = bookFile()
  if (!existsSync(from)) return { leftOut: `no book at ${from}: run npm run migrate and npm run seed first` }
  const folder = mkdtempSync(join(tmpdir(), 'daybook-bench-'))
  const file = join(folder, 'book.db')
  // The write-ahead file belongs to the book: without it the copy would miss what was written last.
  for (const part of ['', '-wal']) if (existsSync(from + part)) copyFileSync(from + part, file + part)
  process.env.DATABASE_URL = `file:${file}`
  try {
    return await figures()
  } finally {
    await book().$disconnect()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function figures(): Promise<Figures> {
  const card = await fixtures(SLUG)
  const inPlay = card.ok ? card.value.days.find((day) => day.status === 'in-play') : undefined
  if (!inPlay) return { leftOut: 'the demonstration society with its day in play is not in this book' }
  const day = inPlay.daySlug
  const record = (await readDayRecord({ societySlug: SLUG, daySlug: day }))!
  const group = record.groups.at(-1)!
  const a = group.entryIds[0]!
  const b = group.entryIds[1]!
  const cardId = record.cards.find((one) => one.entryId === a)!.id
  const actor = { kind: 'scorer', societyId: record.society.id, dayId: record.id, groupId: group.id } as const
  const deviceId = `bench-${Date.now()}-of-one-phone`
  const deliver = (at: number) =>
    deliverFacts(actor, {
      deviceId,
      facts: [
        {
          kind: 'score',
          seq: at + 1,
          cardId,
          writer: a,
          writtenAt: new Date().toISOString(),
          hole: 1 + (at % 18),
          score: 4 + (at % 3),
        },
      ],
    })
  return [
    await reading('board, counted already', 50, () => countedBoard(SLUG, day)),
    await reading('fixture card', 50, () => fixtures(SLUG)),
    await reading('one card', 50, () => playerCard(SLUG, day, a)),
    await reading('working of a hole', 50, () => cardWorking(SLUG, day, a, { hole: 1 })),
    await reading('two cards as a match', 50, () => matchOf(SLUG, day, a, b)),
    await timed('score received to answer, one phone after another', 'p99', 150, DELIVERIES, deliver),
    await timed('score received to board counted again', 'p99', 500, 40, async (at) => {
      await deliver(DELIVERIES + at)
      await countedBoard(SLUG, day)
    }),
  ]
}

const reading = (what: string, most: number, read: () => Promise<unknown>) => timed(what, 'p95', most, READS, read)

async function timed(
  what: string,
  part: 'p95' | 'p99',
  most: number,
  times: number,
  work: (at: number) => Promise<unknown>,
): Promise<Figure> {
  const took: number[] = []
  for (let at = 0; at < times; at++) {
    const began = performance.now()
    await work(at)
    took.push(performance.now() - began)
  }
  took.sort((one, other) => one - other)
  const measured = took[Math.ceil(times * (part === 'p95' ? 0.95 : 0.99)) - 1]!
  return {
    what: `${what}, ${part}`,
    measured: `${measured.toFixed(1)} ms`,
    target: `at most ${most} ms`,
    held: measured <= most,
  }
}
