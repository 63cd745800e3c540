// The nine days of the invented season. Days from the one in play, which is always today.

export interface SeedDay {
  readonly key: string
  readonly name: string
  /** Days from today; the distances are those of a season from March to October. */
  readonly offset: number
  readonly course: string
  readonly competitions: readonly { readonly name: string; readonly format: string; readonly allowance: number }[]
  readonly start?: 'tee-times' | 'shotgun'
  readonly firstTee?: string
  readonly whiteTees?: boolean
}

const singles = (name = 'Singles') => ({ name, format: 'stableford', allowance: 95 })

export const DAYS: readonly SeedDay[] = [
  { key: 'day-1', name: 'Opening Day', offset: -48, course: 'Withenbrook Heath', competitions: [singles()] },
  {
    key: 'day-2',
    name: 'Spring Cup',
    offset: -19,
    course: 'Aldermoss Park',
    competitions: [singles('Spring Cup'), { name: 'Pairs', format: 'four-ball-stableford', allowance: 85 }],
  },
  {
    key: 'day-3',
    name: 'Downland Day',
    offset: 0,
    course: 'Hollinscar Down',
    competitions: [singles(), { name: 'Pairs', format: 'four-ball-stableford', allowance: 85 }],
  },
  {
    key: 'day-4',
    name: 'Captain’s Day',
    offset: 30,
    course: 'Ravensgarth Moor',
    competitions: [singles('Captain’s Prize')],
    start: 'shotgun',
    firstTee: '09:30',
  },
  { key: 'day-5', name: 'Links Day', offset: 51, course: 'Skerrowby Links', competitions: [singles()] },
  { key: 'day-6', name: 'Team Day', offset: 52, course: 'Pellmarsh Court', competitions: [singles()] },
  {
    key: 'day-7',
    name: 'Medal Day',
    offset: 84,
    course: 'Aldermoss Park',
    competitions: [
      { name: 'Medal', format: 'medal', allowance: 95 },
      { name: 'Best gross', format: 'gross', allowance: 0 },
    ],
    whiteTees: true,
  },
  { key: 'day-8', name: 'Heath Trophy', offset: 114, course: 'Withenbrook Heath', competitions: [singles()] },
  { key: 'day-9', name: 'Finals Day', offset: 148, course: 'Skerrowby Links', competitions: [singles()] },
]

/** Who plays, by family name. */
export const AWAY_DAY_1 = [
  'Tamblyn',
  'Corrowan',
  'Quennerton',
  'Sundale',
  'Kinnegar',
  'Coldfen',
  'Thorncote',
  'Verrow',
  'Reevesby',
  'Pinkerby',
  'Larchmere',
  'Corrigolan',
]

/** The tee sheet of day 2, as the captain wrote it. */
export const SHEET_DAY_2: readonly (readonly string[])[] = [
  ['Pellisade', 'Reevesby', 'Ashgill', 'Fairclose'],
  ['Storrey', 'Rushgate', 'Verrow', 'Thackerstone'],
  ['Haldane', 'Coldbrook', 'Trevennor', 'Tarrablane'],
  ['Holmgarth', 'Arkwood', 'Delahinch', 'Garrowby'],
  ['Hathersall', 'Coldfen', 'Larchmere', 'Thorncote'],
  ['Kilravel', 'Corrigolan', 'Maddock', 'Penhallt'],
  ['Maesgoch', 'Dunmallet', 'Ashworthy'],
]

export const GUESTS_DAY_2 = [
  ['Rushgate', 'Storrey'],
  ['Arkwood', 'Holmgarth'],
  ['Maddock', 'Corrigolan'],
] as const

export const AWAY_DAY_3 = ['Corrowan', 'Reevesby', 'Pinkerby', 'Thorncote']
export const WITHDRAWN_DAY_3 = ['Highmoor', 'Hathersall']
export const GUESTS_DAY_3 = [
  ['Maddock', 'Corrigolan'],
  ['Wensleigh', 'Kinnegar'],
] as const
