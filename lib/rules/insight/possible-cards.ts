// The best and the worst card that can still come of the one there is. Rules of Golf 2023, 1.1: a ball may be holed with
// the first stroke, so the best on a hole is 1 and the worst is no score. Where a table of points rewards something else
// more, that is taken.
//
// Why two cards are enough: a hole is worth no less when a ball on it is worth more, a total and every window of a tie
// rule are sums of holes, and handicap, lot and play-off do not move. So the card that is best on every hole is best on
// every step at once, and no card between the two comes above the one or below the other.

import type { Card, HoleScore } from '../day'
import { ballValueOf, type PointsTable } from '../formats/format'
import type { Ball, BallSeed } from '../score/balls'
import type { DayIndex } from '../score/day-index'
import { ballsOf, type Field } from '../score/field'
import type { TermsInForce } from '../score/terms-in-force'
import { valueOnHole } from '../values/value-on-hole'

export type Extreme = 'best' | 'worst'

/** May this ball's score on the hole still be written? A card ruled out or withdrawn, and a round missed, are finished. */
export function isOpen(card: Card | null, i: number): boolean {
  return card?.outcome === undefined && card?.missed !== true && (card?.scores[i] ?? null) === null
}

/** The day over, with every open hole of this competition's balls filled in at one extreme. */
export function filledIndex(field: Field, terms: TermsInForce, index: DayIndex, extreme: Extreme): DayIndex {
  const cards = new Map(index.cards)
  field.seeds.forEach((seeds, at) => {
    const balls = scoreAt(terms, extreme) === null ? ballsOf(field, at, terms, index).slice(0, seeds.length) : seeds
    for (const card of filledCards(balls, terms, extreme)) cards.set(card.player, card)
  })
  return { ...index, day: { ...index.day, closed: true }, cards }
}

/** Their cards with every open hole filled in; none for a card that has no open hole. */
export function filledCards(balls: readonly (Ball | BallSeed)[], terms: TermsInForce, extreme: Extreme): Card[] {
  const everywhere = scoreAt(terms, extreme)
  return balls.flatMap((ball): Card[] => {
    const { card, sheet, id } = ball
    const holes = sheet.tee.holes
    if (!holes.some((_, i) => isOpen(card, i))) return []
    const scores = holes.map((_, i) =>
      isOpen(card, i) ? (everywhere ?? extremeScore(ball as Ball, i, terms, extreme)) : card!.scores[i]!,
    )
    return [card === null ? { player: id, scores } : { ...card, scores }]
  })
}

/** The same score everywhere; null where the table of points goes up and down, and each ball has its own. */
function scoreAt({ format }: TermsInForce, extreme: Extreme): HoleScore {
  const on = ballValueOf(format.value)
  if (on.kind === 'points' && !falls(on.table)) return null
  return extreme === 'best' ? 1 : 'x'
}

function falls({ points, beyond, noScore }: PointsTable): boolean {
  return beyond >= 0 && points.every((one, at) => one >= (points[at + 1] ?? noScore))
}

function extremeScore(ball: Ball, i: number, terms: TermsInForce, extreme: Extreme): HoleScore {
  let found: HoleScore = 'x'
  for (const score of scoresThatDiffer(ball, i, terms)) {
    const ahead = (valueAt(ball, i, score, terms) as number) - (valueAt(ball, i, found, terms) as number)
    if (extreme === 'best' ? ahead > 0 : ahead < 0) found = score
  }
  return found
}

/** Gross scores from 1 up to where the value does not change any more; to `most` where it always does. */
export function scoresThatDiffer(ball: Ball, i: number, terms: TermsInForce, most = 0): number[] {
  const on = ballValueOf(terms.format.value)
  const level = ball.holes[i]!.par + ball.strokes[i]!
  const last =
    on.kind === 'points'
      ? level + on.table.best + on.table.points.length - 1
      : on.kind === 'against-par'
        ? level + 1
        : on.kind === 'maximum'
          ? (valueAt(ball, i, 'x', terms) as number) + ball.strokes[i]!
          : most
  return Array.from({ length: Math.max(1, last) }, (_, at) => at + 1)
}

/** What a score would be worth, with what the committee added on the hole. */
export function valueAt(ball: Ball, i: number, score: number | 'x', terms: TermsInForce): HoleScore {
  const { par, hole } = ball.holes[i]!
  const gross = score === 'x' ? 'x' : score + (ball.card?.penaltyStrokes?.[hole] ?? 0)
  return valueOnHole(ballValueOf(terms.format.value), gross, ball.strokes[i]!, par, terms.maximum)
}
