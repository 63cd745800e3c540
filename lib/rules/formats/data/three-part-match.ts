// Match play (Rules of Golf 2023, 3.2) in three parts: front nine, back nine and whole. No money is kept.

import type { FormatData } from '../format'

export const threePartMatch: FormatData = {
  id: 'three-part-match',
  name: 'Three-part match',
  sentence: 'One against one, three matches at once: the front nine, the back nine and the whole round.',
  family: 'matches',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: {
    kind: 'against-opponent',
    on: { kind: 'strokes' },
    parts: [
      { name: 'front nine', from: 1, to: 9 },
      { name: 'back nine', from: 10, to: 18 },
      { name: 'whole', from: 1, to: 0 },
    ],
  },
  count: { kind: 'best', take: [1] },
  allowance: { row: 'individual-match' },
  clause: 'Rules of Golf 3.2',
}
