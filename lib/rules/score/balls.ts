// The balls of an entrant and what each is worth on every hole. RoH 2024, Appendix E for where its strokes fall; Rules of
// Golf 3.3, 21 and 23 for what a card in any state is worth.

import type { Card, Hole, HoleScore } from '../day'
import { ballValueOf, type Format } from '../formats/format'
import { strokesInOrder } from '../strokes/strokes-on-holes'
import { valueOnHole } from '../values/value-on-hole'
import { type DayIndex, type PlayerLine, setByHand, type TeeSheet } from './day-index'
import type { TermsInForce } from './terms-in-force'

export interface Ball {
  /** Player id, or side id for the side's one ball. */
  readonly id: string
  readonly sheet: TeeSheet
  readonly holes: readonly Hole[]
  readonly card: Card | null
  /** Course handicap to show; null for a side's ball. */
  readonly course: number | null
  /** Playing handicap, or strokes received in a match. */
  readonly handicap: number
  /**
   * The handicap its player has: what divisions and the tie steps "lower" and "higher handicap" look at. The playing
   * handicap of the competition, in a game inside a group too, where `handicap` is the difference from the lowest; where no
   * handicap counts the course handicap, rounded, or the playing handicap that was set by hand.
   */
  readonly has: number
  readonly strokes: readonly number[]
  /** With penalty strokes in; a hole never to be played any more is 'x'. */
  readonly gross: readonly HoleScore[]
  readonly values: readonly HoleScore[]
  /** Stands for a missing player: it scores for the side, and is nothing the side played itself. */
  readonly filled?: true
}

/** A ball before its strokes are known. */
export interface BallSeed {
  readonly id: string
  readonly lines: readonly PlayerLine[]
  readonly sheet: TeeSheet
  readonly card: Card | null
}

/** `sideTee`: the tee that the terms name for the one card of a side. */
export function seedsOf(
  entrant: string,
  players: readonly string[],
  one: boolean,
  index: DayIndex,
  sideTee?: string,
): BallSeed[] {
  const lines: PlayerLine[] = []
  for (const id of players) {
    const line = index.players.get(id)
    if (line !== undefined) lines.push(line)
  }
  if (lines.length === 0) return []
  if (!one) {
    return lines.map((line) => ({
      id: line.player.id,
      lines: [line],
      sheet: line.sheet,
      card: index.cards.get(line.player.id) ?? null,
    }))
  }
  // One ball: its card is the side's, or the first of its players' that there is.
  const card = index.cards.get(entrant) ?? firstCard(players, index)
  const named = sideTee !== undefined && index.teesPlayed.has(sideTee) ? index.sheets.get(sideTee) : undefined
  return [{ id: entrant, lines, sheet: named ?? lowestCard(lines), card }]
}

/**
 * The card of a side whose players stand on different tees, where the terms name none: a house rule, no source. Lowest par
 * first, then the lower rating, slope and id, so that it is the same whoever of the side is named first.
 */
function lowestCard(lines: readonly PlayerLine[]): TeeSheet {
  const isLower = (a: TeeSheet, b: TeeSheet) => {
    const by =
      a.par - b.par || a.tee.courseRatingTenths - b.tee.courseRatingTenths || a.tee.slopeRating - b.tee.slopeRating
    return by < 0 || (by === 0 && a.tee.id < b.tee.id)
  }
  return lines.reduce((low, { sheet }) => (isLower(sheet, low) ? sheet : low), lines[0]!.sheet)
}

function firstCard(players: readonly string[], index: DayIndex): Card | null {
  for (const id of players) {
    const card = index.cards.get(id)
    if (card !== undefined) return card
  }
  return null
}

/** Handicaps that an entrant's own players have, together, whatever stands for a missing one. */
export function handicapOf(balls: readonly Pick<Ball, 'has' | 'filled'>[]): number {
  return balls.reduce((sum, ball) => (ball.filled ? sum : sum + ball.has), 0)
}

/** Strokes that an entrant's own balls receive, together. */
export function strokesOf(balls: readonly Ball[]): number {
  return balls.reduce((sum, ball) => (ball.filled ? sum : sum + ball.handicap), 0)
}

export function lowestParOf(seeds: readonly BallSeed[]): number {
  let lowest = Number.POSITIVE_INFINITY
  for (const seed of seeds) if (seed.sheet.par < lowest) lowest = seed.sheet.par
  return lowest
}

/**
 * The scores of a disqualified partner are no use to the side, nor are those of a card that was never returned: the side's
 * score on a hole comes from a returned card (Rules of Golf 23.2b, 3.3b(2)). In a match no card is returned. Alone, such
 * scores are only shown.
 */
export function isStruckOut(card: Card | null, { side, ball, isMatch }: Format): boolean {
  if (side.to === 1 || ball === 'one') return false
  return card?.outcome === 'disqualified' || (card?.outcome === 'no-return' && !isMatch)
}

/** The ball with so many strokes. `over` says that holes not played will not be played any more. */
export function ballOf(seed: BallSeed, handicap: number, terms: TermsInForce, over: boolean): Ball {
  const { sheet, card } = seed
  const holes = sheet.tee.holes
  const value = ballValueOf(terms.format.value)
  const strokes = strokesInOrder(handicap, sheet.order)
  const gross = isStruckOut(card, terms.format)
    ? holes.map((): HoleScore => 'x')
    : grossOf(card, holes, over, terms.format.isMatch)
  if (over && terms.competition.notPlayed === 'level') playLevel(card, gross, holes, strokes)
  const values = new Array<HoleScore>(holes.length)
  for (let i = 0; i < holes.length; i++) {
    values[i] = valueOnHole(value, gross[i]!, strokes[i]!, holes[i]!.par, terms.maximum)
  }
  const line = seed.lines.length === 1 ? seed.lines[0]! : null
  const has = terms.format.strokes.kind === 'none' ? handicapWithout(seed, terms) : handicap
  return {
    id: seed.id,
    sheet,
    holes,
    card,
    course: line?.course.rounded ?? null,
    handicap,
    has,
    strokes,
    gross,
    values,
  }
}

/** Where no handicap counts: the course handicaps of the ball's players, or what was set by hand. */
function handicapWithout(seed: BallSeed, { competition }: TermsInForce): number {
  return seed.lines.reduce((sum, line) => sum + (setByHand(line, competition.id) ?? line.course.rounded), 0)
}

function grossOf(card: Card | null, holes: readonly Hole[], over: boolean, inMatch: boolean): HoleScore[] {
  const gross = new Array<HoleScore>(holes.length)
  const finished = over || card?.missed === true || (card?.outcome !== undefined && !inMatch)
  for (let i = 0; i < holes.length; i++) {
    const score = card?.scores[i] ?? null
    if (score === null) gross[i] = finished ? 'x' : null
    else if (score === 'x') gross[i] = 'x'
    else gross[i] = score + (card?.penaltyStrokes?.[holes[i]!.hole] ?? 0)
  }
  return gross
}

/**
 * Level par hole by hole on a common footing: a tee of higher par gives up its extra strokes on the holes that have them,
 * so that cards still out on different tees can be put in order (6.2b gives those strokes as handicap).
 */
export function levelPars(sheet: TeeSheet, lowest: TeeSheet): number[] {
  const pars = sheet.tee.holes.map((hole) => hole.par)
  let extra = sheet.par - lowest.par
  for (let i = 0; i < pars.length && extra > 0; i++) {
    const gap = pars[i]! - (lowest.tee.holes[i]?.par ?? pars[i]!)
    if (gap <= 0) continue
    const given = Math.min(gap, extra)
    pars[i] = pars[i]! - given
    extra -= given
  }
  for (let place = 1; extra > 0 && place <= pars.length; place++, extra--) {
    const at = sheet.order.indexOf(place)
    pars[at] = pars[at]! - 1
  }
  return pars
}

/** The society's rule for a day stopped early: on holes nobody played any more the card is level with net par. */
function playLevel(card: Card | null, gross: HoleScore[], holes: readonly Hole[], strokes: readonly number[]): void {
  if (card === null || card.outcome !== undefined || card.scores.every((score) => score === null)) return
  for (let i = 0; i < holes.length; i++) {
    if ((card.scores[i] ?? null) === null) gross[i] = holes[i]!.par + strokes[i]!
  }
}
