// Rules of Golf 2023, 3.2: singles match play.

import type { FormatData } from '../format'

export const match: FormatData = {
  id: 'match',
  name: 'Singles match',
  sentence:
    'One against one: the lower net score wins the hole, and whoever is more holes up than are left wins the match.',
  family: 'matches',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'against-opponent', on: { kind: 'strokes' } },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-match' },
  clause: 'Rules of Golf 3.2',
}
