// What the matches of a day leave of its cards: a card is complete when its matches are, unless another competition of
// the same player needs every hole. The phones get the same matches in their packs and count them by the same code.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { Day, HoleScore } from '@/lib/rules/day'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { type HolesToPlay, holesToPlay, type MatchToCount } from '@/lib/rules/matches/match-now'
import { matchToCount } from '@/lib/rules/matches/match-to-count'
import { indexOf } from '@/lib/rules/score/day-index'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import type { CurrentCard } from './current-card'
import { formatIn } from './format-of-competition'

export interface MatchOfDay {
  readonly competition: CompetitionRecord
  /** Ends of the match as the book has them. */
  readonly ends: { readonly a: string; readonly b: string }
  readonly match: MatchToCount
}

export const hasMatches = ({ competitions }: Pick<DayRecord, 'competitions'>): boolean =>
  competitions.some((one) => formatIn(one)?.isMatch === true)

/** Every match of the day, as the engine counts it. */
export function matchesToCount(record: DayRecord, day: Day): readonly MatchOfDay[] {
  const index = indexOf(day)
  return record.competitions.flatMap((competition) => {
    const played = day.competitions.find((one) => one.id === competition.id)
    const terms = played?.matches ? termsInForce(played, day, FORMATS) : null
    if (!played || !terms) return []
    return (played.matches ?? []).flatMap((one): MatchOfDay[] => {
      const match = matchToCount(one, terms, index)
      return match ? [{ competition, ends: { a: one.a, b: one.b }, match }] : []
    })
  })
}

/** A competition of this player that is no match: it needs every hole, whatever the matches do. */
export function besideMatches({ competitions }: Pick<DayRecord, 'competitions'>, entryId: EntryId): string | null {
  const beside = competitions.find((one) => {
    const format = formatIn(one)
    if (!format || format.isMatch) return false
    return format.sideSize < 2 || one.sides.some((side) => side.entryIds.includes(entryId))
  })
  return beside?.name ?? null
}

/** What counts on a hole for the end of a match: nothing while its writers differ. */
export const agreedScores = (card: Pick<CurrentCard, 'holes'>): readonly HoleScore[] =>
  card.holes.map((line) => (line.notAgreed ? null : line.score))

/** The cards with what their matches leave of them. */
export function asMatchesLeave(
  record: Pick<DayRecord, 'competitions'>,
  cards: ReadonlyMap<string, CurrentCard>,
  matches: readonly MatchOfDay[],
): ReadonlyMap<string, CurrentCard> {
  const agreed = new Map([...cards].map(([entryId, card]) => [entryId, agreedScores(card)]))
  const counted = matches.map((one) => one.match)
  return new Map(
    [...cards].map(([entryId, card]) => {
      const beside = besideMatches(record, entryId as EntryId)
      return [
        entryId,
        leftOf(
          card,
          holesToPlay(counted, entryId, beside, (player) => agreed.get(player)),
        ),
      ]
    }),
  )
}

/** Of a player whom no competition of the day asks for a score. */
export const nothingNeeded = (holes: readonly { readonly hole: number }[]): HolesToPlay => ({
  notNeeded: holes.map(({ hole }) => hole),
  onlyFor: null,
})

export function leftOf(card: CurrentCard, { notNeeded, onlyFor }: HolesToPlay): CurrentCard {
  return { ...card, notNeeded, onlyFor, missing: card.missing.filter((hole) => !notNeeded.includes(hole)) }
}
