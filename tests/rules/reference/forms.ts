// The forms of play once more, as a golfer would explain them: what a ball makes of a hole, and whose scores count.

export type Kind = 'points' | 'against par' | 'strokes' | 'maximum' | 'gross'

export interface Form {
  readonly kind: Kind
  /** Players of a full side. */
  readonly size: number
  /** Fewest players with which a side is in without being named; a full side when absent. */
  readonly least?: number
  readonly oneBall: boolean
  /** Published or usual; percent, or weights low to high. */
  readonly allowance: number | readonly number[]
  /** How many times the best score counts on this hole, the second best, and so on. */
  readonly weights: (hole: number) => readonly number[]
  /** Times the score of the named player counts; nobody is named when absent. */
  readonly named?: number
  /** What the named score is worth once the ball is lost. */
  readonly lost?: 'counts-once' | 'named-score-nothing'
  /** Points by net strokes under par; Stableford's own when absent. */
  readonly points?: (under: number) => number
  /** Points of a hole without a score. */
  readonly noScore?: number
  /** Matches played at once over a part of the round. */
  readonly parts?: readonly { readonly name: string; readonly from: number; readonly to: number }[]
}

const BEST = [[], [1], [1, 1], [1, 1, 1], [1, 1, 1, 1], [1, 1, 1, 1, 1], [1, 1, 1, 1, 1, 1]] as const
const best = (many: number): readonly number[] => BEST[many]!
const ONCE = best(1)

/** Rule 21.1b(1): a table, not a sum. */
export function stablefordPoints(under: number): number {
  if (under <= -2) return 0
  if (under === -1) return 1
  if (under === 0) return 2
  if (under === 1) return 3
  return under + 2
}

function modifiedPoints(under: number): number {
  if (under >= 3) return 8
  return { 2: 5, 1: 2, 0: 0, [-1]: -1 }[under] ?? -3
}

const KINDS: Readonly<Record<string, Kind>> = {
  stableford: 'points',
  medal: 'strokes',
  par: 'against par',
  'maximum-score': 'maximum',
}

const SINGLE = { size: 1, oneBall: false, allowance: 95, weights: () => ONCE } as const
const PAIR = { ...SINGLE, size: 2, allowance: 85 } as const

const NAMED: Readonly<Record<string, Form>> = {
  gross: { ...SINGLE, kind: 'gross', allowance: 0 },
  match: { ...SINGLE, kind: 'strokes', allowance: 100 },
  'three-part-match': {
    ...SINGLE,
    kind: 'strokes',
    allowance: 100,
    parts: [
      { name: 'front nine', from: 1, to: 9 },
      { name: 'back nine', from: 10, to: 18 },
      { name: 'whole', from: 1, to: 18 },
    ],
  },
  'four-ball-match': { ...PAIR, kind: 'strokes', allowance: 90 },
  'total-of-two-match': { ...PAIR, kind: 'strokes', allowance: 100, weights: () => [1, 1] },
  'modified-points': { ...SINGLE, kind: 'points', points: modifiedPoints, noScore: -3 },
  'double-point-stableford': { ...SINGLE, kind: 'points' },
  'best-and-aggregate-stableford': { ...PAIR, kind: 'points', allowance: 95, weights: () => [2, 1] },
  skins: { ...SINGLE, kind: 'strokes', allowance: 100 },
  'skins-not-carried': { ...SINGLE, kind: 'strokes', allowance: 100 },
  'split-sixes': { ...SINGLE, kind: 'strokes', allowance: 100 },
  'split-sixes-clear-win': { ...SINGLE, kind: 'strokes', allowance: 100 },
  waltz: { ...SINGLE, kind: 'points', size: 4, allowance: 85, weights: (hole) => best(((hole - 1) % 3) + 1) },
  thirds: { ...SINGLE, kind: 'points', size: 4, allowance: 85, weights: (hole) => best(Math.ceil(hole / 6)) },
  'one-two-three-four': {
    ...SINGLE,
    kind: 'points',
    size: 4,
    allowance: 85,
    weights: (hole) => best(hole <= 6 ? 1 : hole <= 11 ? 2 : hole <= 15 ? 3 : 4),
  },
  'yellow-ball': { ...SINGLE, kind: 'points', size: 4, least: 3, allowance: 85, named: 1, lost: 'named-score-nothing' },
  'yellow-ball-doubled': { ...SINGLE, kind: 'points', size: 4, least: 3, allowance: 85, named: 2, lost: 'counts-once' },
}

const ONE_BALL: Readonly<Record<string, readonly number[]>> = {
  foursomes: [50, 50],
  greensomes: [60, 40],
  pinehurst: [60, 40],
  'scramble-2': [35, 15],
  'scramble-3': [30, 20, 10],
  'scramble-4': [25, 20, 15, 10],
}

const known = new Map<string, Form>()

export function formOf(id: string): Form {
  const form = known.get(id) ?? made(id)
  known.set(id, form)
  return form
}

function made(id: string): Form {
  const simple = NAMED[id] ?? (KINDS[id] ? { ...SINGLE, kind: KINDS[id] } : undefined)
  if (simple) return simple
  const fourBall = id.match(/^four-ball-(.+)$/)
  if (fourBall) {
    const kind = KINDS[fourBall[1]!]!
    return { ...PAIR, kind, allowance: kind === 'against par' ? 90 : 85 }
  }
  const both = id.match(/^pairs-aggregate-(.+)$/)
  if (both) return { ...PAIR, kind: KINDS[both[1]!]!, allowance: 95, weights: () => [1, 1] }
  const team = id.match(/^best-(\d)-of-(\d)-(.+)$/)
  if (team) {
    const [many, of] = [Number(team[1]), Number(team[2])]
    const kind = KINDS[team[3]!]!
    const table = kind === 'against par' ? [75, 80, 90] : [75, 85, 100]
    const allowance = many === of ? 100 : table[Math.min(many, 3) - 1]!
    return { ...SINGLE, kind, size: of, allowance, weights: () => best(many) }
  }
  const one = Object.keys(ONE_BALL).find((name) => id.startsWith(name))
  if (!one) throw new Error(`No form of play is called ${id}.`)
  const allowance = ONE_BALL[one]!
  const kind = id.endsWith('stableford') ? 'points' : 'strokes'
  return { kind, size: allowance.length, oneBall: true, allowance, weights: () => ONCE }
}

const GAMES: readonly string[] = ['skins', 'skins-not-carried', 'split-sixes', 'split-sixes-clear-win']

/** Shared inside a group: what one wins the others do not have. */
export function isGame(format: string): boolean {
  return GAMES.includes(format)
}
