// The second way leaves no format out, and would see a fault if there were one.
import { expect, test } from 'vitest'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { differencesOn } from './agreement'
import { formatsOf, type Size } from './formats-by-side'
import { randomDay } from './random-day'

const SIZES: readonly Size[] = [1, 'three players', 2, 3, 4, 5, 6]

test('every format is in one of the groups', () => {
  expect(SIZES.flatMap(formatsOf).sort()).toEqual(FORMATS.map(({ id }) => id).sort())
})

test('every kind of term is met, on closed days and in play', () => {
  const met = new Set<string>()
  for (let seed = 1; seed <= 200; seed += 1) {
    for (const size of [1, 2, 4] as const) {
      const competitions = formatsOf(size).map((format) => ({
        id: format,
        format,
        ...(format.includes('match') ? { matches: [] } : {}),
      }))
      const day = randomDay(seed, { competitions, sideSize: size, shortSides: size > 1, everything: true })
      met.add(day.closed ? 'closed' : 'in play')
      for (const competition of day.competitions) {
        for (const key of Object.keys(competition)) met.add(key)
        for (const step of competition.ties?.steps ?? []) met.add(`step ${step.kind}`)
        if (competition.missing) met.add(`missing ${competition.missing.kind}`)
        for (const match of competition.matches ?? []) for (const key of Object.keys(match)) met.add(`match ${key}`)
      }
      for (const card of day.cards) for (const key of Object.keys(card)) met.add(`card ${key}`)
    }
  }
  expect([...met].sort()).toEqual(
    [
      ...['closed', 'in play', 'id', 'format', 'ties', 'matches', 'maximum', 'allowance', 'handicapLimit', 'dividedBy'],
      ...['matchDifference', 'extraHoleStrokes', 'countedHoles', 'notPlayed', 'missing', 'ballLost', 'minimumDrives'],
      ...['divisions', 'entrants', 'rounds', 'groups', 'namedHoles', 'sideTee', 'partPoints', 'roundTerms', 'ranking'],
      ...['last', 'first-nine-last', 'holes', 'lower-handicap', 'higher-handicap', 'lot', 'play-off'].map(
        (kind) => `step ${kind}`,
      ),
      ...['nothing', 'ghost', 'lowest-again', 'drawn'].map((kind) => `missing ${kind}`),
      ...['id', 'a', 'b', 'concededHoles', 'concededBy', 'walkover', 'abandoned', 'extraHoles'].map(
        (key) => `match ${key}`,
      ),
      ...['player', 'scores', 'outcome', 'penaltyStrokes', 'penaltyPoints', 'startHole', 'round', 'tee'].map(
        (key) => `card ${key}`,
      ),
      ...['indexTenths', 'playingHandicap', 'drives'].map((key) => `card ${key}`),
    ].sort(),
  )
})

test('a figure that is one out is told', () => {
  const competitions = [{ id: 'stableford', format: 'stableford' }]
  const day = randomDay(1, { competitions, sideSize: 1 })
  expect(differencesOn(day)).toEqual([])
  const wrong = day.tees.map((tee) => ({ ...tee, slopeRating: tee.slopeRating + 20 }))
  // Two days whose competitions are read from different tees cannot agree.
  expect(differencesOn({ ...day, tees: wrong }, day)).not.toEqual([])
})
