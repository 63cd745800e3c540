// Any card under any format, after the event: the same strokes read as another competition. The forms of play are those
// of Rules of Golf 2023, 3.3, 21 to 23; the allowance is the published one (RoH 2024, Appendix C) unless terms are given.

import type { Competition, Day } from '../day'
import { FORMATS, formatOf } from '../formats/catalogue'
import type { Format } from '../formats/format'
import { scoreDay } from '../score-day'
import type { CompetitionResult, Standing, WorkingStep } from '../standings'
import { type HoleWorking, holeWorking } from '../working/hole-working'
import { totalWorking } from '../working/total-working'

export interface CardReading {
  readonly format: Format
  readonly result: CompetitionResult
  readonly standing: Standing
  /** The handicap, then the total. */
  readonly steps: readonly WorkingStep[]
  readonly holeWorking: (hole: number) => HoleWorking | null
}

const ID = 'reading'

/**
 * One player's card, or the cards of several as a side. A single card is read in the field of the day, so that it has a
 * place; a side put together for the occasion stands alone. Null where the format cannot be read from these cards: a
 * match, a game of shares, a side of another size, somebody who does not play.
 */
export function readCardAs(
  day: Day,
  players: readonly string[],
  formatId: string,
  terms: Omit<Partial<Competition>, 'id' | 'format' | 'matches'> = {},
): CardReading | null {
  const format = formatOf(formatId)
  if (format === null || !fits(format, players.length)) return null
  if (!players.every((id) => day.players.some((one) => one.id === id))) return null
  const single = format.side.to === 1
  // A side of the day keeps its own card, where it played one ball.
  const known = day.sides.find(
    (side) => side.players.length === players.length && side.players.every((id) => players.includes(id)),
  )
  const entrant = single ? players[0]! : (known?.id ?? players.join(' and '))
  const { date, courseName, edition, tees, cards, closed } = day
  const read: Day = {
    date,
    ...(courseName === undefined ? {} : { courseName }),
    edition,
    tees,
    players: day.players,
    sides: single ? [] : [{ id: entrant, players, competitions: [ID] }],
    cards,
    competitions: [{ ...terms, id: ID, format: formatId }],
    closed,
  }
  const result = scoreDay(read)[0]
  const standing = result?.standings.find((one) => one.entrant === entrant)
  if (result === undefined || standing === undefined) return null
  const rounds = terms.rounds ?? [1]
  const workingOf = (hole: number) => holeWorking(read, ID, entrant, hole, FORMATS, rounds[rounds.length - 1])
  const first = standing.holes[0]
  const steps = first === undefined ? [] : (workingOf(first.hole)?.steps ?? [])
  // Everything before the strokes of a hole is about the handicap.
  const upTo = steps.findIndex((step) => step.label.startsWith('Strokes on hole'))
  return {
    format,
    result,
    standing,
    steps: [...steps.slice(0, Math.max(upTo, 0)), ...totalWorking(standing, result.unit, formatId)],
    holeWorking: workingOf,
  }
}

function fits(format: Format, players: number): boolean {
  return !format.isMatch && format.value.kind !== 'shared' && players >= format.side.from && players <= format.side.to
}

/** Formats under which so many own cards can be read, in the order of the catalogue. */
export function readableAs(players: number, ball: Format['ball'] = 'own'): readonly Format[] {
  return FORMATS.filter((format) => fits(format, players) && (players === 1 || format.ball === ball))
}
