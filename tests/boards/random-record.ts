// Days of the book made up by lot: any format of the catalogue, sides short and full, matches with every ending, teams,
// drives, lost balls, earlier days added up. Plain records, as the store would read them.

import type {
  BallFactRecord,
  CompetitionRecord,
  DayRecord,
  EntryRecord,
  FactRecord,
  PairingRecord,
  SideRecord,
} from '@/lib/facts/day-record'
import type { CardId, EntryId, RoundTeeId, RulingId } from '@/lib/facts/ids'
import type { MatchEnding } from '@/lib/facts/match-ending'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { lotFrom, shuffled } from '@/lib/rules/draw/lot'
import { FORMATS, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { ballValueOf, type Format } from '@/lib/rules/formats/format'
import { asId } from '../setup/ids'

type Lot = (below: number) => number

const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const INDEXES = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const NINE = [3, 6, 9, 1, 7, 4, 5, 8, 2]

const NOON = new Date('2031-06-14T12:00:00Z')

/** `main`: the format of the first competition, where it is not left to the lot. */
export function randomRecord(seed: number, main?: Format): DayRecord {
  const lot = lotFrom(seed)
  const people = Array.from({ length: 4 + lot(9) }, (_, at) => ({ id: `p${at}`, woman: lot(3) === 0 }))
  const size = lot(5) === 0 ? 3 : 4
  const days = lot(3) === 0 ? 1 + lot(2) : 0
  const earlier = Array.from({ length: days }, (_, at) => oneDay(lot, `e${at}`, people.slice(lot(2)), size, []))
  return oneDay(lot, 'd', people, size, earlier, main)
}

function oneDay(
  lot: Lot,
  id: string,
  people: readonly { readonly id: string; readonly woman: boolean }[],
  groupSize: number,
  earlier: readonly DayRecord[],
  main?: Format,
): DayRecord {
  const holes = lot(6) === 0 ? 9 : 18
  const tee = (gender: 'men' | 'women') => ({
    id: asId<RoundTeeId>(`${id}-${gender}`),
    name: gender === 'men' ? 'Yellow' : 'Red',
    gender,
    courseRatingTenths: holes === 9 ? 346 : gender === 'men' ? 692 : 709,
    slopeRating: 125,
    isDefault: true,
    holes: PARS.slice(0, holes).map((par, at) => ({
      hole: at + 1,
      par: gender === 'women' && at === 6 ? par + 1 : par,
      strokeIndex: holes === 9 ? NINE[at]! : INDEXES[at]!,
    })),
  })
  const entries = people.map(
    (person): EntryRecord => ({
      id: asId(`${id}-${person.id}`),
      personId: asId(person.id),
      firstName: person.id,
      familyName: `Family ${person.id}`,
      gender: person.woman ? 'women' : 'men',
      kind: lot(6) === 0 ? 'guest' : 'member',
      hostId: null,
      hostName: null,
      status: lot(12) === 0 ? 'withdrawn' : 'entered',
      roundTeeId: asId(`${id}-${person.woman ? 'women' : 'men'}`),
      claimedTenths: null,
      indexTenths: lot(400) - 30,
      frozen: true,
      handicapSource: 'society',
      enteredAt: NOON,
    }),
  )
  const playing = entries.filter((entry) => entry.status === 'entered').map((entry) => entry.id)
  const drawn = shuffled(playing, lot)
  const groups: string[][] = []
  for (let at = 0; at < drawn.length; at += groupSize) groups.push(drawn.slice(at, at + groupSize))
  const ballFacts: BallFactRecord[] = []
  const competitions = Array.from({ length: 1 + lot(3) }, (_, at) =>
    competition(lot, `${id}-c${at}`, at + 1, drawn, groups, holes, earlier, ballFacts, at === 0 ? main : undefined),
  )
  const cards = playing.flatMap((entryId) =>
    lot(10) === 0
      ? []
      : [
          {
            id: asId<CardId>(`card-${entryId}`),
            entryId: asId<EntryId>(entryId),
            markerId: null,
            state: 'out' as const,
            takenInAt: null,
          },
        ],
  )
  const teams = lot(2) === 0 ? [] : [drawn.filter((_, at) => at % 2 === 0), drawn.filter((_, at) => at % 2 === 1)]
  const facts = cards.flatMap((card, at) => factsOf(lot, card.id, holes, at * 100))
  const scoreVersion = facts.length
  return {
    society: { id: asId('s'), slug: 'fernbrake', name: 'Fernbrake', isDemo: true },
    season: { id: asId('season'), name: '2031', dayCount: 1 },
    id: asId(id),
    slug: id,
    number: 1,
    name: id,
    date: '2031-06-14',
    status: lot(2) === 0 ? 'in-play' : 'closed',
    edition: '2024',
    entriesCloseOn: null,
    frozenAt: NOON,
    startPublishedAt: NOON,
    closedAt: null,
    version: 1,
    scoreVersion,
    boardVersion: scoreVersion,
    round: {
      id: asId(`round-${id}`),
      courseId: asId('course'),
      courseName: 'Aldermoss Park',
      holes,
      firstHole: 1,
      startKind: 'tee-times',
      firstTee: '10:00',
      intervalMinutes: 10,
    },
    tees: [tee('men'), tee('women')],
    entries,
    competitions,
    groups: groups.map((entryIds, at) => ({
      id: asId(`${id}-g${at}`),
      number: at + 1,
      startTime: '10:00',
      startHole: lot(4) === 0 ? 1 + lot(holes) : 1,
      code: '',
      linkKey: '',
      revoked: false,
      entryIds: entryIds.map((one) => asId(one)),
    })),
    teams: teams.map((entryIds, at) => ({
      id: asId(`${id}-t${at}`),
      number: at + 1,
      name: `Team ${at + 1}`,
      entryIds: entryIds.map((one) => asId(one)),
    })),
    ballFacts,
    earlier,
    cards,
    facts,
    signatures: [],
    rulings: cards.flatMap((card, at) =>
      lot(8) > 0
        ? []
        : [
            {
              id: asId<RulingId>(`r${at}`),
              number: at + 1,
              cardId: card.id,
              kind: (
                [
                  'no-return',
                  'disqualified',
                  'withdrawn',
                  'playing-handicap',
                  'handicap-index',
                  'course-handicap',
                  'penalty-points',
                ] as const
              )[lot(7)]!,
              hole: null,
              value: 3,
              clause: '',
              reason: 'by lot',
              byName: 'The secretary',
              ruledAt: NOON,
              replaces: null,
            },
          ],
    ),
    publications: [],
  }
}

function competition(
  lot: Lot,
  id: string,
  number: number,
  drawn: readonly string[],
  groups: readonly (readonly string[])[],
  holes: number,
  earlier: readonly DayRecord[],
  ballFacts: BallFactRecord[],
  given?: Format,
): CompetitionRecord {
  const format = given ?? FORMATS[lot(FORMATS.length)]!
  const allowance = proposedAllowance(format.id, 40, '2024').allowance
  const sides = format.sideSize > 1 ? sidesBy(lot, id, drawn, format.sideSize) : []
  if (format.ball === 'one' || format.count.kind === 'named-player') balls(lot, sides, holes, ballFacts)
  return {
    id: asId(id),
    number,
    name: id,
    format: format.id,
    terms: {
      allowance: typeof allowance === 'number' ? allowance : [...allowance],
      allowanceFrom: 'published',
      ties: PUBLISHED_COUNTBACK,
      guests: 'guest-prize-only',
      ...(format.ball === 'one' && lot(2) === 0 ? { minimumDrives: 1 + lot(4) } : {}),
      ...(format.side.to > 1 && lot(3) === 0 ? { missing: { kind: 'lowest-again' as const } } : {}),
      ...(format.namedHolesTimes ? { namedHoles: [2, 5] } : {}),
    },
    prizes: [],
    sides,
    pairings: format.isMatch ? pairings(lot, id, format, sides, groups, holes) : [],
    countedDayIds: format.isMatch || lot(2) === 0 ? [] : earlier.map((one) => one.id),
  }
}

/** Sides by lot, the last one short; some players in none. */
function sidesBy(lot: Lot, id: string, drawn: readonly string[], size: number): SideRecord[] {
  const there = shuffled(drawn, lot)
  const sides: SideRecord[] = []
  for (let at = 0; at < there.length; at += size)
    sides.push({
      id: asId(`${id}-s${at}`),
      number: at + 1,
      name: null,
      entryIds: there.slice(at, at + size).map((one) => asId(one)),
    })
  return lot(4) === 0 ? sides.slice(1) : sides
}

function balls(lot: Lot, sides: readonly SideRecord[], holes: number, facts: BallFactRecord[]): void {
  for (const side of sides)
    for (let hole = 1; hole <= holes; hole++) {
      if (lot(3) === 0) continue
      facts.push({
        id: facts.length + 1,
        sideId: side.id,
        kind: lot(4) === 0 ? 'ball-lost' : 'drive',
        hole,
        entryId: lot(9) === 0 ? null : side.entryIds[lot(side.entryIds.length)]!,
        lost: lot(2) === 0,
        writer: 'desk',
        writtenAt: NOON,
        receivedAt: NOON,
        late: lot(15) === 0,
      })
    }
}

function pairings(
  lot: Lot,
  id: string,
  format: Format,
  sides: readonly SideRecord[],
  groups: readonly (readonly string[])[],
  holes: number,
): PairingRecord[] {
  const ends = format.sideSize > 1 ? sides.map((side) => side.id) : groups.flat()
  const made: PairingRecord[] = []
  for (let at = 0; at + 1 < ends.length; at += 2)
    made.push({
      id: asId(`${id}-m${at}`),
      number: at + 1,
      a: asId(ends[at]!),
      b: asId(ends[at + 1]!),
      ending: ending(lot, format, holes),
    })
  return made
}

function ending(lot: Lot, format: Format, holes: number): MatchEnding {
  const end = lot(2) === 0 ? 'a' : 'b'
  switch (lot(8)) {
    case 0:
      return { walkover: end }
    case 1:
      return { concededBy: end, concededHoles: [{ hole: 1 + lot(holes), to: end }] }
    case 2:
      return { abandoned: true }
    case 3:
      return {
        concededHoles: [
          { hole: 2, to: 'a' },
          { hole: 4, to: 'b' },
        ],
      }
    case 4:
      return ballValueOf(format.value).kind === 'strokes' ? { extraHoles: [{ a: 4, b: 'x' }] } : {}
    default:
      return {}
  }
}

function factsOf(lot: Lot, cardId: CardId, holes: number, from: number): FactRecord[] {
  const played = lot(3) === 0 ? lot(holes + 1) : holes
  return Array.from(
    { length: played },
    (_, at): FactRecord => ({
      id: from + at + 1,
      cardId,
      hole: at + 1,
      score: lot(15) === 0 ? 'x' : 3 + lot(5),
      writer: 'desk',
      deviceId: asId('desk'),
      seq: from + at + 1,
      replaces: null,
      writtenAt: NOON,
      receivedAt: NOON,
      late: false,
    }),
  )
}
