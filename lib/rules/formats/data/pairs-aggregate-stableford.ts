// Stableford (Rules of Golf 2023, 21.1) with both scores of a pair added: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const pairsAggregateStableford: FormatData = {
  id: 'pairs-aggregate-stableford',
  name: 'Pairs aggregate, Stableford',
  sentence: 'Pairs: the points of both partners are added on every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'best', take: [1, 1] },
  allowance: { house: 95, why: 'Nothing is published for an aggregate of two; the figure for singles is used.' },
  clause: 'Rules of Golf 21.1',
}
