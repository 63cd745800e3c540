// A competition over several days adds up the scores as they were published: each round under the terms of its own day,
// off the handicap index of that day, and where those were other terms, board and sheet say so. Only a day that had no such
// competition, or another way of counting, has to be counted anew under the terms of the day that adds up: that is said
// before, asked for once more, and stands among the terms too.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { ScoredBy } from '@/lib/rules/day'
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
  ['countedHoles', 'the holes that count'],
  ['namedHoles', 'the holes that count double'],
  ['missing', 'what a missing player counts'],
  ['notPlayed', 'what a hole not played counts'],
  ['ballLost', 'what a lost named ball counts'],
] as const

interface EarlierDay {
  readonly name: string
  readonly competitions: readonly OneOf[]
}

/** The competition of an earlier day that is added up with this one; null where its cards have to be counted anew. */
export function sameThen(competition: OneOf, earlier: Pick<EarlierDay, 'competitions'>): OneOf | null {
  const alike = earlier.competitions.filter(
    (one) => one.format === competition.format && sameValue(one.terms.custom, competition.terms.custom),
  )
  return alike.find((one) => one.name === competition.name) ?? alike[0] ?? null
}

/** "Spring Meeting had no Stableford: …" Null where a round counts as it was played and published. */
export function countedOtherwise(competition: OneOf, earlier: EarlierDay): string | null {
  if (sameThen(competition, earlier)) return null
  const name = formatIn(competition)?.name ?? competition.format
  return `${earlier.name} had no ${name}: its cards are counted as ${name} under the terms of ${competition.name}.`
}

/** The terms a round of an earlier day was published under, as the engine takes them; null where they are the same. */
export function termsThen(competition: OneOf, earlier: Pick<EarlierDay, 'competitions'>): ScoredBy | null {
  const then = sameThen(competition, earlier)
  const differs =
    then &&
    ([...SCORED_BY.map(([key]) => key), 'allowance'] as const).some(
      (key) => !sameValue(then.terms[key], competition.terms[key]),
    )
  if (!then || !differs) return null
  const { allowance, handicapLimit, dividedBy, maximum, countedHoles, namedHoles, missing, notPlayed, ballLost } =
    then.terms
  return {
    // A divisor stands in place of the allowance.
    ...(dividedBy === undefined ? { allowance } : { dividedBy }),
    ...(handicapLimit === undefined ? {} : { handicapLimit }),
    ...(maximum === undefined ? {} : { maximum }),
    ...(countedHoles === undefined ? {} : { countedHoles }),
    ...(namedHoles === undefined ? {} : { namedHoles }),
    ...(missing === undefined ? {} : { missing }),
    ...(notPlayed === undefined ? {} : { notPlayed }),
    ...(ballLost === undefined ? {} : { ballLost }),
  }
}

/** "Spring Meeting counts as it was published, off 95 % and not 100 %." Null where it was played under the same terms. */
function countedAsPublished(competition: OneOf, earlier: EarlierDay): string | null {
  const then = sameThen(competition, earlier)
  if (!then) return null
  const isOff = formatIn(competition)?.strokes.kind !== 'none'
  const off = isOff && !sameValue(then.terms.allowance, competition.terms.allowance)
  const others = SCORED_BY.flatMap(([key, words]) =>
    sameValue(then.terms[key], competition.terms[key]) ? [] : [words],
  )
  if (!off && others.length === 0) return null
  const allowances = `off ${allowanceInWords(then.terms.allowance)} and not ${allowanceInWords(competition.terms.allowance)}`
  const said = [
    ...(off ? [allowances] : []),
    ...(others.length > 0 ? [`with its own terms for ${listed(others)}`] : []),
  ]
  return `${earlier.name} counts as it was published, ${said.join(', ')}.`
}

/** For the terms on the board and the sheet: each counted day that had other terms, and how it counts. */
export const countedOtherwiseSaid = (record: Pick<DayRecord, 'earlier'>, competition: CompetitionRecord): string[] =>
  record.earlier.flatMap((day) =>
    competition.countedDayIds.includes(day.id)
      ? (countedOtherwise(competition, day) ?? countedAsPublished(competition, day) ?? [])
      : [],
  )
