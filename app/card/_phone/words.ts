// Small sentences of the card.

import { timeInWords } from '@/lib/boards/dates-in-words'
import { listed, ordinal } from '@/lib/boards/in-words'
import type { CardPack, PackCard, PackPartner } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { type CardNow, isOwn, type Written } from '@/lib/outbox/card-now'
import type { GroupSnapshot } from '@/lib/outbox/group-book'
import type { Me } from '@/lib/outbox/holding'
import type { Kept } from './use-kept-page'

/** A moment by this phone's own clock, which works without a signal: "12.53 pm", as on a start sheet. */
export function clock(iso: string): string {
  return timeInWords(iso, Intl.DateTimeFormat().resolvedOptions().timeZone)
}

export const fullName = (card: { readonly firstName: string; readonly familyName: string }) =>
  `${card.firstName} ${card.familyName}`

/** First names, and a family initial where two in the group share one. */
export function shortName(pack: CardPack, entryId: string): string {
  if (entryId === 'desk') return 'the desk'
  const all = playersIn(pack)
  const player = all.find((each) => each.entryId === entryId)
  if (!player) return 'somebody'
  const shared = all.some((each) => each.entryId !== entryId && each.firstName === player.firstName)
  return shared ? `${player.firstName} ${player.familyName.charAt(0)}.` : player.firstName
}

/** Everybody of the group: of a side with one card all its players. */
export const playersIn = (pack: CardPack): readonly PackPartner[] =>
  pack.cards.flatMap((card) => [card, ...(card.sharedWith ?? [])])

/** Whose card it is: "Jago Trevennor", of a side "Trevennor and Holmgarth". */
export const cardName = (card: Pick<PackCard, 'firstName' | 'familyName' | 'sharedWith'>) =>
  card.sharedWith ? listed([card, ...card.sharedWith].map((one) => one.familyName)) : fullName(card)

/** "you", "Anjali", "Gethin’s other phone", "Gethin on another phone": whose score stands on a hole. */
export function whoWrote(pack: CardPack, one: Written, me: Me, all: readonly Written[]): string {
  if (isOwn(one, me)) return 'you'
  const name = shortName(pack, one.writer)
  if (one.writer === me.holder) return `${name}’s other phone`
  const first = all.find((each) => each.writer === one.writer)
  return first === one ? name : `${name} on another phone`
}

/** The same for the small square of a figure: the whole is in its label. */
export function whoInSquare(pack: CardPack, one: Written, me: Me): string {
  if (isOwn(one, me)) return 'you'
  return one.writer === me.holder ? 'other phone' : shortName(pack, one.writer)
}

const COUNT = ['none', 'one', 'two', 'three', 'four']
export const inWords = (count: number) => COUNT[count] ?? String(count)

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`

/** "8 scores saved here, not yet sent": one line on the narrowest phone, so that the foot keeps its height. */
export function waitingSentence({ waitingScores, waitingSignatures }: GroupSnapshot): string {
  const all = waitingScores + waitingSignatures
  const what =
    waitingSignatures === 0
      ? counted(all, 'score', 'scores')
      : waitingScores === 0
        ? counted(all, 'signature', 'signatures')
        : `${all}`
  return `${what} saved here, not yet sent`
}

export function stateSentence(now: GroupSnapshot, kept: Kept): string {
  if (now.waitingScores + now.waitingSignatures > 0) return waitingSentence(now)
  if (now.cards.length > 0 && now.cards.every((each) => each.state === 'taken-in')) return 'Accepted at the desk'
  if (now.lastReceivedAt) return `All sent, ${clock(now.lastReceivedAt)}`
  if (kept === 'kept') return now.outOfReach ? 'No signal: the card works without' : 'Ready. Works without a signal'
  // Said only when it is true: a card that is not whole on the phone yet must not be closed in a dead spot.
  if (now.outOfReach) return 'No signal: leave this page open'
  return kept === 'keeping' ? 'Getting ready: keep the signal a moment' : 'Ready, while this window stays open'
}

/** What keeps the group from a finished hole: "Una to enter", "2 to enter", "1 not agreed", or nothing. */
export function holeLacks(pack: CardPack, cards: readonly CardNow[], hole: number): string | null {
  const open = cards.filter((each) => !each.closed)
  const differ = open.filter((each) => each.notAgreed.includes(hole))
  if (differ.length > 0) return `${differ.length} not agreed`
  const missing = open.filter((each) => each.missing.includes(hole))
  const only = missing[0]
  if (!only) return null
  return missing.length === 1 ? `${shortName(pack, only.card.entryId)} to enter` : `${missing.length} to enter`
}

/** "In" is said of a card that is handed in, never of a score. */
export const allEntered = (cards: readonly CardNow[]) => (cards.length === 1 ? 'entered' : 'all entered')

/** The same for whoever listens: "all four entered". */
export const allEnteredInFull = (cards: readonly CardNow[]) =>
  cards.length === 1 ? 'entered' : cards.length === 2 ? 'both entered' : `all ${inWords(cards.length)} entered`

/** "Hole 11", "holes 4 and 11". */
export function holeList(holes: readonly number[]): string {
  if (holes.length === 1) return `hole ${holes[0]}`
  return `holes ${holes.slice(0, -1).join(', ')} and ${holes.at(-1)}`
}

/** "Joint 7th of 32 at 5.47 pm": as the field stood when the phone last had a signal; nothing where it is not allowed. */
export function placeWords(pack: CardPack, entryId: EntryId, at: string | null): string {
  const found = pack.position?.places[entryId]
  if (!found || !pack.position) return ''
  return `${found.tied ? 'Joint ' : ''}${ordinal(found.place)} of ${pack.position.of}${at ? ` at ${clock(at)}` : ''}`
}

/** "7th", "joint 7th": beside what somebody has so far, where the society lets phones show it. */
export function placeInShort(pack: CardPack, entryId: EntryId): string {
  const found = pack.position?.places[entryId]
  return found ? `${found.tied ? 'joint ' : ''}${ordinal(found.place)}` : ''
}

/** Read while the card opens, and again by whoever is asked whose phone it is. */
export const HOW_SCORES_GO =
  'Scores are saved on this phone and sent to the desk by themselves. Take a paper card as well: a battery can die, and a private window keeps nothing once it is closed.'
