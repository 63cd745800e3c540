// Holes shared inside a group: skins and split sixes. Society custom; strokes as in a match, everybody off the lowest of
// the group (RoH 2024, Appendix C). A hole is shared out once everybody in the group has finished it; what a tied hole
// carries goes to the next in the order of play, and past a hole that does not count.

import type { HoleScore } from '../day'
import { editionOf } from '../editions/editions'
import { floorDiv } from '../exact/fraction'
import type { Shares, ValueChoice } from '../formats/format'
import { matchStrokes } from '../handicap/match-strokes'
import { type Ball, ballOf, lowestParOf, seedsOf } from './balls'
import type { DayIndex } from './day-index'
import { type Entrant, entrantsOf } from './entrants'
import { type Entry, entryOf } from './entry-lines'
import { readingOf } from './field'
import { handicapInFull, ownHandicap } from './handicap-of-ball'
import { inOrderOfPlay, startPlace } from './order-of-play'
import type { TermsInForce } from './terms-in-force'

type SharedValue = Extract<ValueChoice, { kind: 'shared' }>

export function sharedEntries(terms: TermsInForce, value: SharedValue, index: DayIndex): Entry[] {
  const entrants = entrantsOf(terms, index)
  const { groups } = terms.competition
  if (groups === undefined) return groupEntries(entrants, 1, terms, value, index)
  return groups.flatMap((ids, at) =>
    groupEntries(
      entrants.filter(({ id }) => ids.includes(id)),
      at + 1,
      terms,
      value,
      index,
    ),
  )
}

function groupEntries(
  group: readonly Entrant[],
  number: number,
  terms: TermsInForce,
  value: SharedValue,
  index: DayIndex,
): Entry[] {
  const { edition, closed } = index.day
  const seeds = group.map(({ id, players }) => seedsOf(id, players, true, index)[0]!)
  const lowestPar = lowestParOf(seeds)
  const usual = editionOf(edition).matchDifference.players
  const full = seeds.map((seed) => handicapInFull(seed, terms, lowestPar, edition))
  const { strokes: choice } = terms.format
  const fromLowest = choice.kind !== 'none' && choice.off === 'lowest'
  const strokes = fromLowest ? matchStrokes(full, terms.competition.matchDifference ?? usual) : full.map(ownHandicap)
  const balls = seeds.map((seed, i) => ({ ...ballOf(seed, strokes[i]!, terms, closed), has: ownHandicap(full[i]!) }))
  const reading = readingOf(terms, seeds, lowestPar)
  const { shares, pots } = sharesOf(balls, value.shares, reading.counted)
  return group.map((entrant, g) => {
    const ball = { ...balls[g]!, values: shares[g]! }
    const entry = entryOf(entrant, [ball], reading)
    // Nothing is level in a game of shares: what has been won is all there is.
    return { ...entry, againstLevel: entry.score, game: { group: number, pots } }
  })
}

/**
 * What each ball gets on each hole, null while somebody is still out on it and on a hole that does not count; and what the
 * hole was played for.
 */
export function sharesOf(
  balls: readonly Pick<Ball, 'values' | 'holes' | 'card'>[],
  shares: Shares,
  counted: readonly boolean[],
): { readonly shares: HoleScore[][]; readonly pots: (number | null)[] } {
  const holes = balls[0]?.holes ?? []
  const got = balls.map(() => new Array<HoleScore>(holes.length).fill(null))
  const pots = new Array<number | null>(holes.length).fill(null)
  let pot = 1
  for (const i of inOrderOfPlay(startPlace(balls, holes), holes.length)) {
    if (!counted[i]) continue
    pots[i] = shares.kind === 'best-alone' ? pot : shares.points.reduce((sum, one) => sum + one, 0)
    const scores = balls.map((ball) => ball.values[i]!)
    if (scores.some((score) => score === null)) {
      // What a tied hole carries on is not known beyond a hole still to be played.
      if (shares.kind === 'best-alone' && shares.tied === 'carried') break
      continue
    }
    if (shares.kind === 'by-place') {
      const points = pointsByPlace(scores, shares)
      for (let b = 0; b < balls.length; b++) got[b]![i] = points[b]!
      continue
    }
    const best = aloneBest(scores)
    for (let b = 0; b < balls.length; b++) got[b]![i] = b === best ? pot : 0
    pot = best < 0 && shares.tied === 'carried' ? pot + 1 : 1
  }
  return { shares: got, pots }
}

/** A number that puts no score behind every score. */
const strokesOf = (score: HoleScore) => (typeof score === 'number' ? score : Number.MAX_SAFE_INTEGER)

function aloneBest(scores: readonly HoleScore[]): number {
  const sorted = scores.map(strokesOf).sort((a, b) => a - b)
  if (sorted[0] === sorted[1] || sorted[0] === strokesOf('x')) return -1
  return scores.indexOf(sorted[0]!)
}

function pointsByPlace(
  scores: readonly HoleScore[],
  { points, clear }: Extract<Shares, { kind: 'by-place' }>,
): number[] {
  const figures = scores.map(strokesOf)
  const sorted = [...figures].sort((a, b) => a - b)
  if (clear !== undefined && sorted.length > 1 && sorted[1]! - sorted[0]! >= clear.by) {
    return figures.map((figure) => (figure === sorted[0] ? clear.takes : 0))
  }
  return figures.map((figure) => {
    const from = sorted.indexOf(figure)
    const level = sorted.lastIndexOf(figure) - from + 1
    let pooled = 0
    for (let place = from; place < from + level; place++) pooled += points[place] ?? 0
    // Tied places share their points; the tables are made so that the shares are whole.
    return floorDiv(pooled, level)
  })
}
