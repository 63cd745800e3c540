// Prizes fall to places. Guests win what the terms leave them; where the terms give one prize a player, the next in place
// steps up and the sheet says why. A tie that stands shares what falls to its places.

import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { WorkingStep } from '@/lib/rules/standings'
import { prizeWorking } from '@/lib/rules/working/prize-working'
import { rowsOfDivision } from './divisions'
import { capital, listed, placeInWords, scoreLong } from './in-words'
import { type Giving, type Held, heldElsewhere, nowHeld } from './prize-giving'
import { mostValuableFirst, prizeRuleOf, sortedPrizes } from './prize-rule'
import { firstInGroups } from './shared-games'
import type { BoardRow, CompetitionBoard, ResultSheet } from './views'

export type SheetPrize = ResultSheet['prizes'][number]

/** Said where a prize is for the winner of matches, which have no list of places. */
export const MATCHES_DECIDE = 'The matches decide it.'

export function prizesOf(
  records: readonly CompetitionRecord[],
  boards: readonly CompetitionBoard[],
  isGuest: (entryId: EntryId) => boolean,
  nameOf: (entryId: EntryId) => string,
): readonly SheetPrize[] {
  const rule = prizeRuleOf(records)
  const listedPrizes = records.flatMap((record) => {
    const board = boards.find((one) => one.id === record.id)
    return board ? sortedPrizes(record).map((prize) => ({ prize, record, board })) : []
  })
  const inTurn = rule.onePrize === 'by-value' ? mostValuableFirst(listedPrizes) : listedPrizes
  const held = new Map<string, Held>()
  const given = new Map(inTurn.map((one) => [one, give({ ...one, rule, isGuest, nameOf }, held)]))
  return listedPrizes.map((one) => given.get(one)!)
}

function give(
  one: Pick<Giving, 'prize' | 'record' | 'board' | 'rule' | 'isGuest' | 'nameOf'>,
  held: Map<string, Held>,
): SheetPrize {
  const { prize, record, board, isGuest } = one
  const division = prize.division ? (board.divisions?.find(({ id }) => id === prize.division) ?? null) : null
  const head = {
    competition: record.name,
    name: prize.name,
    valuePence: prize.valuePence,
    ...(division ? { division: division.name } : {}),
  }
  const nobody = (because: string): SheetPrize => ({ ...head, entrant: null, winner: '–', score: '', because })
  if (board.matches.length && !board.rows.length) return nobody(MATCHES_DECIDE)
  if (!prize.division && firstInGroups(board).length > 1)
    return nobody('Each group is a game of its own: no place is for the whole field.')
  if (prize.division && !division) return nobody('The division of this prize is no part of the terms any more.')

  const rows = division ? rowsOfDivision(board, division.id) : board.rows
  const placed = rows.filter((row) => row.place !== null && row.holesPlayed > 0)
  const mayWin = placed.filter((row) => isEligible(row, prize, record, isGuest))
  // As things stood before this prize: its own words are about what was held then.
  const before = new Map([...held].map(([who, has]) => [who, { ...has, places: new Set(has.places) }]))
  const giving: Giving = { ...one, division, placed, mayWin, held: before }
  const isTaken = (row: BoardRow) => heldElsewhere(row, giving) !== null
  const at = mayWin.findIndex((row, index) => index >= prize.place - 1 && !isTaken(row))
  const winner = mayWin[at]
  if (!winner) {
    const because = [nobodyBecause(prize, mayWin.length), ...passedOver(giving, mayWin.length)].join(' ')
    return { ...nobody(because), working: workingOfPrize(giving, []) }
  }
  const shared = winner.tied ? mayWin.filter((row) => row.place === winner.place && !isTaken(row)) : [winner]
  nowHeld(shared, one, held)
  return {
    ...head,
    entrant: shared.length === 1 ? winner.entrant : null,
    winner: listed(shared.map((row) => row.name)),
    score: scoreLong(winner.score ?? 0, board.unit, record.format !== 'gross'),
    because: becauseOf(giving, winner, shared),
    working: workingOfPrize(giving, shared),
  }
}

/** Whoever stood in line for it and has a prize, when nobody was left: one sentence, or none. */
function passedOver(giving: Giving, until: number): string[] {
  const has = holdersAbove(giving, until)
  return has.length > 0 ? [`${capital(has.join('; '))}.`] : []
}

/** "Jago Trevennor already has the cup", for each who would have come first. */
function holdersAbove(giving: Giving, until: number): string[] {
  return giving.mayWin.slice(giving.prize.place - 1, until).flatMap((row) => {
    const has = heldElsewhere(row, giving)
    if (!has) return []
    return has.player === null
      ? `${row.name} already has ${has.prize}`
      : `${row.name} passed over: ${has.player} already has ${has.prize}, and the prize of a side is not split`
  })
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
  const { prize, record, placed, mayWin, isGuest, division } = giving
  const above = placed.slice(0, placed.indexOf(winner))
  const reasons = holdersAbove(giving, mayWin.indexOf(winner))
  const guestsAbove = above.filter((row) => row.entryIds.every(isGuest) && !mayWin.includes(row))
  if (guestsAbove.length && prize.eligible !== 'guests') {
    const [guests, isOne] = [listed(guestsAbove.map((row) => row.name)), guestsAbove.length === 1]
    reasons.push(
      record.terms.guests === 'guest-prize-only' && prize.eligible === 'everybody'
        ? `${guests} ${isOne ? 'plays' : 'play'} for the guest prize`
        : `${guests} ${isOne ? 'is a guest' : 'are guests'}, and the prize is for members`,
    )
  }
  if (shared.length > 1) reasons.push('level, and the tie stands: shared')
  if (!reasons.length) return null
  const where = division ? `in ${division.name}` : 'on the board'
  return `${capital(placeInWords(winner.place ?? 0))} ${where}; ${reasons.join('; ')}.`
}

function workingOfPrize(giving: Giving, winners: readonly BoardRow[]): readonly WorkingStep[] {
  const { prize, record, board, placed, mayWin, division } = giving
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
      const has = heldElsewhere(row, giving)
      const holds = has && (has.player === null ? has.prize : `${has.prize} (${has.player})`)
      return {
        entrant: row.entrant,
        name: row.name,
        place: row.place ?? 0,
        tied: row.tied,
        score: scoreLong(row.score ?? 0, board.unit, record.format !== 'gross'),
        ...(mayWin.includes(row) ? {} : { barred }),
        ...(holds === null ? {} : { holds }),
      }
    }),
    winners: winners.map((row) => row.entrant),
  })
}
