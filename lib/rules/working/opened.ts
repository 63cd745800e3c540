// What a result rests on, as figures for whoever reads it by program: how each playing handicap came about, and both sides
// of a match hole by hole. RoH 2024, 6.1, 6.2 and Appendix C; Rules of Golf 2023, 3.1c and 3.2.

import type { Competition, Day, HoleScore } from '../day'
import { asHandicap, compare, fraction, tenths } from '../exact/fraction'
import { FORMATS } from '../formats/catalogue'
import { comparesStrokes, type Format } from '../formats/format'
import { parDifference } from '../handicap/par-difference'
import { footingOf, matchBalls } from '../matches/match'
import { type Ball, type BallSeed, lowestParOf } from '../score/balls'
import { type DayIndex, indexOf, setByHand } from '../score/day-index'
import { entrantOf } from '../score/entrants'
import { fieldOf } from '../score/field'
import { allowanceOfSide, handicapByHand, handicapInFull, limitOf, ownHandicap } from '../score/handicap-of-ball'
import { type TermsInForce, termsInForce, termsOfRound } from '../score/terms-in-force'

/** What one player brings to a handicap. Figures in full are written as golfers write them: "20.098", "+0.629". */
export interface OpenedPlayer {
  readonly player: string
  readonly handicapIndex: string
  readonly courseHandicap: string
  /** The course handicap was set by a ruling. */
  readonly isRuled?: true
  /** A playing handicap set by hand. */
  readonly byHand?: number
  /** A limit of the terms that cuts this player's figure. */
  readonly limit?: number
}

export interface OpenedHandicap {
  /** Player, or side that plays one ball. */
  readonly ball: string
  readonly players: readonly OpenedPlayer[]
  readonly allowance: number | readonly number[]
  /** With the allowance, before it is rounded. */
  readonly inFull: string
  /** Strokes for the par of the tee, RoH 6.2b. */
  readonly parDifference: number
  /** Set by hand for the ball itself: nothing else is applied. */
  readonly byHand?: number
  readonly playingHandicap: number
}

/** By entrant, of the round that decides. Empty where no handicap counts. */
export function openedHandicaps(
  day: Day,
  competition: Competition,
  formats: readonly Format[] = FORMATS,
): ReadonlyMap<string, readonly OpenedHandicap[]> {
  const found = termsAndIndex(day, competition, formats)
  if (found === null || found.terms.format.strokes.kind === 'none') return new Map()
  const { terms, index } = found
  if (terms.format.isMatch) return openedOfMatches(terms, index)
  const { entrants, seeds, lowestPar } = fieldOf(terms, index)
  const groups = terms.format.value.kind === 'shared' ? terms.competition.groups : undefined
  return new Map(
    entrants.map(({ id }, at) => {
      // In a game inside a group the par difference is measured from the lowest in the group.
      const group = groups?.find((ids) => ids.includes(id))
      const own = group === undefined ? lowestPar : lowestParOf(seeds.flat().filter((seed) => group.includes(seed.id)))
      return [id, seeds[at]!.map((seed) => opened(seed, terms, own, index))]
    }),
  )
}

/** A side in several matches meets another par in each: the figures stand by match and end. */
function openedOfMatches(terms: TermsInForce, index: DayIndex): Map<string, readonly OpenedHandicap[]> {
  const found = new Map<string, readonly OpenedHandicap[]>()
  for (const match of terms.competition.matches ?? []) {
    const [a, b] = [entrantOf(match.a, index), entrantOf(match.b, index)]
    if (a === null || b === null) continue
    const { seeds, lowestPar } = footingOf(a, b, terms, index)
    found.set(
      match.id,
      seeds.map((seed) => opened(seed, terms, lowestPar, index)),
    )
  }
  return found
}

function termsAndIndex(day: Day, competition: Competition, formats: readonly Format[]) {
  const terms = termsInForce(competition, day, formats)
  if (terms === null) return null
  const rounds = competition.rounds ?? [1]
  const round = rounds[rounds.length - 1] ?? 1
  return { terms: termsOfRound(terms, round, day), index: indexOf(day, round) }
}

function opened(seed: BallSeed, terms: TermsInForce, lowestPar: number, { day }: DayIndex): OpenedHandicap {
  const { format } = terms
  const handicap = handicapInFull(seed, terms, lowestPar, day.edition)
  const byHand = handicapByHand(seed, terms)
  const isSide = format.strokes.kind === 'for-the-side'
  const missing = terms.competition.missing?.kind
  const filled = missing === 'ghost' || missing === 'lowest-again'
  const size = filled ? format.side.to : seed.lines.length
  return {
    ball: seed.id,
    players: seed.lines.map((line) => {
      const hand = setByHand(line, terms.competition.id)
      const limit = limitOf(line, terms)
      const isCut =
        hand === null &&
        limit !== null &&
        compare(isSide ? line.course : handicapBefore(seed, terms, day), fraction(limit)) > 0
      return {
        player: line.player.id,
        handicapIndex: tenths(line.indexTenths),
        courseHandicap: asHandicap(line.course, 3),
        ...(line.isRuled ? { isRuled: true as const } : {}),
        ...(hand === null ? {} : { byHand: hand }),
        ...(isCut ? { limit } : {}),
      }
    }),
    allowance: isSide ? allowanceOfSide(size, terms, day.edition) : terms.allowance,
    inFull: asHandicap(handicap.full, 3),
    parDifference: byHand === null && comparesStrokes(format) ? parDifference(seed.sheet.par, lowestPar) : 0,
    ...(byHand === null ? {} : { byHand }),
    playingHandicap: ownHandicap(handicap),
  }
}

/** With the allowance and without the limit, which an own ball meets only then. */
function handicapBefore(seed: BallSeed, terms: TermsInForce, { edition }: Day) {
  const { handicapLimit: _, ...others } = terms.competition
  return handicapInFull(seed, { ...terms, competition: others }, seed.sheet.par, edition).full
}

/** One ball on one hole of a match. */
export interface BallOnHole {
  readonly ball: string
  readonly gross: HoleScore
  readonly strokes: number
  readonly net: number | null
}

export interface OpenedHole {
  readonly hole: number
  readonly a: readonly BallOnHole[]
  readonly b: readonly BallOnHole[]
}

/** Every hole of every match of a competition, in card order, by match id; a match without both sides has none. */
export function openedMatches(
  day: Day,
  competition: Competition,
  formats: readonly Format[] = FORMATS,
): ReadonlyMap<string, readonly OpenedHole[]> {
  const found = termsAndIndex(day, competition, formats)
  const holes = new Map<string, readonly OpenedHole[]>()
  for (const match of competition.matches ?? []) {
    const a = found && entrantOf(match.a, found.index)
    const b = found && entrantOf(match.b, found.index)
    if (!found || !a || !b) continue
    const balls = matchBalls(a, b, found.terms, found.index)
    const numbers = (balls.a[0] ?? balls.b[0])?.holes ?? []
    holes.set(
      match.id,
      numbers.map(({ hole }, i) => ({
        hole,
        a: balls.a.map((one) => onHole(one, i)),
        b: balls.b.map((one) => onHole(one, i)),
      })),
    )
  }
  return holes
}

function onHole({ id, gross, strokes }: Ball, i: number): BallOnHole {
  const score = gross[i]!
  const received = strokes[i]!
  return { ball: id, gross: score, strokes: received, net: typeof score === 'number' ? score - received : null }
}
