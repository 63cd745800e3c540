// What decided a tie, in words: the windows tried and both figures on each.

import type { TieRule, TieStep } from '@/lib/rules/day'
import type { TieBroken } from '@/lib/rules/standings'
import type { Names } from './entrant-names'
import { capital, inWords, scoreShort, type Unit } from './in-words'

/** "Trevennor above Holmgarth, both 38: last nine 18 each, last six 11 to 10." */
export function tieSentence(
  broken: TieBroken,
  entrant: string,
  score: number,
  unit: Unit,
  names: Pick<Names, 'entrantShort'>,
): string {
  return `${names.entrantShort(entrant)} above ${names.entrantShort(broken.against)}, both ${scoreShort(score, unit)}: ${tieFigures(broken)}.`
}

/** "last nine 18 each, last six 11 to 10" */
export function tieFigures(broken: TieBroken): string {
  return broken.figures.map(({ window, mine, theirs }) => figuresInWords(window, mine, theirs)).join(', ')
}

function figuresInWords(window: string, mine: string, theirs: string): string {
  if (window === 'lot') return 'by lot'
  if (window === 'play-off') return 'by play-off'
  return mine === theirs ? `${window} ${mine} each` : `${window} ${mine} to ${theirs}`
}

/** The tie rule as the terms read it out. */
export function tieRuleInWords(rule: TieRule): string {
  if (!rule.steps.length) return 'Ties stand: level scores share the place.'
  const steps: string[] = []
  for (const step of rule.steps) {
    const words = stepWords(step, steps.at(-1))
    if (words) steps.push(words)
  }
  const counted = rule.holesCount === 'as-played' ? 'holes in the order they were played' : 'holes by their number'
  const last = rule.steps.some((step) => step.kind === 'lot') ? '' : ', then shared'
  const fractions = rule.fractions === 'rounded' ? ', shares of the handicap rounded' : ''
  return `${capital(steps.join(', '))}${last}; ${counted}${fractions}.`
}

function stepWords(step: TieStep, before: string | undefined): string | null {
  switch (step.kind) {
    case 'last':
      return step.holes === 1 ? 'last hole' : `last ${inWords(step.holes)}`
    case 'holes':
      return step.from === step.to ? `hole ${step.from}` : `holes ${step.from} to ${step.to}`
    case 'first-nine-last':
      // Its windows are read out together: one mention is enough.
      return before === FIRST_NINE ? null : FIRST_NINE
    case 'lower-handicap':
      return 'lower handicap'
    case 'higher-handicap':
      return 'higher handicap'
    case 'lot':
      return `by lot (number ${step.seed})`
    case 'play-off':
      return 'by play-off'
  }
}

const FIRST_NINE = 'then the first nine the same way'
