// Rules of Golf 2023, 21.1b: the committee may set another table of points. The table is custom, not published.

import type { FormatData } from '../format'

export const modifiedPoints: FormatData = {
  id: 'modified-points',
  name: 'Modified points',
  sentence:
    'Points that reward risk: eight for three under net par, five for two under, two for one under, none for par, one off for one over and three off for worse.',
  family: 'singles',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: { best: -3, points: [8, 5, 2, 0, -1, -3], beyond: 0, noScore: -3 } },
  count: { kind: 'best', take: [1] },
  allowance: { house: 95, why: 'Nothing is published for a modified table; the figure for Stableford is used.' },
  clause: 'Rules of Golf 21.1b',
}
