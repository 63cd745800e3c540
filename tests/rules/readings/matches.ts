// Matches: a hole, the strokes given, and the way a match ends.
import { z } from 'zod'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import type { Format } from '@/lib/rules/formats/format'
import { isEndedOtherwise, withConcession } from '@/lib/rules/matches/concede'
import { matchBetween } from '@/lib/rules/matches/match'
import { matchNow } from '@/lib/rules/matches/match-now'
import { matchToCount } from '@/lib/rules/matches/match-to-count'
import { indexOf } from '@/lib/rules/score/day-index'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { scoreDay } from '@/lib/rules/score-day'
import type { MatchResult } from '@/lib/rules/standings'
import { reading } from '../case-file'
import { dayOf, levelTee, type Seat, score } from './days'
import { holesOfPar } from './handicaps'

const four = holesOfPar(72, 18)

function match(seats: readonly Seat[], holes = four): MatchResult {
  const competition = { format: 'match', matches: [{ id: 'm', a: 'a', b: 'b' }] }
  return scoreDay({ ...dayOf(competition, seats, [levelTee('tee', holes)]), closed: false })[0]!.matches![0]!
}

const won = z.union([z.literal(1), z.literal(0), z.literal(-1)])

/** Level handicaps and the gross scores that win, halve and lose those holes; the rest is not played. */
function seatsOf(holesWonByA: readonly (1 | 0 | -1)[]): [Seat, Seat] {
  const a = four.map((_, at) => (at < holesWonByA.length ? 5 - holesWonByA[at]! : null))
  const b = four.map((_, at) => (at < holesWonByA.length ? 5 : null))
  return [
    { handicap: 0, scores: a },
    { handicap: 0, scores: b },
  ]
}

/** The same holes with this stroke index on the first one. */
function startingWith(strokeIndex: number, par = 4) {
  const others = four.filter((hole) => hole.strokeIndex !== strokeIndex)
  const first = { hole: 1, par, strokeIndex }
  return [first, ...others.map((hole, at) => ({ ...hole, hole: at + 2 }))]
}

/** Four-ball as the better ball of two, made from the singles match: the catalogue's own once it has one. */
function fourBall(): Format {
  const known = FORMATS.find(({ id }) => id === 'four-ball-match')
  return known ?? { ...FORMATS.find(({ id }) => id === 'match')!, id: 'better-ball-match', side: { from: 2, to: 2 } }
}

export const MATCH_READINGS = {
  'match-by-holes': reading(z.strictObject({ holesWonByA: z.array(won) }), (given) => {
    const played = match(seatsOf(given.holesWonByA))
    return {
      winner: played.winner,
      result: played.result,
      finished: played.finished,
      holesPlayed: played.holes.filter((hole) => hole.up !== null).length,
    }
  }),
  'match-outcome': reading(
    z.strictObject({
      holesWonByA: z.array(won),
      outcomeA: z.enum(['withdrawn', 'disqualified', 'no-return']).optional(),
      outcomeB: z.enum(['withdrawn', 'disqualified', 'no-return']).optional(),
    }),
    (given) => {
      const [a, b] = seatsOf(given.holesWonByA)
      const seats = [
        { ...a, outcome: given.outcomeA },
        { ...b, outcome: given.outcomeB },
      ]
      const { winner, result, finished } = match(seats)
      return { winner, result, finished }
    },
  ),
  'match-conceded': reading(
    z.strictObject({
      holesWonByA: z.array(won),
      written: z.array(z.strictObject({ hole: z.int().nullable(), by: z.enum(['a', 'b']).nullable() })),
      /** What the committee wrote before. */
      walkover: z.enum(['a', 'b']).optional(),
    }),
    ({ holesWonByA, written, walkover }) => {
      const before = walkover === undefined ? {} : { walkover }
      const competition = { format: 'match', matches: [{ id: 'm', a: 'a', b: 'b', ...before }] }
      const day = { ...dayOf(competition, seatsOf(holesWonByA), [levelTee('tee', four)]), closed: false }
      const [entered] = day.competitions
      const terms = termsInForce(entered!, day, FORMATS)!
      const match = written.reduce(withConcession, matchToCount(entered!.matches![0]!, terms, indexOf(day))!)
      const scoresOf = (player: string) => day.cards.find((card) => card.player === player)?.scores
      const { up, finished, result, notNeeded } = matchNow(match, scoresOf)
      return { up, finished, result, notNeeded, endedOtherwise: isEndedOtherwise(match) }
    },
  ),
  'match-strokes': reading(
    z.strictObject({ format: z.literal('match'), playingHandicaps: z.array(z.int()).length(2) }),
    (given) => {
      const [a, b] = given.playingHandicaps.map((handicap) => ({ handicap, scores: four.map(() => 4) }))
      const { strokesA, strokesB } = match([a!, b!])
      // On which indexes does a level gross win the hole? Asked of the engine one index at a time.
      const wonBy = (wanted: number) =>
        four
          .map((hole) => hole.strokeIndex)
          .filter((index) => {
            const up = match([a!, b!], startingWith(index)).holes[0]!.up
            return up !== null && Math.sign(up) === wanted
          })
      return { strokes: [strokesA, strokesB], strokeHoles: [wonBy(1), wonBy(-1)] }
    },
  ),
  'match-hole': reading(
    z.strictObject({
      playingHandicaps: z.array(z.int()).length(2),
      par: z.int(),
      strokeIndex: z.int(),
      scores: z.array(score).length(2),
    }),
    (given) => {
      const seats = given.playingHandicaps.map((handicap, at) => ({
        handicap,
        scores: four.map((_, hole) => (hole === 0 ? given.scores[at]! : null)),
      }))
      return { up: match(seats, startingWith(given.strokeIndex, given.par)).holes[0]!.up }
    },
  ),
  'four-ball-hole': reading(
    z.strictObject({
      par: z.int(),
      strokeIndex: z.int(),
      sideA: z.array(score).length(2),
      sideB: z.array(score).length(2),
    }),
    (given) => {
      const seats = [...given.sideA, ...given.sideB].map((one) => ({
        handicap: 0,
        scores: four.map((_, hole) => (hole === 0 ? one : null)),
      }))
      const tee = levelTee('tee', startingWith(given.strokeIndex, given.par))
      const sides = [
        { id: 'ab', players: ['a', 'b'] },
        { id: 'cd', players: ['c', 'd'] },
      ]
      const day = { ...dayOf({ format: 'match' }, seats, [tee], sides), closed: false }
      return { up: matchBetween(day, 'ab', 'cd', fourBall())!.holes[0]!.up }
    },
  ),
}
