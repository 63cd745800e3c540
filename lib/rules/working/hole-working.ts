// One hole of one entrant shown step by step: strokes by index (RoH Appendix E), gross, net (Rules of Golf 3.1c), value
// (21.1b, 21.2b, 21.3b), and which balls of a side count (23.2).

import type { CardOutcome, Day, HoleScore } from '../day'
import { floorDiv, modulo, wholeHandicap } from '../exact/fraction'
import { FORMATS } from '../formats/catalogue'
import { type BallValue, ballValueOf, type Format, type Shares, type Unit } from '../formats/format'
import { inTurnOnceLost } from '../formats/lost-ball'
import { type Ball, isStruckOut } from '../score/balls'
import { indexOf } from '../score/day-index'
import type { Entrant } from '../score/entrants'
import { type Entry, entryOf, lostFrom, namedOn } from '../score/entry-lines'
import { ballsOf, fieldOf } from '../score/field'
import { sharedEntries } from '../score/shared-holes'
import { type TermsInForce, termsInForce, termsOfRound } from '../score/terms-in-force'
import type { WorkingStep } from '../standings'
import { valueOnHole } from '../values/value-on-hole'
import { handicapSteps } from './handicap-working'
import { againstPar, article, capital, figure, inWords, withUnit } from './words'

export interface HoleWorking {
  readonly entrant: string
  readonly hole: number
  readonly par: number
  readonly strokeIndex: number
  /** Strokes of the ball shown on every hole of the round, in order of the indexes 1, 2, 3 … for the row of dots. */
  readonly strokesByIndex: readonly { readonly strokeIndex: number; readonly strokes: number }[]
  /** "A five on a par four with one stroke is net four, level with par: two points." */
  readonly sentence: string
  readonly figure: string
  readonly unit: Unit
  readonly steps: readonly WorkingStep[]
  /** The same hole with other scores. */
  readonly ifItHadBeen: readonly {
    readonly gross: number | 'x'
    readonly net: number | null
    readonly value: number | null
  }[]
}

export function holeWorking(
  day: Day,
  competitionId: string,
  entrantId: string,
  hole: number,
  formats: readonly Format[] = FORMATS,
  round = 1,
): HoleWorking | null {
  const competition = day.competitions.find(({ id }) => id === competitionId)
  const whole = competition === undefined ? null : termsInForce(competition, day, formats)
  if (whole === null) return null
  const terms = termsOfRound(whole, round, day)
  const index = indexOf(day, round)
  const field = fieldOf(terms, index)
  const at = field.entrants.findIndex((one) => one.id === entrantId)
  if (at < 0) return null
  const { value } = terms.format
  const all = value.kind === 'shared' ? sharedEntries(terms, value, index) : []
  const shared = all.find((one) => one.entrant.id === entrantId) ?? null
  if (value.kind === 'shared' && shared === null) return null
  const entry = shared ?? entryOf(field.entrants[at]!, ballsOf(field, at, terms, index), field.reading)
  const { balls } = entry
  const i = entry.holes.findIndex((line) => line.hole === hole)
  if (i < 0) return null
  const line = entry.holes[i]!
  const counting = balls.find((ball) => ball.id === line.by?.[0]) ?? balls[0]!
  const seed = (field.seeds[at]!.find(({ id }) => id === counting.id) ?? field.seeds[at]![0])!
  const steps = [
    ...handicapSteps(seed, terms, field.lowestPar, day.edition),
    ...(shared === null ? [] : [differenceStep(counting)]),
    ...ballSteps(counting, i, terms),
    ...(shared === null || value.kind !== 'shared' ? [] : [shareStep(shared, all, i, value.shares, nameIn(day))]),
    ...(balls.length > 1 ? [sideStep(entry, i, terms, nameIn(day))] : []),
  ]
  return {
    entrant: entrantId,
    hole,
    par: counting.holes[i]!.par,
    strokeIndex: counting.holes[i]!.strokeIndex,
    strokesByIndex: counting.holes
      .map((one, h) => ({ strokeIndex: one.strokeIndex, strokes: counting.strokes[h]! }))
      .sort((a, b) => a.strokeIndex - b.strokeIndex),
    sentence: shared === null ? holeSentence(counting, i, terms) : netSentence(counting, i),
    figure: line.value === null ? '–' : figure(line.value, terms.format.unit),
    unit: terms.format.unit,
    steps,
    ifItHadBeen: shared === null ? otherScores(counting, i, terms) : [],
  }
}

/** "19 strokes are one on every hole and a second on index 1." */
export function strokesSentence(handicap: number, holes: number): string {
  if (handicap === 0) return 'No strokes are received.'
  if (handicap < 0) {
    const last = handicap === -1 ? `index ${holes}` : `the highest indexes, from ${holes} down`
    return `A plus handicap of ${-handicap} gives back ${withUnit(-handicap, 'stroke')} on ${last}.`
  }
  const left = modulo(handicap, holes)
  const everywhere = floorDiv(handicap, holes)
  const upTo = left === 1 ? 'index 1' : `indexes 1 to ${left}`
  if (everywhere === 0) return `${capital(withUnit(handicap, 'stroke'))}: one on ${upTo}.`
  if (left === 0) return `${capital(withUnit(handicap, 'stroke'))}: ${inWords(everywhere)} on every hole.`
  return `${capital(withUnit(handicap, 'stroke'))}: ${inWords(everywhere)} on every hole and one more on ${upTo}.`
}

function ballSteps(ball: Ball, i: number, terms: TermsInForce): WorkingStep[] {
  const hole = ball.holes[i]!
  const strokes = ball.strokes[i]!
  const gross = ball.gross[i]!
  const steps: WorkingStep[] = [
    {
      figure: wholeHandicap(strokes),
      label: `Strokes on hole ${hole.hole}`,
      sentence: `${strokesSentence(ball.handicap, ball.holes.length)} Hole ${hole.hole} is index ${hole.strokeIndex}: ${strokesHere(strokes)}.`,
      clause: 'Rules of Handicapping, Appendix E',
    },
  ]
  if (gross === null) {
    const sentence = 'Not played yet.'
    return [...steps, { figure: '–', label: 'Gross', sentence, clause: 'Rules of Golf 3.3b' }]
  }
  const penalty = ball.card?.penaltyStrokes?.[hole.hole] ?? 0
  steps.push({
    figure: gross === 'x' ? 'no score' : String(gross),
    label: 'Gross',
    ...(penalty === 0 || gross === 'x' ? {} : { sum: `${gross - penalty} + ${penalty}` }),
    sentence:
      gross === 'x'
        ? 'No score was made on this hole.'
        : penalty === 0
          ? 'As written on the card.'
          : `As written on the card, with ${withUnit(penalty, 'penalty stroke')} added by the committee.`,
    clause: 'Rules of Golf 3.3b',
  })
  if (gross !== 'x' && terms.format.strokes.kind !== 'none') {
    steps.push({
      figure: String(gross - strokes),
      label: 'Net',
      sum: strokes < 0 ? `${gross} + ${-strokes}` : `${gross} − ${strokes}`,
      sentence: strokes < 0 ? 'Strokes given back are added to the gross.' : 'Strokes received come off the gross.',
      clause: 'Rules of Golf 3.1c',
    })
  }
  return [...steps, ...valueStep(ball, i, gross, terms)]
}

function strokesHere(strokes: number): string {
  if (strokes === 0) return 'no stroke'
  return strokes < 0 ? `${withUnit(-strokes, 'stroke')} given back` : withUnit(strokes, 'stroke')
}

function valueStep(ball: Ball, i: number, gross: number | 'x', terms: TermsInForce): WorkingStep[] {
  const on: BallValue = ballValueOf(terms.format.value)
  const value = ball.values[i]!
  const { par } = ball.holes[i]!
  const net = gross === 'x' ? null : gross - ball.strokes[i]!
  const shown = typeof value === 'number' ? value : null
  switch (on.kind) {
    case 'strokes':
      return []
    case 'points': {
      const sentence =
        net === null ? 'No score is no points; the card stands.' : `Par ${par}, net ${net}: ${againstPar(net - par)}.`
      return [{ figure: String(shown ?? 0), label: 'Points', sentence, clause: 'Rules of Golf 21.1b' }]
    }
    case 'against-par': {
      const how = shown === 1 ? 'won' : shown === 0 ? 'halved' : 'lost'
      const sentence = net === null ? 'No score loses the hole.' : `Par ${par}, net ${net}: the hole is ${how}.`
      return [{ figure: figure(shown ?? 0, 'holes'), label: 'Against par', sentence, clause: 'Rules of Golf 21.3b' }]
    }
    case 'maximum': {
      const capped = shown !== net
      const sentence = capped
        ? 'The maximum for the hole counts, less the strokes received.'
        : 'Under the maximum for the hole: the net score counts as it is.'
      return [{ figure: String(shown ?? '–'), label: 'What counts', sentence, clause: 'Rules of Golf 21.2b' }]
    }
  }
}

function differenceStep(ball: Ball): WorkingStep {
  return {
    figure: wholeHandicap(ball.handicap),
    label: 'Strokes in the group',
    sentence:
      ball.handicap === 0
        ? 'The lowest of the group plays off nought.'
        : 'The difference from the lowest of the group.',
    clause: 'Rules of Handicapping, Appendix C',
  }
}

/** The hole inside the group: what everybody made of it, who takes it, and what was carried to it. */
function shareStep(
  mine: Entry,
  all: readonly Entry[],
  i: number,
  shares: Shares,
  nameOf: (id: string) => string,
): WorkingStep {
  const group = all.filter(({ game }) => game?.group === mine.game?.group)
  const value = mine.holes[i]!.value
  const nets = group.map(({ balls: [ball], entrant }) => ({ name: nameOf(entrant.id), net: netOn(ball!, i) }))
  const sum = nets.map(({ name, net }) => `${name} ${net === null ? 'not played' : net === 'x' ? 'no score' : net}`)
  const step = { label: 'Share of the hole', sum: sum.join(', '), clause: 'Terms of the competition' }
  if (!mine.counted[i]) return { ...step, figure: '–', sentence: 'This hole does not count.' }
  if (value === null)
    return {
      ...step,
      figure: '–',
      sentence: 'Not shared out yet: somebody is still to finish a hole before it is known.',
    }
  if (shares.kind === 'by-place') {
    const sentence = `${withUnit(mine.game?.pots[i] ?? 0, 'point')} shared out by the places on this hole, tied places alike.`
    return { ...step, figure: String(value), sentence: capital(sentence) }
  }
  const pot = mine.game?.pots[i] ?? 1
  const carried = pot > 1 ? ` ${capital(withUnit(pot - 1, 'skin'))} ${pot === 2 ? 'was' : 'were'} carried to it.` : ''
  const winner = group.find((one) => (one.holes[i]!.value ?? 0) > 0)
  const tied = shares.tied === 'carried' ? 'it is carried to the next hole' : 'nobody takes it'
  const sentence = winner
    ? `${nameOf(winner.entrant.id)} alone has the lowest net and takes ${withUnit(pot, 'skin')}.${carried}`
    : `Nobody alone has the lowest net: ${tied}.${carried}`
  return { ...step, figure: String(value), sentence }
}

function netOn(ball: Ball, i: number): HoleScore {
  const gross = ball.gross[i]!
  return typeof gross === 'number' ? gross - ball.strokes[i]! : gross
}

/** "A five on a par four with one stroke is net four." */
function netSentence(ball: Ball, i: number): string {
  const gross = ball.gross[i]!
  const { par } = ball.holes[i]!
  if (gross === null) return 'This hole is not played yet.'
  if (gross === 'x') return `No score on a par ${inWords(par)}.`
  const strokes = ball.strokes[i]!
  const word = inWords(gross)
  const received = strokes === 0 ? 'no stroke' : strokesHere(strokes)
  return `${capital(article(word))} ${word} on a par ${inWords(par)} with ${received} is net ${inWords(gross - strokes)}.`
}

function sideStep(
  { entrant, balls, holes }: Entry,
  i: number,
  terms: TermsInForce,
  nameOf: (id: string) => string,
): WorkingStep {
  const { value, by = [] } = holes[i]!
  const own = (ball: Ball) =>
    isStruckOut(ball.card, terms.format) ? OUT_OF_SIDE[ball.card!.outcome!] : shownValue(ball.values[i]!)
  const each = balls.map((ball) => `${nameOf(ball.id)} ${own(ball)}`).join(', ')
  const names = by.map(nameOf).join(' and ')
  return {
    figure: value === null ? '–' : figure(value, terms.format.unit),
    label: 'The side on this hole',
    sum: each,
    sentence: `${namedBall(entrant, balls, i, terms, nameOf)}${
      by.length === 0
        ? 'Nobody has a score that counts.'
        : by.length === 1
          ? `The score of ${names} counts.`
          : `The scores of ${names} count.`
    }`,
    clause: terms.format.clause,
  }
}

/** Who has the named ball on the hole, or where it was lost and what that costs. */
function namedBall(
  entrant: Entrant,
  balls: readonly Ball[],
  i: number,
  { format, competition }: TermsInForce,
  nameOf: (id: string) => string,
): string {
  if (format.count.kind !== 'named-player') return ''
  if (!lostFrom(entrant, balls)(i)) return `${nameOf(namedOn(entrant, i))} has the named ball on this hole. `
  const inTurn = inTurnOnceLost(competition.ballLost ?? format.count.lost, format.count.times)
  const from = `The named ball was lost on hole ${entrant.ballLostOn}: `
  return inTurn === null
    ? `${from}the side is out. `
    : `${from}the score of ${nameOf(namedOn(entrant, i))}, in turn here, ${inTurn}. `
}

const nameIn = (day: Day) => (id: string) => day.players.find((one) => one.id === id)?.name ?? id

/** Why a partner’s card is no use to the side. */
const OUT_OF_SIDE: Readonly<Record<CardOutcome, string>> = {
  'no-return': 'card not returned',
  disqualified: 'disqualified',
  withdrawn: 'withdrawn',
}

const shownValue = (value: HoleScore) => (value === null ? 'not played' : value === 'x' ? 'no score' : String(value))

function holeSentence(ball: Ball, i: number, terms: TermsInForce): string {
  const gross = ball.gross[i]!
  const { par } = ball.holes[i]!
  if (gross === null) return 'This hole is not played yet.'
  const value = ball.values[i]!
  const points = typeof value === 'number' ? value : 0
  const unit = terms.format.unit
  if (gross === 'x') {
    if (unit === 'points') return `No score on a par ${inWords(par)}: ${withUnit(points, 'point')}.`
    if (unit === 'holes') return `No score on a par ${inWords(par)}: the hole is lost.`
    return value === 'x'
      ? 'No score on this hole: the card is no return.'
      : `No score: the maximum counts, net ${value}.`
  }
  const strokes = ball.strokes[i]!
  const net = gross - strokes
  const word = inWords(gross)
  const start = `${capital(article(word))} ${word} on a par ${inWords(par)}`
  if (terms.format.strokes.kind === 'none') return `${start}: ${againstPar(gross - par)}.`
  const netted = `${start} with ${strokes === 0 ? 'no stroke' : strokesHere(strokes)} is net ${inWords(net)}, ${againstPar(net - par)}`
  if (unit === 'points') return `${netted}: ${withUnit(points, 'point')}.`
  if (unit === 'holes') return `${netted}: ${value === 1 ? 'won' : value === 0 ? 'halved' : 'lost'}.`
  return value === net ? `${netted}.` : `${netted}; the maximum counts, net ${value}.`
}

function otherScores(ball: Ball, i: number, terms: TermsInForce): HoleWorking['ifItHadBeen'] {
  const { par } = ball.holes[i]!
  const strokes = ball.strokes[i]!
  const gross = ball.gross[i]
  const middle = typeof gross === 'number' ? gross : par + Math.max(strokes, 0)
  const first = Math.max(1, middle - 2)
  const scores: (number | 'x')[] = [0, 1, 2, 3, 4].map((step) => first + step)
  return [...scores, 'x' as const].map((score) => {
    const value = valueOnHole(ballValueOf(terms.format.value), score, strokes, par, terms.maximum)
    return {
      gross: score,
      net: score === 'x' ? null : score - strokes,
      value: typeof value === 'number' ? value : null,
    }
  })
}
