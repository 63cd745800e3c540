// Scramble of two, three or four: all play from the best ball; one score for the side. RoH 2024, Appendix C for the
// weights of the handicaps. Read as net strokes or as points.

import type { AllowanceRow } from '../../editions/edition'
import type { FormatData } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

const SIZES: readonly { readonly size: number; readonly word: string; readonly row: AllowanceRow }[] = [
  { size: 2, word: 'two', row: 'scramble-2' },
  { size: 3, word: 'three', row: 'scramble-3' },
  { size: 4, word: 'four', row: 'scramble-4' },
]

export const scramble: readonly FormatData[] = SIZES.flatMap(({ size, word, row }): FormatData[] => {
  const shared: Omit<FormatData, 'id' | 'name' | 'sentence' | 'value'> = {
    family: size === 2 ? 'pairs' : 'teams',
    side: { from: size, to: size },
    ball: 'one',
    strokes: { kind: 'for-the-side', off: 'own' },
    count: { kind: 'best', take: [1] },
    allowance: { row },
    shortSides: Object.fromEntries(SIZES.flatMap((one) => (one.size < size ? [[one.size, one.row]] : []))),
    clause: 'Society custom; RoH Appendix C',
  }
  const how = `Sides of ${word}: everybody plays from where the best ball lies until it is holed`
  return [
    {
      ...shared,
      id: `scramble-${size}`,
      name: `Scramble of ${word}`,
      sentence: `${how}; net strokes count.`,
      value: { kind: 'strokes' },
    },
    {
      ...shared,
      id: `scramble-${size}-stableford`,
      name: `Scramble of ${word}, Stableford`,
      sentence: `${how}; points count.`,
      value: { kind: 'points', table: STABLEFORD_POINTS },
    },
  ]
})
