// A second way to every standing: each format written out from its definition in the Rules of Golf 2023, Rules 3, 21 and
// 23, with nothing shared with the engine but the shape of a day.
import type { Card, Competition, Day, Hole, HoleScore, Player, Tee } from '@/lib/rules/day'
import { courseHandicapOf, playingHandicapOf, strokesDealt } from './handicaps'

export interface Line {
  readonly entrant: string
  readonly place: number | null
  readonly tied: boolean
  readonly score: number | null
  readonly noPlace: string | null
  /** Playing handicap of each player of the entrant. */
  readonly handicaps: Readonly<Record<string, number>>
  readonly values: readonly (number | null)[]
}

export interface PlayerCard {
  readonly player: Player
  readonly tee: Tee
  readonly card: Card | undefined
  readonly handicap: number
  readonly strokes: readonly number[]
}

const PUBLISHED: Readonly<Record<string, number>> = {
  stableford: 95,
  medal: 95,
  gross: 0,
  par: 95,
  'maximum-score': 95,
  'four-ball-stableford': 85,
  'four-ball-medal': 85,
  'four-ball-par': 90,
  match: 100,
}

export const AGAINST_OWN_PAR = new Set(['stableford', 'par', 'four-ball-stableford', 'four-ball-par'])

export function teeOf(day: Day, player: Player): Tee {
  return day.tees.find((tee) => tee.id === player.tee)!
}

export function parOf(tee: Tee): number {
  return tee.holes.reduce((sum, hole) => sum + hole.par, 0)
}

/** Rule 6.2b: where net strokes are compared, whoever plays the tee with more par has the difference on top. */
export function playingHandicapIn(day: Day, competition: Competition, player: Player, lowestPar: number): number {
  const byHand = player.playingHandicap?.[competition.id] ?? player.playingHandicap?.['*']
  if (byHand !== undefined) return byHand
  const tee = teeOf(day, player)
  const percent = typeof competition.allowance === 'number' ? competition.allowance : PUBLISHED[competition.format]!
  const handicap = playingHandicapOf(courseHandicapOf(player.indexTenths, tee, day.edition), percent)
  return AGAINST_OWN_PAR.has(competition.format) ? handicap : handicap + parOf(tee) - lowestPar
}

export function playerCards(day: Day, competition: Competition, players: readonly Player[]): PlayerCard[] {
  const lowestPar = Math.min(...players.map((player) => parOf(teeOf(day, player))))
  return players.map((player) => {
    const tee = teeOf(day, player)
    const handicap = competition.format === 'gross' ? 0 : playingHandicapIn(day, competition, player, lowestPar)
    return {
      player,
      tee,
      card: day.cards.find((card) => card.player === player.id),
      handicap,
      strokes: strokesDealt(handicap, tee.holes),
    }
  })
}

/** Gross of a hole with the committee's penalty strokes on it. */
export function grossOn(card: Card | undefined, at: number, hole: Hole): HoleScore {
  const score = card?.scores[at] ?? null
  return typeof score === 'number' ? score + (card?.penaltyStrokes?.[hole.hole] ?? 0) : score
}

export type HoleOutcome = { readonly value: number } | 'no score' | 'not played'

/** What one ball makes of one hole. */
export function holeOutcome(competition: Competition, gross: HoleScore, hole: Hole, strokes: number): HoleOutcome {
  if (gross === null) return 'not played'
  switch (competition.format) {
    case 'stableford':
    case 'four-ball-stableford': {
      if (gross === 'x') return { value: 0 }
      const under = hole.par - (gross - strokes)
      // Rule 21.1b(1): a table, not a sum.
      if (under <= -2) return { value: 0 }
      return { value: under + 2 }
    }
    case 'par':
    case 'four-ball-par': {
      if (gross === 'x') return { value: -1 }
      const net = gross - strokes
      return { value: net < hole.par ? 1 : net === hole.par ? 0 : -1 }
    }
    case 'maximum-score': {
      const cap = competition.maximum ?? { kind: 'net-double-bogey' }
      const most =
        cap.kind === 'fixed' ? cap.strokes : cap.kind === 'double-par' ? 2 * hole.par : hole.par + 2 + strokes
      return { value: (gross === 'x' || gross > most ? most : gross) - strokes }
    }
    case 'gross':
      return gross === 'x' ? 'no score' : { value: gross }
    default:
      return gross === 'x' ? 'no score' : { value: gross - strokes }
  }
}

export function higherIsBetter(format: string): boolean {
  return AGAINST_OWN_PAR.has(format)
}
