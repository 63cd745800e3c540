// Holes shared inside a group: skins and split sixes. Society custom; strokes as in a match, everybody off the lowest of
// the group (RoH 2024, Appendix C). How a hole is shared out: shares.ts.

import { editionOf } from '../editions/editions'
import type { ValueChoice } from '../formats/format'
import { matchStrokes } from '../handicap/match-strokes'
import { type Ball, ballOf, lowestParOf, seedsOf } from './balls'
import type { DayIndex } from './day-index'
import { type Entrant, entrantsOf } from './entrants'
import { type Entry, entryOf, type Reading } from './entry-lines'
import { readingOf } from './field'
import { handicapInFull, ownHandicap } from './handicap-of-ball'
import { startPlace } from './order-of-play'
import { sharesOf } from './shares'
import type { TermsInForce } from './terms-in-force'

export type SharedValue = Extract<ValueChoice, { kind: 'shared' }>

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

/** The balls of one group, with the strokes each receives against the lowest of them. */
export function groupBalls(
  group: readonly Entrant[],
  terms: TermsInForce,
  index: DayIndex,
): { readonly balls: readonly Ball[]; readonly reading: Reading } {
  const { edition, closed } = index.day
  const seeds = group.map(({ id, players }) => seedsOf(id, players, true, index)[0]!)
  const lowestPar = lowestParOf(seeds)
  const usual = editionOf(edition).matchDifference.players
  const full = seeds.map((seed) => handicapInFull(seed, terms, lowestPar, edition))
  const { strokes: choice } = terms.format
  const fromLowest = choice.kind !== 'none' && choice.off === 'lowest'
  const strokes = fromLowest ? matchStrokes(full, terms.competition.matchDifference ?? usual) : full.map(ownHandicap)
  return {
    balls: seeds.map((seed, i) => ({ ...ballOf(seed, strokes[i]!, terms, closed), has: ownHandicap(full[i]!) })),
    reading: readingOf(terms, seeds, lowestPar),
  }
}

function groupEntries(
  group: readonly Entrant[],
  number: number,
  terms: TermsInForce,
  value: SharedValue,
  index: DayIndex,
): Entry[] {
  const { balls, reading } = groupBalls(group, terms, index)
  const start = startPlace(balls, balls[0]?.holes ?? [])
  const values = balls.map((ball) => ball.values)
  const { shares, pots } = sharesOf(values, start, value.shares, reading.counted)
  return group.map((entrant, g) => {
    const ball = { ...balls[g]!, values: shares[g]! }
    const entry = entryOf(entrant, [ball], reading)
    // Nothing is level in a game of shares: what has been won is all there is.
    return { ...entry, againstLevel: entry.score, game: { group: number, pots } }
  })
}
