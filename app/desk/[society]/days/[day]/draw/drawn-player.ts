import { strokesFigure } from '@/lib/boards/figure'
import type { EntryId } from '@/lib/facts/ids'

export interface DrawnPlayer {
  readonly entryId: EntryId
  readonly name: string
  /** What the player plays off, as it is written and as it is read out. */
  readonly figure: { readonly written: string; readonly said: string } | null
  readonly note: string | null
}

/** The player's own figure; on one ball the side's; nothing before there is one. */
export function figureOf(own: number | undefined, ofSide: number | undefined): DrawnPlayer['figure'] {
  if (own !== undefined) return { written: strokesFigure(own), said: `playing handicap ${strokesFigure(own)}` }
  if (ofSide === undefined) return null
  return { written: strokesFigure(ofSide), said: `playing handicap of the side ${strokesFigure(ofSide)}` }
}
