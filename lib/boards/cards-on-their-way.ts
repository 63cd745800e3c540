// How far every card of a day has come, and how many are where: the one count behind the board's sentence, the bar, the
// caption of the course and the desk.

import type { CardState, DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { holesFrom } from '@/lib/rules/hole-numbers'
import { sharedCard } from './card-holders'
import { CARD_PROGRESS, type CardProgress, cardProgress, isIn, leastProgress } from './card-progress'
import { type CurrentCard, isHandedIn } from './current-card'
import { withNoPart } from './no-part'

type Cards = ReadonlyMap<string, CurrentCard>
type Day = Pick<DayRecord, 'cards' | 'competitions' | 'entries' | 'groups' | 'round'>

/** The flags in the order in which this player's group plays them. */
export function orderOf(record: Pick<DayRecord, 'groups' | 'round'>, entryId: EntryId): readonly number[] {
  const group = record.groups.find((one) => one.entryIds.includes(entryId))
  return holesFrom(record.round, group?.startHole ?? record.round.firstHole)
}

/** Null for a player without a card: nobody has been drawn yet, or the player does not play this round. */
export function progressOf(record: Day, cards: Cards, entryId: EntryId): CardProgress | null {
  // Where a side has one card, it is everybody's of the side.
  const holders = sharedCard(record, entryId)?.entryIds ?? [entryId]
  const own = holders.flatMap((id) => {
    const kept = record.cards.find((one) => one.entryId === id)
    const card = cards.get(id)
    return kept && card ? [{ kept, card }] : []
  })
  const order = orderOf(record, entryId)
  return furthest(
    own.map(({ kept, card }) =>
      cardProgress({
        state: stateNow(kept.state, card),
        order,
        missing: card.missing,
        notNeeded: card.notNeeded,
        isRuledOut: card.outcome !== null,
      }),
    ),
  )
}

/** As it reads: whole and signed it is handed in, whichever way it came. */
const stateNow = (state: CardState, card: CurrentCard) =>
  state === 'out' && isHandedIn(state, card) ? 'handed-in' : state

/** One row of a board: a pair has come as far as its partner who has come least far; of one ball one card is enough. */
export function progressOfRow(
  record: Day,
  cards: Cards,
  entryIds: readonly EntryId[],
  isOneBall: boolean,
): CardProgress | null {
  const all = entryIds.flatMap((id) => progressOf(record, cards, id) ?? [])
  if (all.length === 0) return null
  return isOneBall ? furthest(all) : leastProgress(all, orderOf(record, entryIds[0]!))
}

function furthest(all: readonly CardProgress[]): CardProgress | null {
  const rank = ({ state }: CardProgress) => CARD_PROGRESS.indexOf(state)
  return [...all].sort((a, b) => rank(b) - rank(a))[0] ?? null
}

export interface CardsOnTheirWay {
  /** Cards there are: of a side that shares one, one. */
  readonly cards: number
  readonly notStarted: number
  readonly onCourse: number
  /** Every hole written, a signature missing. */
  readonly toSign: number
  /** Handed in, accepted or ruled out. */
  readonly in: number
  /** Of those in: never returned, by a ruling or because the day was closed without them. */
  readonly notReturned: number
  readonly accepted: number
}

export function cardsOnTheirWay(record: Day, cards: Cards): CardsOnTheirWay {
  const byCard = new Map<string, CardProgress>()
  const gone = new Set<string>()
  const idle = withNoPart(record)
  for (const { id, status } of record.entries) {
    const progress = status === 'entered' && !idle.has(id) ? progressOf(record, cards, id) : null
    if (!progress) continue
    const card = sharedCard(record, id)?.id ?? id
    byCard.set(card, progress)
    if (isIn(progress) && isNotReturned(record, cards, id)) gone.add(card)
  }
  const all = [...byCard.values()]
  const count = (state: CardProgress['state']) => all.filter((one) => one.state === state).length
  return {
    cards: all.length,
    notStarted: count('not-started'),
    onCourse: count('on-hole'),
    toSign: count('finished'),
    in: all.filter(isIn).length,
    notReturned: gone.size,
    accepted: count('accepted'),
  }
}

/** Nobody waits for the card any more, and nobody has it: a no return, or a player who went home with it. */
function isNotReturned(record: Day, cards: Cards, entryId: EntryId): boolean {
  const outcome = cards.get(entryId)?.outcome
  if (outcome === 'no-return') return true
  return outcome === 'withdrawn' && record.cards.find((one) => one.entryId === entryId)?.state === 'out'
}
