// Tie rules as a secretary chooses them; the terms keep the steps themselves, so an old day never changes its meaning.

import type { CompetitionTerms } from '@/lib/facts/terms'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'

type Ties = CompetitionTerms['ties']

export interface TieChoice {
  readonly id: string
  readonly label: string
  readonly steps: Ties['steps']
}

const LAST = PUBLISHED_COUNTBACK.steps.filter((step) => step.kind === 'last')

export const TIE_CHOICES: readonly TieChoice[] = [
  {
    id: 'countback',
    label: 'Countback: last nine, six, three, the last hole, then the same of the first nine',
    steps: PUBLISHED_COUNTBACK.steps,
  },
  {
    id: 'lower-handicap',
    label: 'Countback: last nine, six, three, the last hole, then the lower handicap',
    steps: [...LAST, { kind: 'lower-handicap' }],
  },
  {
    id: 'higher-handicap',
    label: 'Countback: last nine, six, three, the last hole, then the higher handicap',
    steps: [...LAST, { kind: 'higher-handicap' }],
  },
  { id: 'shared', label: 'No countback: the place is shared', steps: [] },
]

export const KEPT_AS_IT_IS = 'as-it-is'

export function tieChoiceOf(ties: Ties): string {
  const steps = JSON.stringify(ties.steps)
  return TIE_CHOICES.find((one) => JSON.stringify(one.steps) === steps)?.id ?? KEPT_AS_IT_IS
}

const fits = (step: Ties['steps'][number], holes: number) => {
  if (step.kind === 'last') return step.holes < holes
  if (step.kind === 'first-nine-last') return holes > 9
  // Holes named by number lie in one nine or the other; which nine is played, the tees say.
  return step.kind !== 'holes' || holes > 9 || step.to <= 9 || step.from > 9
}
const NINE = JSON.stringify(PUBLISHED_COUNTBACK.steps.filter((step) => fits(step, 9)))

/** The steps a day of so many holes can try; back on eighteen the published countback is whole again. */
export function stepsOn(steps: Ties['steps'], holes: number): Ties['steps'] {
  if (holes === 18 && JSON.stringify(steps) === NINE) return PUBLISHED_COUNTBACK.steps
  return steps.filter((step) => fits(step, holes))
}
