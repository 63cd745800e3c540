// Stroke play (Rules of Golf 2023, 3.3) with both scores of a pair added: society custom.

import type { FormatData } from '../format'

export const pairsAggregateMedal: FormatData = {
  id: 'pairs-aggregate-medal',
  name: 'Pairs aggregate, medal',
  sentence: 'Pairs: the net scores of both partners are added on every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'strokes' },
  count: { kind: 'best', take: [1, 1] },
  allowance: { house: 95, why: 'Nothing is published for an aggregate of two; the figure for singles is used.' },
  clause: 'Rules of Golf 3.3',
}
