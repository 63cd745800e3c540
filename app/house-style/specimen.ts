// One invented card and one invented season, for showing the parts. Points are those of a Stableford card off 19.

import type { HandicapPoint } from '@/app/_parts/handicap-steps'
import type { GroupWhere } from '@/lib/boards/on-the-course'
import type { CardId } from '@/lib/facts/ids'
import type { HoleLine, MatchState, WorkingStep } from '@/lib/rules/standings'

const YARDS = [348, 479, 146, 389, 326, 502, 355, 162, 371, 337, 377, 134, 408, 468, 339, 171, 318, 489]
const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const INDEX = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const GROSS = [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6]
const POINTS = [2, 3, 2, 3, 2, 1, 2, 3, 2, 2, 2, 3, 1, 2, 1, 2, 3, 2]

export const course = PARS.map((par, i) => ({ hole: i + 1, par, yards: YARDS[i] ?? null }))

export const card: HoleLine[] = PARS.map((par, i) => {
  const strokeIndex = INDEX[i] ?? 0
  const strokes = strokeIndex === 1 ? 2 : 1
  const gross = GROSS[i] ?? null
  return {
    hole: i + 1,
    par,
    strokeIndex,
    strokes,
    gross,
    net: gross === null ? null : gross - strokes,
    value: POINTS[i] ?? null,
  }
})

export const working: WorkingStep[] = [
  {
    figure: '20.7',
    label: 'Handicap figure',
    sentence: 'His society handicap, used as his index on this day. Frozen Thursday 23 April, 6.00 pm.',
    clause: 'Terms of the day, 2',
  },
  {
    figure: '20.098',
    label: 'Course handicap',
    sum: '20.7 × 125 ÷ 113 + (69.2 − 72)',
    sentence: 'His figure × slope ÷ 113, then course rating less par, yellow tees. Not rounded yet.',
    clause: 'Rules of Handicapping 6.1a',
  },
  {
    figure: '19',
    label: 'Playing handicap',
    sum: '20.098 × 95 % = 19.093',
    sentence: 'The allowance for singles Stableford, then the nearest whole number. Rounded once, here.',
    clause: 'Rules of Handicapping 6.2; allowance, Appendix C',
  },
  {
    figure: '1',
    label: 'Strokes on hole 11',
    sentence: '19 strokes are one on every hole and a second on index 1. Hole 11 is index 4: one stroke.',
    clause: 'Rules of Handicapping, Appendix E',
  },
  {
    figure: '4',
    label: 'Net',
    sum: '5 − 1',
    sentence: 'Strokes received come off the gross.',
    clause: 'Rules of Golf 3.1c',
  },
  {
    figure: '2',
    label: 'Points',
    sentence: 'Par 4, net 4. Level with par is two points; one over is one, one under is three.',
    clause: 'Rules of Golf 21.1b',
  },
]

export const handicaps: HandicapPoint[] = [
  { from: '2024-03-12', tenths: 214 },
  { from: '2024-04-27', tenths: 217 },
  { from: '2024-06-15', tenths: 207, note: '2nd with 36, one off' },
  { from: '2024-09-07', tenths: 210 },
  { from: '2024-10-05', tenths: 213 },
  { from: '2025-03-29', tenths: 216 },
  { from: '2025-06-14', tenths: 211, note: '3rd with 35, half off' },
  { from: '2025-09-06', tenths: 214 },
  { from: '2025-10-10', tenths: 204, note: '2nd with 35, one off' },
  { from: '2026-03-27', tenths: 207 },
  { from: '2026-04-25', tenths: 187, note: 'won with 38, two off' },
]

const UP = [0, 1, 1, 2, 2, 1, 0, -1, -1, 0, 1, 1, 2, 3, 2, 2, 3]
export const match: MatchState[] = course.map(({ hole }) => ({ hole, up: UP[hole - 1] ?? null }))

export const averages = [
  2.11, 1.89, 1.78, 1.85, 1.56, 1.63, 2.07, 1.78, 1.48, 1.74, 1.81, 1.44, 1.67, 1.89, 1.78, 1.52, 1.59, 1.85,
].map((value, i) => ({ hole: i + 1, value }))

export const fixtures = [
  ['27 Mar', 'Withenbrook Heath', 'singles Stableford'],
  ['25 Apr', 'Aldermoss Park', 'Spring Cup'],
  ['14 May', 'Hollinscar Down', 'singles and team'],
  ['13 Jun', 'Ravensgarth Moor', 'Captain’s Day'],
  ['4 Jul', 'Skerrowby Links', 'trip, singles'],
  ['5 Jul', 'Pellmarsh Court', 'trip, two teams'],
  ['6 Aug', 'Aldermoss Park', 'net medal'],
  ['5 Sep', 'Withenbrook Heath', 'Autumn Cup'],
  ['9 Oct', 'Skerrowby Links', 'finals'],
] as const

const group = (number: number, startTime: string, over: Partial<GroupWhere>): GroupWhere => ({
  number,
  startTime,
  startHole: 1,
  startsAt: '1',
  names: [],
  state: 'out',
  onHole: null,
  through: 0,
  expectedHole: null,
  late: null,
  gap: null,
  isHoldingUp: false,
  silentMinutes: null,
  isSilent: false,
  notAgreed: [],
  phones: [],
  unsent: 0,
  ...over,
})

export const groupsOut: readonly GroupWhere[] = [
  group(1, '10:00', { state: 'round' }),
  group(2, '10:10', {
    onHole: 15,
    expectedHole: 16,
    notAgreed: [{ name: 'Una Tarrablane', cardId: 'card' as CardId, holes: [11] }],
  }),
  group(3, '10:20', { onHole: 12, expectedHole: 15, isHoldingUp: true, late: 38 }),
  group(4, '10:30', { onHole: 11, expectedHole: 14, isSilent: true, silentMinutes: 27 }),
  group(5, '10:40', { state: 'not-started' }),
]
