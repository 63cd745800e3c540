// The public board: counted once for each version of the day, however many are looking.

import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { boardOf } from '@/lib/boards/board'
import { fixtureCard, type Winner, winnerOf } from '@/lib/boards/fixture-card'
import type { DayBoard, FixtureCard, ResultSheet } from '@/lib/boards/views'
import { ok, type Result, refused } from '@/lib/result'
import { isCannotSave } from '@/lib/store/cannot-save'
import { readDayRecord } from '@/lib/store/day-record'
import { versionText } from '@/lib/store/day-versions'
import { fixturesOf } from '@/lib/store/fixtures'
import { logFault } from '@/lib/store/log'
import { type SheetKept, sheetById, sheetsOf } from '@/lib/store/publications'
import { boardNow, keepSnapshot } from '@/lib/store/snapshots'
import { recordForEverybody, sheetForEverybody } from './shown-to-everybody'

export type NoSuchDay = 'no-such-society' | 'no-such-day'

export interface CountedBoard {
  readonly dayId: DayId
  readonly version: string
  /** The board as JSON text, ready to be sent. */
  readonly text: string
}

interface Counting {
  readonly version: string
  readonly counted: Promise<CountedBoard>
}

// What this process is counting, one board a day: whoever asks meanwhile waits for the same count.
const kept = globalThis as { daybookBoards?: Map<string, Counting> }

function boards(): Map<string, Counting> {
  kept.daybookBoards ??= new Map()
  return kept.daybookBoards
}

export async function countedBoard(slug: string, daySlug: string): Promise<Result<CountedBoard, NoSuchDay>> {
  const now = await boardNow(slug, daySlug)
  if (!now) return noSuchDay()
  const version = versionText({ version: now.version, scoreVersion: now.boardVersion })
  if (now.board !== null) return ok({ dayId: now.dayId, version, text: now.board })
  const counting = boards().get(now.dayId)
  if (counting?.version === version) return ok(await counting.counted)
  const counted = count(now.societyId, now.dayId)
  boards().set(now.dayId, { version, counted })
  try {
    return ok(await counted)
  } finally {
    if (boards().get(now.dayId)?.counted === counted) boards().delete(now.dayId)
  }
}

async function count(societyId: SocietyId, dayId: DayId): Promise<CountedBoard> {
  const record = await readDayRecord({ societyId, dayId })
  if (!record) throw new Error(`Day ${dayId} went away while its board was counted.`)
  const countedAt = new Date()
  const board = boardOf(await recordForEverybody(record), countedAt)
  const text = JSON.stringify(board)
  // Facts may have come while we counted: the snapshot carries the version it was counted from, not the newest one.
  try {
    await keepSnapshot({
      dayId,
      scoreVersion: record.boardVersion,
      dayVersion: record.version,
      board: text,
      countedAt,
    })
  } catch (cause) {
    // A full disk keeps nobody from reading: the board is counted again for the next reader.
    if (!isCannotSave(cause)) throw cause
    logFault('keeping a counted board', cause)
  }
  return { dayId, version: board.version, text }
}

export async function dayBoard(slug: string, daySlug: string): Promise<Result<DayBoard, NoSuchDay>> {
  const counted = await countedBoard(slug, daySlug)
  return counted.ok ? ok(JSON.parse(counted.value.text) as DayBoard) : counted
}

export function noSuchDay() {
  return refused('no-such-day', 'There is no such day in this society. Look on its fixture card.')
}

/** The newest season, or the one of that name. */
export async function fixtures(slug: string, season?: string): Promise<Result<FixtureCard, 'no-such-society'>> {
  const rows = await fixturesOf(slug, season)
  if (!rows) return refused('no-such-society', 'No society keeps its days here under that name.')
  const days = await Promise.all(
    rows.days.map(async ({ sheet, ...day }) => ({
      ...day,
      published: sheet?.number ?? null,
      winner: sheet && (await winnerForEverybody(slug, day.slug, sheet.id)),
    })),
  )
  return ok(fixtureCard({ ...rows, days }))
}

async function winnerForEverybody(slug: string, daySlug: string, sheetId: string): Promise<Winner | null> {
  const winner = await winnerOnSheet(sheetId)
  return winner && sheetForEverybody(slug, winner, daySlug)
}

// A sheet never changes: its winner is read from it once.
const winners = globalThis as { daybookWinners?: Map<string, Winner | null> }
const WINNERS_KEPT = 1000

async function winnerOnSheet(id: string): Promise<Winner | null> {
  winners.daybookWinners ??= new Map()
  const known = winners.daybookWinners.get(id)
  if (known !== undefined) return known
  const winner = winnerOf(sheetOf(await sheetById(id)))
  if (winners.daybookWinners.size >= WINNERS_KEPT) winners.daybookWinners.clear()
  winners.daybookWinners.set(id, winner)
  return winner
}

export interface PublishedSheet {
  readonly sheet: ResultSheet
  /** Every sheet of the day, oldest first. */
  readonly sheets: readonly { readonly number: number; readonly publishedAt: string; readonly reason: string | null }[]
}

/** The newest sheet, or the one with this number: as it was published, never recounted. */
export async function resultSheet(
  slug: string,
  daySlug: string,
  number?: number,
): Promise<Result<PublishedSheet, 'no-such-day' | 'not-published' | 'no-such-sheet'>> {
  const sheets = await sheetsOf(slug, daySlug, number)
  if (!sheets) return noSuchDay()
  if (!sheets.all.length) return refused('not-published', 'The result of this day is not published yet.')
  if (!sheets.one) return refused('no-such-sheet', `There is no sheet ${number} of this day.`)
  return ok({
    sheet: await sheetForEverybody(slug, sheetOf(sheets.one), daySlug),
    sheets: sheets.all.map(({ publishedAt, ...one }) => ({ ...one, publishedAt: publishedAt.toISOString() })),
  })
}

export function sheetOf(kept: SheetKept): ResultSheet {
  const sheet = JSON.parse(kept.sheet) as ResultSheet
  if (sheet.sheetVersion !== 1) throw new Error(`Sheet ${kept.number} is of a version this program cannot read.`)
  return sheet
}
