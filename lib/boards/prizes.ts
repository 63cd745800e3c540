// Prizes fall to places. Guests win what the terms leave them; where the terms give one prize a player, the next in place
// steps up and the sheet says why. A tie that stands shares what falls to its places.

import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { OnePrize } from '@/lib/facts/terms'
import type { WorkingStep } from '@/lib/rules/standings'
import { prizeWorking } from '@/lib/rules/working/prize-working'
import { rowsOfDivision } from './divisions'
import { capital, listed, placeInWords, scoreLong } from './in-words'
import { type Giving, type Held, isHeldElsewhere } from './prize-giving'
import type { BoardRow, CompetitionBoard, ResultSheet } from './views'

export type SheetPrize = ResultSheet['prizes'][number]

/** The rule of the day stands in its first competition. */
export const prizeRuleOf = (records: readonly CompetitionRecord[]): OnePrize => records[0]?.terms.onePrize ?? 'by-order'

export function prizesOf(
  records: readonly CompetitionRecord[],
  boards: readonly CompetitionBoard[],
  isGuest: (entryId: EntryId) => boolean,
): readonly SheetPrize[] {
  const rule = prizeRuleOf(records)
  const listedPrizes = records.flatMap((record) => {
    const board = boards.find((one) => one.id === record.id)
    if (!board) return []
    return [...record.prizes].sort((a, b) => a.number - b.number).map((prize) => ({ prize, record, board }))
  })
  const worth = ({ prize }: (typeof listedPrizes)[number]) => prize.valuePence ?? 0
  const inTurn = rule === 'by-value' ? [...listedPrizes].sort((a, b) => worth(b) - worth(a)) : listedPrizes
  // Whoever holds a prize with an own card; a side's prize is not weighed against its players' own.
  const held = new Map<string, Held>()
  const given = new Map(inTurn.map((one) => [one, give({ ...one, rule, held, isGuest })]))
  return listedPrizes.map((one) => given.get(one)!)
}

function give(one: Pick<Giving, 'prize' | 'record' | 'board' | 'rule' | 'isGuest'> & { held: Map<string, Held> }) {
  const { prize, record, board, held, rule, isGuest } = one
  const division = prize.division ? (board.divisions?.find(({ id }) => id === prize.division) ?? null) : null
  const head = {
    competition: record.name,
    name: prize.name,
    valuePence: prize.valuePence,
    ...(division ? { division: division.name } : {}),
  }
  const nobody = (because: string): SheetPrize => ({ ...head, entrant: null, winner: '–', score: '', because })
  if (board.matches.length && !board.rows.length) return nobody('The matches decide it.')
  if (prize.division && !division) return nobody('The division of this prize is no part of the terms any more.')

  const rows = division ? rowsOfDivision(board, division.id) : board.rows
  const placed = rows.filter((row) => row.place !== null && row.holesPlayed > 0)
  const mayWin = placed.filter((row) => isEligible(row, prize, record, isGuest))
  const giving: Giving = { prize, record, board, rule, division, placed, mayWin, held: new Map(held), isGuest }
  const isTaken = (row: BoardRow) => rule !== 'as-many' && isHeldElsewhere(row, giving)
  const at = mayWin.findIndex((row, index) => index >= prize.place - 1 && !isTaken(row))
  const winner = mayWin[at]
  if (!winner) return { ...nobody(nobodyBecause(prize, mayWin.length)), working: workingOfPrize(giving, []) }
  const shared = winner.tied ? mayWin.filter((row) => row.place === winner.place && !isTaken(row)) : [winner]
  for (const row of shared)
    if (!held.has(row.entrant))
      held.set(row.entrant, {
        prize: prize.name,
        competition: record.id,
        division: prize.division ?? null,
        place: row.place,
      })
  return {
    ...head,
    entrant: shared.length === 1 ? winner.entrant : null,
    winner: listed(shared.map((row) => row.name)),
    score: scoreLong(winner.score ?? 0, board.unit, record.format !== 'gross'),
    because: becauseOf(giving, winner, shared),
    working: workingOfPrize(giving, shared),
  }
}

function isEligible(
  row: BoardRow,
  prize: PrizeRecord,
  record: CompetitionRecord,
  isGuest: (entryId: EntryId) => boolean,
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

function becauseOf(giving: Giving, winner: BoardRow, shared: readonly BoardRow[]): string | null {
  const { prize, record, rule, placed, mayWin, held, isGuest, division } = giving
  const reasons: string[] = []
  const above = placed.slice(0, placed.indexOf(winner))
  const passed = mayWin.slice(prize.place - 1, mayWin.indexOf(winner))
  for (const row of rule === 'as-many' ? [] : passed) {
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
  const where = division ? `in ${division.name}` : 'on the board'
  return `${capital(placeInWords(winner.place ?? 0))} ${where}; ${reasons.join('; ')}.`
}

function workingOfPrize(giving: Giving, winners: readonly BoardRow[]): readonly WorkingStep[] {
  const { prize, record, board, rule, placed, mayWin, held, division } = giving
  const who =
    prize.eligible === 'everybody' && record.terms.guests === 'guest-prize-only'
      ? 'everybody but guests'
      : prize.eligible
  const barred =
    prize.eligible === 'guests'
      ? 'it is for guests'
      : prize.eligible === 'members'
        ? 'it is for members'
        : 'guests play for the guest prize'
  return prizeWorking({
    name: prize.name,
    place: prize.place,
    isFor: division ? `${who} in ${division.name}` : who,
    candidates: placed.map((row) => {
      const holds = rule !== 'as-many' && isHeldElsewhere(row, giving) ? held.get(row.entrant)?.prize : undefined
      return {
        entrant: row.entrant,
        name: row.name,
        place: row.place ?? 0,
        tied: row.tied,
        score: scoreLong(row.score ?? 0, board.unit, record.format !== 'gross'),
        ...(mayWin.includes(row) ? {} : { barred }),
        ...(holds === undefined ? {} : { holds }),
      }
    }),
    winners: winners.map((row) => row.entrant),
  })
}
