// The best k scores of a team of n on every hole, as points, net strokes or against par. RoH 2024, Appendix C has figures
// for teams of four on strokes and against par; for the others ours are marked as house choices.

import type { AllowanceRow } from '../../editions/edition'
import type { FormatAllowance, FormatData, ValueChoice } from '../format'
import { STABLEFORD_POINTS } from '../stableford-points'

const WORDS = ['', 'one', 'two', 'three', 'four', 'five', 'six']

type Reading = 'stableford' | 'medal' | 'par'

const VALUES: Readonly<Record<Reading, { readonly what: string; readonly name: string; readonly value: ValueChoice }>> =
  {
    stableford: { what: 'points', name: 'Stableford', value: { kind: 'points', table: STABLEFORD_POINTS } },
    medal: { what: 'net scores', name: 'medal', value: { kind: 'strokes' } },
    par: { what: 'scores against par', name: 'par', value: { kind: 'against-par' } },
  }

/** Figures of the table by how many of four count; the last for all of them. */
const ON_STROKES = [75, 85, 100, 100]
const AGAINST_PAR = [75, 80, 90, 100]

const OF_FOUR: Readonly<Record<number, readonly [AllowanceRow, AllowanceRow]>> = {
  1: ['best-1-of-4', 'best-1-of-4-par'],
  2: ['best-2-of-4', 'best-2-of-4-par'],
  3: ['best-3-of-4', 'best-3-of-4-par'],
  4: ['best-4-of-4', 'best-4-of-4-par'],
}

function allowanceOf(best: number, of: number, reading: Reading): FormatAllowance {
  const rows = OF_FOUR[best]
  if (of === 4 && rows !== undefined && reading !== 'stableford') return { row: reading === 'par' ? rows[1] : rows[0] }
  const table = reading === 'par' ? AGAINST_PAR : ON_STROKES
  const house = best === of ? 100 : table[Math.min(best, 3) - 1]!
  if (of === 4) return { house, why: 'The published figure for strokes, used for points too.' }
  return { house, why: `Nothing is published for teams of ${WORDS[of]}; the figure for teams of four is used.` }
}

function bestOf(best: number, of: number, reading: Reading): FormatData {
  const { what, name, value } = VALUES[reading]
  const how = best === of ? `All ${WORDS[of]}` : `The best ${WORDS[best]} of ${WORDS[of]}`
  return {
    id: `best-${best}-of-${of}-${reading}`,
    name: `Best ${best} of ${of}, ${name}`,
    sentence: `${how} ${what} of the side count on every hole.`,
    family: of === 2 ? 'pairs' : 'teams',
    side: { from: of, to: of },
    ball: 'own',
    strokes: { kind: 'each-player', off: 'own' },
    value,
    count: { kind: 'best', take: new Array<number>(best).fill(1) },
    allowance: allowanceOf(best, of, reading),
    clause: reading === 'medal' ? 'Rules of Golf 3.3' : reading === 'par' ? 'Rules of Golf 21.3' : 'Rules of Golf 21.1',
  }
}

const SIZES = [3, 4, 5, 6]
const READINGS: readonly Reading[] = ['stableford', 'medal', 'par']

/** Two partners are the four-ball (best one) and the pairs aggregate (both), which have their own files. */
export const bestOfTeams: readonly FormatData[] = SIZES.flatMap((of) =>
  Array.from({ length: of }, (_, i) => i + 1).flatMap((best) => READINGS.map((reading) => bestOf(best, of, reading))),
)
