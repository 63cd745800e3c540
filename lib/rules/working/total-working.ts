// How an entrant's total is made up: out, in, points taken off, and how a tie was broken. Rules of Golf 3.3b, 21, 23;
// Committee Procedures 5A(6) for the countback.

import { formatOf } from '../formats/catalogue'
import type { Unit } from '../formats/format'
import type { Standing, WorkingStep } from '../standings'
import { capital, figure } from './words'

/** Works from a standing as `scoreDay` answers it, so that the sheet and its working cannot differ. */
export function totalWorking(standing: Standing, unit: Unit, formatId: string): WorkingStep[] {
  const clause = formatOf(formatId)?.clause ?? 'Terms of the competition'
  const steps: WorkingStep[] = []
  // A round over nine holes is one sum: out on the first nine of the course, in on the second.
  const isNine = standing.holes.length === 9
  const nines = [
    [isNine && standing.holes[0]!.hole > 9 ? 'In' : 'Out', standing.out, standing.holes.slice(0, 9)],
    ['In', standing.in, standing.holes.slice(9)],
  ] as const
  for (const [label, value, holes] of nines) {
    if (value === null) continue
    const played = holes.filter((hole) => hole.value !== null)
    steps.push({
      figure: figure(value, unit),
      label,
      sum: played.map((hole) => figure(hole.value!, unit)).join(unit === 'holes' ? ', ' : ' + '),
      sentence: `${played.length === holes.length ? 'Every hole' : `${played.length} holes`} added up.`,
      clause,
    })
  }
  if (standing.score === null) {
    const why = standing.noPlace === undefined ? 'no place' : standing.noPlace.replaceAll('-', ' ')
    return [...steps, { figure: '–', label: 'Total', sentence: `${capital(why)}: no total counts.`, clause }]
  }
  if (standing.rounds !== undefined)
    return [...roundSteps(standing, unit, clause), totalOfRounds(standing, unit, clause)]
  const added = (standing.out ?? 0) + (standing.in ?? 0)
  const off = added - standing.score
  steps.push({
    figure: figure(standing.score, unit),
    label: 'Total',
    sum:
      off === 0
        ? nines.flatMap(([, value]) => (value === null ? [] : [figure(value, unit)])).join(' and ')
        : `${figure(added, unit)} − ${off}`,
    sentence:
      off === 0 ? (isNine ? 'The nine holes together.' : 'Out and in together.') : `${off} taken off by the committee.`,
    clause,
  })
  return steps
}

/** Several rounds: each by itself, in the order in which they are added up. */
function roundSteps({ rounds = [] }: Standing, unit: Unit, clause: string): WorkingStep[] {
  return rounds.map(({ score }, at) => ({
    figure: score === null ? '–' : figure(score, unit),
    label: at === rounds.length - 1 ? 'This round' : `Round ${at + 1}`,
    sentence:
      score === null
        ? 'Not played, or no score counts.'
        : 'Counted under the terms of this competition, off the handicap of that day.',
    clause,
  }))
}

function totalOfRounds({ rounds = [], score }: Standing, unit: Unit, clause: string): WorkingStep {
  const played = rounds.flatMap((one) => (one.score === null ? [] : [figure(one.score, unit)]))
  return {
    figure: figure(score!, unit),
    label: 'Total',
    sum: played.join(' + '),
    sentence: 'The rounds together.',
    clause,
  }
}

/** The steps of the tie rule with both figures, up to the one that decided. Empty when there was no tie to break. */
export function tieWorking(standing: Standing, nameOf: (entrant: string) => string = (id) => id): WorkingStep[] {
  const broken = standing.tieBroken
  if (broken === undefined) return []
  const me = nameOf(standing.entrant)
  const other = nameOf(broken.against)
  return broken.figures.map(({ window, mine, theirs }, at) => ({
    figure: mine,
    label: capital(window),
    sum: `${mine} to ${theirs}`,
    sentence:
      at === broken.figures.length - 1
        ? `${me} is ahead of ${other}.`
        : `${me} and ${other} are level here, and the next step is tried.`,
    clause: 'Committee Procedures 5A(6)',
  }))
}

/** "Level on 38: last nine 18 each, last six 11 to 10." */
export function tieSentence(standing: Standing, unit: Unit = 'points'): string | null {
  const broken = standing.tieBroken
  if (broken === undefined) return null
  const parts = broken.figures.map(({ window, mine, theirs }) =>
    mine === theirs ? `${window} ${mine} each` : `${window} ${mine} to ${theirs}`,
  )
  return `Level on ${standing.score === null ? '–' : figure(standing.score, unit)}: ${parts.join(', ')}.`
}
