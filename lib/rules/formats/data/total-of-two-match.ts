// Match play (Rules of Golf 2023, 3.2) on the total of two partners. RoH 2024, Appendix C names it.

import type { FormatData } from '../format'

export const totalOfTwoMatch: FormatData = {
  id: 'total-of-two-match',
  name: 'Total of two, match',
  sentence: 'Two against two: the net scores of both partners added play the hole.',
  family: 'matches',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'against-opponent', on: { kind: 'strokes' } },
  count: { kind: 'best', take: [1, 1] },
  allowance: { row: 'total-of-two-match' },
  clause: 'Rules of Golf 3.2',
}
