// A day of the book made by hand: everybody off scratch on a course of eighteen par fours, stroke index by hole number.
// Invented data of our own.

import type {
  CompetitionRecord,
  DayRecord,
  EntryRecord,
  FactRecord,
  PairingRecord,
  SideRecord,
} from '@/lib/facts/day-record'
import { asId } from '../setup/ids'

const NOON = new Date('2031-06-14T12:00:00Z')

export interface Small {
  readonly id?: string
  readonly name?: string
  readonly status?: DayRecord['status']
  /** Family names, in the order of entry; the entry ids are `<day>-<name>`, the person ids the names. */
  readonly people: readonly string[]
  readonly withdrawn?: readonly string[]
  /** Gross, a hole each; who has none has a card without a score. */
  readonly scores?: Readonly<Record<string, readonly (number | 'x' | null)[]>>
  readonly groups?: readonly (readonly string[])[]
  readonly competitions: readonly SmallCompetition[]
  readonly teams?: Readonly<Record<string, readonly string[]>>
  readonly earlier?: readonly DayRecord[]
  /** Par of every hole. */
  readonly par?: number
}

export interface SmallCompetition {
  readonly format: string
  readonly sides?: readonly (readonly string[])[]
  readonly pairings?: readonly { readonly a: string; readonly b: string; readonly ending?: PairingRecord['ending'] }[]
  readonly counted?: readonly string[]
}

export function smallRecord(small: Small): DayRecord {
  const { id = 'd', name = id, status = 'in-play', people, withdrawn = [], scores = {}, groups = [people] } = small
  const { competitions, teams = {}, earlier = [], par = 4 } = small
  const idOf = (one: string) => `${id}-${one}`
  const entries = people.map(
    (one): EntryRecord => ({
      id: asId(idOf(one)),
      personId: asId(one),
      firstName: one.charAt(0),
      familyName: one,
      gender: 'men',
      kind: 'member',
      hostId: null,
      hostName: null,
      status: withdrawn.includes(one) ? 'withdrawn' : 'entered',
      roundTeeId: asId(`${id}-tee`),
      claimedTenths: null,
      indexTenths: 0,
      frozen: true,
      handicapSource: 'society',
      enteredAt: NOON,
    }),
  )
  const there = people.filter((one) => !withdrawn.includes(one))
  const facts = there.flatMap((one, at) =>
    (scores[one] ?? []).map(
      (score, hole): FactRecord => ({
        id: at * 100 + hole + 1,
        cardId: asId(`card-${idOf(one)}`),
        hole: hole + 1,
        score,
        writer: 'desk',
        deviceId: asId('desk'),
        seq: at * 100 + hole + 1,
        replaces: null,
        writtenAt: NOON,
        receivedAt: NOON,
        late: false,
      }),
    ),
  )
  return {
    society: { id: asId('s'), slug: 'fernbrake', name: 'Fernbrake', isDemo: true },
    season: { id: asId('season'), name: '2031', dayCount: 1 },
    id: asId(id),
    slug: id,
    number: 1,
    name,
    date: '2031-06-14',
    status,
    edition: '2024',
    entriesCloseOn: null,
    frozenAt: NOON,
    startPublishedAt: NOON,
    closedAt: null,
    version: 1,
    scoreVersion: 1,
    boardVersion: 1,
    round: {
      id: asId(`round-${id}`),
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
        id: asId(`${id}-tee`),
        name: 'Yellow',
        gender: 'men',
        courseRatingTenths: par * 180,
        slopeRating: 113,
        isDefault: true,
        holes: Array.from({ length: 18 }, (_, at) => ({ hole: at + 1, par, strokeIndex: at + 1 })),
      },
    ],
    entries,
    competitions: competitions.map((one, at) => competition(one, `${id}-c${at}`, at + 1, idOf)),
    groups: groups.map((names, at) => ({
      id: asId(`${id}-g${at}`),
      number: at + 1,
      startTime: '10:00',
      startHole: 1,
      code: '',
      linkKey: '',
      revoked: false,
      entryIds: names.filter((one) => there.includes(one)).map((one) => asId(idOf(one))),
    })),
    teams: Object.entries(teams).map(([team, names], at) => ({
      id: asId(team),
      number: at + 1,
      name: team,
      entryIds: names.map((one) => asId(idOf(one))),
    })),
    ballFacts: [],
    earlier,
    cards: there.map((one) => ({
      id: asId(`card-${idOf(one)}`),
      entryId: asId(idOf(one)),
      markerId: null,
      state: 'out',
      takenInAt: null,
    })),
    facts,
    signatures: [],
    rulings: [],
    publications: [],
  }
}

function competition(
  { format, sides = [], pairings = [], counted = [] }: SmallCompetition,
  id: string,
  number: number,
  idOf: (one: string) => string,
): CompetitionRecord {
  const kept = sides.map(
    (names, at): SideRecord => ({
      id: asId(`${id}-s${at + 1}`),
      number: at + 1,
      name: null,
      entryIds: names.map((one) => asId(idOf(one))),
    }),
  )
  const endOf = (one: string) => kept.find((side) => side.id === `${id}-${one}`)?.id ?? idOf(one)
  return {
    id: asId(id),
    number,
    name: id,
    format,
    terms: {
      allowance: 100,
      allowanceFrom: 'house-choice',
      ties: { steps: [], holesCount: 'by-number', fractions: 'kept' },
      guests: 'for-every-prize',
    },
    prizes: [],
    sides: kept,
    pairings: pairings.map(({ a, b, ending = {} }, at) => ({
      id: asId(`${id}-m${at + 1}`),
      number: at + 1,
      a: asId(endOf(a)),
      b: asId(endOf(b)),
      ending,
    })),
    countedDayIds: counted.map((one) => asId(one)),
  }
}

/** So many holes with the same score. */
export const holes = (count: number, score: number) => Array.from({ length: count }, () => score)
