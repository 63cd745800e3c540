// A spring day with four cards at an invented course, as the book would hold it, and its board at any moment of it.

import { boardOf } from '@/lib/boards/board'
import type { DayBoard } from '@/lib/boards/views'
import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { asId } from '../setup/ids'

const PAR_MEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const PAR_WOMEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 5, 5, 4, 3, 4, 5]
const INDEX_MEN = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const INDEX_WOMEN = [7, 3, 15, 9, 17, 1, 11, 13, 5, 12, 6, 16, 14, 2, 8, 10, 18, 4]
const YARDS = [348, 479, 146, 389, 326, 502, 355, 162, 371, 337, 377, 134, 408, 468, 339, 171, 318, 489]

const holes = (pars: readonly number[], indexes: readonly number[]) =>
  pars.map((par, at) => ({ hole: at + 1, par, strokeIndex: indexes[at]!, yards: YARDS[at]! }))

export const CARDS: Record<string, readonly (number | 'x')[]> = {
  haldane: [4, 5, 4, 5, 4, 5, 4, 3, 4, 4, 5, 3, 4, 5, 5, 3, 5, 5],
  coldbrook: [5, 6, 3, 6, 5, 6, 4, 4, 6, 5, 5, 4, 6, 6, 4, 3, 5, 7],
  trevennor: [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6],
  tarrablane: [5, 6, 5, 7, 4, 7, 5, 5, 6, 6, 5, 4, 7, 6, 5, 4, 6, 6],
}

const entry = (
  id: string,
  firstName: string,
  familyName: string,
  indexTenths: number,
  gender: 'men' | 'women' = 'men',
): EntryRecord => ({
  id: asId(id),
  personId: asId(`person-${id}`),
  firstName,
  familyName,
  gender,
  kind: 'member',
  hostId: null,
  hostName: null,
  status: 'entered',
  roundTeeId: asId(gender === 'men' ? 'yellow' : 'red'),
  claimedTenths: null,
  indexTenths,
  frozen: true,
  handicapSource: 'home-club',
  enteredAt: new Date('2026-04-01T10:00:00Z'),
})

const ENTRIES = [
  entry('haldane', 'Corin', 'Haldane', 31),
  entry('coldbrook', 'Emrys', 'Coldbrook', 184),
  entry('trevennor', 'Jago', 'Trevennor', 207),
  entry('tarrablane', 'Una', 'Tarrablane', 247, 'women'),
]

const terms = (allowance: number) => ({
  allowance,
  allowanceFrom: 'published' as const,
  ties: PUBLISHED_COUNTBACK,
  guests: 'guest-prize-only' as const,
})

const ALONE = { pairings: [], countedDayIds: [] }

export interface Moment {
  /** Holes written so far, by entry; 18 when not named. */
  readonly holes?: Readonly<Record<string, number>>
  readonly status?: DayRecord['status']
  readonly handedIn?: readonly string[]
  /** Other scores than the usual ones, by entry. */
  readonly scores?: Readonly<Record<string, readonly (number | 'x')[]>>
  readonly scoreVersion?: number
}

export function recordAt(moment: Moment = {}): DayRecord {
  const written = Object.entries({ ...CARDS, ...moment.scores }).flatMap(([id, scores]) =>
    scores.slice(0, moment.holes?.[id] ?? 18).map((score, at) => ({ id, hole: at + 1, score })),
  )
  const status = moment.status ?? 'in-play'
  return {
    society: { id: asId('s'), slug: 'fernbrake', name: 'Fernbrake Golf Society', isDemo: true },
    season: { id: asId('season'), name: '2026', dayCount: 9 },
    id: asId('day'),
    slug: 'spring-cup',
    number: 2,
    name: 'The Spring Cup',
    date: '2026-04-25',
    status,
    edition: '2024',
    entriesCloseOn: null,
    frozenAt: new Date('2026-04-23T17:00:00Z'),
    startPublishedAt: new Date('2026-04-23T18:00:00Z'),
    closedAt: status === 'closed' ? new Date('2026-04-25T15:00:00Z') : null,
    version: 7,
    scoreVersion: moment.scoreVersion ?? written.length,
    round: {
      id: asId('round'),
      courseId: asId('course'),
      courseName: 'Aldermoss Park',
      holes: 18,
      firstHole: 1,
      startKind: 'tee-times',
      firstTee: '10:00',
      intervalMinutes: 10,
    },
    tees: [
      {
        id: asId('yellow'),
        name: 'Yellow',
        gender: 'men',
        courseRatingTenths: 692,
        slopeRating: 125,
        isDefault: true,
        holes: holes(PAR_MEN, INDEX_MEN),
      },
      {
        id: asId('red'),
        name: 'Red',
        gender: 'women',
        courseRatingTenths: 709,
        slopeRating: 125,
        isDefault: true,
        holes: holes(PAR_WOMEN, INDEX_WOMEN),
      },
    ],
    entries: ENTRIES,
    competitions: [
      {
        id: asId('c1'),
        number: 1,
        name: 'Singles',
        format: 'stableford',
        terms: terms(95),
        prizes: [],
        sides: [],
        ...ALONE,
      },
      {
        id: asId('c2'),
        number: 2,
        name: 'Pairs',
        format: 'four-ball-stableford',
        terms: terms(85),
        prizes: [],
        ...ALONE,
        sides: [
          { id: asId('s1'), number: 1, name: null, entryIds: [asId('haldane'), asId('coldbrook')] },
          { id: asId('s2'), number: 2, name: null, entryIds: [asId('trevennor'), asId('tarrablane')] },
        ],
      },
    ],
    teams: [],
    ballFacts: [],
    earlier: [],
    boardVersion: moment.scoreVersion ?? written.length,
    groups: [
      {
        id: asId('g1'),
        number: 1,
        startTime: '10:20',
        startHole: 1,
        code: 'fern 5604',
        linkKey: 'secret-link-of-the-group',
        revoked: false,
        entryIds: [asId('haldane'), asId('coldbrook'), asId('trevennor'), asId('tarrablane')],
      },
    ],
    cards: ENTRIES.map(({ id }) => ({
      id: asId(`card-${id}`),
      entryId: asId(id),
      markerId: null,
      state: status === 'closed' || moment.handedIn?.includes(id) ? ('taken-in' as const) : ('out' as const),
      takenInAt: null,
    })),
    facts: written.map(({ id, hole, score }, at) => ({
      id: at + 1,
      cardId: asId(`card-${id}`),
      hole,
      score,
      writer: asId(id),
      deviceId: asId('phone-of-the-group'),
      seq: at + 1,
      replaces: null,
      writtenAt: new Date('2026-04-25T11:00:00Z'),
      receivedAt: new Date('2026-04-25T11:00:01Z'),
      late: false,
    })),
    signatures: [],
    rulings: [],
    publications: [],
  }
}

export function boardAt(moment: Moment = {}): DayBoard {
  return boardOf(recordAt(moment), new Date('2026-04-25T13:52:00Z'))
}
