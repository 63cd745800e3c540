// A member's own page, by the private link: handicap history with its reasons, and every card.

import 'server-only'
import { cardsOnBoard, matchesOnBoard, memberPageOf, type OnBoard, othersOnBoard } from '@/lib/boards/member-page'
import type { DayBoard, MemberPage } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import type { EntryId, PersonId, SideId, SocietyId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { type MemberRows, memberRows, sheetText } from '@/lib/store/member-page'
import { mayNot } from './acts'
import { deskOnly } from './desk-only'
import { dayBoard, sheetOf } from './read-board'
import { pageForMember } from './shown-to-everybody'

// A published sheet never changes, so what was read from it once is kept: a member of twenty years opens as many sheets.
const kept = globalThis as { daybookSheetRows?: Map<string, Readings> }
const SHEETS_KEPT = 500

/** What a board says of its players: of the whole day, by entry and by side. */
type Readings = (entryId: EntryId, sideIds: readonly SideId[]) => OnBoard

export async function memberPage(actor: Actor): Promise<Result<MemberPage, 'not-allowed' | 'no-such-page'>> {
  const no = mayNot(actor, 'read-own-page')
  if (no) return no
  if (actor.kind !== 'member') return refused('not-allowed', 'A member opens the page with the own link.')
  return pageOf(actor.societyId, actor.personId)
}

/** The same history beside the person at the desk, without the link of the page. */
export async function memberHistory(
  actor: Actor,
  personId: PersonId,
): Promise<Result<MemberPage, 'not-allowed' | 'no-such-page'>> {
  const officer = deskOnly(actor, 'read-desk')
  return officer.ok ? pageOf(officer.value.societyId, personId) : officer
}

async function pageOf(societyId: SocietyId, personId: PersonId): Promise<Result<MemberPage, 'no-such-page'>> {
  const rows = await memberRows(societyId, personId)
  if (!rows) return refused('no-such-page', 'That link leads to no page. Ask the secretary for your link.')
  const onBoard = new Map<string, OnBoard>()
  for (const day of rows.days) {
    const found = await boardOfDay(rows.societySlug, day)
    if (found) onBoard.set(day.entryId, found(day.entryId, day.sideIds))
  }
  return ok(await pageForMember(rows.societySlug, memberPageOf(rows, onBoard), personId))
}

function readingsOf(board: Pick<DayBoard, 'competitions' | 'status'>): Readings {
  const cards = cardsOnBoard(board)
  const matches = matchesOnBoard(board)
  const others = othersOnBoard(board)
  return (entryId, sideIds) => ({
    card: cards.get(entryId) ?? null,
    ...(others.has(entryId) ? { others: others.get(entryId)! } : {}),
    matches: [entryId, ...sideIds].flatMap((end) => matches.get(end) ?? []),
  })
}

async function boardOfDay(slug: string, day: MemberRows['days'][number]): Promise<Readings | null> {
  if (day.sheet === null) {
    const board = await dayBoard(slug, day.slug)
    return board.ok ? readingsOf(board.value) : null
  }
  kept.daybookSheetRows ??= new Map()
  const key = `${day.dayId} ${day.sheet}`
  const known = kept.daybookSheetRows.get(key)
  if (known) return known
  const sheet = await sheetText(day.dayId, day.sheet)
  if (!sheet) return null
  const rows = readingsOf(sheetOf({ number: day.sheet, sheet }).board)
  if (kept.daybookSheetRows.size >= SHEETS_KEPT) kept.daybookSheetRows.clear()
  kept.daybookSheetRows.set(key, rows)
  return rows
}
