// A member's own page: how the figure came about, and every card.

import type { EntryId, SideId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { figureOf } from './figure'
import { capital, listed, ordinal, placeInWords, scoreLong, scoreShort } from './in-words'
import { resultSaid } from './match-ending-words'
import type { BoardRow, DayBoard, MemberPage } from './views'

/** What a member's page keeps of a board: one row of the main competition. */
export interface CardOnBoard {
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
  readonly net: boolean
  /** Of a side: the names of all its players, as on the board. */
  readonly side: string | null
  readonly row: Pick<BoardRow, 'score' | 'againstLevel' | 'gross' | 'place' | 'noPlace' | 'holesPlayed'>
}

/** Main competition rows by entry; a side's row for each of its players. */
export function cardsOnBoard(board: Pick<DayBoard, 'competitions'>): ReadonlyMap<string, CardOnBoard> {
  const main = board.competitions.find((one) => one.rows.length > 0)
  if (!main) return new Map()
  return new Map(
    main.rows.flatMap(({ name, entryIds, score, againstLevel, gross, place, noPlace, holesPlayed }) =>
      entryIds.map((id): [string, CardOnBoard] => [
        id,
        {
          unit: main.unit,
          net: main.format !== 'gross',
          side: entryIds.length > 1 ? name : null,
          row: { score, againstLevel, gross, place, noPlace, holesPlayed },
        },
      ]),
    ),
  )
}

/** The other competitions of the day with places, by entry: "Yellow ball 63 points, 2nd". */
export function othersOnBoard(board: DayOnly): ReadonlyMap<string, OtherCompetitions> {
  const [main, ...others] = board.competitions.filter((one) => one.rows.length > 0)
  const found = new Map<string, { in: string; lines: string[] }>()
  if (!main) return found
  for (const one of others)
    for (const row of one.rows) {
      if (row.score === null || row.holesPlayed === 0) continue
      const worth = scoreLong(row.score, one.unit, one.format !== 'gross')
      const place = board.status === 'closed' && row.place !== null ? `, ${ordinal(row.place)}` : ''
      for (const id of row.entryIds) {
        const known = found.get(id) ?? { in: main.name, lines: [] }
        found.set(id, { ...known, lines: [...known.lines, `${one.name} ${worth}${place}`] })
      }
    }
  return found
}

/** What of a day besides the figure of its main competition. */
export interface OtherCompetitions {
  /** Name of the main competition, whose place is no longer the only one. */
  readonly in: string
  readonly lines: readonly string[]
}

type DayOnly = Pick<DayBoard, 'competitions' | 'status'>

/** How the matches of a day ended for each end of them, an entry or a side: "won 6 and 4". */
export function matchesOnBoard(board: Pick<DayBoard, 'competitions'>): ReadonlyMap<string, readonly string[]> {
  const ends = new Map<string, string[]>()
  for (const match of board.competitions.flatMap((one) => one.matches)) {
    if (!match.finished || match.result === 'no result') continue
    for (const end of [match.a, match.b]) {
      const how =
        match.winner === null ? 'halved' : `${match.winner === end ? 'won' : 'lost'} ${resultSaid(match.result)}`
      ends.set(end, [...(ends.get(end) ?? []), how])
    }
  }
  return ends
}

/** A day of a member on its board. */
export interface OnBoard {
  readonly card: CardOnBoard | null
  /** "won 6 and 4", a match each. */
  readonly matches: readonly string[]
  readonly others?: OtherCompetitions
}

export interface MemberSource {
  readonly societySlug: string
  readonly societyName: string
  readonly seasonName: string | null
  readonly firstName: string
  readonly familyName: string
  readonly knownAs?: string | null
  readonly memberSince: number | null
  readonly source: MemberPage['source']
  readonly records: readonly {
    readonly source: MemberPage['source']
    readonly indexTenths: number
    readonly from: string
    readonly reason: string
  }[]
  readonly days: readonly {
    readonly entryId: EntryId
    readonly sideIds: readonly SideId[]
    readonly slug: string
    readonly name: string
    readonly date: string
    readonly courseName: string
    readonly status: DayBoard['status']
  }[]
}

/** `onBoard` by entry: from the newest sheet, or from the live board while there is none. */
export function memberPageOf(source: MemberSource, onBoard: ReadonlyMap<string, OnBoard>): MemberPage {
  const cards = source.days.map((day): MemberPage['cards'][number] => {
    const { card: found = null, matches = [], others } = onBoard.get(day.entryId) ?? {}
    const row = found?.row
    return {
      entryId: day.entryId,
      daySlug: day.slug,
      dayName: day.name,
      date: day.date,
      courseName: day.courseName,
      score: row && row.score !== null && row.holesPlayed > 0 ? scoreShort(row.score, found.unit) : null,
      unit: found?.unit ?? 'points',
      reading:
        found === null || found.unit === 'holes'
          ? null
          : found.unit === 'points'
            ? 'points'
            : found.net
              ? 'net'
              : 'gross',
      side: found?.side ?? null,
      matches,
      ...(others ? { others } : {}),
      gross: row?.gross ?? null,
      place: row && row.holesPlayed > 0 ? row.place : null,
      noPlace: row?.noPlace ?? null,
      live: day.status !== 'closed',
    }
  })
  const [present] = source.records
  return {
    societySlug: source.societySlug,
    societyName: source.societyName,
    seasonName: source.seasonName,
    name: fullName(source),
    memberSince: source.memberSince,
    source: source.source,
    figure: present ? figureOf(present.indexTenths) : null,
    figureFrom: present?.from ?? null,
    sentence: sentenceOf(source, onBoard),
    records: source.records.map((record, at) => {
      const before = source.records[at + 1]
      return {
        ...record,
        figure: figureOf(record.indexTenths),
        change: before ? changeInWords(record.indexTenths - before.indexTenths) : null,
      }
    }),
    cards,
  }
}

/** "−2.0", "+0.3", "no change". */
function changeInWords(tenths: number): string {
  if (tenths === 0) return 'no change'
  const size = Math.abs(tenths)
  return `${tenths < 0 ? '−' : '+'}${Math.trunc(size / 10)}.${size % 10}`
}

function sentenceOf(source: MemberSource, onBoard: ReadonlyMap<string, OnBoard>): string {
  const of = (day: MemberSource['days'][number]) => onBoard.get(day.entryId)
  const last = source.days.find((day) => {
    const there = of(day)
    return (there?.card?.row.holesPlayed ?? 0) > 0 || (there?.matches.length ?? 0) > 0
  })
  if (!last) return 'No card yet this season.'
  const found = of(last)?.card
  if (!found) return `${capital(listed(of(last)?.matches ?? []))} at ${last.courseName}.`
  const { row, unit, net } = found
  if (last.status !== 'closed') return `Out on the course at ${last.courseName}: ${row.holesPlayed} holes played.`
  if (row.score === null || row.place === null) return `No place at ${last.courseName}.`
  const whose = found.side === null ? '' : ` for ${found.side}`
  return capital(`${scoreLong(row.score, unit, net)}${whose} at ${last.courseName}, ${placeInWords(row.place)}.`)
}
