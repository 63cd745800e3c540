// What stands in the way of a signature, in the order a player should deal with it. Rules of Golf 3.3b: player and
// marker each certify the gross score of every hole; after that only the committee changes it. 22.2 and 23.1: either partner
// may act for the side.

import type { EntryId } from '@/lib/facts/ids'
import { type Refused, refused } from '@/lib/result'
import type { CardNow } from './card-now'

export type SigningRefusal =
  | 'taken-in'
  | 'day-closed'
  | 'signed-already'
  | 'not-agreed'
  | 'holes-missing'
  | 'not-the-marker'
  | 'signed-twice'

function list(holes: readonly number[]): string {
  if (holes.length === 1) return `hole ${holes[0]}`
  if (holes.length > 6) return `${holes.length} holes`
  return `holes ${holes.slice(0, -1).join(', ')} and ${holes.at(-1)}`
}

/** Null when `entryId` may sign this card in this role now. */
export function mayNotSign(card: CardNow, role: 'player' | 'marker', entryId: EntryId): Refused<SigningRefusal> | null {
  const { firstName } = card.card
  if (card.state === 'taken-in') return refused('taken-in', 'The desk has taken this card in.')
  if (card.isOver)
    return refused(
      'day-closed',
      `The day is closed, and ${firstName}’s card did not come in. Only the committee can count it now.`,
    )
  if (card.signatures.some((each) => each.role === role))
    return refused('signed-already', `The ${role} has signed this card already.`)
  if (card.notAgreed.length > 0)
    return refused('not-agreed', `Not agreed: ${list(card.notAgreed)}. Agree first, or let the committee rule.`)
  if (card.missing.length > 0)
    return refused('holes-missing', `${firstName} has no score yet on ${list(card.missing)}.`)
  if (role === 'player' ? !card.players.includes(entryId) : !card.markers.includes(entryId))
    return refused('not-the-marker', `Only ${role === 'player' ? whoPlays(card) : 'the marker'} can sign here.`)
  if (card.signatures.some((each) => each.role !== role && each.entryId === entryId))
    return refused('signed-twice', 'Two people sign a card: another player of the side signs here.')
  return null
}

/** "Jago", of a side "Jago or Una". */
function whoPlays({ card }: CardNow): string {
  const names = [card.firstName, ...(card.sharedWith ?? []).map((one) => one.firstName)]
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} or ${names.at(-1)}` : card.firstName
}
