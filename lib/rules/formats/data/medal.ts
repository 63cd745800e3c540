// Rules of Golf 2023, 3.3: stroke play with handicap.

import type { FormatData } from '../format'

export const medal: FormatData = {
  id: 'medal',
  name: 'Medal',
  sentence: 'Every stroke counts: gross less playing handicap, and the fewest win.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'strokes' },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-stroke-play' },
  clause: 'Rules of Golf 3.3',
}
