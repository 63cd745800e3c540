// Stableford (Rules of Golf 2023, 21.1), the better score of a pair and both added: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const bestAndAggregateStableford: FormatData = {
  id: 'best-and-aggregate-stableford',
  name: 'Better ball and aggregate',
  sentence: 'Pairs: the better points count twice and the other once, better ball and aggregate in one.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'best', take: [2, 1] },
  allowance: { house: 95, why: 'Nothing is published for it; the figure for singles is used.' },
  clause: 'Rules of Golf 21.1',
}
