// What decided a tie, in words: the windows tried and both figures on each.

import type { TieRule, TieStep } from '@/lib/rules/day'
import type { TieBroken } from '@/lib/rules/standings'
import { stepInWords } from '@/lib/rules/ties/windows'
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

/** The tie rule as the terms read it out. Of several rounds the last is compared before anything else. */
export function tieRuleInWords(rule: TieRule, rounds = 1): string {
  if (!rule.steps.length) return 'Ties stand: level scores share the place.'
  const own = rule.steps.flatMap((step, at) => stepWords(step, at, rule.steps))
  const steps = rounds > 1 ? ['the last round first', ...own] : own
  const counted = rule.holesCount === 'as-played' ? 'holes in the order they were played' : 'holes by their number'
  const last = rule.steps.some((step) => step.kind === 'lot') ? '' : ', then shared'
  const fractions = rule.fractions === 'rounded' ? ', shares of the handicap rounded' : ''
  return `${capital(steps.join(', '))}${last}; ${counted}${fractions}.`
}

function stepWords(step: TieStep, at: number, all: readonly TieStep[]): string | [] {
  switch (step.kind) {
    case 'last':
      return step.holes === 1 ? 'last hole' : `last ${inWords(step.holes)}`
    case 'holes':
      return step.from === step.to ? `hole ${step.from}` : `holes ${step.from} to ${step.to}`
    case 'first-nine-last': {
      // The windows of the last nine over again are read out together: one mention is enough.
      const from = startOfRun(all, at)
      if (!isTheSameWay(all, from)) return stepInWords(step)
      return at === from ? FIRST_NINE : []
    }
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

/** Where the run of steps on the first nine begins that this one stands in. */
function startOfRun(all: readonly TieStep[], at: number): number {
  let from = at
  while (from > 0 && all[from - 1]?.kind === 'first-nine-last') from--
  return from
}

/** Six, three and one of the first nine, straight after the same windows of the round. */
function isTheSameWay(all: readonly TieStep[], from: number): boolean {
  const windows = (steps: readonly TieStep[]) =>
    steps.map((step) => ('holes' in step ? `${step.holes}` : step.kind)).join()
  return windows(all.slice(from, from + 3)) === '6,3,1' && windows(all.slice(Math.max(0, from - 3), from)) === '6,3,1'
}

const FIRST_NINE = 'then the first nine the same way'
