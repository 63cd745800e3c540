// Split sixes with a clear win, for three: society custom; strokes as in a match, RoH 2024 Appendix C.

import type { FormatData } from '../format'

export const splitSixesClearWin: FormatData = {
  id: 'split-sixes-clear-win',
  name: 'Split sixes, clear win takes all',
  sentence: 'Split sixes in which a hole won by two strokes or more takes all six points.',
  family: 'group games',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: {
    kind: 'shared',
    on: { kind: 'strokes' },
    shares: { kind: 'by-place', points: [4, 2, 0], clear: { by: 2, takes: 6 } },
  },
  count: { kind: 'best', take: [1] },
  allowance: {
    house: 100,
    why: 'Nothing is published for split sixes; the full difference from the lowest handicap is usual.',
  },
  clause: 'Society custom',
}
