// Every format the engine plays, gathered from the data files. A new one is a new file and a line here; scoring takes
// the list as an argument, so a list with more formats in it needs no change anywhere else.

import type { Edition } from '../editions/edition'
import { editionOf } from '../editions/editions'
import { bestAndAggregateStableford } from './data/best-and-aggregate-stableford'
import { bestOfTeams } from './data/best-of'
import { doublePointStableford } from './data/double-point-stableford'
import { fourBallMatch } from './data/four-ball-match'
import { fourBallMaximumScore } from './data/four-ball-maximum-score'
import { fourBallMedal } from './data/four-ball-medal'
import { fourBallPar } from './data/four-ball-par'
import { fourBallStableford } from './data/four-ball-stableford'
import { gross } from './data/gross'
import { match } from './data/match'
import { maximumScore } from './data/maximum-score'
import { medal } from './data/medal'
import { modifiedPoints } from './data/modified-points'
import { oneBallPairs } from './data/one-ball-pairs'
import { oneTwoThreeFour } from './data/one-two-three-four'
import { pairsAggregateMedal } from './data/pairs-aggregate-medal'
import { pairsAggregatePar } from './data/pairs-aggregate-par'
import { pairsAggregateStableford } from './data/pairs-aggregate-stableford'
import { par } from './data/par'
import { scramble } from './data/scramble'
import { skins } from './data/skins'
import { skinsNotCarried } from './data/skins-not-carried'
import { splitSixes } from './data/split-sixes'
import { splitSixesClearWin } from './data/split-sixes-clear-win'
import { stableford } from './data/stableford'
import { thirds } from './data/thirds'
import { threePartMatch } from './data/three-part-match'
import { totalOfTwoMatch } from './data/total-of-two-match'
import { waltz } from './data/waltz'
import { yellowBall } from './data/yellow-ball'
import { yellowBallDoubled } from './data/yellow-ball-doubled'
import { type Format, type FormatData, formatFrom } from './format'

const DATA: readonly FormatData[] = [
  stableford,
  medal,
  gross,
  par,
  maximumScore,
  modifiedPoints,
  doublePointStableford,
  fourBallStableford,
  fourBallMedal,
  fourBallPar,
  fourBallMaximumScore,
  pairsAggregateStableford,
  pairsAggregateMedal,
  pairsAggregatePar,
  bestAndAggregateStableford,
  ...oneBallPairs,
  ...scramble,
  waltz,
  thirds,
  oneTwoThreeFour,
  yellowBall,
  yellowBallDoubled,
  ...bestOfTeams,
  match,
  fourBallMatch,
  totalOfTwoMatch,
  threePartMatch,
  skins,
  skinsNotCarried,
  splitSixes,
  splitSixesClearWin,
]

export const FORMATS: readonly Format[] = DATA.map(formatFrom)

const byId: ReadonlyMap<string, Format> = new Map(FORMATS.map((one) => [one.id, one]))

export function formatOf(id: string, formats: readonly Format[] = FORMATS): Format | null {
  return formats === FORMATS ? (byId.get(id) ?? null) : (formats.find((one) => one.id === id) ?? null)
}

export interface ProposedAllowance {
  readonly allowance: number | readonly number[]
  readonly from: 'published' | 'house-choice'
  readonly clause: string
  /** Ready for the screen. */
  readonly sentence: string
}

export function inWords(allowance: number | readonly number[]): string {
  if (typeof allowance === 'number') return `${allowance} %`
  const [first] = allowance
  if (first !== undefined && allowance.length > 1 && allowance.every((one) => one === first))
    return `${first} % of each`
  return `${allowance.join('/')} % from the lowest handicap up`
}

/**
 * The figure to put on the form. A field size of nought is not known yet: the figure of the table for a medium field.
 * Rules of Handicapping 2024, Appendix C, and C/1 for fewer than 30 individuals.
 */
export function proposedAllowance(
  formatId: string,
  fieldSize: number,
  editionId: string,
  formats: readonly Format[] = FORMATS,
): ProposedAllowance {
  const format = formatOf(formatId, formats)
  return format === null ? noFormat(formatId) : allowanceFor(format, fieldSize, editionOf(editionId))
}

export function allowanceFor(format: Format, fieldSize: number, edition: Edition): ProposedAllowance {
  const data = format.allowance
  if ('house' in data) {
    return { allowance: data.house, from: 'house-choice', clause: 'House choice', sentence: data.why }
  }
  const { smallField } = edition
  if (fieldSize > 0 && fieldSize < smallField.under && smallField.rows.includes(data.row)) {
    return {
      allowance: smallField.allowance,
      from: 'published',
      clause: smallField.clause,
      sentence: `${inWords(smallField.allowance)}, the published figure for fewer than ${smallField.under} players.`,
    }
  }
  const allowance = edition.allowances[data.row]
  return {
    allowance,
    from: 'published',
    clause: edition.allowanceClause,
    sentence: `${inWords(allowance)}, the published figure for this format.`,
  }
}

function noFormat(id: string): ProposedAllowance {
  return {
    allowance: 100,
    from: 'house-choice',
    clause: 'House choice',
    sentence: `Nothing is published for a format called ${id}.`,
  }
}
