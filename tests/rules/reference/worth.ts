// What one ball makes of one hole, from Rules of Golf 2023, Rules 3.1c and 21: net is gross less the strokes received.
import type { Competition } from '@/lib/rules/day'
import { type Form, stablefordPoints } from './forms'

/** A figure; no score where one is needed; or not known yet. */
export type Worth = number | 'no score' | null

export function holeValue(competition: Competition, form: Form, gross: number | 'x', par: number, strokes: number) {
  switch (form.kind) {
    case 'points':
      return gross === 'x' ? (form.noScore ?? 0) : (form.points ?? stablefordPoints)(par - (gross - strokes))
    case 'against par':
      return gross === 'x' ? -1 : Math.sign(par - (gross - strokes))
    case 'maximum': {
      const cap = competition.maximum ?? { kind: 'net-double-bogey' }
      const most = cap.kind === 'fixed' ? cap.strokes : cap.kind === 'double-par' ? 2 * par : par + 2 + strokes
      return (gross === 'x' || gross > most ? most : gross) - strokes
    }
    case 'gross':
    case 'strokes':
      return gross === 'x' ? ('no score' as const) : gross - strokes
  }
}
