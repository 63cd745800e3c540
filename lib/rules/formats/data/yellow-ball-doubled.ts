// Stableford (Rules of Golf 2023, 21.1) with a yellow ball that counts double: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const yellowBallDoubled: FormatData = {
  id: 'yellow-ball-doubled',
  name: 'Yellow ball, doubled',
  sentence:
    'Teams: the points of the player with the yellow ball, in turn, count double, and the best of the others counts with them.',
  family: 'teams',
  side: { from: 3, to: 4 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'named-player', times: 2, others: [1], lost: 'counts-once' },
  allowance: { house: 85, why: 'Nothing is published for yellow ball; 85 % is usual.' },
  clause: 'Rules of Golf 21.1',
}
