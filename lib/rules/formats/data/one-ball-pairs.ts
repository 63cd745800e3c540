// Foursomes (Rules of Golf 2023, 22), greensomes and Pinehurst: one ball for two partners, read as Stableford, medal or
// match. RoH 2024, Appendix C: half of the combined handicaps, or 60 % of the lower and 40 % of the higher.

import type { AllowanceRow } from '../../editions/edition'
import type { FormatData, ValueChoice } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

interface WayOfPlay {
  readonly id: string
  readonly name: string
  readonly how: string
  readonly row: AllowanceRow
  readonly clause: string
}

const WAYS: readonly WayOfPlay[] = [
  {
    id: 'foursomes',
    name: 'Foursomes',
    how: 'Partners play one ball, stroke about, and drive in turn',
    row: 'foursomes',
    clause: 'Rules of Golf 22',
  },
  {
    id: 'greensomes',
    name: 'Greensomes',
    how: 'Both partners drive, one ball is chosen and played stroke about',
    row: 'greensomes',
    clause: 'Rules of Golf 22, varied',
  },
  {
    id: 'pinehurst',
    name: 'Pinehurst',
    how: 'Both partners drive, each plays the other’s ball, then one ball is chosen and played stroke about',
    row: 'pinehurst',
    clause: 'Rules of Golf 22, varied',
  },
]

const READINGS: readonly {
  readonly id: string
  readonly name: string
  readonly what: string
  readonly value: ValueChoice
}[] = [
  { id: 'stableford', name: 'Stableford', what: 'points count', value: { kind: 'points', table: STABLEFORD_POINTS } },
  { id: 'medal', name: 'medal', what: 'net strokes count', value: { kind: 'strokes' } },
  {
    id: 'match',
    name: 'match',
    what: 'side against side',
    value: { kind: 'against-opponent', on: { kind: 'strokes' } },
  },
]

export const oneBallPairs: readonly FormatData[] = WAYS.flatMap((way) =>
  READINGS.map(({ id, name, what, value }): FormatData => {
    const isMatch = value.kind === 'against-opponent'
    return {
      id: `${way.id}-${id}`,
      name: `${way.name}, ${name}`,
      sentence: `${way.how}; ${what}.`,
      family: isMatch ? 'matches' : 'pairs',
      side: { from: 2, to: 2 },
      ball: 'one',
      strokes: { kind: 'for-the-side', off: isMatch ? 'lowest' : 'own' },
      value,
      count: { kind: 'best', take: [1] },
      allowance: { row: way.row },
      clause: way.clause,
    }
  }),
)
