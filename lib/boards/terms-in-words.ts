// The rarer terms of a competition, each as one sentence for the terms of the day, the board and the sheets.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import { ballValueOf } from '@/lib/rules/formats/format'
import { readBack } from '@/lib/rules/formats/read-back'
import { formatIn } from './format-of-competition'
import { inWords, listed } from './in-words'

type Terms = CompetitionRecord['terms']

export function rarerTermsInWords(one: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): readonly string[] {
  const { terms } = one
  const format = formatIn(one)
  const capped = format !== null && ballValueOf(format.value).kind === 'maximum'
  return [
    ...(terms.custom ? [readBack(terms.custom, terms.allowance)] : []),
    ...(capped ? [maximumInWords(terms.maximum)] : []),
    ...(format?.namedHolesTimes && terms.namedHoles?.length ? [doubledInWords(terms.namedHoles)] : []),
    ...limitInWords(terms.handicapLimit, format?.ball === 'one'),
  ]
}

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
