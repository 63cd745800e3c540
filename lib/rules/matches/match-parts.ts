// A match in parts, each a match of its own: society custom. Rules of Golf 2023, 3.2b(1): a match may be conceded at any
// time before it is decided, so that what is decided stands and the rest goes with the match; 1.3c: disqualified, out of
// all of it.

import type { Hole, Match } from '../day'
import type { MatchPart } from '../formats/format'
import type { MatchPartResult } from '../standings'
import { type MatchEnding, stoodAt } from './match-endings'
import { type MatchBalls, type MatchSettings, playMatch } from './play-match'

/** Who won a match that stands so many holes up for A; null while it is on and when it is level. */
export function winnerOf(match: Match, up: number, finished: boolean): string | null {
  if (!finished || up === 0) return null
  return up > 0 ? match.a : match.b
}

/** Every part with its own result. `ending` is that of the whole match, on the course or off it. */
export function partsOf(
  match: Match,
  balls: MatchBalls,
  settings: MatchSettings,
  parts: readonly MatchPart[],
  ending: MatchEnding,
): MatchPartResult[] {
  const holes = balls.a[0]!.holes
  return stretchesOf(parts, holes).map(({ name, first, last }) => {
    const isWhole = first === 0 && last === holes.length - 1
    const { up, finished, result } = isWhole
      ? ending
      : partEnding(match, balls, { ...settings, from: first, to: last }, ending)
    return { name, winner: winnerOf(match, up, finished), result, finished }
  })
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

function stretchesOf(parts: readonly MatchPart[], holes: readonly Hole[]) {
  return parts.flatMap(({ name, from, to }) => {
    const first = holes.findIndex(({ hole }) => hole >= from)
    const last = to === 0 ? holes.length - 1 : holes.findIndex(({ hole }) => hole === to)
    // A round of nine has no back nine.
    return first < 0 || last < first ? [] : [{ name, first, last }]
  })
}

function partEnding(
  match: Match,
  balls: MatchBalls,
  settings: MatchSettings,
  whole: MatchEnding,
): Omit<MatchEnding, 'takes'> {
  if (whole.takes === 'everything') return whole
  if (whole.takes === 'nothing') return stoodAt(playMatch(balls.a, balls.b, settings), match)
  // Holes that the other went on to play alone were no part of the match any more.
  const part = playMatch(balls.a, balls.b, { ...settings, over: false })
  return part.finished ? part : whole
}
