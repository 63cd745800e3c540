// Prizes fall to places. Guests win what the terms leave them; nobody takes two prizes with an own card: the next one
// steps up, and the sheet says why. A tie that stands shares what falls to its places.

import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import { capital, listed, placeInWords, scoreLong } from './in-words'
import type { BoardRow, CompetitionBoard, ResultSheet } from './views'

type SheetPrize = ResultSheet['prizes'][number]

interface Held {
  readonly prize: string
  readonly competition: string
  readonly place: number | null
}

export function prizesOf(
  records: readonly CompetitionRecord[],
  boards: readonly CompetitionBoard[],
  isGuest: (entryId: string) => boolean,
): readonly SheetPrize[] {
  // Whoever holds a prize with an own card; a side's prize is not weighed against its players' own.
  const held = new Map<string, Held>()
  return records.flatMap((record) => {
    const board = boards.find((one) => one.id === record.id)
    if (!board) return []
    return [...record.prizes]
      .sort((a, b) => a.number - b.number)
      .map((prize) => prizeOf(prize, record, board, held, isGuest))
  })
}

function prizeOf(
  prize: PrizeRecord,
  record: CompetitionRecord,
  board: CompetitionBoard,
  held: Map<string, Held>,
  isGuest: (entryId: string) => boolean,
): SheetPrize {
  const head = { competition: record.name, name: prize.name, valuePence: prize.valuePence }
  const nobody = (because: string): SheetPrize => ({ ...head, entrant: null, winner: '–', score: '', because })
  if (board.matches.length && !board.rows.length) return nobody('The matches decide it.')

  const placed = board.rows.filter((row) => row.place !== null && row.holesPlayed > 0)
  const mayWin = placed.filter((row) => isEligible(row, prize, record, isGuest))
  const isTaken = (row: BoardRow) => {
    const has = held.get(row.entrant)
    return has !== undefined && !(has.competition === record.id && row.tied && has.place === row.place)
  }
  const at = mayWin.findIndex((row, index) => index >= prize.place - 1 && !isTaken(row))
  const winner = mayWin[at]
  if (!winner) return nobody(nobodyBecause(prize, mayWin.length))
  const shared = winner.tied ? mayWin.filter((row) => row.place === winner.place && !isTaken(row)) : [winner]

  const because = becauseOf(prize, record, placed, mayWin, winner, shared, held, isGuest)
  for (const row of shared)
    if (!held.has(row.entrant)) held.set(row.entrant, { prize: prize.name, competition: record.id, place: row.place })
  return {
    ...head,
    entrant: shared.length === 1 ? winner.entrant : null,
    winner: listed(shared.map((row) => row.name)),
    score: scoreLong(winner.score ?? 0, board.unit, record.format !== 'gross'),
    because,
  }
}

function isEligible(
  row: BoardRow,
  prize: PrizeRecord,
  record: CompetitionRecord,
  isGuest: (entryId: string) => boolean,
): boolean {
  const guests = row.entryIds.filter(isGuest).length
  if (prize.eligible === 'guests') return guests > 0
  if (prize.eligible === 'members') return guests === 0
  // A guest in a side does not shut the member out of it.
  return record.terms.guests === 'for-every-prize' || guests < row.entryIds.length
}

function nobodyBecause(prize: PrizeRecord, field: number): string {
  if (field === 0) return prize.eligible === 'guests' ? 'No guest returned a card.' : 'Nobody returned a card.'
  return 'Too few cards for this place.'
}

function becauseOf(
  prize: PrizeRecord,
  record: CompetitionRecord,
  placed: readonly BoardRow[],
  mayWin: readonly BoardRow[],
  winner: BoardRow,
  shared: readonly BoardRow[],
  held: ReadonlyMap<string, Held>,
  isGuest: (entryId: string) => boolean,
): string | null {
  const reasons: string[] = []
  const above = placed.slice(0, placed.indexOf(winner))
  const passed = mayWin.slice(prize.place - 1, mayWin.indexOf(winner))
  for (const row of passed) {
    const has = held.get(row.entrant)
    if (has) reasons.push(`${row.name} already has ${has.prize}`)
  }
  const guestsAbove = above.filter((row) => row.entryIds.every(isGuest) && !mayWin.includes(row))
  if (guestsAbove.length && prize.eligible !== 'guests')
    reasons.push(
      record.terms.guests === 'guest-prize-only' && prize.eligible === 'everybody'
        ? 'guests play for the guest prize'
        : 'it is for members',
    )
  if (shared.length > 1) reasons.push('level, and the tie stands: shared')
  if (!reasons.length) return null
  return `${capital(placeInWords(winner.place ?? 0))} on the board; ${reasons.join('; ')}.`
}
