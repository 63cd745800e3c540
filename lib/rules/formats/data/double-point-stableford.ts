// Rules of Golf 2023, 21.1, with holes named beforehand that count twice: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const doublePointStableford: FormatData = {
  id: 'double-point-stableford',
  name: 'Stableford with double-point holes',
  sentence: 'Stableford points, doubled on the holes named beforehand.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'best', take: [1] },
  allowance: { house: 95, why: 'Nothing is published for doubled holes; the figure for Stableford is used.' },
  clause: 'Rules of Golf 21.1',
  namedHolesTimes: 2,
}
