// Rules of Golf 2023, 23 with 21.1: four-ball better ball, Stableford.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const fourBallStableford: FormatData = {
  id: 'four-ball-stableford',
  name: 'Four-ball Stableford',
  sentence: 'Pairs, each with an own ball: the better points of the two count on every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'four-ball-stableford' },
  clause: 'Rules of Golf 23 and 21.1',
}
