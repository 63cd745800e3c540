// Rules of Golf 2023, 21.2: maximum score.

import type { FormatData } from '../format'

export const maximumScore: FormatData = {
  id: 'maximum-score',
  name: 'Maximum score',
  sentence: 'Stroke play in which no hole counts more than a maximum set beforehand; the fewest net strokes win.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'maximum' },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-maximum-score' },
  clause: 'Rules of Golf 21.2',
}
