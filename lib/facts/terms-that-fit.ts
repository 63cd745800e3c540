// Terms that mean nothing in a format: a divisor without a combined handicap, a lost ball where none is named. The desk and
// the day file ask the same question, so that a day of the book always goes out as a day file that can be read in again.

import type { Competition } from '@/lib/rules/day'
import { ballValueOf, type Format } from '@/lib/rules/formats/format'

export type FittingTerms = Pick<
  Competition,
  | 'namedHoles'
  | 'dividedBy'
  | 'matchDifference'
  | 'extraHoleStrokes'
  | 'missing'
  | 'ballLost'
  | 'minimumDrives'
  | 'countedHoles'
  | 'notPlayed'
  | 'divisions'
  | 'handicapLimit'
  | 'maximum'
  | 'sideTee'
  | 'partPoints'
  | 'ranking'
>
export type FittingTerm = keyof FittingTerms

/** Which of the rarer terms a competition of this format can have at all. */
export function termFits(term: FittingTerm, format: Format): boolean {
  switch (term) {
    case 'maximum':
      return ballValueOf(format.value).kind === 'maximum'
    case 'namedHoles':
      return format.namedHolesTimes !== undefined
    case 'dividedBy':
      return format.strokes.kind === 'for-the-side'
    case 'matchDifference':
      return format.isMatch || format.value.kind === 'shared'
    case 'extraHoleStrokes':
      return format.isMatch
    case 'missing':
      return format.side.to > 1
    case 'ballLost':
      return format.count.kind === 'named-player'
    case 'minimumDrives':
    case 'sideTee':
      return format.ball === 'one'
    case 'partPoints':
      return format.value.kind === 'against-opponent' && format.value.parts !== undefined
    case 'ranking':
      return format.value.kind === 'shared'
    case 'countedHoles':
    case 'divisions':
      return !format.isMatch
    case 'handicapLimit':
      return format.strokes.kind !== 'none'
    case 'notPlayed':
      return true
  }
}

const WHY_NOT: Readonly<Record<Exclude<FittingTerm, 'notPlayed'>, (name: string) => string>> = {
  maximum: (name) => `${name} has no maximum score.`,
  namedHoles: (name) => `${name} has no holes that count more than once.`,
  dividedBy: (name) => `${name} has no combined handicap to divide.`,
  matchDifference: (name) => `${name} has no matches.`,
  extraHoleStrokes: (name) => `${name} has no matches.`,
  missing: (name) => `${name} is played by single players: nobody can be missing from a side.`,
  ballLost: (name) => `${name} has no named ball to lose.`,
  minimumDrives: (name) => `In ${name} every player plays an own ball.`,
  sideTee: (name) => `In ${name} every player has a card of the own tee.`,
  partPoints: (name) => `In ${name} no match has parts.`,
  ranking: (name) => `In ${name} nothing is shared inside a group.`,
  countedHoles: (name) => `${name} has no standings.`,
  divisions: (name) => `${name} has no standings.`,
  handicapLimit: (name) => `${name} counts no handicap.`,
}

export interface TermFault {
  readonly term: FittingTerm
  /** Behind the term: "[1].handicapTo". */
  readonly inside: string
  readonly sentence: string
}

/** One sentence for each term that is given and does not fit. A handicap limit without handicaps harms nobody: allowed. */
export function termsThatDoNotFit(terms: FittingTerms, format: Format): readonly TermFault[] {
  const faults: TermFault[] = []
  for (const [term, why] of Object.entries(WHY_NOT) as [Exclude<FittingTerm, 'notPlayed'>, (name: string) => string][])
    if (terms[term] !== undefined && term !== 'handicapLimit' && term !== 'maximum' && !termFits(term, format))
      faults.push({ term, inside: '', sentence: why(format.name) })
  if (terms.missing?.kind === 'drawn' && format.ball === 'one')
    faults.push({
      term: 'missing',
      inside: '',
      sentence: 'Where a side plays one ball, no card can be drawn for a missing player.',
    })
  terms.divisions?.forEach(({ handicapFrom, handicapTo }, at) => {
    if (handicapFrom !== undefined && handicapTo !== undefined && handicapFrom > handicapTo)
      faults.push({
        term: 'divisions',
        inside: `[${at}].handicapTo`,
        sentence: 'The upper limit of a division is below its lower one.',
      })
  })
  return faults
}
