// Stableford (Rules of Golf 2023, 21.1), one, two, three scores in turn: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const waltz: FormatData = {
  id: 'waltz',
  name: 'Waltz',
  sentence:
    'Teams: the best score counts on the first hole, the best two on the second, the best three on the third, and so on round.',
  family: 'teams',
  side: { from: 3, to: 4 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: { kind: 'by-turn', turn: [[1], [1, 1], [1, 1, 1]] },
  allowance: { house: 85, why: 'Nothing is published for a changing number of scores; 85 % is usual.' },
  clause: 'Rules of Golf 21.1',
}
