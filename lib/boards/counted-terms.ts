// A competition over several days has one set of terms, that of the day on which it is added up: every round is counted
// under them, off the handicap index of its own day. A round that was played and published under other terms can then
// read otherwise in the sum than on its own sheet, which stays as it is. So it is said before it is counted, asked for
// once more, and stands among the terms on the board and the sheet.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { inWords as allowanceInWords } from '@/lib/rules/formats/catalogue'
import { formatIn } from './format-of-competition'
import { listed } from './in-words'
import { sameValue } from './merge-fields'

type OneOf = Pick<CompetitionRecord, 'name' | 'format' | 'terms'>

/** The terms that a score depends on; the others are about ties, prizes and the sheet. */
const SCORED_BY = [
  ['handicapLimit', 'the highest handicap'],
  ['dividedBy', 'how a side’s handicap is made'],
  ['maximum', 'the most a hole can count'],
  ['custom', 'the way of counting'],
  ['countedHoles', 'the holes that count'],
  ['namedHoles', 'the holes that count double'],
  ['missing', 'what a missing player counts'],
  ['notPlayed', 'what a hole not played counts'],
  ['ballLost', 'what a lost named ball counts'],
] as const

/** "Spring Meeting was played off 95 %; here it counts off 100 %." Null where a round counts as it was played. */
export function countedOtherwise(
  competition: OneOf,
  earlier: { readonly name: string; readonly competitions: readonly OneOf[] },
): string | null {
  const alike = earlier.competitions.filter((one) => one.format === competition.format)
  const then = alike.find((one) => one.name === competition.name) ?? alike[0]
  const name = formatIn(competition)?.name ?? competition.format
  if (!then)
    return `${earlier.name} had no ${name}: its cards are counted as ${name} under the terms of ${competition.name}.`
  const isOff = formatIn(competition)?.strokes.kind !== 'none'
  const off = isOff && !sameValue(then.terms.allowance, competition.terms.allowance)
  const others = SCORED_BY.flatMap(([key, words]) =>
    sameValue(then.terms[key], competition.terms[key]) ? [] : [words],
  )
  if (!off && others.length === 0) return null
  const allowances = `was played off ${allowanceInWords(then.terms.allowance)} and counts off ${allowanceInWords(competition.terms.allowance)} here`
  const said = [...(off ? [allowances] : []), ...(others.length > 0 ? [`had other terms for ${listed(others)}`] : [])]
  return `${earlier.name} ${said.join(', and ')}: a score can differ from the one on its own sheet.`
}

/** For the terms on the board and the sheet: each counted day that had other terms. */
export const countedOtherwiseSaid = (record: Pick<DayRecord, 'earlier'>, competition: CompetitionRecord): string[] =>
  record.earlier.flatMap((day) =>
    competition.countedDayIds.includes(day.id) ? (countedOtherwise(competition, day) ?? []) : [],
  )
