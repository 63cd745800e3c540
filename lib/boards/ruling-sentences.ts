// What a ruling says, in one sentence, and the clause it rests on unless the committee names another.
// Clauses: Rules of Golf 2023 and Committee Procedures 2023.

import type { RulingKind, RulingRecord } from '@/lib/facts/day-record'
import { figureOf } from './figure'

export function rulingSentence({
  kind,
  hole,
  value,
}: Pick<RulingRecord, 'kind' | 'hole' | 'value' | 'replaces'>): string {
  const many = (number: number, one: string) => `${number} ${one}${Math.abs(number) === 1 ? '' : 's'}`
  switch (kind) {
    case 'hole-score':
      return value === null ? `Hole ${hole} counts as no score.` : `Hole ${hole} counts as ${value}.`
    case 'penalty-strokes':
      return `${many(value ?? 0, 'penalty stroke')} on hole ${hole}.`
    case 'penalty-points':
      return `${many(value ?? 0, 'point')} taken off.`
    case 'no-return':
      return 'No return.'
    case 'disqualified':
      return 'Disqualified.'
    case 'withdrawn':
      return 'Withdrawn.'
    case 'card-stands':
      return 'The card stands as it is.'
    case 'handicap-index':
      return `Handicap index ${value === null ? 'as confirmed' : figureOf(value)} counts.`
    case 'course-handicap':
      return `Course handicap ${value === null ? 'as computed' : value < 0 ? `+${-value}` : value} counts.`
    case 'playing-handicap':
      return `Plays off ${value === null ? 'the frozen figure' : value < 0 ? `+${-value}` : value}.`
    case 'withdrawn-ruling':
      return 'The earlier ruling is taken back.'
  }
}

export function usualClause(kind: RulingKind): string {
  switch (kind) {
    case 'hole-score':
      return 'Rules of Golf 2023, 3.3b(3)'
    case 'penalty-strokes':
      return 'Rules of Golf 2023, 1.3c'
    case 'penalty-points':
      return 'Rules of Golf 2023, 21.1c'
    case 'no-return':
      return 'Rules of Golf 2023, 3.3b(2)'
    case 'disqualified':
      return 'Rules of Golf 2023, 1.3c'
    case 'withdrawn':
      return 'Rules of Golf 2023, 3.3a'
    case 'card-stands':
      return 'Rules of Golf 2023, 3.3b(2), by decision of the committee'
    case 'handicap-index':
    case 'course-handicap':
    case 'playing-handicap':
      return 'Rules of Golf 2023, 3.3b(4)'
    case 'withdrawn-ruling':
      return 'Rules of Golf 2023, 20.2d'
  }
}
