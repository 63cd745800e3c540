// Stableford (Rules of Golf 2023, 21.1), one, two, three scores by thirds of the round: society custom.

import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

export const thirds: FormatData = {
  id: 'thirds',
  name: 'Thirds',
  sentence: 'Teams: one score counts on holes 1 to 6, two on 7 to 12, three on 13 to 18.',
  family: 'teams',
  side: { from: 3, to: 4 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: STABLEFORD_POINTS },
  count: {
    kind: 'by-stretch',
    stretches: [
      { to: 6, take: [1] },
      { to: 12, take: [1, 1] },
      { to: 18, take: [1, 1, 1] },
    ],
  },
  allowance: { house: 85, why: 'Nothing is published for a changing number of scores; 85 % is usual.' },
  clause: 'Rules of Golf 21.1',
}
