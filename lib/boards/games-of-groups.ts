// Skins and sixes are played inside each group: who stands against whom on a board and on a sheet.

import type { BoardRow, CompetitionBoard } from './views'

export interface GameOfGroup<Row> {
  /** Null where everybody stands against everybody. */
  readonly groupNumber: number | null
  readonly rows: readonly Row[]
}

/** The rows that stand against one another: those of each group where each has places of its own, otherwise all of them. */
export function gamesOf<Row extends Pick<BoardRow, 'entrant'>>(
  { shared = [], placesInGroups }: Pick<CompetitionBoard, 'shared' | 'placesInGroups'>,
  rows: readonly Row[],
): readonly GameOfGroup<Row>[] {
  if (!placesInGroups) return [{ groupNumber: null, rows }]
  return shared
    .map(({ groupNumber, entrants }) => ({ groupNumber, rows: rows.filter((row) => entrants.includes(row.entrant)) }))
    .filter((game) => game.rows.length > 0)
}
