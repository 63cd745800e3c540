// The named ball of a side (a yellow ball): who has it on each hole, and where and by whom it was lost.

import type { CompetitionRecord, DayRecord, SideRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { ballLostInWords, inTurnOnceLost } from '@/lib/rules/formats/lost-ball'
import { placeOfHole } from '@/lib/rules/hole-numbers'
import { sideBall, startHoleOf } from './ball-facts'
import { formatIn } from './format-of-competition'
import { ordinal } from './in-words'

export const hasNamedBall = (competition: CompetitionRecord): boolean =>
  formatIn(competition)?.count.kind === 'named-player'

/** Whoever of a side plays, in its order: the ball goes round by it. */
export function playingOf({ entries }: Pick<DayRecord, 'entries'>, side: Pick<SideRecord, 'entryIds'>): EntryId[] {
  return side.entryIds.filter((id) =>
    entries.some((one) => one.id === id && one.status === 'entered' && one.indexTenths !== null),
  )
}

/** In turn from the first hole of the card, wherever the side began: the engine's rota. */
export function carrierAt(players: readonly EntryId[], place: number): EntryId | null {
  return players.length === 0 ? null : (players[place % players.length] ?? null)
}

/** What the loss costs, as the terms have it: the sentence, and what the score of the player in turn does from there on. */
export function lossInWords(competition: CompetitionRecord): { cost: string; inTurn: string | null } | null {
  const count = formatIn(competition)?.count
  if (count?.kind !== 'named-player') return null
  const lost = competition.terms.ballLost ?? count.lost
  return { cost: ballLostInWords(lost, count.times), inTurn: inTurnOnceLost(lost, count.times) }
}

/** "yellow ball lost on the 11th by Haldane"; null where the competition has no such ball. */
export function namedBallSaid(
  record: DayRecord,
  competition: CompetitionRecord,
  side: Pick<SideRecord, 'id' | 'entryIds'>,
  nameOf: (entryId: EntryId) => string,
): string | null {
  if (!hasNamedBall(competition)) return null
  const { round, ballFacts, status } = record
  const { ballLostOn } = sideBall(side.id, ballFacts, round, startHoleOf(record, side.entryIds))
  if (ballLostOn === null) return status === 'closed' ? 'yellow ball home' : 'yellow ball still in play'
  const by = carrierAt(playingOf(record, side), placeOfHole(round, ballLostOn))
  return `yellow ball lost on the ${ordinal(ballLostOn)}${by ? ` by ${nameOf(by)}` : ''}`
}
