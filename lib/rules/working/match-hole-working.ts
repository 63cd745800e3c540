// One hole of a match: each ball less its strokes (Rules of Golf 3.1c), what of a side counts (23.2a), who won it and how
// the match stood after it (3.2a).

import { countOnHole } from '../count/count-on-hole'
import type { HoleScore } from '../day'
import { ballValueOf } from '../formats/format'
import { settingsOf } from '../matches/match'
import { resultInWords } from '../matches/play-match'
import type { Ball } from '../score/balls'
import type { WorkingStep } from '../standings'
import { ballsIn, type MatchSeen, nameIn } from './match-seen'
import { figure, says } from './words'

const CLAUSE = 'Rules of Golf 3.2a'

export function holeSteps(seen: MatchSeen, hole: number): WorkingStep[] {
  const { result } = seen
  const at = result.holes.findIndex((state) => state.hole === hole)
  if (at < 0) return []
  return [
    ...ballsIn(seen).map((ball) => ballStep(seen, ball, hole)),
    ...sideSteps(seen, 'a', hole),
    ...sideSteps(seen, 'b', hole),
    stateStep(seen, at),
  ]
}

function ballStep({ day, terms }: MatchSeen, ball: Ball, hole: number): WorkingStep {
  const i = ball.holes.findIndex((one) => one.hole === hole)
  const gross = ball.gross[i] ?? null
  const strokes = ball.strokes[i] ?? 0
  const value = ball.values[i] ?? null
  const on = ballValueOf(terms.format.value)
  const unit = on.kind === 'points' ? 'points' : on.kind === 'against-par' ? 'holes' : 'strokes'
  return {
    figure: typeof value === 'number' ? figure(value, unit) : '–',
    label: `${nameIn(day, ball.id)} on hole ${hole}`,
    ...(typeof gross === 'number' ? { sum: strokes < 0 ? `${gross} + ${-strokes}` : `${gross} − ${strokes}` } : {}),
    sentence:
      gross === null
        ? 'Not played.'
        : gross === 'x'
          ? 'No score on this hole.'
          : READ_AS[on.kind](gross - strokes, ball.holes[i]?.par ?? 0),
    clause: `${CLAUSE} and 3.1c`,
  }
}

const READ_AS: Readonly<Record<ReturnType<typeof ballValueOf>['kind'], (net: number, par: number) => string>> = {
  strokes: () => 'Gross less strokes received.',
  maximum: () => 'Gross less strokes received, and no more than the maximum.',
  points: (net, par) => `Net ${net} on a par ${par}, in points.`,
  'against-par': (net, par) => `Net ${net} on a par ${par}, against par.`,
}

export interface SideOnHole {
  readonly value: HoleScore
  /** The balls that count, best first. */
  readonly by: readonly Ball[]
}

/** What one side has on a hole, and which of its balls count. */
export function sideOnHole(seen: MatchSeen, side: 'a' | 'b', hole: number): SideOnHole {
  const balls = seen.balls[side]
  const settings = settingsOf(seen.match, seen.balls, seen.terms, seen.day.closed)
  const i = balls[0]!.holes.findIndex((one) => one.hole === hole)
  if (i < 0) return { value: null, by: [] }
  const chosen: number[] = []
  const value = countOnHole(balls, i, settings.counts[i]!, -1, settings.better, chosen)
  return { value, by: chosen.map((b) => balls[b]!) }
}

/** Nothing for a side of one ball: its own step says it. */
function sideSteps(seen: MatchSeen, side: 'a' | 'b', hole: number): WorkingStep[] {
  if (seen.balls[side].length < 2) return []
  const { day, match, terms } = seen
  const { value, by } = sideOnHole(seen, side, hole)
  const names = by.map((ball) => nameIn(day, ball.id))
  const each = by.map((ball) => ball.values[ball.holes.findIndex((one) => one.hole === hole)])
  return [
    {
      figure: typeof value === 'number' ? String(value) : '–',
      label: `${nameIn(day, match[side])} on hole ${hole}`,
      ...(names.length > 1 ? { sum: each.join(' + ') } : {}),
      sentence:
        value === null
          ? 'Not all the scores that count are in.'
          : value === 'x' || names.length === 0
            ? 'No score that counts.'
            : names.length === 1
              ? `The better ball is that of ${names[0]}.`
              : `The balls of ${names.join(' and ')} count.`,
      clause: terms.format.clause,
    },
  ]
}

function stateStep(seen: MatchSeen, at: number): WorkingStep {
  const { day, match, result } = seen
  const { hole, up } = result.holes[at]!
  if (up === null) {
    const sentence = 'This hole does not count: not played, or the match was over.'
    return { figure: '–', label: 'Match', sentence, clause: CLAUSE }
  }
  const before = result.holes.slice(0, at).reduce((last, one) => one.up ?? last, 0)
  const played = result.holes.filter((one, h) => one.up !== null && h <= at).length
  const left = result.holes.length - played
  const lead = up < 0 ? -up : up
  const over = lead > left || left === 0
  const ahead = nameIn(day, up > 0 ? match.a : match.b)
  const state = up === 0 ? 'Level' : `${ahead} ${says(ahead, 'is', 'are')} ${lead} up`
  return {
    figure: over ? resultInWords(up, left, true, played) : up === 0 ? 'level' : `${lead} up`,
    label: `Match after hole ${hole}`,
    sentence: `${holeSaid(seen, hole, up - before)} ${state} with ${left === 0 ? 'none' : left} to play${over ? ': the match is over' : ''}.`,
    clause: CLAUSE,
  }
}

function holeSaid({ day, match }: MatchSeen, hole: number, won: number): string {
  const given = match.concededHoles?.find((one) => one.hole === hole)
  if (given !== undefined) return `The hole was conceded to ${nameIn(day, match[given.to])}.`
  if (won === 0) return 'The hole is halved.'
  return `The hole goes to ${nameIn(day, won > 0 ? match.a : match.b)}.`
}
