// The matches of a group as this phone knows them: the pack, with what was conceded on this phone laid over it. The newest
// word of a hole counts, whoever wrote it.

import type { CardPack, PackMatch } from '@/lib/facts/card-pack'
import { type Refused, refused } from '@/lib/result'
import { isEndedOtherwise, withConcession } from '@/lib/rules/matches/concede'
import { playsIn } from '@/lib/rules/matches/match-now'
import { type CardNow, notInPack } from './card-now'
import type { ConcessionWritten, KeptFact } from './kept-fact'

export function matchesNow(pack: CardPack, facts: readonly KeptFact[]): readonly PackMatch[] {
  const fresh = notInPack(pack, facts)
  return (pack.matches ?? []).map((one) => {
    let { match } = one
    for (const { fact } of fresh)
      if (fact.kind === 'concession' && fact.matchId === match.id) match = withConcession(match, fact)
    return match === one.match ? one : { ...one, match }
  })
}

/** Until one of its cards is handed in a match may be conceded, and what was written taken back. */
export const isOpenMatch = ({ match }: PackMatch, cards: readonly CardNow[]): boolean =>
  cards.every((card) => !card.closed || !playsIn(match, card.card.entryId))

export function mayNotConcede(
  matches: readonly PackMatch[],
  cards: readonly CardNow[],
  what: ConcessionWritten,
): Refused<'no-such-match' | 'match-ended' | 'card-closed'> | null {
  const one = matches.find((each) => each.match.id === what.matchId)
  if (!one) return refused('no-such-match', 'That match is not in this group.')
  if (!isOpenMatch(one, cards))
    return refused('card-closed', 'A card of this match is handed in. Only the committee can change it now.')
  if (isEndedOtherwise(one.match))
    return refused('match-ended', 'The desk has written down how this match ended. Ask there to change it.')
  return null
}
