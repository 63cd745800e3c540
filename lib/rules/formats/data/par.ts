// Rules of Golf 2023, 21.3: par, also called bogey.

import type { FormatData } from '../format'

export const par: FormatData = {
  id: 'par',
  name: 'Par',
  sentence: 'A match against the net par of every hole: won, halved or lost, and the most holes up win.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'against-par' },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-par' },
  clause: 'Rules of Golf 21.3',
}
