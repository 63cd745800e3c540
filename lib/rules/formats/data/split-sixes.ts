// Split sixes for three: society custom; strokes as in a match, RoH 2024 Appendix C.

import type { FormatData } from '../format'

export const splitSixes: FormatData = {
  id: 'split-sixes',
  name: 'Split sixes',
  sentence: 'Three players share six points a hole: four for the best, two for the second; tied places share.',
  family: 'group games',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'shared', on: { kind: 'strokes' }, shares: { kind: 'by-place', points: [4, 2, 0] } },
  count: { kind: 'best', take: [1] },
  allowance: {
    house: 100,
    why: 'Nothing is published for split sixes; the full difference from the lowest handicap is usual.',
  },
  clause: 'Society custom',
}
