// How many prizes a player may take, whether a side's prize counts among them, and whose turn comes first: asked once for
// the whole day, kept in its first competition, and said in full wherever the terms are read out.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import type { CompetitionTerms, OnePrize, SidesPrizes } from '@/lib/facts/terms'
import { formatIn } from './format-of-competition'

export interface PrizeRule {
  readonly onePrize: OnePrize
  /** What the prize of a pair or a team is to its players. */
  readonly sides: SidesPrizes
}

/** The rule of the day stands in its first competition. */
export const prizeRuleOf = (
  records: readonly { readonly terms: Pick<CompetitionTerms, 'onePrize' | 'sidesPrizes'> }[],
): PrizeRule => ({
  onePrize: records[0]?.terms.onePrize ?? 'by-order',
  sides: records[0]?.terms.sidesPrizes ?? 'apart',
})

/** The rule by itself, for the form in which it is chosen. */
export function prizeRuleInWords({ onePrize, sides }: PrizeRule): string {
  if (onePrize === 'as-many') return 'A player takes as many prizes as are won.'
  const order =
    onePrize === 'by-value'
      ? 'One prize a player: the most valuable first, and the next in place steps up.'
      : 'One prize a player: the prizes are given in the order of the list, and the next in place steps up.'
  const pairs =
    sides === 'counted'
      ? 'The prize of a pair or a team counts as a prize of each of its players: it is not split, so the side is passed over when one of them has a prize.'
      : 'The prize of a pair or a team does not count: its players may win one of their own as well.'
  return `${order} ${pairs}`
}

type WithPrizes = Pick<CompetitionRecord, 'name' | 'format' | 'terms' | 'prizes'>

/** The rule and the order of the day's own prizes: "In turn: Spring Cup (First, Second), then Pairs (Best pair)." */
export function prizesInTurn(records: readonly WithPrizes[]): string {
  const rule = prizeRuleOf(records)
  const listed = records.flatMap((record) => sortedPrizes(record).map((prize) => ({ prize, record })))
  const several = records.filter(({ prizes }) => prizes.length > 0).length > 1
  const hasSides = records.some((one) => one.prizes.length > 0 && (formatIn(one)?.sideSize ?? 1) > 1)
  // Where no side can win anything, nothing need be said of sides.
  const said = hasSides || rule.onePrize === 'as-many' ? prizeRuleInWords(rule) : withoutSides(rule)
  if (listed.length < 2 || rule.onePrize === 'as-many') return said
  return `${said} In turn: ${rule.onePrize === 'by-value' ? byValue(listed, several) : byList(records)}.`
}

const withoutSides = (rule: PrizeRule) => prizeRuleInWords(rule).replace(/ The prize of a pair .*$/, '')

function byList(records: readonly WithPrizes[]): string {
  return records
    .filter(({ prizes }) => prizes.length > 0)
    .map((record) => {
      const names = sortedPrizes(record).map(({ name }) => name)
      return `${record.name} (${names.join(', ')})`
    })
    .join(', then ')
}

function byValue(
  listed: readonly { readonly prize: WithPrizes['prizes'][number]; readonly record: WithPrizes }[],
  several: boolean,
): string {
  return mostValuableFirst(listed)
    .map(({ prize, record }) => (several ? `${prize.name} of ${record.name}` : prize.name))
    .join(', ')
}

export const sortedPrizes = ({ prizes }: Pick<CompetitionRecord, 'prizes'>) =>
  [...prizes].sort((a, b) => a.number - b.number)

/** Of one value in the order of the lists. */
export const mostValuableFirst = <T extends { readonly prize: { readonly valuePence: number | null } }>(
  listed: readonly T[],
): T[] => [...listed].sort((a, b) => (b.prize.valuePence ?? 0) - (a.prize.valuePence ?? 0))
