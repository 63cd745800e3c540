// Rules of Golf 2023, 3.3: stroke play without handicap.

import type { FormatData } from '../format'

export const gross: FormatData = {
  id: 'gross',
  name: 'Gross',
  sentence: 'Every stroke counts and no handicap is taken off; the fewest win.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'none' },
  value: { kind: 'strokes' },
  count: { kind: 'best', take: [1] },
  allowance: { house: 0, why: 'No handicap counts in a gross competition.' },
  clause: 'Rules of Golf 3.3',
}
