// Against par (Rules of Golf 2023, 21.3) with both results of a pair added: society custom.

import type { FormatData } from '../format'

export const pairsAggregatePar: FormatData = {
  id: 'pairs-aggregate-par',
  name: 'Pairs aggregate, par',
  sentence: 'Pairs: the results of both partners against par are added on every hole.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'against-par' },
  count: { kind: 'best', take: [1, 1] },
  allowance: { house: 95, why: 'Nothing is published for an aggregate of two; the figure for singles is used.' },
  clause: 'Rules of Golf 21.3',
}
