// Rules of Golf 2023, 23 with 21.2: four-ball better ball, maximum score.

import type { FormatData } from '../format'

export const fourBallMaximumScore: FormatData = {
  id: 'four-ball-maximum-score',
  name: 'Four-ball maximum score',
  sentence: 'Pairs, each with an own ball: the lower net score counts, no hole above the maximum.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'maximum' },
  count: { kind: 'best', take: [1] },
  allowance: { house: 85, why: 'Not in the published table; the figure for four-ball stroke play is used.' },
  clause: 'Rules of Golf 23 and 21.2',
}
