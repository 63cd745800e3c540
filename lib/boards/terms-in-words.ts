// The rarer terms of a competition, each as one sentence for the form, the terms of the day, the board and the sheets.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import { ballValueOf, type Format } from '@/lib/rules/formats/format'
import { ballLostInWords } from '@/lib/rules/formats/lost-ball'
import { readBack } from '@/lib/rules/formats/read-back'
import { decidingHandicap, divisionInWords } from './divisions'
import { formatIn } from './format-of-competition'
import { inWords, listed } from './in-words'
import { teeTermInWords } from './side-tee'

type Terms = CompetitionRecord['terms']

export function rarerTermsInWords(one: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): readonly string[] {
  const { terms } = one
  const format = formatIn(one)
  const capped = format !== null && ballValueOf(format.value).kind === 'maximum'
  return [
    ...(terms.custom ? [readBack(terms.custom, terms.dividedBy === undefined ? terms.allowance : undefined)] : []),
    ...(capped ? [maximumInWords(terms.maximum)] : []),
    ...(format?.namedHolesTimes && terms.namedHoles?.length ? [doubledInWords(terms.namedHoles)] : []),
    ...termSentences(terms, format),
  ]
}

type Said = Exclude<
  keyof Terms,
  'allowance' | 'allowanceFrom' | 'allowanceReason' | 'ties' | 'guests' | 'onePrize' | 'sidesPrizes'
>

/** One sentence a term, in the order in which they are read out; nothing for a term that is not set. */
export function termSentences(terms: Partial<Pick<Terms, Said>>, format: Format | null): readonly string[] {
  return [
    ...limitInWords(terms.handicapLimit, format?.ball === 'one'),
    ...(terms.dividedBy === undefined
      ? []
      : [`The handicap of a side is its course handicaps added up and divided by ${terms.dividedBy}.`]),
    ...(terms.countedHoles?.length ? [`Only ${holesInWords(terms.countedHoles)} for the result.`] : []),
    ...(terms.matchDifference ? [DIFFERENCE[terms.matchDifference]] : []),
    ...(terms.extraHoleStrokes ? [EXTRA_HOLES[terms.extraHoleStrokes]] : []),
    ...(terms.missing ? [missingInWords(terms.missing, format?.ball === 'one')] : []),
    ...(terms.sideTee === undefined ? [] : [`A side plays to the card of ${teeTermInWords(terms.sideTee)}.`]),
    ...(terms.partPoints ? [PART_POINTS[terms.partPoints]] : []),
    ...(terms.ranking ? [RANKING[terms.ranking]] : []),
    ...(terms.minimumDrives ? [drivesInWords(terms.minimumDrives)] : []),
    ...(terms.ballLost ? [ballLostInWords(terms.ballLost, timesNamed(format))] : []),
    ...(terms.notPlayed ? [NOT_PLAYED[terms.notPlayed]] : []),
    ...(terms.divisions ?? []).map((one) => `${one.name}: ${lowered(divisionInWords(one, decidingHandicap(format)))}`),
  ]
}

const timesNamed = (format: Format | null) => (format?.count.kind === 'named-player' ? format.count.times : 1)

const lowered = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1)

function maximumInWords(maximum: Terms['maximum']): string {
  if (maximum?.kind === 'double-par') return 'No hole counts more than twice its par.'
  if (maximum?.kind === 'fixed') return `No hole counts more than ${inWords(maximum.strokes)} strokes.`
  return 'No hole counts more than a net double bogey.'
}

function doubledInWords(holes: readonly number[]): string {
  const named = listed([...holes].sort((a, b) => a - b).map(String))
  return holes.length === 1 ? `Hole ${named} counts double.` : `Holes ${named} count double.`
}

function limitInWords(limit: Terms['handicapLimit'], one: boolean): readonly string[] {
  const each = [
    ...(limit?.men === undefined ? [] : [`${limit.men} for men`]),
    ...(limit?.women === undefined ? [] : [`${limit.women} for women`]),
  ]
  if (each.length === 0) return []
  return [`No ${one ? 'course' : 'playing'} handicap counts above ${listed(each)}.`]
}

/** "holes 1 to 9 and 18 count" */
function holesInWords(holes: readonly number[]): string {
  const runs: [number, number][] = []
  for (const hole of [...new Set(holes)].sort((a, b) => a - b)) {
    const run = runs.at(-1)
    if (run && run[1] === hole - 1) run[1] = hole
    else runs.push([hole, hole])
  }
  const named = listed(runs.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)))
  return holes.length === 1 ? `hole ${named} counts` : `holes ${named} count`
}

const DIFFERENCE: Readonly<Record<NonNullable<Terms['matchDifference']>, string>> = {
  rounded: 'Strokes in a match are the difference of the rounded playing handicaps.',
  unrounded:
    'Strokes in a match are the difference of the course handicaps in full; allowance and rounding come after it.',
}

const EXTRA_HOLES: Readonly<Record<NonNullable<Terms['extraHoleStrokes']>, string>> = {
  'as-on-the-card': 'On extra holes strokes fall as on the card.',
  none: 'On extra holes nobody receives strokes.',
}

export const PART_POINTS: Readonly<Record<NonNullable<Terms['partPoints']>, string>> = {
  'each-part': 'Between teams each part of a match is worth a point.',
  whole: 'Between teams a match is worth one point, for the whole of it.',
}

export const RANKING: Readonly<Record<NonNullable<Terms['ranking']>, string>> = {
  'in-group': 'Each group is a game of its own, with its own places.',
  everybody: 'Every hole is shared in its group; the places are over everybody.',
}

const NOT_PLAYED: Readonly<Record<NonNullable<Terms['notPlayed']>, string>> = {
  'no-score': 'A hole that could not be played any more has no score.',
  level: 'A hole that could not be played any more counts as level: net par, two points, a hole halved.',
}

function missingInWords(missing: NonNullable<Terms['missing']>, oneBall: boolean): string {
  switch (missing.kind) {
    case 'nothing':
      return 'A missing player counts nothing: the others make the scores.'
    case 'ghost': {
      if (oneBall) return `A missing player counts as a ghost with a course handicap of ${missing.courseHandicap}.`
      const par =
        missing.overPar === 0
          ? 'net par'
          : `${inWords(Math.abs(missing.overPar))} ${missing.overPar > 0 ? 'over' : 'under'} net par`
      return `A missing player counts as a ghost: ${par} on every hole.`
    }
    case 'lowest-again':
      return oneBall
        ? 'For a missing player the lowest handicap of the side is taken twice.'
        : 'For a missing player the best score of the others counts again.'
    case 'drawn':
      return `For a missing player a card of the field is drawn by lot (number ${missing.seed}).`
  }
}

function drivesInWords(minimum: number): string {
  return `At least ${inWords(minimum)} ${minimum === 1 ? 'drive' : 'drives'} of each player ${minimum === 1 ? 'is' : 'are'} taken; the committee rules on a side that has too few.`
}

/** How many scores of a side count, as the format has it; an own format is read back as a whole among its terms. */
export function countRuleInWords(one: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): readonly string[] {
  const format = formatIn(one)
  if (!format || one.terms.custom || format.isMatch || format.ball === 'one' || format.sideSize < 2) return []
  return [format.sentence]
}
