// Rules of Golf 2023, 23 with 21.3: four-ball better ball against par.

import type { FormatData } from '../format'

export const fourBallPar: FormatData = {
  id: 'four-ball-par',
  name: 'Four-ball par',
  sentence: 'Pairs, each with an own ball: the better net score plays the par of every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'against-par' },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'four-ball-par' },
  clause: 'Rules of Golf 23 and 21.3',
}
