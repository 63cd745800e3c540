// Skins without carrying: society custom; strokes as in a match, RoH 2024 Appendix C.

import type { FormatData } from '../format'

export const skinsNotCarried: FormatData = {
  id: 'skins-not-carried',
  name: 'Skins, ties not carried',
  sentence: 'The lowest net score alone takes the hole; a tied hole is nobody’s.',
  family: 'group games',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'shared', on: { kind: 'strokes' }, shares: { kind: 'best-alone', tied: 'lost' } },
  count: { kind: 'best', take: [1] },
  allowance: {
    house: 100,
    why: 'Nothing is published for skins; the full difference from the lowest handicap is usual.',
  },
  clause: 'Society custom',
}
