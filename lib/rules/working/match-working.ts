// Where the strokes of a match fall: RoH Appendix C (lowest plays off nought) and Appendix E (strokes on the own indexes);
// then a hole of it, or how it came out.

import type { Competition, Day } from '../day'
import { editionOf } from '../editions/editions'
import { asHandicap, compare, type Fraction, fraction, plus, rounded, wholeHandicap } from '../exact/fraction'
import { FORMATS } from '../formats/catalogue'
import type { Format } from '../formats/format'
import type { BallSeed } from '../score/balls'
import type { MatchResult, WorkingStep } from '../standings'
import { courseHandicapStep, playingHandicapSteps, type RoundedWhen } from './handicap-working'
import { strokesSentence } from './hole-working'
import { endSteps, partSteps } from './match-end-working'
import { holeSteps } from './match-hole-working'
import { ballsIn, type MatchSeen, matchSeen, nameIn } from './match-seen'

export interface MatchWorking {
  /** Course and playing handicap of each ball. */
  readonly handicaps: readonly WorkingStep[]
  /** How many strokes each ball receives. */
  readonly strokes: readonly WorkingStep[]
  /** A hole and the state after it, or how the match came out. */
  readonly then: readonly WorkingStep[]
}

/**
 * `competition` is the one the match was played in, with all its terms; any two cards as a match have only the published
 * ones. `hole` null is the whole match, part by part where it has parts. Null where somebody is not in the day.
 */
export function workingOfMatch(
  day: Day,
  match: MatchResult,
  hole: number | null,
  competition: Competition = { id: match.id, format: 'match' },
  formats: readonly Format[] = FORMATS,
): MatchWorking | null {
  const seen = matchSeen(day, match, competition, formats)
  if (seen === null) return null
  const then = hole === null ? endSteps(seen) : [...holeSteps(seen, hole), ...partSteps(seen, hole)]
  return { ...strokeSteps(seen), then }
}

/** All of it in one list; empty where somebody is not in the day. */
export function matchWorking(...asked: Parameters<typeof workingOfMatch>): readonly WorkingStep[] {
  const working = workingOfMatch(...asked)
  return working === null ? [] : [...working.handicaps, ...working.strokes, ...working.then]
}

/** Ball by ball: the handicap this competition gives it, and what is left of it after the lowest is taken off. */
function strokeSteps(seen: MatchSeen): Omit<MatchWorking, 'then'> {
  const { day, terms, footing } = seen
  const { format, competition } = terms
  if (format.strokes.kind === 'none') {
    const sentence = 'No handicap counts in this match: nobody receives a stroke.'
    return { handicaps: [], strokes: [{ figure: '0', label: 'Strokes', sentence, clause: format.clause }] }
  }
  const { seeds, full, fromLowest, difference, lowestPar } = footing
  const when: RoundedWhen = fromLowest && difference === 'unrounded' ? 'later' : 'here'
  const figures = full.map((one) =>
    plus(when === 'later' ? one.full : fraction(rounded(one.full)), fraction(one.parDifference)),
  )
  const lowest = figures.reduce((low, one) => (compare(one, low) < 0 ? one : low), figures[0]!)
  const edition = editionOf(day.edition).title
  const balls = ballsIn(seen)
  const strokes = balls.map((ball, at): WorkingStep => {
    const own = fromLowest && compare(figures[at]!, lowest) === 0
    const where = strokesSentence(ball.handicap, ball.holes.length)
    return {
      figure: wholeHandicap(ball.handicap),
      label: `Strokes for ${nameIn(day, ball.id)}`,
      ...(fromLowest && !own ? { sum: lessThan(figures[at]!, lowest, when) } : {}),
      sentence: !fromLowest
        ? `Everybody plays off the own handicap. ${where}`
        : own
          ? 'The lowest handicap of the match plays off nought.'
          : `The difference from the lowest handicap${when === 'later' ? ', rounded once, here' : ''}. ${where}`,
      clause: `${competition.matchDifference === undefined ? '' : 'Terms of the competition; '}${edition}, Appendix C and E`,
    }
  })
  return { handicaps: balls.flatMap((_, at) => handicapOf(seeds[at]!, seen, lowestPar, when)), strokes }
}

/** Course and playing handicap of one ball, each under its player's name: a match shows several. */
function handicapOf(seed: BallSeed, { day, terms }: MatchSeen, lowestPar: number, when: RoundedWhen): WorkingStep[] {
  const courses = seed.lines.map((line) => ({ ...courseHandicapStep(line, day.edition), of: line.player.name }))
  const name = nameIn(day, seed.id)
  const playing = playingHandicapSteps(seed, terms, lowestPar, day.edition, when).map((step) => {
    const label = step.label.replace(/ of the side$/, '')
    return label.includes(' of ') ? step : { ...step, label: `${label} of ${name}` }
  })
  return [...courses.map(({ of, ...step }) => ({ ...step, label: `${step.label} of ${of}` })), ...playing]
}

/** "18.088 − 0.566"; a plus handicap taken off is added. */
function lessThan(mine: Fraction, lowest: Fraction, when: RoundedWhen): string {
  const shown = (one: Fraction) => (when === 'later' ? asHandicap(one, 3) : wholeHandicap(rounded(one)))
  if (compare(lowest, fraction(0)) >= 0) return `${shown(mine)} − ${shown(lowest)}`
  const isPlus = compare(mine, fraction(0)) < 0
  const [start, added] = [shown(mine).replace('+', '−'), shown(lowest).replace('+', '')]
  return `${isPlus ? start : shown(mine)} + ${added}`
}
