// What the handicapping rules may change from one edition to the next: dated data, never a branch.

export type Region = 'world' | 'gbi'

export type Percent = number
/** Shares of the handicaps of one side, lowest handicap first, in percent. */
export type Weights = readonly number[]

export const ALLOWANCE_ROWS = [
  'individual-stroke-play',
  'individual-stableford',
  'individual-par',
  'individual-maximum-score',
  'four-ball-stroke-play',
  'four-ball-stableford',
  'four-ball-par',
  'individual-match',
  'four-ball-match',
  'foursomes',
  'greensomes',
  'pinehurst',
  'best-1-of-4',
  'best-2-of-4',
  'best-3-of-4',
  'best-4-of-4',
  'scramble-4',
  'scramble-3',
  'scramble-2',
  'total-of-two-match',
  'best-1-of-4-par',
  'best-2-of-4-par',
  'best-3-of-4-par',
  'best-4-of-4-par',
] as const
export type AllowanceRow = (typeof ALLOWANCE_ROWS)[number]

export interface Source {
  readonly title: string
  readonly publisher: string
  readonly section: string
  readonly url?: string
  /** How we know: read in the source, read in a copy of it, or from memory. */
  readonly known: 'read' | 'read-in-a-copy' | 'from-memory'
}

export interface Edition {
  readonly id: string
  readonly title: string
  /** First day in force; null where it never was. */
  readonly from: Readonly<Record<Region, string | null>>
  /** Does the course handicap contain course rating less par? 6.1a. */
  readonly ratingMinusPar: boolean
  /** Is the course handicap rounded before the allowance is applied, or kept in full? 6.2a. */
  readonly beforeAllowance: 'rounded' | 'kept'
  /** In a match: is the difference taken between rounded playing handicaps, or before allowance and rounding? */
  readonly matchDifference: { readonly players: 'rounded' | 'unrounded'; readonly sides: 'rounded' | 'unrounded' }
  /** What a hole not played counts as in a score for handicapping. 3.2. */
  readonly holeNotPlayed: 'net-par' | 'expected-score'
  readonly allowances: Readonly<Record<AllowanceRow, Percent | Weights>>
  readonly allowanceClause: string
  /** Another figure for a small field of individuals. */
  readonly smallField: {
    readonly under: number
    readonly rows: readonly AllowanceRow[]
    readonly allowance: Percent
    readonly clause: string
  }
  readonly sources: readonly Source[]
}
