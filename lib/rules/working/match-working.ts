// How a match stands and where its strokes fall: Rules of Golf 3.2, RoH Appendix C (lowest plays off nought) and
// Appendix E (strokes on the own indexes).

import type { Day } from '../day'
import { editionOf } from '../editions/editions'
import { wholeHandicap } from '../exact/fraction'
import { formatOf } from '../formats/catalogue'
import type { Format } from '../formats/format'
import { matchBalls } from '../matches/match'
import { type MatchBalls, resultInWords } from '../matches/play-match'
import { indexOf } from '../score/day-index'
import { type Entrant, entrantOf } from '../score/entrants'
import { type TermsInForce, termsInForce } from '../score/terms-in-force'
import type { MatchResult, WorkingStep } from '../standings'
import { strokesSentence } from './hole-working'

/** Strokes each ball receives, then the state after a hole. */
export function matchWorking(
  day: Day,
  match: MatchResult,
  hole: number,
  format: Format = formatOf('match')!,
): WorkingStep[] {
  const terms = termsInForce({ id: match.id, format: format.id }, day, [format])
  return terms === null ? [] : [...strokeSteps(day, match, terms), ...holeSteps(day, match, hole, terms)]
}

function ballsIn(day: Day, match: MatchResult, terms: TermsInForce): MatchBalls | null {
  const index = indexOf(day)
  // Players put together for the occasion are named by their ids, joined.
  const end = (id: string): Entrant | null => entrantOf(id, index) ?? { id, players: id.split(' and ') }
  const a = end(match.a)
  const b = end(match.b)
  if (a === null || b === null) return null
  const balls = matchBalls(a, b, terms, index)
  return balls.a.length === 0 || balls.b.length === 0 ? null : balls
}

function strokeSteps(day: Day, match: MatchResult, terms: TermsInForce): WorkingStep[] {
  const balls = ballsIn(day, match, terms)
  if (balls === null) return []
  return [...balls.a, ...balls.b].map((ball) => ({
    figure: wholeHandicap(ball.handicap),
    label: `Strokes for ${nameOf(day, ball.id)}`,
    sentence:
      ball.handicap === 0
        ? 'The lowest handicap of the match plays off nought.'
        : `The difference from the lowest handicap. ${strokesSentence(ball.handicap, ball.holes.length)}`,
    clause: `${editionOf(day.edition).title}, Appendix C and E`,
  }))
}

function holeSteps(day: Day, match: MatchResult, hole: number, terms: TermsInForce): WorkingStep[] {
  const balls = ballsIn(day, match, terms)
  const at = match.holes.findIndex((state) => state.hole === hole)
  const state = match.holes[at]
  if (balls === null || state === undefined) return []
  const steps: WorkingStep[] = []
  for (const ball of [...balls.a, ...balls.b]) {
    const i = ball.holes.findIndex((one) => one.hole === hole)
    const gross = ball.gross[i] ?? null
    const strokes = ball.strokes[i] ?? 0
    const net = typeof gross === 'number' ? gross - strokes : null
    steps.push({
      figure: net === null ? '–' : String(net),
      label: `${nameOf(day, ball.id)} on hole ${hole}`,
      ...(typeof gross === 'number' ? { sum: strokes < 0 ? `${gross} + ${-strokes}` : `${gross} − ${strokes}` } : {}),
      sentence:
        gross === null ? 'Not played.' : gross === 'x' ? 'No score on this hole.' : 'Gross less strokes received.',
      clause: 'Rules of Golf 3.2a and 3.1c',
    })
  }
  if (state.up === null) {
    const sentence = 'This hole does not count: not played, or the match was over.'
    return [...steps, { figure: '–', label: 'Match', sentence, clause: 'Rules of Golf 3.2a' }]
  }
  const played = match.holes.filter((one, h) => one.up !== null && h <= at).length
  const left = match.holes.length - played
  const lead = state.up < 0 ? -state.up : state.up
  const over = lead > left || left === 0
  const words = over ? resultInWords(state.up, left, true, played) : stateInWords(day, match, state.up)
  steps.push({
    figure: words,
    label: `Match after hole ${hole}`,
    sentence: over
      ? `${lead === 0 ? 'Level' : `${lead} up`} with ${left} to play: the match is over.`
      : `${left} to play.`,
    clause: 'Rules of Golf 3.2a',
  })
  return steps
}

function stateInWords(day: Day, match: MatchResult, up: number): string {
  if (up === 0) return 'level'
  return up > 0 ? `${nameOf(day, match.a)} ${up} up` : `${nameOf(day, match.b)} ${-up} up`
}

function nameOf(day: Day, id: string): string {
  return day.players.find((one) => one.id === id)?.name ?? day.sides.find((one) => one.id === id)?.name ?? id
}
