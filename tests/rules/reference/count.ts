// A second way to every figure of a card: handicap, strokes, and what a ball makes of a hole, from Rules of Golf 2023,
// Rules 3, 21 and 23, with nothing shared with the engine but the shape of a day.
import type { Card, Competition, Day, Hole, HoleScore, Player, Tee } from '@/lib/rules/day'
import { formOf, isGame, stablefordPoints } from './forms'
import { courseHandicapOf, playingHandicapOf, sideHandicapOf, strokesDealt } from './handicaps'

export interface Line {
  readonly entrant: string
  readonly place: number | null
  readonly tied: boolean
  readonly score: number | null
  readonly noPlace: string | null
  /** Playing handicap of each player of the entrant; of the side itself where it plays one ball. */
  readonly handicaps: Readonly<Record<string, number>>
  readonly values: readonly (number | null)[]
}

export interface PlayerCard {
  /** Player, or side that plays one ball. */
  readonly id: string
  readonly tee: Tee
  readonly card: Card | undefined
  readonly handicap: number
  readonly strokes: readonly number[]
}

export function teeOf(day: Day, player: Player): Tee {
  return day.tees.find((tee) => tee.id === player.tee)!
}

export function parOf(tee: Tee): number {
  return tee.holes.reduce((sum, hole) => sum + hole.par, 0)
}

function parDifference(competition: Competition, tee: Tee, lowestPar: number): number {
  const { kind } = formOf(competition.format)
  return kind === 'strokes' || kind === 'maximum' ? parOf(tee) - lowestPar : 0
}

/** Rule 6.2b: where net strokes are compared, whoever plays the tee with more par has the difference on top. */
export function playingHandicapIn(day: Day, competition: Competition, player: Player, lowestPar: number): number {
  const byHand = player.playingHandicap?.[competition.id] ?? player.playingHandicap?.['*']
  if (byHand !== undefined) return byHand
  const tee = teeOf(day, player)
  const percent = (competition.allowance ?? formOf(competition.format).allowance) as number
  const handicap = playingHandicapOf(courseHandicapOf(player.indexTenths, tee, day.edition), percent)
  return handicap + parDifference(competition, tee, lowestPar)
}

export function playerCards(day: Day, competition: Competition, players: readonly Player[]): PlayerCard[] {
  const lowestPar = Math.min(...players.map((player) => parOf(teeOf(day, player))))
  return players.map((player) => {
    const tee = teeOf(day, player)
    const gross = formOf(competition.format).kind === 'gross'
    const handicap = gross ? 0 : playingHandicapIn(day, competition, player, lowestPar)
    const card = day.cards.find((one) => one.player === player.id)
    return { id: player.id, tee, card, handicap, strokes: strokesDealt(handicap, tee.holes) }
  })
}

/** One ball for the side: the first player's tee, and the side's own card or the first there is of its players. */
export function sideCard(day: Day, competition: Competition, id: string, lowestPar: number): PlayerCard {
  const ids = day.sides.find((side) => side.id === id)!.players
  const players = ids.map((player) => day.players.find((one) => one.id === player)!)
  const tee = teeOf(day, players[0]!)
  const courses = players.map((player) => courseHandicapOf(player.indexTenths, teeOf(day, player), day.edition))
  const allowance = competition.allowance ?? formOf(competition.format).allowance
  const weights = typeof allowance === 'number' ? players.map(() => allowance) : allowance
  const handicap = sideHandicapOf(courses, weights) + parDifference(competition, tee, lowestPar)
  const cards = [id, ...ids].flatMap((owner) => day.cards.find((card) => card.player === owner) ?? [])
  return { id, tee, card: cards[0], handicap, strokes: strokesDealt(handicap, tee.holes) }
}

/** Gross of a hole with the committee's penalty strokes on it. */
export function grossOn(card: Card | undefined, at: number, hole: Hole): HoleScore {
  const score = card?.scores[at] ?? null
  return typeof score === 'number' ? score + (card?.penaltyStrokes?.[hole.hole] ?? 0) : score
}

/** What one ball makes of one hole: a figure, or nothing that counts. */
export function holeValue(competition: Competition, gross: number | 'x', hole: Hole, strokes: number): number | null {
  const form = formOf(competition.format)
  switch (form.kind) {
    case 'points':
      return gross === 'x' ? (form.noScore ?? 0) : (form.points ?? stablefordPoints)(hole.par - (gross - strokes))
    case 'against par': {
      if (gross === 'x') return -1
      const net = gross - strokes
      return net < hole.par ? 1 : net === hole.par ? 0 : -1
    }
    case 'maximum': {
      const cap = competition.maximum ?? { kind: 'net-double-bogey' }
      const most =
        cap.kind === 'fixed' ? cap.strokes : cap.kind === 'double-par' ? 2 * hole.par : hole.par + 2 + strokes
      return (gross === 'x' || gross > most ? most : gross) - strokes
    }
    case 'gross':
      return gross === 'x' ? null : gross
    case 'strokes':
      return gross === 'x' ? null : gross - strokes
  }
}

export function higherIsBetter(format: string): boolean {
  return isGame(format) || ['points', 'against par'].includes(formOf(format).kind)
}

/** What a score that must count and is not there is worth: nothing, a lost hole, or no result at all. */
export function worthOfNone(format: string): number | null {
  const form = formOf(format)
  return form.kind === 'points' ? (form.noScore ?? 0) : form.kind === 'against par' ? -1 : null
}
