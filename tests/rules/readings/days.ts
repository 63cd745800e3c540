// Formats, matches and ties: the cases are put to the engine as whole days, the way everybody else asks it.
import { z } from 'zod'
import type { Card, CardOutcome, Competition, Day, HoleScore, Player, Side, Tee } from '@/lib/rules/day'
import { FORMATS, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import { reading } from '../case-file'
import { holesOfPar } from './handicaps'

export const score = z.union([z.int().min(1), z.literal('x'), z.null()])
export const maximum = z
  .union([
    z.strictObject({ kind: z.enum(['net-double-bogey', 'double-par']) }),
    z.strictObject({ kind: z.literal('fixed'), strokes: z.int() }),
  ])
  .optional()

export interface Seat {
  readonly handicap: number
  readonly scores: readonly HoleScore[]
  readonly startHole?: number
  readonly tee?: string
  readonly outcome?: CardOutcome
}

/** A tee on which a course handicap is the index itself. */
export function levelTee(id: string, holes: Tee['holes']): Tee {
  const par = holes.reduce((sum, hole) => sum + hole.par, 0)
  return { id, name: id, gender: 'men', courseRatingTenths: par * 10, slopeRating: 113, holes }
}

const NAMES = ['a', 'b', 'c', 'd']

/** Players a, b, c … off whole handicaps at the full allowance, on one closed day. */
export function dayOf(
  competition: Omit<Competition, 'id'>,
  seats: readonly Seat[],
  tees: readonly Tee[],
  sides: readonly Side[] = [],
): Day {
  const players: Player[] = seats.map((seat, at) => ({
    id: NAMES[at]!,
    name: NAMES[at]!,
    indexTenths: seat.handicap * 10 + 0,
    tee: seat.tee ?? tees[0]!.id,
  }))
  const cards: Card[] = seats.map((seat, at) => ({
    player: NAMES[at]!,
    scores: seat.scores,
    ...(seat.startHole ? { startHole: seat.startHole } : {}),
    ...(seat.outcome ? { outcome: seat.outcome } : {}),
  }))
  const full: Competition = { id: 'c', allowance: 100, ...competition }
  return { date: '2026-06-13', edition: '2024', tees, players, sides, cards, competitions: [full], closed: true }
}

export function standingsOf(day: Day) {
  return scoreDay(day)[0]!.standings
}

const card = z.strictObject({ par: z.array(z.int()), strokeIndex: z.array(z.int()) })

function holesOf({ par, strokeIndex }: z.infer<typeof card>): Tee['holes'] {
  return par.map((one, at) => ({ hole: at + 1, par: one, strokeIndex: strokeIndex[at]! }))
}

/** A card whose first hole is the one in question; the others are played in par. */
function holeInQuestion(par: number, strokeIndex: number): Tee {
  const others = Array.from({ length: 18 }, (_, at) => at + 1).filter((index) => index !== strokeIndex)
  return levelTee('tee', holesOf({ par: [par, ...others.map(() => 4)], strokeIndex: [strokeIndex, ...others] }))
}

function seen(day: Day, entrant: string) {
  const standing = standingsOf(day).find((one) => one.entrant === entrant)!
  return {
    place: standing.place,
    score: standing.score,
    noPlace: standing.noPlace ?? null,
    gross: standing.gross,
    out: standing.out,
    in: standing.in,
    strokes: standing.holes.map((hole) => hole.strokes),
    values: standing.holes.map((hole) => hole.value),
    /** Gross strokes as they counted, for formats that count strokes. */
    counted: standing.holes.map((hole) => (hole.value === null ? null : hole.value + hole.strokes)),
    playingHandicap: standing.playingHandicap,
  }
}

export const DAY_READINGS = {
  'published-allowance': reading(z.strictObject({ format: z.string(), edition: z.string() }), (given) => {
    const proposed = proposedAllowance(given.format, 0, given.edition)
    return { allowance: FORMATS.some(({ id }) => id === given.format) ? proposed.allowance : null, from: proposed.from }
  }),
  'hole-value': reading(
    z.strictObject({
      format: z.string(),
      par: z.int(),
      strokeIndex: z.int(),
      playingHandicap: z.int(),
      score,
      maximum,
    }),
    (given) => {
      const tee = holeInQuestion(given.par, given.strokeIndex)
      const scores = [given.score, ...tee.holes.slice(1).map((hole) => hole.par)]
      const competition = { format: given.format, ...(given.maximum ? { maximum: given.maximum } : {}) }
      const line = standingsOf(dayOf(competition, [{ handicap: given.playingHandicap, scores }], [tee]))[0]!.holes[0]!
      return {
        strokes: line.strokes,
        net: line.net,
        value: line.value,
        counted: line.value === null ? null : line.value + line.strokes,
      }
    },
  ),
  'whole-card': reading(
    z.strictObject({ format: z.string(), card, playingHandicap: z.int(), scores: z.array(score), maximum }),
    (given) => {
      const competition = { format: given.format, ...(given.maximum ? { maximum: given.maximum } : {}) }
      const seat = { handicap: given.playingHandicap, scores: given.scores }
      return seen(dayOf(competition, [seat], [levelTee('tee', holesOf(given.card))]), 'a')
    },
  ),
  'pair-card': reading(
    z.strictObject({
      format: z.string(),
      card,
      playingHandicaps: z.array(z.int()).length(2),
      scores: z.array(z.array(score)).length(2),
    }),
    (given) => {
      const seats = given.scores.map((scores, at) => ({ handicap: given.playingHandicaps[at]!, scores }))
      const side = [{ id: 'ab', players: ['a', 'b'] }]
      return seen(dayOf({ format: given.format }, seats, [levelTee('tee', holesOf(given.card))], side), 'ab')
    },
  ),
  'different-tees': reading(
    z.strictObject({
      format: z.string(),
      playingHandicap: z.int(),
      parOfOwnTee: z.int(),
      parOfLowestTee: z.int(),
    }),
    (given) => {
      const own = levelTee('own', holesOfPar(given.parOfOwnTee, 18))
      const lowest = levelTee('lowest', holesOfPar(given.parOfLowestTee, 18))
      const seats = [own, lowest].map((tee) => ({
        handicap: given.playingHandicap,
        scores: tee.holes.map((hole) => hole.par),
        tee: tee.id,
      }))
      return { playingHandicap: seen(dayOf({ format: given.format }, seats, [own, lowest]), 'a').playingHandicap }
    },
  ),
  'stroke-play-strokes': reading(
    z.strictObject({ format: z.string(), playingHandicaps: z.array(z.int()) }),
    (given) => {
      const tee = levelTee('tee', holesOfPar(72, 18))
      const scores = tee.holes.map((hole) => hole.par)
      const day = dayOf(
        { format: given.format },
        given.playingHandicaps.map((handicap) => ({ handicap, scores })),
        [tee],
      )
      const total = (id: string) => seen(day, id).strokes.reduce((sum, one) => sum + one, 0)
      return { strokes: given.playingHandicaps.map((_, at) => total(NAMES[at]!)) }
    },
  ),
}
