// The whole field of a competition with everything needed to count it: entrants, their balls and the footing on which
// they are compared. The par difference of RoH 6.2b is measured from the lowest par in this field.

import { countsOf } from '../count/count-on-hole'
import type { Competition, Day } from '../day'
import { FORMATS } from '../formats/catalogue'
import { ballValueOf } from '../formats/format'
import { levelOnHole } from '../values/value-on-hole'
import { type Ball, type BallSeed, ballOf, levelPars, lowestParOf, seedsOf } from './balls'
import { type DayIndex, indexOf, type TeeSheet } from './day-index'
import { type Entrant, entrantsOf } from './entrants'
import { type Entry, entryOf, type Reading } from './entry-lines'
import { handicapInFull, ownHandicap } from './handicap-of-ball'
import { filledUp } from './short-sides'
import { type TermsInForce, termsInForce } from './terms-in-force'

export interface Field {
  readonly entrants: readonly Entrant[]
  /** Balls of each entrant, in the same order. */
  readonly seeds: readonly (readonly BallSeed[])[]
  readonly lowestPar: number
  readonly reading: Reading
}

export function fieldOf(terms: TermsInForce, index: DayIndex): Field {
  const entrants = entrantsOf(terms, index)
  const seeds = entrants.map((entrant) =>
    seedsOf(entrant.id, entrant.players, terms.format.ball === 'one', index, terms.competition.sideTee),
  )
  const all = seeds.flat()
  const lowestPar = lowestParOf(all)
  return { entrants, seeds, lowestPar, reading: readingOf(terms, all, lowestPar) }
}

export function ballsOf(field: Field, at: number, terms: TermsInForce, index: DayIndex): readonly Ball[] {
  const ball = (seed: BallSeed) => {
    const handicap = ownHandicap(handicapInFull(seed, terms, field.lowestPar, index.day.edition))
    return ballOf(seed, handicap, terms, index.day.closed)
  }
  const balls = field.seeds[at]!.map(ball)
  if (terms.competition.missing === undefined) return balls
  const others = new Map<string, BallSeed>()
  for (const seed of field.seeds.flat()) others.set(seed.id, seed)
  return filledUp(field.entrants[at]!, balls, terms, [...others.keys()], (player) => ball(others.get(player)!))
}

export function entriesOf(terms: TermsInForce, index: DayIndex): Entry[] {
  const field = fieldOf(terms, index)
  return field.entrants.map((entrant, at) => entryOf(entrant, ballsOf(field, at, terms, index), field.reading))
}

export function readingOf(terms: TermsInForce, all: readonly BallSeed[], lowestPar: number): Reading {
  const { format, competition } = terms
  const ballLost = competition.ballLost ?? (format.count.kind === 'named-player' ? format.count.lost : null)
  const first = all[0]
  if (first === undefined) {
    return { format, counts: [], holeTimes: [], counted: [], ballLost, levelsOf: () => [], wholeLevel: 0 }
  }
  const numbers = first.sheet.tee.holes.map(({ hole }) => hole)
  const lowest = lowestSheet(all, lowestPar)
  const levels = new Map<TeeSheet, readonly number[]>()
  const named = new Set(competition.namedHoles)
  const counted = competition.countedHoles === undefined ? null : new Set(competition.countedHoles)
  const value = ballValueOf(format.value)
  const counts = countsOf(format.count, value, numbers)
  const holeTimes = numbers.map((hole) => (named.has(hole) ? (format.namedHolesTimes ?? 1) : 1))
  const countedHoles = numbers.map((hole) => counted?.has(hole) ?? true)
  let wholeLevel = 0
  lowest.tee.holes.forEach(({ par }, i) => {
    if (countedHoles[i]) wholeLevel += levelOnHole(value, par) * counts[i]!.weight * holeTimes[i]!
  })
  return {
    format,
    counts,
    holeTimes,
    counted: countedHoles,
    ballLost,
    wholeLevel,
    levelsOf: (ball) => {
      let own = levels.get(ball.sheet)
      if (own === undefined) {
        own = levelPars(ball.sheet, lowest)
        levels.set(ball.sheet, own)
      }
      return own
    },
  }
}

/** Level par of every hole of the tees that the field of a competition stands on, on the common footing; by tee. */
export function levelsByTee(day: Day, competition: Competition): ReadonlyMap<string, readonly number[]> {
  const terms = termsInForce(competition, day, FORMATS)
  if (terms === null) return new Map()
  const { seeds, lowestPar } = fieldOf(terms, indexOf(day))
  const all = seeds.flat()
  if (all.length === 0) return new Map()
  const lowest = lowestSheet(all, lowestPar)
  return new Map(all.map(({ sheet }) => [sheet.tee.id, levelPars(sheet, lowest)]))
}

/** Of several tees with the lowest par the first by id, so that the order of the entries changes nothing. */
function lowestSheet(all: readonly BallSeed[], lowestPar: number): TeeSheet {
  let lowest: TeeSheet | null = null
  for (const { sheet } of all) {
    if (sheet.par === lowestPar && (lowest === null || sheet.tee.id < lowest.tee.id)) lowest = sheet
  }
  return lowest!
}
