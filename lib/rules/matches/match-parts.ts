// A match in parts, each a match of its own: society custom. Rules of Golf 2023, 3.2b(1): a match may be conceded at any
// time before it is decided, so that what is decided stands and the rest goes with the match; 1.3c: disqualified, out of
// all of it.

import type { Hole, Match } from '../day'
import type { MatchPart } from '../formats/format'
import type { TermsInForce } from '../score/terms-in-force'
import type { MatchPartResult } from '../standings'
import { type MatchEnding, stoodAt } from './match-endings'
import { type MatchBalls, type MatchPlayed, type MatchSettings, playMatch } from './play-match'

/** Who won a match that stands so many holes up for A; null while it is on and when it is level. */
export function winnerOf(match: Match, up: number, finished: boolean): string | null {
  if (!finished || up === 0) return null
  return up > 0 ? match.a : match.b
}

/** One of several matches inside a match. */
export interface PartPlayed {
  readonly name: string
  /** Hole by hole, as far as it went on the course. */
  readonly course: MatchPlayed
  /** How it came out, on the course or off it. */
  readonly end: Omit<MatchEnding, 'takes'>
  /** Not decided on the course: it went with the whole match. */
  readonly withWhole: boolean
}

/** Null for a format that is one match. `ending` is that of the whole match, on the course or off it. */
export function partsPlayed(
  match: Match,
  balls: MatchBalls,
  settings: MatchSettings,
  { format }: TermsInForce,
  ending: MatchEnding,
): readonly PartPlayed[] | null {
  const parts = format.value.kind === 'against-opponent' ? format.value.parts : undefined
  if (parts === undefined) return null
  const holes = balls.a[0]!.holes
  return stretchesOf(parts, holes).map(({ name, first, last }) => {
    // Holes that the other went on to play alone were no part of the match any more.
    const over = ending.takes === 'nothing' ? settings.over : false
    const course = playMatch(balls.a, balls.b, { ...settings, from: first, to: last, over })
    if (first === 0 && last === holes.length - 1) return { name, course, end: ending, withWhole: false }
    if (ending.takes === 'nothing') return { name, course, end: stoodAt(course, match), withWhole: false }
    const withWhole = ending.takes === 'everything' || !course.finished
    return { name, course, end: withWhole ? ending : course, withWhole }
  })
}

export function partResult(match: Match, { name, end: { up, finished, result } }: PartPlayed): MatchPartResult {
  return { name, winner: winnerOf(match, up, finished), result, finished }
}

/** The parts of a match of which no hole was played. */
export function partsUnplayed(
  match: Match,
  parts: readonly MatchPart[],
  holes: readonly Hole[],
  { up, finished, result }: MatchEnding,
): MatchPartResult[] {
  return stretchesOf(parts, holes).map(({ name }) => ({
    name,
    winner: winnerOf(match, up, finished),
    result,
    finished,
  }))
}

/** The parts a match over these holes has, each with its first and last place on the card. */
export function stretchesOf(parts: readonly MatchPart[], holes: readonly Pick<Hole, 'hole'>[]) {
  return parts.flatMap(({ name, from, to }) => {
    const first = holes.findIndex(({ hole }) => hole >= from)
    const last = to === 0 ? holes.length - 1 : holes.findIndex(({ hole }) => hole === to)
    // A round of nine has no back nine.
    return first < 0 || last < first ? [] : [{ name, first, last }]
  })
}
