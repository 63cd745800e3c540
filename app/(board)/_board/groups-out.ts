// "Groups 3 and 4 are on the 17th and 12th, groups 5 to 8 have not started. Eight of 32 cards are in."

import { capital, counted, inWords, listed, ordinal } from '@/lib/boards/in-words'
import type { ScreenBoard } from './screen-board'

type Counts = Pick<ScreenBoard, 'cards' | 'cardsIn' | 'cardsToSign' | 'cardsNotReturned'>

/** In: handed in or accepted. A card that only wants a signature is named beside them. */
export function cardsInWords({ cards, cardsIn, cardsToSign, cardsNotReturned }: Counts): string {
  const here = cardsIn - cardsNotReturned
  if (cardsNotReturned === cards) return 'No card was returned.'
  if (here === cards) return 'Every card is in.'
  const sign =
    cardsToSign === 0
      ? ''
      : `, and ${inWords(cardsToSign)} more ${cardsToSign === 1 ? 'is' : 'are'} finished, not signed`
  if (here === 0)
    return sign === ''
      ? 'No card is in yet.'
      : `No card is in yet; ${counted(cardsToSign, 'card')} ${cardsToSign === 1 ? 'is' : 'are'} finished, not signed.`
  const gone =
    cardsNotReturned === 0
      ? ''
      : `; ${inWords(cardsNotReturned)} ${cardsNotReturned === 1 ? 'was' : 'were'} not returned`
  return `${capital(inWords(here))} of ${cards} cards ${here === 1 ? 'is' : 'are'} in${sign}${gone}.`
}

type Group = ScreenBoard['groups'][number]

/** "group 3", "groups 3 and 4", "groups 5 to 8". */
function groupsNamed(groups: readonly Group[]): string {
  const numbers = groups.map((group) => group.number)
  const first = numbers[0] ?? 0
  const isRun = numbers.length > 2 && numbers.every((number, at) => number === first + at)
  return numbers.length === 1
    ? `group ${first}`
    : `groups ${isRun ? `${first} to ${numbers.at(-1)}` : listed(numbers.map(String))}`
}

export function groupsOut(board: Counts & Pick<ScreenBoard, 'groups' | 'head'>): string {
  const cards = cardsInWords(board)
  const out = board.groups.filter((group) => group.onHole !== null)
  const waiting = board.groups.filter((group) => !group.started && group.entryIds.length > 0)
  if (board.head.status !== 'in-play' || (out.length === 0 && waiting.length === 0)) return cards
  if (out.length === 0 && waiting.length === board.groups.length) return `No group has started. ${cards}`
  // A full field spread over the course is too many to name: the flags say it.
  const many = out.length > 6
  const on =
    out.length === 0
      ? ''
      : many
        ? `${inWords(out.length)} groups are on the course`
        : `${groupsNamed(out)} ${out.length === 1 ? 'is' : 'are'} on the ${listed(out.map((group) => ordinal(group.onHole ?? 1)))}`
  const not =
    waiting.length === 0
      ? ''
      : `${many ? counted(waiting.length, 'group') : groupsNamed(waiting)} ${waiting.length === 1 ? 'has' : 'have'} not started`
  return `${capital([on, not].filter((part) => part !== '').join(', '))}. ${cards}`
}
