// Rules of Golf 2023, 23: four-ball better ball, stroke play.

import type { FormatData } from '../format'

export const fourBallMedal: FormatData = {
  id: 'four-ball-medal',
  name: 'Four-ball medal',
  sentence: 'Pairs, each with an own ball: the lower net score of the two counts on every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'strokes' },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'four-ball-stroke-play' },
  clause: 'Rules of Golf 23',
}
