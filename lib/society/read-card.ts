// The public readings of one card, of cards as a match, and of the figures of a day that belong to no card. Everything is counted from the same record.

import type { EntryId } from '@/lib/facts/ids'
import 'server-only'
import { type CardRead, cardReadAs } from '@/lib/boards/card-read-as'
import type { CardWorking, PlayerCard } from '@/lib/boards/card-views'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { type DayWorking, type DayWorkingAsked, dayWorkingOf } from '@/lib/boards/day-working'
import { cardsToMatch, competitionMatchSheet, type MatchAsked, matchSheetOf } from '@/lib/boards/match-sheet'
import type { MatchSheet } from '@/lib/boards/match-views'
import { playerCardOf } from '@/lib/boards/player-card'
import type { DayRecord } from '@/lib/facts/day-record'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { zoneOfInstallation } from '@/lib/store/settings'
import { noSuchDay } from './read-board'
import { recordAtVersion } from './record-at-version'
import { recordForEverybody } from './shown-to-everybody'

type NoCard = 'no-such-day' | 'no-such-card'

export async function playerCard(slug: string, daySlug: string, entryId: EntryId): Promise<Result<PlayerCard, NoCard>> {
  return ofDay(slug, daySlug, (record) => playerCardOf(record, entryId))
}

export async function cardWorking(
  slug: string,
  daySlug: string,
  entryId: EntryId,
  /** `competition` counts from 1, as `?c=` does. */
  of: { readonly competition?: number; readonly hole?: number },
): Promise<Result<CardWorking, NoCard>> {
  const { competition = 1, hole = null } = of
  return ofDay(slug, daySlug, (record) => cardWorkingOf(record, entryId, { competition, hole }, zoneOfInstallation()))
}

export async function matchOf(
  slug: string,
  daySlug: string,
  a: string,
  b: string,
  /** Their partners, for any four cards as a four-ball. */
  partners?: { readonly a: string; readonly b: string },
  hole: number | null = null,
): Promise<Result<MatchSheet, NoCard>> {
  return ofDay(slug, daySlug, (record) =>
    partners ? matchSheetOf(record, [a, partners.a], [b, partners.b], hole) : matchSheetOf(record, [a], [b], hole),
  )
}

/** The cards that can be compared: of sides that share one, a card a side. */
export async function cardsOfDay(
  slug: string,
  daySlug: string,
): Promise<Result<MatchSheet['players'], 'no-such-day' | 'no-such-card'>> {
  return ofDay(slug, daySlug, cardsToMatch)
}

/** A match of a competition, on its own terms. */
export async function competitionMatch(
  slug: string,
  daySlug: string,
  asked: MatchAsked,
): Promise<Result<MatchSheet, NoCard | 'no-such-match'>> {
  const record = await recordAtVersion(slug, daySlug)
  if (!record) return noSuchDay()
  const sheet = competitionMatchSheet(await recordForEverybody(record), asked)
  if (sheet === null)
    return refused('no-such-match', 'There is no such match on this day any more. Look for it on the board.')
  return ok(sheet)
}

/** The points of a team, or who stands in a division, with the steps. */
export async function dayWorking(
  slug: string,
  daySlug: string,
  asked: DayWorkingAsked,
): Promise<Result<DayWorking, 'no-such-day' | 'not-found'>> {
  const record = await recordAtVersion(slug, daySlug)
  if (!record) return noSuchDay()
  const working = dayWorkingOf(await recordForEverybody(record), asked)
  return working === null
    ? refused('not-found', 'There is no such team or division on this day any more. Look for it on the board.')
    : ok(working)
}

/** A card as if the day had been played under another format. */
export async function readCardAs(
  slug: string,
  daySlug: string,
  entryId: EntryId,
  as: { readonly format: string; readonly hole?: number },
): Promise<Result<CardRead, NoCard>> {
  return ofDay(slug, daySlug, (record) => cardReadAs(record, entryId, as.format, as.hole ?? null))
}

async function ofDay<T>(
  slug: string,
  daySlug: string,
  find: (record: DayRecord) => T | null,
): Promise<Result<T, NoCard>> {
  const record = await recordAtVersion(slug, daySlug)
  if (!record) return noSuchDay()
  const found = find(await recordForEverybody(record))
  return found === null ? noSuchCard() : ok(found)
}

function noSuchCard(): Refused<'no-such-card'> {
  return refused('no-such-card', 'There is no such card on this day. Look for the player on the board.')
}
