// Stableford (Rules of Golf 2023, 21.1) with a yellow ball that changes hands: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const yellowBall: FormatData = {
  id: 'yellow-ball',
  name: 'Yellow ball',
  sentence: 'Teams: the player with the yellow ball, in turn, must count, and the best of the others counts with it.',
  family: 'teams',
  side: { from: 3, to: 4 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'named-player', times: 1, others: [1], lost: 'named-score-nothing' },
  allowance: { house: 85, why: 'Nothing is published for yellow ball; 85 % is usual.' },
  clause: 'Rules of Golf 21.1',
}
