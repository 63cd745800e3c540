// The terms of a competition with everything filled in: its format, its allowance and where that comes from (RoH 2024,
// Appendix C), its tie rule (Committee Procedures 5A(6)), its maximum.

import type { Competition, Day, MaximumScore, TieRule } from '../day'
import { editionOf } from '../editions/editions'
import { allowanceFor, formatOf } from '../formats/catalogue'
import { type Format, formatFrom } from '../formats/format'
import { knownAs, readBack } from '../formats/read-back'
import { PUBLISHED_COUNTBACK } from '../ties/published-countback'

export interface TermsInForce {
  readonly competition: Competition
  readonly format: Format
  readonly allowance: number | readonly number[]
  readonly allowanceFrom: string
  readonly ties: TieRule
  readonly maximum: MaximumScore
}

/** What `allowanceFrom` says of a figure that is not the published one. */
export const HOUSE_CHOICE = 'house choice'

const NET_DOUBLE_BOGEY: MaximumScore = { kind: 'net-double-bogey' }

/**
 * The tie rule in force. In a game inside a group a window of holes says nothing: what one wins on a hole the others do not
 * have. There only the other steps part level players, and without one of them the tie stands.
 */
export function tiesIn({ value }: Pick<Format, 'value'>, ties: TieRule = PUBLISHED_COUNTBACK): TieRule {
  if (value.kind !== 'shared') return ties
  const steps = ties.steps.filter(({ kind }) => kind !== 'last' && kind !== 'first-nine-last' && kind !== 'holes')
  return { ...ties, steps }
}

/** The format a competition names, or the one it carries. Null for a name that is not in the list. */
export function formatOfCompetition(competition: Competition, formats: readonly Format[]): Format | null {
  if (competition.custom === undefined) return formatOf(competition.format, formats)
  const known = knownAs(competition.custom)
  return formatFrom({
    ...competition.custom,
    id: competition.format,
    name: competition.name ?? competition.format,
    sentence: readBack(competition.custom),
    family: known?.family ?? 'singles',
    allowance: known?.allowance ?? { house: 100, why: 'A format of the society: nothing is published for it.' },
    clause: known?.clause ?? 'Terms of the competition',
    ...(known?.shortSides === undefined ? {} : { shortSides: known.shortSides }),
  })
}

export function termsInForce(competition: Competition, day: Day, formats: readonly Format[]): TermsInForce | null {
  const format = formatOfCompetition(competition, formats)
  return format === null ? null : filledIn(competition, format, day)
}

/** The terms one round of several is counted under: those it was played and published under, where the day says so. */
export function termsOfRound(terms: TermsInForce, round: number, day: Pick<Day, 'edition'>): TermsInForce {
  const { competition, format } = terms
  const own = competition.roundTerms?.find((one) => one.round === round)
  if (own === undefined) return terms
  const {
    allowance: _a,
    handicapLimit: _l,
    dividedBy: _d,
    maximum: _m,
    countedHoles: _c,
    namedHoles: _n,
    missing: _g,
    notPlayed: _p,
    ballLost: _b,
    sideTee: _t,
    ...others
  } = competition
  const { round: _, ...scored } = own
  return filledIn({ ...others, ...scored }, format, day)
}

function filledIn(competition: Competition, format: Format, day: Pick<Day, 'edition'>): TermsInForce {
  const edition = editionOf(day.edition)
  const proposed = allowanceFor(format, 0, edition)
  const small = allowanceFor(format, 1, edition)
  const allowance = competition.allowance ?? proposed.allowance
  const published = [proposed, small].find((one) => one.from === 'published' && sameAllowance(one.allowance, allowance))
  return {
    competition,
    format,
    allowance,
    allowanceFrom: published === undefined ? HOUSE_CHOICE : `published, ${published.clause}`,
    ties: tiesIn(format, competition.ties),
    maximum: competition.maximum ?? NET_DOUBLE_BOGEY,
  }
}

/** 50 and [50, 50] are the same thing said twice. */
function sameAllowance(a: number | readonly number[], b: number | readonly number[]): boolean {
  if (typeof a === 'number' && typeof b === 'number') return a === b
  const long = typeof a === 'number' ? (b as readonly number[]) : a
  const other = typeof a === 'number' ? a : b
  return long.every((one, i) => one === (typeof other === 'number' ? other : other[i]))
}
