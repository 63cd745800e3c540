// Rules of Golf 2023, 23 with 3.2: four-ball match play.

import type { FormatData } from '../format'

export const fourBallMatch: FormatData = {
  id: 'four-ball-match',
  name: 'Four-ball match',
  sentence: 'Two against two, each with an own ball: the better net score of each side plays the hole.',
  family: 'matches',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'against-opponent', on: { kind: 'strokes' } },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'four-ball-match' },
  clause: 'Rules of Golf 23 and 3.2',
}
