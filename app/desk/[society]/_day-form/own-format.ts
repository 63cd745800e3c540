// A format of the society's own, as the form asks for it: five selects, and back to the five choices. What an older day
// chose beyond the lists is kept as it is.

import { formatOf } from '@/lib/rules/formats/catalogue'
import type { CountChoice, FiveChoices, StrokesChoice, ValueChoice } from '@/lib/rules/formats/format'

/** Stands for it in the list of formats. */
export const OWN_FORMAT = 'own-format'
export const AS_IT_WAS = 'as-it-was'

export const FIVE = ['side', 'ball', 'strokes', 'value', 'count'] as const
export type Choice = (typeof FIVE)[number]

export interface OwnFormat {
  readonly name: string
  readonly chosen: Readonly<Record<Choice, string>>
  /** The choices a day was called with, for what the lists do not have. */
  readonly before: FiveChoices | null
}

interface Offer<T> {
  readonly id: string
  readonly label: string
  readonly means: T
}

const countOf = (id: string): CountChoice => formatOf(id)!.count
const worthOf = (id: string): ValueChoice => formatOf(id)!.value
const best = (...take: number[]): CountChoice => ({ kind: 'best', take })

const SIDES: readonly Offer<FiveChoices['side']>[] = [
  { id: '1', label: 'Everybody alone', means: { from: 1, to: 1 } },
  { id: '2', label: 'Sides of two', means: { from: 2, to: 2 } },
  { id: '3', label: 'Sides of three', means: { from: 3, to: 3 } },
  { id: '4', label: 'Sides of four', means: { from: 4, to: 4 } },
]
const BALLS: readonly Offer<FiveChoices['ball']>[] = [
  { id: 'own', label: 'An own ball each', means: 'own' },
  { id: 'one', label: 'One ball for the side', means: 'one' },
]
const STROKES: readonly Offer<StrokesChoice>[] = [
  { id: 'each-player', label: 'Each player’s handicap', means: { kind: 'each-player', off: 'own' } },
  {
    id: 'each-player-lowest',
    label: 'The difference from the lowest handicap',
    means: { kind: 'each-player', off: 'lowest' },
  },
  { id: 'for-the-side', label: 'One handicap for the side', means: { kind: 'for-the-side', off: 'own' } },
  { id: 'none', label: 'No handicap', means: { kind: 'none' } },
]
const VALUES: readonly Offer<ValueChoice>[] = [
  { id: 'stableford', label: 'Stableford points', means: worthOf('stableford') },
  { id: 'modified-points', label: 'Modified points: 8, 5, 2, 0, −1, −3', means: worthOf('modified-points') },
  { id: 'medal', label: 'Every stroke', means: worthOf('medal') },
  { id: 'maximum-score', label: 'Every stroke up to a maximum', means: worthOf('maximum-score') },
  { id: 'par', label: 'Won, halved or lost against par', means: worthOf('par') },
  { id: 'match', label: 'Won, halved or lost against an opponent', means: worthOf('match') },
]
const COUNTS: readonly Offer<CountChoice>[] = [
  { id: 'best-1', label: 'The best score', means: best(1) },
  { id: 'best-2', label: 'The best two scores', means: best(1, 1) },
  { id: 'best-3', label: 'The best three scores', means: best(1, 1, 1) },
  { id: 'best-4', label: 'All four scores', means: best(1, 1, 1, 1) },
  { id: 'best-twice', label: 'The best twice, the second once', means: best(2, 1) },
  { id: 'waltz', label: 'One, two, three scores, hole by hole in turn', means: countOf('waltz') },
  { id: 'thirds', label: 'One score to hole 6, two to 12, three to 18', means: countOf('thirds') },
  {
    id: 'one-two-three-four',
    label: 'One score to hole 6, two to 11, three to 15, four to 18',
    means: countOf('one-two-three-four'),
  },
  { id: 'yellow-ball', label: 'A named player in turn, and the best of the others', means: countOf('yellow-ball') },
]

const OFFERS = { side: SIDES, ball: BALLS, strokes: STROKES, value: VALUES, count: COUNTS } as const

export const LABELS: Readonly<Record<Choice, string>> = {
  side: 'Who makes one entry',
  ball: 'The ball',
  strokes: 'Strokes received',
  value: 'What a hole is worth',
  count: 'Which scores of the side count',
}

export function optionsFor(choice: Choice, own: OwnFormat): readonly { value: string; label: string }[] {
  const listed = OFFERS[choice].map(({ id, label }) => ({ value: id, label }))
  const kept = own.before !== null && idOf(OFFERS[choice], own.before[choice]) === null
  return kept ? [...listed, { value: AS_IT_WAS, label: 'As before' }] : listed
}

function idOf(offers: readonly Offer<unknown>[], means: unknown): string | null {
  const wanted = JSON.stringify(means)
  return offers.find((one) => JSON.stringify(one.means) === wanted)?.id ?? null
}

/** The form of these choices: of a day's own format, or of a known one to begin from. */
export function ownFrom({ side, ball, strokes, value, count }: FiveChoices, name: string): OwnFormat {
  const before: FiveChoices = { side, ball, strokes, value, count }
  const chosen = (choice: Choice) => idOf(OFFERS[choice], before[choice]) ?? AS_IT_WAS
  return {
    name,
    before,
    chosen: {
      side: chosen('side'),
      ball: chosen('ball'),
      strokes: chosen('strokes'),
      value: chosen('value'),
      count: chosen('count'),
    },
  }
}

/** Null when a choice is missing. */
export function choicesOf({ chosen, before }: Pick<OwnFormat, 'chosen' | 'before'>): FiveChoices | null {
  const pick = <T>(offers: readonly Offer<T>[], id: string, was: T | undefined): T | undefined =>
    id === AS_IT_WAS ? was : offers.find((one) => one.id === id)?.means
  const side = pick(SIDES, chosen.side, before?.side)
  const ball = pick(BALLS, chosen.ball, before?.ball)
  const strokes = pick(STROKES, chosen.strokes, before?.strokes)
  const value = pick(VALUES, chosen.value, before?.value)
  const count = pick(COUNTS, chosen.count, before?.count)
  if (!side || !ball || !strokes || !value || !count) return null
  return { side, ball, strokes, value, count }
}
