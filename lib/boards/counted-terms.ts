// A competition over several days adds up the scores as they were published: each round under the terms of its own day,
// off the handicap index of that day, and where those were other terms, board and sheet say so. An officer may have such a
// day counted anew under the terms of the day that adds up. A day that had no such competition, or another way of counting,
// always is: that is said before, asked for once more, and stands among the terms too.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { ScoredBy } from '@/lib/rules/day'
import { inWords as allowanceInWords } from '@/lib/rules/formats/catalogue'
import { formatIn } from './format-of-competition'
import { listed } from './in-words'
import { sameValue } from './merge-fields'
import { sideTeeOf } from './side-tee'

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
  ['sideTee', 'the tees of a side’s card'],
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

/** The terms of the two that a score depends on and that are not the same, in words; empty where all are. */
function differingTerms(
  competition: OneOf,
  then: OneOf,
): { readonly off: boolean; readonly others: readonly string[] } {
  const isOff = formatIn(competition)?.strokes.kind !== 'none'
  return {
    off: isOff && !sameValue(then.terms.allowance, competition.terms.allowance),
    others: SCORED_BY.flatMap(([key, words]) => (sameValue(then.terms[key], competition.terms[key]) ? [] : [words])),
  }
}

/** Whether it matters that an earlier day counts as published or under the terms of this one. */
export function termsDiffer(competition: OneOf, earlier: Pick<EarlierDay, 'competitions'>): boolean {
  const then = sameThen(competition, earlier)
  if (!then) return false
  const { off, others } = differingTerms(competition, then)
  return off || others.length > 0
}

type Counted = OneOf & Pick<CompetitionRecord, 'recountedDayIds'>

/**
 * The terms a round of an earlier day is counted under, as the engine takes them: those it was published under, or those of
 * this day where the officer had it counted anew. Null where they are the same. A tee is the earlier day's own.
 */
export function termsOfRound(competition: Counted, earlier: DayRecord): ScoredBy | null {
  const isAnew = competition.recountedDayIds?.includes(earlier.id) ?? false
  const then = isAnew ? competition : sameThen(competition, earlier)
  if (!then) return null
  const differs =
    !sameValue(then.terms.allowance, competition.terms.allowance) || differingTerms(competition, then).others.length > 0
  const sideTee = sideTeeOf(earlier, then.terms.sideTee)
  if (!differs && then.terms.sideTee === undefined) return null
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
    ...(sideTee === null ? {} : { sideTee }),
  }
}

/** "Spring Meeting counts as it was published, off 95 % and not 100 %." Null where it was played under the same terms. */
function countedAsPublished(competition: OneOf, earlier: EarlierDay): string | null {
  return waySaid(competition, earlier, 'counts as it was published', (then) => [then, competition])
}

/** "Spring Meeting is counted anew under these terms, off 100 % and not 95 %." */
function countedAnew(competition: OneOf, earlier: EarlierDay): string | null {
  return waySaid(competition, earlier, 'is counted anew under the terms of this day', (then) => [competition, then])
}

function waySaid(
  competition: OneOf,
  earlier: EarlierDay,
  how: string,
  order: (then: OneOf) => readonly [OneOf, OneOf],
): string | null {
  const then = sameThen(competition, earlier)
  if (!then) return null
  const { off, others } = differingTerms(competition, then)
  if (!off && others.length === 0) return null
  const [so, not] = order(then)
  const allowances = `off ${allowanceInWords(so.terms.allowance)} and not ${allowanceInWords(not.terms.allowance)}`
  const whose = so === then ? 'its own terms' : 'these terms'
  const said = [...(off ? [allowances] : []), ...(others.length > 0 ? [`with ${whose} for ${listed(others)}`] : [])]
  return `${earlier.name} ${how}, ${said.join(', ')}.`
}

/** The two ways an earlier day can count, for the officer who chooses; null where they come to the same. */
export function waysToCount(
  competition: OneOf,
  earlier: EarlierDay,
): { readonly published: string; readonly anew: string } | null {
  const published = countedAsPublished(competition, earlier)
  const anew = countedAnew(competition, earlier)
  return published && anew ? { published, anew } : null
}

/**
 * Can an earlier day be added up here at all? It needs the same competition, or cards of the same kind of ball that can be
 * counted anew; the cards of a day of matches alone end with the matches.
 */
export function canBeAdded(competition: OneOf, earlier: Pick<EarlierDay, 'competitions'>): boolean {
  if (sameThen(competition, earlier)) return true
  const ball = formatIn(competition)?.ball
  const formats = earlier.competitions.flatMap((one) => formatIn(one) ?? [])
  return formats.every((one) => one.ball === ball) && formats.some((one) => !one.isMatch)
}

/** For the terms on the board and the sheet: each counted day that had other terms, and how it counts. */
export const countedOtherwiseSaid = (record: Pick<DayRecord, 'earlier'>, competition: CompetitionRecord): string[] =>
  record.earlier.flatMap((day) =>
    competition.countedDayIds.includes(day.id)
      ? (countedOtherwise(competition, day) ??
        (competition.recountedDayIds?.includes(day.id)
          ? countedAnew(competition, day)
          : countedAsPublished(competition, day)) ??
        [])
      : [],
  )
