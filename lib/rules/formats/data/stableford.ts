// Rules of Golf 2023, 21.1: Stableford.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const stableford: FormatData = {
  id: 'stableford',
  name: 'Stableford',
  sentence: 'Points on every hole against net par, and the most points win.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-stableford' },
  clause: 'Rules of Golf 21.1',
}
