// Rules of Handicapping 6.1 and 6.2 shown step by step: the figure, the course handicap in full, the playing handicap.

import { editionOf } from '../editions/editions'
import {
  asHandicap,
  compare,
  decimal,
  type Fraction,
  fraction,
  halvedTenths,
  plus,
  rounded,
  tenths,
  wholeHandicap,
} from '../exact/fraction'
import { inWords as allowanceInWords } from '../formats/catalogue'
import { comparesStrokes } from '../formats/format'
import { parDifference } from '../handicap/par-difference'
import { afterAllowance, beforeAllowance } from '../handicap/playing-handicap'
import { weightsFor } from '../handicap/side-handicap'
import type { BallSeed } from '../score/balls'
import { type PlayerLine, setByHand } from '../score/day-index'
import { allowanceOfSide, courseHandicapsOf, handicapByHand, handicapInFull, limitOf } from '../score/handicap-of-ball'
import type { TermsInForce } from '../score/terms-in-force'
import type { WorkingStep } from '../standings'
import { inWords } from './words'

const inFull = (one: Fraction) => asHandicap(one, 3)

const RULED = 'Rules of Golf 3.3b(4), ruling of the committee'

export function indexStep(line: PlayerLine): WorkingStep {
  const { name, indexBefore } = line.player
  // Another day's index is not what the ruling of this day was about.
  if (indexBefore !== undefined && line.indexTenths === line.player.indexTenths) {
    const sentence = `The committee ruled that this is the right figure of ${name}, not ${tenths(indexBefore)}.`
    return {
      figure: tenths(line.indexTenths),
      label: 'Handicap figure',
      sentence,
      clause: RULED,
      player: line.player.id,
    }
  }
  return {
    figure: tenths(line.indexTenths),
    label: 'Handicap figure',
    sentence: `The figure ${name} plays off on this day.`,
    clause: 'Terms of the day',
    player: line.player.id,
  }
}

export function courseHandicapStep(line: PlayerLine, editionId: string): WorkingStep {
  const { tee, par } = line.sheet
  if (line.isRuled) {
    const sentence = 'Set by the committee for this round; the allowance of each competition applies to it.'
    return { figure: inFull(line.course), label: 'Course handicap', sentence, clause: RULED }
  }
  const edition = editionOf(editionId)
  const nine = tee.holes.length === 9
  const index = nine ? halvedTenths(line.indexTenths) : line.indexTenths
  const slope = `${decimal(fraction(index, 10), 1)} × ${tee.slopeRating} ÷ 113`
  const rating = decimal(fraction(tee.courseRatingTenths, 10), 1)
  const halved = nine ? `Half of ${tenths(line.indexTenths)} to one decimal is ${tenths(index)}. ` : ''
  const ratingWords = edition.ratingMinusPar
    ? 'then course rating less par'
    : 'without course rating less par, as this edition has it'
  const next =
    edition.beforeAllowance === 'kept'
      ? 'Not rounded yet.'
      : `Rounded before the allowance: ${wholeHandicap(line.course.rounded)}.`
  return {
    figure: inFull(line.course),
    label: 'Course handicap',
    sum: edition.ratingMinusPar ? `${slope} + (${rating} − ${par})` : slope,
    sentence: `${halved}The figure × slope ÷ 113, ${ratingWords}, ${tee.name.toLowerCase()} tees. ${next}`,
    clause: `${edition.title}, 6.1${nine ? 'b' : 'a'}`,
  }
}

/** A match may take its differences from handicaps in full: then nothing is rounded yet, and the figures say so. */
export type RoundedWhen = 'here' | 'later'

/** The playing handicap of one ball, with what led to it. */
export function playingHandicapSteps(
  seed: BallSeed,
  terms: TermsInForce,
  lowestPar: number,
  editionId: string,
  when: RoundedWhen = 'here',
): WorkingStep[] {
  const { format } = terms
  if (format.strokes.kind === 'none') {
    const sentence = 'No handicap counts in this competition.'
    return [{ figure: '0', label: 'Playing handicap', sentence, clause: format.clause }]
  }
  const byHand = handicapByHand(seed, terms)
  if (byHand !== null) {
    const sentence = 'Set by the committee; the allowance is not applied to it.'
    return [{ figure: wholeHandicap(byHand), label: 'Playing handicap', sentence, clause: 'Terms of the competition' }]
  }
  const steps =
    format.strokes.kind === 'for-the-side'
      ? sideSteps(seed, terms, editionId, when)
      : ownSteps(seed, terms, editionId, when)
  const due = comparesStrokes(format) ? parDifference(seed.sheet.par, lowestPar) : 0
  if (due > 0) {
    const { full } = handicapInFull(seed, terms, lowestPar, editionId)
    steps.push({
      figure: shownAs(plus(full, fraction(due)), when),
      label: 'Difference in par',
      sum: `${shownAs(full, when)} + (${seed.sheet.par} − ${lowestPar})`,
      sentence: `Par from these tees is ${seed.sheet.par}, the lowest in the competition ${lowestPar}: the difference is added.`,
      clause: `${editionOf(editionId).title}, 6.2b`,
    })
  }
  return steps
}

function shownAs(handicap: Fraction, when: RoundedWhen): string {
  return when === 'later' ? inFull(handicap) : wholeHandicap(rounded(handicap))
}

function allowanceClause(terms: TermsInForce): string {
  return terms.allowanceFrom === 'house choice' ? 'allowance, house choice' : 'allowance, Appendix C'
}

function ownSteps(seed: BallSeed, terms: TermsInForce, editionId: string, when: RoundedWhen): WorkingStep[] {
  const line = seed.lines[0]!
  const percent = typeof terms.allowance === 'number' ? terms.allowance : (terms.allowance[0] ?? 100)
  const before = beforeAllowance(line.course, editionId)
  const after = afterAllowance(line.course, percent, editionId)
  const shown = editionOf(editionId).beforeAllowance === 'kept' ? inFull(before) : wholeHandicap(line.course.rounded)
  const steps: WorkingStep[] = [
    {
      figure: shownAs(after, when),
      label: 'Playing handicap',
      sum: `${shown} × ${percent} % = ${inFull(after)}`,
      sentence: `The allowance for ${terms.format.name}${when === 'later' ? '. Not rounded yet.' : ', then the nearest whole number. Rounded once, here.'}`,
      clause: `${editionOf(editionId).title}, 6.2a; ${allowanceClause(terms)}`,
    },
  ]
  const limit = limitOf(line, terms)
  if (limit !== null && compare(after, fraction(limit)) > 0) {
    const sentence = `The terms of the competition let nobody here play off more than ${limit}.`
    steps.push({ figure: wholeHandicap(limit), label: 'Handicap limit', sentence, clause: 'Terms of the competition' })
  }
  return steps
}

function sideSteps(seed: BallSeed, terms: TermsInForce, editionId: string, when: RoundedWhen): WorkingStep[] {
  const courses = courseHandicapsOf(seed, terms)
  const low = courses.map((one) => beforeAllowance(one, editionId))
  low.sort(compare)
  const allowance = allowanceOfSide(low.length, terms, editionId)
  const weights = weightsFor(allowance, low.length)
  const full = handicapInFull(seed, terms, seed.sheet.par, editionId).full
  const by = terms.competition.dividedBy
  const limits = limitSteps(seed, terms)
  if (by !== undefined) {
    return [
      ...limits,
      {
        figure: shownAs(full, when),
        label: 'Playing handicap of the side',
        sum: `(${low.map(inFull).join(' + ')}) ÷ ${by} = ${inFull(full)}`,
        sentence: `The course handicaps added up and divided by ${by}${when === 'later' ? '. Not rounded yet.' : ', then rounded once.'}`,
        clause: 'Terms of the competition, house choice',
      },
    ]
  }
  const sum = low.map((one, i) => `${inFull(one)} × ${weights[i] ?? 0} %`).join(' + ')
  return [
    ...limits,
    {
      figure: shownAs(full, when),
      label: 'Playing handicap of the side',
      sum: `${sum} = ${inFull(full)}`,
      sentence: `${allowanceInWords(allowance)}${shortInWords(low.length, allowance, terms)}, ${when === 'later' ? 'added up. Not rounded yet.' : 'added up and rounded once at the end.'}`,
      clause: `${editionOf(editionId).title}, 6.2a; ${allowanceClause(terms)}`,
    },
  ]
}

/** Which figures a side short of players is given. */
function shortInWords(
  players: number,
  allowance: TermsInForce['allowance'],
  { format, ...terms }: TermsInForce,
): string {
  if (players === format.side.to) return ''
  if (allowance !== terms.allowance) return `, the published figure for a side of ${inWords(players)}`
  return typeof allowance === 'number'
    ? ''
    : `, the first ${inWords(players)} of the weights for ${inWords(format.side.to)}`
}

/** Players of a side whose course handicap is set by hand, or cut to the limit before it is shared. */
function limitSteps(seed: BallSeed, terms: TermsInForce): WorkingStep[] {
  return seed.lines.flatMap((line): WorkingStep[] => {
    const { name } = line.player
    const byHand = setByHand(line, terms.competition.id)
    if (byHand !== null) {
      const set = `Set by the committee: it takes the place of the course handicap of ${name} in the side.`
      const clause = 'Terms of the competition'
      return [{ figure: wholeHandicap(byHand), label: `Handicap of ${name}`, sentence: set, clause }]
    }
    const limit = limitOf(line, terms)
    if (limit === null || compare(line.course, fraction(limit)) <= 0) return []
    const sentence = `The terms of the competition let nobody here count more than ${limit}: so much counts of ${name}.`
    return [
      {
        figure: wholeHandicap(limit),
        label: `Handicap limit of ${name}`,
        sentence,
        clause: 'Terms of the competition',
      },
    ]
  })
}

/** Which tees the one card of a side is from, where that can be asked. */
function sideCardSteps({ lines, sheet }: BallSeed, { competition, format }: TermsInForce): WorkingStep[] {
  const tees = new Set([sheet, ...lines.map((line) => line.sheet)])
  if (format.ball !== 'one' || tees.size === 1) return []
  const named = competition.sideTee === sheet.tee.id
  const card = `Par ${sheet.par} and the stroke indexes of the ${sheet.tee.name.toLowerCase()} tees for ${sheet.tee.gender} count for the side`
  return [
    {
      figure: String(sheet.par),
      label: 'Par of the side’s card',
      sentence: named
        ? `${card}, as the terms of the competition name them.`
        : `${card}: of the tees of its players those with the lowest par, as no tees are named.`,
      clause: named ? 'Terms of the competition' : 'House rule, no source',
    },
  ]
}

/** All steps from the figure to the playing handicap of one ball. */
export function handicapSteps(
  seed: BallSeed,
  terms: TermsInForce,
  lowestPar: number,
  editionId: string,
): WorkingStep[] {
  const own = seed.lines.flatMap((line) => [indexStep(line), courseHandicapStep(line, editionId)])
  return [...own, ...sideCardSteps(seed, terms), ...playingHandicapSteps(seed, terms, lowestPar, editionId)]
}
