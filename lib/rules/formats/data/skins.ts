// Skins: society custom; strokes as in a match, RoH 2024 Appendix C.

import type { FormatData } from '../format'

export const skins: FormatData = {
  id: 'skins',
  name: 'Skins',
  sentence: 'The lowest net score alone takes the hole; a tied hole is carried to the next.',
  family: 'group games',
  side: { from: 1, to: 1 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'lowest' },
  value: { kind: 'shared', on: { kind: 'strokes' }, shares: { kind: 'best-alone', tied: 'carried' } },
  count: { kind: 'best', take: [1] },
  allowance: {
    house: 100,
    why: 'Nothing is published for skins; the full difference from the lowest handicap is usual.',
  },
  clause: 'Society custom',
}
